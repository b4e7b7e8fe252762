import { type Length, length, type Rounding, squareRoot } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeRoot } from './oracle.js';
import { rationals, steps, sums } from './sums.js';

const lengths: fc.Arbitrary<Length> = fc.oneof(
  sums.map(({ length: sum }) => sum),
  rationals,
);

describe('a grid', () => {
  it('brackets a length by its two next lines, or holds it', () => {
    fc.assert(
      fc.property(lengths, steps, (value, step) => {
        const down = value.toGrid(step, 'down');
        const up = value.toGrid(step, 'up');
        expect(down.compareTo(value)).not.toBe(1);
        expect(up.compareTo(value)).not.toBe(-1);
        expect(up.minus(down).equals(value.isOnGrid(step) ? 0 : step)).toBe(true);
        for (const line of [up, down]) {
          expect(line.isOnGrid(step)).toBe(true);
          expect(line.dividedBy(step).toFraction()?.d).toBe(1n);
        }
      }),
    );
  });

  it('turns up into down where a length is turned into its opposite', () => {
    fc.assert(
      fc.property(lengths, steps, (value, step) => {
        expect(
          value.negated().toGrid(step, 'up').equals(value.toGrid(step, 'down').negated()),
        ).toBe(true);
      }),
    );
  });

  it('moves a length to the nearer line, and from the middle to the greater', () => {
    fc.assert(
      fc.property(lengths, steps, (value, step) => {
        const nearest = value.toGrid(step, 'nearest');
        const beyond = value.minus(nearest).times(2);
        expect(beyond.compareTo(step)).toBe(-1);
        expect(beyond.plus(step).sign()).not.toBe(-1);
      }),
    );
  });

  it('leaves its own lines where they are, in each direction', () => {
    fc.assert(
      fc.property(fc.bigInt(-1000n, 1000n), steps, (count, step) => {
        const line = step.times(count);
        for (const rounding of ['up', 'down', 'nearest'] as const) {
          expect(line.toGrid(step, rounding).equals(line)).toBe(true);
        }
      }),
    );
  });

  const cases: readonly (readonly [string, string, Rounding, string])[] = [
    ['10 1/16', '1/8', 'nearest', '10 1/8'],
    ['-10 1/16', '1/8', 'nearest', '-10'],
    ['-10 1/16', '1/8', 'up', '-10'],
    ['-10 1/16', '1/8', 'down', '-10 1/8'],
    ['1/2', '1', 'nearest', '1'],
    ['-1/2', '1', 'nearest', '0'],
    ['-1 1/2', '1', 'nearest', '-1'],
    ['5', '3/4', 'down', '4 1/2'],
    ['5', '3/4', 'up', '5 1/4'],
    ['0', '1/8', 'up', '0'],
    ['26.5 cm', '1 mm', 'up', '10 55/127'],
    ['9√2', '1/8', 'up', '12 3/4'],
    ['9√2', '1/8', 'down', '12 5/8'],
    ['-9√2', '1/8', 'up', '-12 5/8'],
    ['1e400', '1/8', 'up', `1${'0'.repeat(400)}`],
    ['1e-400', '1/8', 'up', '1/8'],
    ['1e-400', '1/8', 'down', '0'],
    ['-1e-400', '1/8', 'down', '-1/8'],
  ];
  it.each(cases)('%s on a grid of %s, %s, is %s', (value, step, rounding, line) => {
    expect(length(value).toGrid(step, rounding).toString()).toBe(line);
  });

  it.each([
    ['10 1/2', '1/8', true],
    ['10 1/2', '1/3', false],
    ['0', '5', true],
    ['-3/8', '1/8', true],
    ['√2', '1/8', false],
    ['√2 - √2', '1/8', true],
  ])('%s on a grid of %s: %s', (value, step, on) => {
    expect(length(value).isOnGrid(step)).toBe(on);
  });
});

describe('a hair’s breadth from a line', () => {
  /** Pairs with p² − 2q² = ±1 by turns, from (1, 1) on: the convergents p/q of √2. */
  function pellPairs(digits: number): { p: bigint; q: bigint; norm: bigint }[] {
    const pairs = [];
    for (let p = 1n, q = 1n; q < 10n ** BigInt(digits); [p, q] = [p + 2n * q, p + q]) {
      pairs.push({ p, q, norm: p * p - 2n * q * q });
    }
    return pairs;
  }
  const longest = pellPairs(41)
    .filter(({ q }) => q >= 10n ** 39n)
    .map((pair) => [pair.p, pair.q, pair.norm] as const);

  it('there are forty-digit pairs on both sides', () => {
    expect(new Set(longest.map(([, , norm]) => norm))).toEqual(new Set([1n, -1n]));
  });

  const lines = ['0', '3/8', '-3/8', '12 7/8', '-100'];
  it.each(longest)('%i − %i√2 decides the side that its norm %i says', (p, q, norm) => {
    const hair = length(p).minus(squareRoot(2).times(q));
    expect(hair.sign()).toBe(Number(norm));
    // |p − q√2| = 1 / (p + q√2), under 10^−39.
    expect(hair.times(hair).compareTo(length(1).dividedBy(10n ** 78n))).toBe(-1);
    for (const line of lines) {
      const beyond = length(line).plus(hair);
      const next = norm === 1n ? length(line).plus('1/8') : length(line);
      expect(beyond.toGrid('1/8', 'up').toString()).toBe(next.toString());
      expect(beyond.toGrid('1/8', 'down').toString()).toBe(next.minus('1/8').toString());
      expect(beyond.toGrid('1/8', 'nearest').toString()).toBe(line);
      const middle = beyond.plus('1/16');
      const nearest = norm === 1n ? length(line).plus('1/8') : length(line);
      expect(middle.toGrid('1/8', 'nearest').toString()).toBe(nearest.toString());
      expect(beyond.isOnGrid('1/8')).toBe(false);
      expect(beyond.compareTo(line)).toBe(Number(norm));
    }
  });

  it('is decided for every Pell pair down to the smallest', () => {
    for (const { p, q, norm } of pellPairs(41)) {
      const floor = squareRoot(2).times(q).toGrid(1, 'down');
      // q√2 lies just below p where p² > 2q², and just above it where p² < 2q².
      expect(floor.equals(norm === 1n ? p - 1n : p)).toBe(true);
    }
  });

  it('and an exact hit is one, however it was reached', () => {
    for (const [p, q, norm] of longest) {
      const root = squareRoot(2).times(q);
      // (q√2 + p)(q√2 − p) = 2q² − p² = −norm.
      const product = root.plus(p).times(root.minus(p)).plus('3/8');
      for (const rounding of ['up', 'down', 'nearest'] as const) {
        expect(product.toGrid('1/8', rounding).toString()).toBe(norm === 1n ? '-5/8' : '1 3/8');
      }
      expect(product.isOnGrid('1/8')).toBe(true);
    }
  });
});

describe('two roots whose sum or difference lies within 2^−18 of a whole number', () => {
  // Found by trying all radicands up to 4,000: the first digits of the roots alone decide wrongly.
  const pairs: readonly (readonly [bigint, 1n | -1n, bigint])[] = [
    [2081n, 1n, 1882n],
    [2437n, 1n, 2269n],
    [3050n, 1n, 1745n],
    [855n, 1n, 518n],
    [1118n, 1n, 874n],
    [1682n, 1n, 1680n],
    [2706n, -1n, 677n],
    [2758n, -1n, 507n],
    [2913n, -1n, 1294n],
  ];
  it.each(pairs)('√%i + %i · √%i, and its opposite, lie between the right ones', (a, factor, b) => {
    const unit = 10n ** 40n;
    const value = wholeRoot(a * unit * unit) + factor * wholeRoot(b * unit * unit);
    const sum = squareRoot(a).plus(squareRoot(b).times(factor));
    expect(sum.toGrid(1, 'down').toString()).toBe(`${value / unit}`);
    expect(sum.toGrid(1, 'up').toString()).toBe(`${value / unit + 1n}`);
    expect(sum.negated().toGrid(1, 'down').toString()).toBe(`-${value / unit + 1n}`);
    expect(sum.negated().toGrid(1, 'up').toString()).toBe(`-${value / unit}`);
  });
});

describe('a diagonal', () => {
  it('fits into n eighths exactly when n² ≥ 128 · B² (arithmetic, no source)', () => {
    fc.assert(
      fc.property(fc.bigInt(1n, 100_000n), fc.bigInt(1n, 64n), (above, below) => {
        // B = above / below: n² · below² ≥ 128 · above².
        const enough = (n: bigint): boolean => n * n * below * below >= 128n * above * above;
        let n = wholeRoot((128n * above * above) / (below * below));
        while (!enough(n)) n += 1n;
        expect(enough(n - 1n)).toBe(false);
        const diagonal = squareRoot(2).times(above).dividedBy(below);
        expect(diagonal.toGrid('1/8', 'up').times(8).toString()).toBe(`${n}`);
      }),
      { numRuns: 500 },
    );
  });
});
