import { type Length, type LengthInput, length } from '../length/length.js';
import { absolute } from '../length/longer.js';
import { entryAt } from '../plan/entryAt.js';

/** A point of a unit in inches from its top left corner: `x` to the right, `y` down. */
export interface UnitPoint {
  readonly x: Length;
  readonly y: Length;
}

export const at = (x: LengthInput, y: LengthInput): UnitPoint => ({ x: length(x), y: length(y) });

/** The corners of a rectangle, clockwise from the top left one. */
export const rectangle = (width: Length, height: Length): readonly UnitPoint[] => [
  at(0, 0),
  at(width, 0),
  at(width, height),
  at(0, height),
];

export const midpoint = (a: UnitPoint, b: UnitPoint): UnitPoint => ({
  x: a.x.plus(b.x).dividedBy(2),
  y: a.y.plus(b.y).dividedBy(2),
});

/** The point moved down and to the right by the same distance. */
export const moved = ({ x, y }: UnitPoint, by: Length): UnitPoint => ({
  x: x.plus(by),
  y: y.plus(by),
});

/** The area of a polygon in square inches, by the shoelace rule; a curved edge counts as straight. */
export function polygonArea(points: readonly UnitPoint[]): Length {
  let doubled = length(0);
  for (const [index, { x, y }] of points.entries()) {
    const next = entryAt(points, (index + 1) % points.length);
    doubled = doubled.plus(x.times(next.y)).minus(next.x.times(y));
  }
  return absolute(doubled.dividedBy(2));
}
