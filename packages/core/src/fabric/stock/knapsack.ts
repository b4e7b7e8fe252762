import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from './effort.js';
import type { Pattern, Stock } from './stock.js';
import { type Values, valueAt } from './values.js';

/** One layer of the table: a size, taken so many copies at a time, once or as often as it fits. */
interface Layer {
  readonly item: number;
  readonly copies: number;
  readonly repeats: boolean;
}

/** The most valuable patterns of strips of every length up to a whole strip. */
export interface Filled {
  /** The value by the length. */
  readonly best: Values;
  readonly patternOf: (length: number) => Pattern;
}

/**
 * The most valuable pattern of a strip that takes no more of any size than is demanded, or undefined
 * where the effort does not allow to find it.
 */
export const bestPattern = (
  stock: Stock,
  values: readonly number[],
  effort: Effort,
): Pattern | undefined => filled(stock, values, effort)?.patternOf(stock.capacity);

/**
 * The same for every length at once: bounded knapsack by dynamic programming over the strip's length.
 * Exact wherever the values and their sums are whole numbers below 2^53.
 */
export function filled(
  stock: Stock,
  values: readonly number[],
  effort: Effort,
): Filled | undefined {
  const { capacity, sizes } = stock;
  const layers = layersOf(stock, values);
  const cells = layers.length * (capacity + 1);
  if (!effort.allows(cells)) return undefined;
  effort.spend(cells);

  const best = new Float64Array(capacity + 1);
  /** How many of each layer's size the best strip of each length takes, layer by layer. */
  const taken = new Uint16Array(cells);
  layers.forEach(({ item, copies, repeats }, layer) => {
    const row = layer * (capacity + 1);
    const long = copies * entryAt(sizes, item);
    const gain = copies * entryAt(values, item);
    // Upward, what a shorter strip took of this layer counts too; downward it does not.
    const step = repeats ? 1 : -1;
    for (let room = repeats ? long : capacity; room >= long && room <= capacity; room += step) {
      const worth = valueAt(best, room - long) + gain;
      if (worth <= valueAt(best, room)) continue;
      best[room] = worth;
      taken[row + room] = repeats ? entryAt(taken, row + room - long) + 1 : copies;
    }
  });

  const patternOf = (length: number): Pattern => {
    const pattern = sizes.map(() => 0);
    let room = length;
    for (let layer = layers.length - 1; layer >= 0; layer -= 1) {
      const item = entryAt(layers, layer).item;
      const count = entryAt(taken, layer * (capacity + 1) + room);
      pattern[item] = entryAt(pattern, item) + count;
      room -= count * entryAt(sizes, item);
    }
    return pattern;
  };
  return { best, patternOf };
}

/**
 * A size that is demanded as often as a strip can hold it is one layer that repeats; a scarcer one is
 * split into 1, 2, 4, … copies and the rest, which add up to every number that is demanded.
 */
function layersOf({ capacity, sizes, demands }: Stock, values: readonly number[]): Layer[] {
  const layers: Layer[] = [];
  sizes.forEach((size, item) => {
    const fit = Math.floor(capacity / size);
    const demand = entryAt(demands, item);
    if (entryAt(values, item) <= 0 || fit === 0) return;
    if (demand >= fit) {
      layers.push({ item, copies: 1, repeats: true });
      return;
    }
    let left = demand;
    for (let copies = 1; left > 0; copies *= 2) {
      layers.push({ item, copies: Math.min(copies, left), repeats: false });
      left -= copies;
    }
  });
  return layers;
}
