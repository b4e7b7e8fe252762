import { entryAt } from '../../plan/entryAt.js';
import { dot, type Run, type Stock, stripsIn } from './stock.js';

/**
 * What makes one cutting better than another, the weightiest first, less being better: strips,
 * different strips, strips with an end to cut off, and how short the longest end is.
 */
function costs({ capacity, sizes }: Stock, runs: readonly Run[]): readonly number[] {
  const ends = runs.map(({ pattern }) => capacity - dot(pattern, sizes));
  const endCuts = runs.reduce((sum, { times }, i) => sum + (ends[i] === 0 ? 0 : times), 0);
  return [stripsIn(runs), runs.length, endCuts, -Math.max(...ends)];
}

/** The better of two cuttings; of equals the first. */
export function preferred(stock: Stock, a: readonly Run[], b: readonly Run[]): readonly Run[] {
  const [first, second] = [costs(stock, a), costs(stock, b)];
  for (const [i, cost] of first.entries()) {
    const difference = cost - entryAt(second, i);
    if (difference !== 0) return difference < 0 ? a : b;
  }
  return a;
}
