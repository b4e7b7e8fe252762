import { type Length, length } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import type { UnitArc, UnitPatch, UnitPlan } from '../unit/plan.js';
import type { UnitPoint } from '../unit/point.js';
import type { Point } from './drawing.js';
import { type Dot, dotAt } from './geometry.js';

/** Pictures only: these outlines are approximate, and no size is read off them. */

/** A point of the picture, to a millionth of an inch. */
export const pointAt = ({ x, y }: Dot): Point => ({ x: nearly(x), y: nearly(y) });

const nearly = (value: number): Length => length(Math.round(value * 1e6)).dividedBy(1e6);

/** The side of a line on which a dot lies: above 0 to the right, y down. */
const sideOfLine = (start: Dot, end: Dot, { x, y }: Dot): number =>
  (end.x - start.x) * (y - start.y) - (end.y - start.y) * (x - start.x);

const next = <Item>(items: readonly Item[], index: number): Item =>
  entryAt(items, (index + 1) % items.length);

const edges = (dots: readonly Dot[]): readonly (readonly [Dot, Dot])[] =>
  dots.map((start, index) => [start, next(dots, index)]);

/** The dots clockwise, as they are seen. */
function clockwise(dots: readonly Dot[]): readonly Dot[] {
  const doubled = edges(dots).reduce((sum, [a, b]) => sum + a.x * b.y - b.x * a.y, 0);
  return doubled < 0 ? [...dots].reverse() : dots;
}

const TINY = 1e-7;

/** What lies to the right of a line of a convex outline. */
function cutOff(dots: readonly Dot[], start: Dot, end: Dot): readonly Dot[] {
  return edges(dots).flatMap(([from, to]) => {
    const [a, b] = [sideOfLine(start, end, from), sideOfLine(start, end, to)];
    const kept = a >= -TINY ? [from] : [];
    if (a * b >= 0 || Math.min(Math.abs(a), Math.abs(b)) < TINY) return kept;
    const share = a / (a - b);
    return [...kept, { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) }];
  });
}

/** Every side of a convex outline moved outward. */
export function grown(outline: readonly Dot[], by: number): readonly Dot[] {
  const sides = edges(clockwise(outline)).map(([start, end]) => {
    const size = Math.hypot(end.x - start.x, end.y - start.y);
    const out = { x: ((end.y - start.y) * by) / size, y: ((start.x - end.x) * by) / size };
    return [
      { x: start.x + out.x, y: start.y + out.y },
      { x: end.x + out.x, y: end.y + out.y },
    ] as const;
  });
  return sides.map(([start, end], index) => {
    const [a, b] = entryAt(sides, (index + sides.length - 1) % sides.length);
    const u = { x: b.x - a.x, y: b.y - a.y };
    const v = { x: end.x - start.x, y: end.y - start.y };
    const cross = u.x * v.y - u.y * v.x;
    const share = ((start.x - a.x) * v.y - (start.y - a.y) * v.x) / cross;
    return { x: a.x + share * u.x, y: a.y + share * u.y };
  });
}

/** The corners of an outline, and enough dots between them where its edge is an arc. */
export function dotsWithArc(
  points: readonly UnitPoint[],
  arc: UnitArc | undefined,
  parts = 24,
): readonly Dot[] {
  const dots = points.map(dotAt);
  if (arc === undefined) return dots;
  const center = dotAt(arc.center);
  const radius = arc.radius.toNumber();
  const angle = ({ x, y }: Dot): number => Math.atan2(y - center.y, x - center.x);
  const from = angle(entryAt(dots, arc.from));
  const to = angle(next(dots, arc.from));
  const between = Array.from({ length: parts - 1 }, (_, index) => {
    const turn = from + ((to - from) * (index + 1)) / parts;
    return { x: center.x + radius * Math.cos(turn), y: center.y + radius * Math.sin(turn) };
  });
  return [...dots.slice(0, arc.from + 1), ...between, ...dots.slice(arc.from + 1)];
}

/** A patch as it is seen on the unfinished unit: it reaches out to the raw edges. */
export interface SeenPatch {
  readonly fabric: string;
  readonly dots: readonly Dot[];
}

/**
 * The patches of the unfinished unit: what lies within the raw outline on the inner side of each of a
 * patch's seams. A patch that is hollow is put below the one that fills it.
 */
export function seenPatches(plan: UnitPlan, raw: readonly Dot[]): readonly SeenPatch[] {
  const sides = edges(plan.outline.map(dotAt));
  const isOutside = (start: Dot, end: Dot): boolean =>
    sides.some(
      ([a, b]) =>
        Math.abs(sideOfLine(a, b, start)) < TINY && Math.abs(sideOfLine(a, b, end)) < TINY,
    );
  const hollow = (patch: UnitPatch): boolean => patch.arc !== undefined && patch.points.length > 3;
  const patches = [...plan.patches].sort((a, b) => Number(hollow(b)) - Number(hollow(a)));
  return patches.map((patch) => {
    const { fabric } = patch;
    if (hollow(patch)) return { fabric, dots: raw };
    const seams = edges(clockwise(dotsWithArc(patch.points, patch.arc))).filter(
      ([start, end]) => !isOutside(start, end),
    );
    return { fabric, dots: seams.reduce((dots, [start, end]) => cutOff(dots, start, end), raw) };
  });
}
