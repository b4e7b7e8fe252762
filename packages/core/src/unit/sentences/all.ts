import type { Sentences } from '../../plan/notice.js';
import { commonSentences } from './common.js';
import { curveSentences } from './curves.js';
import { flipSentences } from './flips.js';
import { squareSentences } from './squares.js';
import { stripSentences } from './strips.js';

/** Every code a unit's step or warning can carry. */
export type UnitSentence =
  | keyof typeof commonSentences
  | keyof typeof squareSentences
  | keyof typeof flipSentences
  | keyof typeof stripSentences
  | keyof typeof curveSentences;

/** The English sentences of all units, with their places open: to translate from, or to look up. */
export const unitSentences: Sentences<UnitSentence> = {
  ...commonSentences,
  ...squareSentences,
  ...flipSentences,
  ...stripSentences,
  ...curveSentences,
};
