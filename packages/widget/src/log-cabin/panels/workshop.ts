import {
  drawingSentences,
  fitSentences,
  seamSentences,
  sheetSentences,
  tableSentences,
} from '@eighths/core';
import { logCabinLooks } from '../../look/logCabinLooks.js';
import { enLogCabin, enLogCabinWords } from '../../messages/enLogCabin.js';
import { arc } from './arc.js';
import { atTheTable } from './atTheTable.js';
import { compare } from './compare.js';
import { finder } from './finder.js';
import { mySeam } from './mySeam.js';
import type { Workshop } from './panel.js';
import { panelList } from './panelList.js';
import { resize } from './resize.js';
import { settings } from './settings.js';
import { sheets } from './sheets.js';
import { PanelState } from './state.js';
import { strips } from './strips.js';

/** All that can be done with a log cabin block besides its numbers. */
export const workshop: Workshop = {
  panels: [finder, resize, strips, arc, compare, settings, atTheTable, mySeam, sheets],
  looks: logCabinLooks,
  begin: (element) => new PanelState(element),
  show: panelList,
  messages: (own) => ({
    ...own,
    ...enLogCabin,
    words: { ...own.words, ...enLogCabinWords },
    sentences: {
      ...own.sentences,
      ...drawingSentences,
      ...fitSentences,
      ...tableSentences,
      ...seamSentences,
      ...sheetSentences,
    },
  }),
};
