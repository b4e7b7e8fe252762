import { finishedPlace, type Place } from '../block/places.js';
import type { LogCabin } from '../block/plan.js';
import { countField } from '../plan/field.js';
import { notice } from '../plan/notice.js';
import { blockParts, fabricsOf, numbered, reachOut } from './blockParts.js';
import { blockDrawingSentences } from './blockSentences.js';
import type { Dimension, Drawing, DrawingWord, Shape } from './drawing.js';
import { grown, sideOf, sizeOf } from './points.js';
import { area, dimension, fabricArea, lineRound } from './shapes.js';

/** How much of a block is drawn. */
export interface LogCabinDrawingOptions {
  /** The round after which it is drawn, from 1; default the last. */
  readonly round?: number;
}

/** A ruled edge to read sizes by, from the top left corner of the raw edge. */
function ruledEdge(raw: Place, toward: 'top' | 'left'): Shape {
  const [from, to] = sideOf(raw, toward);
  return { kind: 'scale', from, to, toward };
}

/** The sizes of nested places below the block, and beside it where it is no square. */
function dimensions(nested: readonly (readonly [Place, DrawingWord])[]): Dimension[] {
  const along = (away: 'bottom' | 'right') =>
    nested.map(([place, word], row) => dimension(place, away, word, row));
  const square = nested.every(([place]) => sizeOf(place).width.equals(sizeOf(place).height));
  return [...along('bottom'), ...(square ? [] : along('right'))];
}

/**
 * The block as sewn and trimmed, with its seam allowance, its logs numbered in sewing order, and a
 * ruled edge to read sizes by.
 *
 * @throws EighthsError `not-a-count` where the block has no such round
 * @example
 * const block = logCabin({ rounds: 4, finished: 9, wide: '1 1/4', narrow: '1/2' });
 * drawLogCabin(block).title.text; // 'The block as sewn: 9 finished, trim to 9 1/2'
 */
export function drawLogCabin(plan: LogCabin, options: LogCabinDrawingOptions = {}): Drawing {
  const last = plan.rounds.length;
  const round = countField(options.round ?? last, 'round', 1, last);
  const finished = finishedPlace(plan, round);
  const raw = grown(finished, plan.seam);
  const center = finishedPlace(plan, 0);
  const logs = plan.logs.filter((log) => log.round <= round).length;
  const parts = blockParts(plan, logs);
  return {
    title: notice(blockDrawingSentences, 'block-title', {
      finished: sizeOf(finished),
      unfinished: sizeOf(raw),
    }),
    description: notice(blockDrawingSentences, 'block-description', {
      center: plan.center.finished,
      logs,
      rounds: round,
    }),
    fabrics: fabricsOf(plan),
    shapes: [
      ...parts.map(({ place, fabric }) => fabricArea(fabric, reachOut(place, finished, raw))),
      ...parts.flatMap(numbered),
      lineRound('finished-edge', finished),
      area('outline', raw),
      ruledEdge(raw, 'top'),
      ruledEdge(raw, 'left'),
      ...dimensions([
        [center, 'center'],
        [finished, 'finished'],
        [raw, 'trim to'],
      ]),
    ],
  };
}
