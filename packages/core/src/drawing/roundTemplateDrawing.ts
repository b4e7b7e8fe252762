import { finishedPlace, movedOut } from '../block/places.js';
import type { LogCabin } from '../block/plan.js';
import { countField } from '../plan/field.js';
import { notice } from '../plan/notice.js';
import { perSide } from '../plan/side.js';
import type { Drawing, Shape } from './drawing.js';
import { grown, sideOf, sizeOf } from './points.js';
import { drawingSentences } from './sentences.js';
import { area, dimension, line, lineRound } from './shapes.js';

/**
 * The lines that a round is trimmed by: the trimmed raw edge, the seam round the center, and the last
 * seams. At true scale it lies under an acrylic ruler, or is traced.
 *
 * @throws EighthsError `not-a-count` where the block has no such round
 * @example
 * const block = logCabin({ rounds: 2, center: 2, log: 1, strips: { log: 2 } });
 * drawRoundTemplate(block, 2).title.text; // 'Round 2: trim to 6 1/2'
 */
export function drawRoundTemplate(plan: LogCabin, round: number): Drawing {
  countField(round, 'round', 1, plan.rounds.length);
  const center = finishedPlace(plan, 0);
  const raw = grown(finishedPlace(plan, round), plan.seam);
  const { lastSeamToEdge } = plan.rounds.find(({ number }) => number === round) ?? {};
  // On a side without logs the last seam is none: its line would be the finished edge.
  const last =
    lastSeamToEdge && perSide((side) => movedOut(raw, side, lastSeamToEdge[side].negated()));
  // From the center's seam to the raw edges: below it and beside it.
  const { right, bottom } = center;
  const toEdges = [
    dimension({ ...raw, bottom, right: center.left }, 'bottom'),
    dimension({ ...raw, bottom, left: right }, 'bottom'),
    dimension({ ...raw, right, bottom: center.top }, 'right'),
    dimension({ ...raw, right, top: bottom }, 'right'),
  ];
  const shapes: Shape[] = [
    ...(last === undefined
      ? []
      : plan.sides.map((side) => line('seam', sideOf({ ...raw, [side]: last[side] }, side)))),
    lineRound('center-seam', center),
    area('outline', raw),
    ...toEdges,
    dimension(raw, 'bottom', 'trim to', 1),
    dimension(raw, 'right', 'trim to', 1),
  ];
  return {
    title: notice(drawingSentences, 'round-template-title', { round, trimTo: sizeOf(raw) }),
    description: notice(drawingSentences, 'round-template-description', {}),
    fabrics: [],
    shapes,
  };
}
