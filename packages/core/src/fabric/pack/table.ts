import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import { valueAt } from '../stock/values.js';
import {
  countInto,
  cutInto,
  type Filling,
  grid,
  type Item,
  lying,
  type Parts,
  type Sheet,
  turnsOf,
} from './rectangles.js';

/** The most that rectangles up to a sheet's size can hold, as if there were any number of each item. */
export interface Table {
  /** The greatest worth of pieces in a rectangle. */
  worth(width: number, height: number): number;
  /** A cutting that is worth so much, and how many of each item it gives. */
  best(width: number, height: number): Filling;
}

/**
 * The most that any guillotine cutting of a rectangle is worth, for all rectangles within the sheet:
 * a rectangle is a piece, or is cut in two. Only sums of pieces' sides come up as places of cuts, and
 * the lesser half of a cut is at most half. (In the literature: unbounded two-dimensional guillotine
 * cutting by dynamic programming on normal patterns, Gilmore and Gomory; from memory.)
 *
 * @param worths what one of each item is worth, at least 0.
 * @returns undefined where the table would take more effort than is left.
 */
export function table(
  sheet: Pick<Sheet, 'width' | 'height'>,
  items: readonly Item[],
  worths: readonly number[],
  effort: Effort,
): Table | undefined {
  const shapes = items.flatMap((item, at) =>
    item.count > 0 && entryAt(worths, at) > 0
      ? turnsOf(item).map((turned) => ({ at, turned, ...lying(item, turned) }))
      : [],
  );
  const looking = (sheet.width + sheet.height) * (shapes.length + 1);
  if (!effort.allows(looking)) return undefined;
  effort.spend(looking);
  const xs = placesOf(
    sheet.width,
    shapes.map(({ width }) => width),
  );
  const ys = placesOf(
    sheet.height,
    shapes.map(({ height }) => height),
  );
  const columns = xs.places.length;
  const rows = ys.places.length;
  const steps = (columns * rows * (columns + rows)) / 4 + columns * rows * shapes.length;
  if (!effort.allows(steps)) return undefined;
  effort.spend(steps);

  /** By column and row; a choice is a shape, or beyond those a cut across, or beyond those down. */
  const worth = new Float64Array(columns * rows);
  const choice = new Int32Array(columns * rows).fill(-1);
  for (let c = 1; c < columns; c += 1) {
    const x = entryAt(xs.places, c);
    for (let r = 1; r < rows; r += 1) {
      const y = entryAt(ys.places, r);
      const here = c * rows + r;
      let best = 0;
      let chosen = -1;
      const offer = (value: number, what: number): void => {
        if (value > best) [best, chosen] = [value, what];
      };
      shapes.forEach(({ at, width, height }, s) => {
        if (width <= x && height <= y) offer(entryAt(worths, at), s);
      });
      for (let k = 1; 2 * entryAt(xs.places, k) <= x; k += 1) {
        const other = entryAt(xs.below, x - entryAt(xs.places, k));
        offer(valueAt(worth, k * rows + r) + valueAt(worth, other * rows + r), shapes.length + k);
      }
      for (let k = 1; 2 * entryAt(ys.places, k) <= y; k += 1) {
        const other = entryAt(ys.below, y - entryAt(ys.places, k));
        const value = valueAt(worth, c * rows + k) + valueAt(worth, c * rows + other);
        offer(value, shapes.length + columns + k);
      }
      worth[here] = best;
      choice[here] = chosen;
    }
  }

  const at = (width: number, height: number): number =>
    entryAt(xs.below, width) * rows + entryAt(ys.below, height);
  const parts = (width: number, height: number): Parts => {
    const chosen = entryAt(choice, at(width, height));
    const size = { width, height };
    if (chosen < 0) return { kind: 'left', ...size };
    const shape = shapes[chosen];
    const item = shape && items[shape.at];
    if (shape !== undefined && item !== undefined) {
      const row = cutInto('across', { width, height: shape.height }, [
        grid(item, shape.at, shape.turned),
      ]);
      return cutInto('down', size, [row]);
    }
    if (chosen < shapes.length + columns) {
      const x = entryAt(xs.places, chosen - shapes.length);
      return cutInto('across', size, [parts(x, height), parts(width - x, height)]);
    }
    const y = entryAt(ys.places, chosen - shapes.length - columns);
    return cutInto('down', size, [parts(width, y), parts(width, height - y)]);
  };
  const known = new Map<number, Filling>();
  return {
    worth: (width, height) => valueAt(worth, at(width, height)),
    best(width, height) {
      const key = width * (sheet.height + 1) + height;
      const before = known.get(key);
      if (before !== undefined) return before;
      const whole = parts(width, height);
      const counts = countInto(
        items.map(() => 0),
        whole,
      );
      const found = { parts: whole, counts };
      known.set(key, found);
      return found;
    },
  };
}

/** The sums of sides up to an extent, and for every length which of them is the next below it. */
function placesOf(extent: number, sides: readonly number[]) {
  const reached = new Uint8Array(extent + 1);
  reached[0] = 1;
  const below = new Int32Array(extent + 1);
  const places: number[] = [];
  for (let x = 0; x <= extent; x += 1) {
    if (sides.some((side) => side <= x && reached[x - side] === 1)) reached[x] = 1;
    if (reached[x] === 1) places.push(x);
    below[x] = places.length - 1;
  }
  return { places, below };
}
