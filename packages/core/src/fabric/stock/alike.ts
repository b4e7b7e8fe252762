import type { Bound } from './bound.js';
import type { Effort } from './effort.js';
import { fill } from './greedy.js';
import { bestPattern } from './knapsack.js';
import { dot, type Run, type Stock, timesWithin, without } from './stock.js';

/** The part of what may still be lost that one run of strips may lose. */
const SHARE = 3 / 4;
/** How fast the number of strips cut alike comes down. */
const STEP = 2 / 3;

/**
 * A cutting of few different strips that hopes for a given number of strips: each time the pattern
 * that can be cut most often, among those whose loss by the bound's prices the number allows. What
 * such patterns cannot cut is filled, so there may be more strips than hoped for.
 */
export function alike(stock: Stock, strips: number, bound: Bound, effort: Effort): readonly Run[] {
  const { prices, most } = bound;
  const runs: Run[] = [];
  let left = stock.demands;
  let remaining = strips;
  let wanted = strips;
  while (wanted >= 1) {
    const allowed = SHARE * (remaining * most - dot(prices, left));
    const demands = left.map((count) => Math.floor(count / wanted));
    const pattern = bestPattern({ ...stock, demands }, prices, effort);
    if (pattern === undefined) break;
    const lost = (most - dot(prices, pattern)) * wanted;
    if (lost > allowed || pattern.every((count) => count === 0)) {
      wanted = Math.floor(wanted * STEP);
      continue;
    }
    const times = timesWithin(pattern, left);
    runs.push({ pattern, times });
    left = without(left, pattern, times);
    remaining -= times;
    wanted = remaining;
  }
  return [...runs, ...fill({ ...stock, demands: left }, prices, effort)];
}
