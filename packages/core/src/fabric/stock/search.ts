import { entryAt } from '../../plan/entryAt.js';
import type { Bound } from './bound.js';
import type { Effort } from './effort.js';
import { dot, type Pattern, type Run, type Stock, without } from './stock.js';

/** What a complete search found: a cutting, that there is none, or (at the limit) neither. */
export type Found = readonly Run[] | 'none' | 'unknown';

/**
 * Every cutting with at most so many strips, looked through. The longest piece left must lie in some
 * strip, so each node tries the patterns that hold it. What they waste of the strips' length, and of
 * the strips' price (`bound.most` each), comes out of two budgets that are known beforehand.
 */
export function* search(
  stock: Stock,
  strips: number,
  bound: Bound,
  effort: Effort,
): Generator<void, Found> {
  /** What is left to cut, where it is known that the strips left are not enough for it. */
  const failed = new Set<string>();

  function* visit(left: readonly number[], remaining: number): Generator<void, Found> {
    const longest = left.findIndex((count) => count > 0);
    if (longest < 0) return [];
    const waste = remaining * stock.capacity - dot(stock.sizes, left);
    const loss = remaining * bound.most - dot(bound.prices, left);
    if (waste < 0 || loss < 0) return 'none';
    const key = left.join();
    if (failed.has(key)) return 'none';
    yield;
    const patterns = patternsWith(longest, left, stock, bound, waste, loss, effort);
    for (const pattern of patterns) {
      if (!effort.allows(0)) return 'unknown';
      const found = yield* visit(without(left, pattern, 1), remaining - 1);
      if (found === 'unknown') return found;
      if (found !== 'none') return [{ pattern, times: 1 }, ...found];
    }
    if (!effort.allows(0)) return 'unknown';
    failed.add(key);
    return 'none';
  }

  return yield* visit(stock.demands, strips);
}

/** The patterns that hold the longest piece left and stay within both budgets, the best first. */
function patternsWith(
  longest: number,
  left: readonly number[],
  { sizes, capacity }: Stock,
  { prices, most }: Bound,
  waste: number,
  loss: number,
  effort: Effort,
): Pattern[] {
  const found: { readonly pattern: Pattern; readonly loss: number }[] = [];
  const counts = sizes.map(() => 0);

  const extend = (item: number, room: number, price: number): void => {
    effort.spend(1);
    const size = sizes[item];
    if (size === undefined || !effort.allows(0)) {
      if (room <= waste && most - price <= loss)
        found.push({ pattern: [...counts], loss: most - price });
      return;
    }
    const fit = Math.min(entryAt(left, item), Math.floor(room / size));
    for (let count = fit; count >= (item === longest ? 1 : 0); count -= 1) {
      counts[item] = count;
      extend(item + 1, room - count * size, price + count * entryAt(prices, item));
    }
    counts[item] = 0;
  };
  extend(longest, capacity, 0);
  return found.sort((a, b) => a.loss - b.loss).map(({ pattern }) => pattern);
}
