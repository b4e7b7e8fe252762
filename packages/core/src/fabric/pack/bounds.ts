import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import { dot } from '../stock/stock.js';
import { areaOf, fitsIn, type Item, type Sheet } from './rectangles.js';
import { type Table, table } from './table.js';

/**
 * What pieces are worth, and the most of it that one of each sheet can hold: no cutting has more. So
 * sheets are too few where they cannot hold what all pieces are worth together.
 */
export interface Weighing {
  readonly worths: readonly number[];
  /** By sheet. */
  readonly most: readonly number[];
  readonly table: Table | undefined;
}

/** Weighs the pieces of all sizes by what one of each is worth. */
function weigh(
  sheets: readonly Sheet[],
  items: readonly Item[],
  worths: readonly number[],
  effort: Effort,
): Weighing {
  const envelope = {
    width: Math.max(0, ...sheets.map(({ width }) => width)),
    height: Math.max(0, ...sheets.map(({ height }) => height)),
  };
  const best = table(envelope, items, worths, effort);
  // Without a table no area is worth more than that of the piece that is worth most for its area.
  const dearest = Math.max(0, ...worths.map((worth, i) => worth / areaOf(entryAt(items, i))));
  return {
    worths,
    table: best,
    most: sheets.map(
      ({ width, height }) =>
        best?.worth(width, height) ?? Math.floor(width * height * dearest + ROUNDING),
    ),
  };
}

/** More than floating point loses, so that a bound is never too low. */
const ROUNDING = 1e-6;

/** Pieces weighed by their area. */
export const byArea = (
  sheets: readonly Sheet[],
  items: readonly Item[],
  effort: Effort,
): Weighing => weigh(sheets, items, items.map(areaOf), effort);

/** Pieces counted, in each of these only those that are at least as large as a certain one. */
export function byCount(
  sheets: readonly Sheet[],
  items: readonly Item[],
  effort: Effort,
): readonly Weighing[] {
  const counted = items.map((least) =>
    items.map((item) => Number(fitsIn({ ...least, turnable: item.turnable }, item))),
  );
  const different = new Map(counted.map((worths) => [worths.join(), worths]));
  return [...different.values()].map((worths) => weigh(sheets, items, worths, effort));
}

/** So many sheets of the first size are needed at least. */
export const fewestSheets = (weighed: readonly Weighing[], counts: readonly number[]): number =>
  Math.max(
    ...weighed.map(({ worths, most }) =>
      Math.ceil(dot(worths, counts) / Math.max(1, entryAt(most, 0))),
    ),
  );

/** So often a set of pieces can be had from all sheets at most. */
export const mostSets = (
  weighed: readonly Weighing[],
  sheets: readonly Sheet[],
  oneSet: readonly number[],
): number =>
  Math.min(
    ...weighed
      .filter(({ worths }) => dot(worths, oneSet) > 0)
      .map(({ worths, most }) => {
        const all = sheets.reduce((sum, { count }, i) => sum + count * entryAt(most, i), 0);
        return Math.floor(all / dot(worths, oneSet));
      }),
  );
