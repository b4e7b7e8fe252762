import type { Effort } from './effort.js';
import { bestPattern } from './knapsack.js';
import { dot, type Stock } from './stock.js';

/**
 * Why fewer strips are not enough: give each size a price. No strip holds more than `most`, so
 * pieces of a total price T need at least T / most strips. All are whole numbers, so whatever
 * floating point did to find the prices, the bound stands.
 */
export interface Bound {
  readonly prices: readonly number[];
  readonly most: number;
  readonly strips: number;
}

/** The bound that these prices give, once `most` is known to be the greatest price of a strip. */
const boundOf = (stock: Stock, prices: readonly number[], most: number): Bound => ({
  prices,
  most,
  strips: Math.ceil(dot(prices, stock.demands) / most),
});

const better = (a: Bound, b: Bound): Bound => (b.strips > a.strips ? b : a);

/**
 * The bounds that need no search: by length alone, and by what cannot share a strip (L1 and L2 of
 * Martello and Toth, 1990). For a threshold t up to half a strip, pieces longer than capacity − t
 * count a whole strip, pieces shorter than t nothing, others their length.
 */
export function simpleBound(stock: Stock): Bound {
  const { capacity, sizes } = stock;
  const halves = sizes.map((size) => (2 * size > capacity ? 1 : 0));
  let best = better(boundOf(stock, sizes, capacity), boundOf(stock, halves, 1));
  for (const threshold of sizes) {
    if (2 * threshold > capacity) continue;
    const prices = sizes.map((size) =>
      size > capacity - threshold ? capacity : size < threshold ? 0 : size,
    );
    best = better(best, boundOf(stock, prices, capacity));
  }
  return best;
}

/** How finely prices are rounded: coarse ones first, because people may read them. */
const SCALES = [60, 2520, 2 ** 24];

/** A bound from prices in floating point (a strip's price about 1), hoping for `hoped` strips. */
export function certified(
  stock: Stock,
  duals: readonly number[],
  hoped: number,
  effort: Effort,
): Bound {
  let best = simpleBound(stock);
  for (const scale of SCALES) {
    if (best.strips >= hoped) break;
    const prices = duals.map((dual) => Math.max(0, Math.round(dual * scale)));
    const dearest = bestPattern(stock, prices, effort);
    if (dearest === undefined) break;
    const most = dot(prices, dearest);
    if (most > 0) best = better(best, boundOf(stock, prices, most));
  }
  return best;
}
