import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { simpleBound } from '../../../packages/core/src/fabric/stock/bound.js';
import { Effort } from '../../../packages/core/src/fabric/stock/effort.js';
import { bestPattern } from '../../../packages/core/src/fabric/stock/knapsack.js';
import { merged } from '../../../packages/core/src/fabric/stock/merge.js';
import { preferred } from '../../../packages/core/src/fabric/stock/preference.js';
import { search } from '../../../packages/core/src/fabric/stock/search.js';
import {
  dot,
  type Pattern,
  type Run,
  stripsIn,
} from '../../../packages/core/src/fabric/stock/stock.js';
import { realistic } from '../../bench/instances.mjs';

const plenty = () => new Effort(1e9);

function ended<Result>(work: Generator<void, Result>): Result {
  let state = work.next();
  while (!state.done) state = work.next();
  return state.value;
}

describe('the knapsack', () => {
  /** Every pattern there is, the slow way. */
  function greatest(
    capacity: number,
    sizes: readonly number[],
    demands: readonly number[],
    values: readonly number[],
    item = 0,
  ): number {
    const size = sizes[item];
    if (size === undefined) return 0;
    let best = 0;
    for (let count = 0; count <= (demands[item] ?? 0) && count * size <= capacity; count += 1) {
      const rest = greatest(capacity - count * size, sizes, demands, values, item + 1);
      best = Math.max(best, count * (values[item] ?? 0) + rest);
    }
    return best;
  }

  it('finds what looking at every pattern finds, and stays within the strip and the demand', () => {
    for (const { capacity, items } of realistic(5, 30, { most: 4 })) {
      const sizes = items.map(([size]) => size);
      const demands = items.map(([, count]) => count % 5);
      const values = items.map(([size, count]) => size + (count % 9) - 4);
      const pattern = bestPattern({ capacity, sizes, demands }, values, plenty());
      expect(dot(pattern ?? [], values)).toBe(greatest(capacity, sizes, demands, values));
      expect(dot(pattern ?? [], sizes)).toBeLessThanOrEqual(capacity);
      expect(pattern?.every((count, i) => count <= (demands[i] ?? 0))).toBe(true);
    }
  });

  it('is not begun where the effort would not do', () => {
    const effort = new Effort(50);
    expect(bestPattern({ capacity: 100, sizes: [9], demands: [9] }, [1], effort)).toBeUndefined();
    expect(effort.spent).toBe(0);
  });
});

describe('the simple bound', () => {
  it('counts what cannot share a strip', () => {
    const stock = { capacity: 100, sizes: [60, 55, 45], demands: [3, 2, 2] };
    expect(simpleBound(stock).strips).toBe(5);
  });

  it('sees that pieces of half a strip and a little leave no room for others', () => {
    // By length 390 / 100 makes 4; each 70 needs its own strip, and 40s go two by two.
    const stock = { capacity: 100, sizes: [70, 40], demands: [3, 4] };
    expect(simpleBound(stock).strips).toBe(5);
  });
});

describe('the complete search', () => {
  // Together the pieces are 259 long, so by length two strips of 132 would do, with 5 to waste. But
  // both 44s in one strip leave at least 8 of it (88 + 36, or 88 + 33), and in two strips, one of
  // them has two 33s as well and leaves 10 (44 + 66 + 12).
  const stock = { capacity: 132, sizes: [44, 33, 12], demands: [2, 3, 6] };
  const byLength = { prices: stock.sizes, most: 132, strips: 2 };

  it('says that there is no cutting with so few strips', () => {
    expect(ended(search(stock, 2, byLength, plenty()))).toBe('none');
  });

  it('finds one with a strip more', () => {
    const found = ended(search(stock, 3, byLength, plenty()));
    expect(typeof found === 'object' && stripsIn(found)).toBeLessThanOrEqual(3);
    if (typeof found !== 'object') return;
    const cut = stock.sizes.map((_, i) =>
      found.reduce((sum, { pattern, times }) => sum + times * (pattern[i] ?? 0), 0),
    );
    expect(cut).toEqual(stock.demands);
  });

  it('claims nothing where the effort ends first', () => {
    expect(ended(search(stock, 2, byLength, new Effort(3)))).toBe('unknown');
  });
});

describe('merging strips', () => {
  const stock = { capacity: 12, sizes: [4, 3, 2], demands: [4, 4, 4] };

  it('cuts three different strips by two patterns, with the same pieces', () => {
    const runs = [
      { pattern: [2, 1, 0], times: 1 },
      { pattern: [2, 0, 1], times: 1 },
      { pattern: [0, 3, 0], times: 1 },
      { pattern: [0, 0, 3], times: 1 },
    ];
    const fewer = merged(stock, runs, plenty());
    expect(fewer.length).toBeLessThan(runs.length);
    expect(stripsIn(fewer)).toBe(4);
    const cut = stock.sizes.map((_, i) =>
      fewer.reduce((sum, { pattern, times }) => sum + times * (pattern[i] ?? 0), 0),
    );
    expect(cut).toEqual(stock.demands);
    expect(fewer.every(({ pattern }) => dot(pattern, stock.sizes) <= 12)).toBe(true);
  });

  it('cuts two different strips alike where their pieces can be shared out', () => {
    const halves = { capacity: 12, sizes: [4, 2], demands: [2, 4] };
    const runs = [
      { pattern: [2, 0], times: 1 },
      { pattern: [0, 4], times: 1 },
    ];
    expect(merged(halves, runs, plenty())).toEqual([{ pattern: [1, 2], times: 2 }]);
    const odd = [
      { pattern: [2, 0], times: 1 },
      { pattern: [0, 3], times: 1 },
    ];
    expect(merged(halves, odd, plenty())).toEqual(odd);
  });

  it('keeps the pieces, the strips and their length, and never makes more kinds of them', () => {
    const patterns = fc
      .tuple(fc.nat(3), fc.nat(4), fc.nat(6))
      .filter((pattern) => dot(pattern, stock.sizes) <= stock.capacity);
    const given = fc.uniqueArray(
      fc.record({ pattern: patterns, times: fc.integer({ min: 1, max: 4 }) }),
      {
        minLength: 1,
        maxLength: 4,
        selector: ({ pattern }) => pattern.join(),
      },
    );
    const pieces = (runs: readonly Run[]): number[] =>
      stock.sizes.map((_, i) =>
        runs.reduce((sum, { pattern, times }) => sum + times * (pattern[i] ?? 0), 0),
      );
    fc.assert(
      fc.property(given, (runs) => {
        const fewer = merged(stock, runs, plenty());
        expect(pieces(fewer)).toEqual(pieces(runs));
        expect(stripsIn(fewer)).toBe(stripsIn(runs));
        expect(fewer.length).toBeLessThanOrEqual(runs.length);
        for (const { pattern, times } of fewer) {
          expect(dot(pattern, stock.sizes)).toBeLessThanOrEqual(stock.capacity);
          expect([...pattern, times].every((count) => Number.isInteger(count) && count >= 0)).toBe(
            true,
          );
        }
      }),
    );
  });
});

describe('of two cuttings of strips of 10, the better one', () => {
  const stock = { capacity: 10, sizes: [5, 4, 3, 2], demands: [1, 1, 1, 1] };
  const cut = (...patterns: readonly Pattern[]): readonly Run[] =>
    patterns.map((pattern) => ({ pattern, times: 1 }));
  const cases: readonly (readonly [string, readonly Run[], readonly Run[]])[] = [
    [
      'has fewer strips, though they differ more',
      cut([1, 0, 1, 1], [0, 1, 0, 0]),
      [{ pattern: [1, 0, 0, 0], times: 3 }],
    ],
    [
      'has fewer different strips, though each has an end',
      [{ pattern: [1, 1, 0, 0], times: 2 }],
      cut([2, 0, 0, 0], [0, 2, 0, 1]),
    ],
    [
      'has fewer ends to cut off, though they are shorter',
      cut([2, 0, 0, 0], [0, 1, 1, 1]),
      cut([1, 1, 0, 0], [1, 0, 0, 0]),
    ],
    [
      'has the longest end, which is of most use',
      cut([1, 1, 0, 0], [0, 0, 1, 1]),
      cut([1, 0, 1, 0], [0, 1, 0, 1]),
    ],
  ];
  it.each(cases)('%s', (_, better, other) => {
    expect(preferred(stock, better, other)).toBe(better);
    expect(preferred(stock, other, better)).toBe(better);
  });

  it('is the first where nothing tells them apart', () => {
    const [one, other] = [cut([1, 1, 0, 0]), cut([1, 1, 0, 0])];
    expect(preferred(stock, one, other)).toBe(one);
  });
});
