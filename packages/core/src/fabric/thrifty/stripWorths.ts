import { entryAt } from '../../plan/entryAt.js';
import { dearest } from '../dearest.js';
import type { Sheet } from './sheet.js';

/**
 * What a strip of each level is worth at most at whole prices: of pieces in a row, of rows in a section,
 * of sections in a strip, for every length. For the checker, so without the solver's tables.
 */
export function stripWorths(sheet: Sheet, prices: readonly number[]): readonly number[] {
  const { capacity, demands, levels } = sheet;
  const rows = levels.map(({ items, sizes }) =>
    dearest(
      capacity,
      items.map((item, i) => ({
        size: entryAt(sizes, i),
        count: entryAt(demands, item),
        price: entryAt(prices, item),
      })),
    ),
  );
  const known = new Map<number, readonly number[]>();
  /** Sections that are so high at most, of rows from a level on: a row, and whatever fits below it. */
  const sections = (height: number, from: number): readonly number[] => {
    const most = new Array<number>(capacity + 1).fill(0);
    for (let level = from; level < levels.length; level += 1) {
      const rest = height - entryAt(levels, level).height;
      if (rest < 0) continue;
      const below = known.get(rest) ?? sections(rest, 0);
      known.set(rest, below);
      entryAt(rows, level).forEach((worth, x) => {
        most[x] = Math.max(entryAt(most, x), worth + entryAt(below, x));
      });
    }
    return most;
  };
  return rows.map((row, level) => {
    // One row as wide as the strip is enough: two of them are one that is longer.
    const lower = sections(entryAt(levels, level).height, level + 1);
    const most = [...row];
    lower.forEach((worth, width) => {
      if (width === 0 || worth === entryAt(lower, width - 1)) return;
      for (let x = width; x <= capacity; x += 1) {
        most[x] = Math.max(entryAt(most, x), entryAt(most, x - width) + worth);
      }
    });
    return entryAt(most, capacity);
  });
}
