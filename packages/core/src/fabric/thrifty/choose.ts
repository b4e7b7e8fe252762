import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import { TINY } from '../stock/simplex.js';

/** What strips must be worth together: so much each, by level, and so much in all. */
export interface Worth {
  readonly worths: readonly number[];
  readonly total: number;
}

/**
 * How many strips of each width, at most so high together, are worth enough in every way; `none` where
 * no choice is, `unknown` where the effort does not allow to look everywhere.
 */
export function choose(
  heights: readonly number[],
  ways: readonly Worth[],
  height: number,
  effort: Effort,
): readonly number[] | 'none' | 'unknown' {
  /** The greatest worth a unit of height can have from a level on. */
  const rates = ways.map(({ worths }) => {
    const rate = heights.map((unit, level) => entryAt(worths, level) / unit);
    for (let level = rate.length - 2; level >= 0; level -= 1) {
      rate[level] = Math.max(entryAt(rate, level), entryAt(rate, level + 1));
    }
    return rate;
  });
  const visit = (
    level: number,
    room: number,
    missing: readonly number[],
  ): readonly number[] | 'none' | 'unknown' => {
    if (missing.every((worth) => worth <= 0)) return [];
    const hopeless = missing.some((worth, i) => worth - room * (rates[i]?.[level] ?? 0) > 1 / 2);
    const unit = heights[level];
    if (hopeless || unit === undefined) return 'none';
    for (let count = Math.floor(room / unit); count >= 0; count -= 1) {
      effort.spend(ways.length);
      if (!effort.allows(0)) return 'unknown';
      const rest = missing.map(
        (worth, i) => worth - count * entryAt(entryAt(ways, i).worths, level),
      );
      const found = visit(level + 1, room - count * unit, rest);
      if (found === 'unknown') return found;
      if (found !== 'none') return [count, ...found];
    }
    return 'none';
  };
  return visit(
    0,
    height,
    ways.map(({ total }) => total),
  );
}

/** So high strips must be to be worth enough in each way by itself, parts of strips allowed. */
export const boundOf = (heights: readonly number[], ways: readonly Worth[]): number =>
  Math.max(
    0,
    ...ways.map(({ worths, total }) => {
      const rate = Math.max(...heights.map((height, level) => entryAt(worths, level) / height));
      return rate === 0 ? 0 : Math.ceil(total / rate - TINY);
    }),
  );
