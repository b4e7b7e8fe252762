import { type Cell, type Length, length } from '@eighths/core';

type Corner = Cell['corners'][number];

/** The sides of a cell. */
const sidesOf = (corners: readonly Corner[]): readonly (readonly [Corner, Corner])[] =>
  corners.map((from, index) => [from, corners[(index + 1) % corners.length] ?? from]);

/** Twice the area, by the sum over the sides. Exact. */
export const doubleArea = ({ corners }: Cell): Length => {
  const sum = sidesOf(corners).reduce(
    (all, [a, b]) => all.plus(a.x.times(b.y)).minus(b.x.times(a.y)),
    length(0),
  );
  return sum.sign() < 0 ? sum.negated() : sum;
};

/** Where a side crosses the line at a height, if it does; sides run straight or at 45 degrees. */
function crossing([a, b]: readonly [Corner, Corner], height: Length): readonly Length[] {
  const [above, below] = a.y.compareTo(b.y) < 0 ? [a, b] : [b, a];
  if (above.y.compareTo(height) >= 0 || below.y.compareTo(height) <= 0) return [];
  const lean = below.x.compareTo(above.x);
  const run = below.x.minus(above.x);
  const fall = below.y.minus(above.y);
  if (lean !== 0 && !run.times(lean).equals(fall)) throw new Error('This side leans otherwise.');
  return [above.x.plus(height.minus(above.y).times(lean))];
}

/** Where a line at a height, which meets no corner, enters and leaves a cell. Exact. */
export function chord({ corners }: Cell, height: Length): readonly [Length, Length] | undefined {
  const [one, other, ...more] = sidesOf(corners).flatMap((side) => crossing(side, height));
  if (one === undefined || other === undefined) return undefined;
  if (more.length > 0) throw new Error('This cell is not convex.');
  return one.compareTo(other) < 0 ? [one, other] : [other, one];
}

/** The chords of all cells along a line, from the left: each has to begin where the last one ended. */
export const chordsAlong = (
  cells: readonly Cell[],
  height: Length,
): readonly (readonly [Length, Length])[] =>
  cells
    .flatMap((cell) => {
      const found = chord(cell, height);
      return found === undefined ? [] : [found];
    })
    .sort(([a], [b]) => a.compareTo(b));
