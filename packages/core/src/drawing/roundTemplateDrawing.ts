import { finishedPlace, movedOut } from '../block/places.js';
import type { LogCabin } from '../block/plan.js';
import { countField } from '../plan/field.js';
import { notice } from '../plan/notice.js';
import { perSide } from '../plan/side.js';
import type { Dimension, Drawing, Shape } from './drawing.js';
import { cornersOf, grown, point, sideOf, sizeOf } from './points.js';
import { drawingSentences } from './sentences.js';
import { area, line } from './shapes.js';

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
  const dimension = (away: 'bottom' | 'right', row: number, measured: Partial<Dimension>) => {
    const [from, to] = sideOf(raw, away);
    const measure = away === 'bottom' ? sizeOf(raw).width : sizeOf(raw).height;
    return { kind: 'dimension', from, to, away, row, measure, ...measured } as const;
  };
  const toEdges = (inner: typeof raw, row: number): Dimension[] => [
    dimension('bottom', row, {
      from: point(raw.left, inner.bottom),
      to: point(inner.left, inner.bottom),
      measure: inner.left.minus(raw.left),
    }),
    dimension('bottom', row, {
      from: point(inner.right, inner.bottom),
      to: point(raw.right, inner.bottom),
      measure: raw.right.minus(inner.right),
    }),
    dimension('right', row, {
      from: point(inner.right, raw.top),
      to: point(inner.right, inner.top),
      measure: inner.top.minus(raw.top),
    }),
    dimension('right', row, {
      from: point(inner.right, inner.bottom),
      to: point(inner.right, raw.bottom),
      measure: raw.bottom.minus(inner.bottom),
    }),
  ];
  const shapes: Shape[] = [
    ...(last === undefined
      ? []
      : plan.sides.map((side) => line('seam', sideOf({ ...raw, [side]: last[side] }, side)))),
    line('center-seam', [...cornersOf(center), point(center.left, center.top)]),
    area('outline', raw),
    ...toEdges(center, 0),
    dimension('bottom', 1, { word: 'trim to' }),
    dimension('right', 1, { word: 'trim to' }),
  ];
  return {
    title: notice(drawingSentences, 'round-template-title', { round, trimTo: sizeOf(raw) }),
    description: notice(drawingSentences, 'round-template-description', {}),
    fabrics: [],
    shapes,
  };
}
