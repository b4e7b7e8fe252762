import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from './effort.js';
import { bestPattern } from './knapsack.js';
import { type Pattern, type Run, type Stock, timesWithin, without } from './stock.js';

/** Cuts one pattern after another, each as often as it fits, until nothing is left to cut. */
function repeatedly(
  demands: readonly number[],
  next: (left: readonly number[], longest: number) => Pattern,
): Run[] {
  const runs: Run[] = [];
  let left = demands;
  for (let longest = 0; longest < demands.length; ) {
    if (entryAt(left, longest) === 0) {
      longest += 1;
      continue;
    }
    const pattern = next(left, longest);
    const times = timesWithin(pattern, left);
    runs.push({ pattern, times });
    left = without(left, pattern, times);
  }
  return runs;
}

/** What first-fit decreasing puts into the next strip: longest first, whatever still fits. */
function firstFitPattern({ capacity, sizes }: Stock, left: readonly number[]): Pattern {
  let room = capacity;
  return sizes.map((size, i) => {
    const count = Math.min(entryAt(left, i), Math.floor(room / size));
    room -= count * size;
    return count;
  });
}

export const firstFit = (stock: Stock): Run[] =>
  repeatedly(stock.demands, (left) => firstFitPattern(stock, left));

/** Into each strip the longest piece that is left, and beside it whatever is worth most. */
export const fill = (stock: Stock, values: readonly number[], effort: Effort): Run[] =>
  repeatedly(stock.demands, (left, longest) => {
    const capacity = stock.capacity - entryAt(stock.sizes, longest);
    const demands = left.map((count, i) => (i === longest ? count - 1 : count));
    const beside = bestPattern({ ...stock, capacity, demands }, values, effort);
    if (beside === undefined) return firstFitPattern(stock, left);
    return beside.map((count, i) => (i === longest ? count + 1 : count));
  });
