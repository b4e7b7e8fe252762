import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from './effort.js';
import { bestPattern } from './knapsack.js';
import { Simplex, TINY } from './simplex.js';
import { dot, type Pattern, type Stock } from './stock.js';

/** What the problem would take if parts of strips could be cut. */
export interface Relaxation {
  readonly strips: number;
  readonly parts: readonly { readonly pattern: Pattern; readonly amount: number }[];
  /** What one more piece of each size would cost, in strips. */
  readonly duals: readonly number[];
}

/** The whole number of strips that a sum in floating point asks for. */
export const wholeStrips = (strips: number): number => Math.ceil(strips - 1e-6);

/**
 * Column generation (Gilmore and Gomory 1961, 1963): the linear program begins with a few patterns
 * and asks for the pattern worth most at its own prices, until none is worth more than the strip it
 * costs, or until more of them could no longer change the whole number of strips (Farley's bound).
 *
 * @param pool patterns met so far, which are asked first; new ones are added to it.
 */
export function* relaxation(
  stock: Stock,
  pool: Pattern[],
  effort: Effort,
): Generator<void, Relaxation> {
  const { capacity, sizes, demands } = stock;
  const simplex = new Simplex(demands, (i) =>
    Math.max(1, Math.min(entryAt(demands, i), Math.floor(capacity / entryAt(sizes, i)))),
  );
  while (effort.allows(0)) {
    effort.spend(sizes.length * (sizes.length + pool.length));
    const known = worthMost(pool, simplex.duals);
    if (known !== undefined) {
      simplex.usePattern(known);
      continue;
    }
    if (simplex.releaseSurplus()) continue;
    yield;
    const pattern = bestPattern(stock, simplex.duals, effort);
    if (pattern === undefined) break;
    const worth = dot(pattern, simplex.duals);
    if (wholeStrips(simplex.cost / worth) >= wholeStrips(simplex.cost)) break;
    pool.push(pattern);
    simplex.usePattern(pattern);
  }
  const { cost: strips, parts, duals } = simplex;
  return { strips, parts, duals };
}

function worthMost(pool: readonly Pattern[], duals: readonly number[]): Pattern | undefined {
  let most = 1 + TINY;
  let best: Pattern | undefined;
  for (const pattern of pool) {
    const worth = dot(pattern, duals);
    if (worth > most) [most, best] = [worth, pattern];
  }
  return best;
}
