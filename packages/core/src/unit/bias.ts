import { entryAt } from '../plan/entryAt.js';
import type { BiasEdges, UnitPatch } from './plan.js';
import type { UnitPoint } from './point.js';

type Edge = readonly [UnitPoint, UnitPoint];

const edgesOf = (points: readonly UnitPoint[]): readonly Edge[] =>
  points.map((start, index) => [start, entryAt(points, (index + 1) % points.length)]);

/** Whether a point lies on the line through an edge. */
function onLine({ x, y }: UnitPoint, [start, end]: Edge): boolean {
  const across = end.x.minus(start.x).times(y.minus(start.y));
  return across.equals(end.y.minus(start.y).times(x.minus(start.x)));
}

function isOnBias([start, end]: Edge, grain: UnitPatch['grain']): boolean {
  const dx = end.x.minus(start.x);
  const dy = end.y.minus(start.y);
  if (grain === 'straight') return dx.sign() !== 0 && dy.sign() !== 0;
  return !dx.times(dx).equals(dy.times(dy));
}

/**
 * The edges of patches that run neither along nor across the threads, told apart by whether they lie
 * on the outline of the unit. A curved edge is always on the bias.
 */
export function biasEdges(
  patches: readonly UnitPatch[],
  outline: readonly UnitPoint[],
  sewnFirst: boolean,
): BiasEdges {
  const sides = edgesOf(outline);
  let outside = 0;
  let seams = 0;
  for (const { points, grain, arc } of patches) {
    for (const [index, edge] of edgesOf(points).entries()) {
      if (arc?.from !== index && !isOnBias(edge, grain)) continue;
      const isOutside = sides.some((side) => edge.every((end) => onLine(end, side)));
      if (isOutside) outside += 1;
      else seams += 1;
    }
  }
  return { outside, seams, sewnFirst };
}
