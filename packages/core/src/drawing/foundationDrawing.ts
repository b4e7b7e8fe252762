import { finishedPlace, type Place } from '../block/places.js';
import type { LogCabin } from '../block/plan.js';
import { notice } from '../plan/notice.js';
import { blockParts, numbered } from './blockParts.js';
import type { Drawing, Shape } from './drawing.js';
import { grown, sizeOf } from './points.js';
import { drawingSentences } from './sentences.js';
import { area, lineRound } from './shapes.js';

/** A place in a mirror that stands on the left. */
const mirrored = ({ left, top, right, bottom }: Place): Place => ({
  left: right.negated(),
  top,
  right: left.negated(),
  bottom,
});

/**
 * The foundation that a block is sewn on: its seams mirrored, since it is sewn from the back, numbered
 * in sewing order, with the finished edge and the allowance beyond it. Nothing is trimmed between
 * rounds: finished widths alone decide. Cornerstones are pieced to their logs first, so that their
 * seams are not on the foundation's way; they are drawn without a number.
 *
 * @example
 * const block = logCabin({ rounds: 4, finished: 9, wide: '1 1/4', narrow: '1/2' });
 * drawFoundation(block).title.text; // 'Foundation of a block that finishes 9, mirrored'
 */
export function drawFoundation(plan: LogCabin): Drawing {
  const finished = mirrored(finishedPlace(plan, plan.rounds.length));
  const parts = blockParts(plan).map((part) => ({ ...part, place: mirrored(part.place) }));
  const shapes: Shape[] = [
    ...parts.map(({ place }) => lineRound('seam', place)),
    ...parts.flatMap(numbered),
    lineRound('finished-edge', finished),
    area('outline', grown(finished, plan.seam)),
  ];
  return {
    title: notice(drawingSentences, 'foundation-title', { finished: sizeOf(finished) }),
    description: notice(drawingSentences, 'foundation-description', {}),
    fabrics: [],
    shapes,
  };
}
