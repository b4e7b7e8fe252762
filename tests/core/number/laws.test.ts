import { type Length, length, squareRoot } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { neighbors, scaledDouble, scaledSum, signOf } from './oracle.js';
import { lengthOf, rationals, sums } from './sums.js';

const three = [sums, sums, sums] as const;
const same = (a: Length, b: Length): void => expect(a.minus(b).toString()).toBe('0');

describe('sums of square roots', () => {
  it('are added and multiplied in any order and grouping', () => {
    fc.assert(
      fc.property(...three, ({ length: a }, { length: b }, { length: c }) => {
        same(a.plus(b), b.plus(a));
        same(a.plus(b).plus(c), a.plus(b.plus(c)));
        same(a.times(b), b.times(a));
        same(a.times(b).times(c), a.times(b.times(c)));
        same(a.times(b.plus(c)), a.times(b).plus(a.times(c)));
      }),
    );
  });

  it('have 0 and 1, an opposite, and are divided by what they were multiplied by', () => {
    fc.assert(
      fc.property(sums, rationals, ({ length: a }, r) => {
        same(a.plus(0), a);
        same(a.times(1), a);
        expect(a.times(0).toString()).toBe('0');
        expect(a.plus(a.negated()).toString()).toBe('0');
        same(a.negated().negated(), a);
        fc.pre(r.sign() !== 0);
        same(a.times(r).dividedBy(r), a);
        same(a.dividedBy(r).times(r), a);
      }),
    );
  });

  it('are written alike however their terms were added', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(1n, 2n, 3n, 5n, 6n, 7n, 10n), { minLength: 2 }),
        (radicands) => {
          const terms = radicands.map((radicand, i) => ({
            numerator: BigInt(i + 1),
            denominator: 3n,
            radicand,
          }));
          const backwards = lengthOf([...terms].reverse());
          expect(lengthOf(terms).toString()).toBe(backwards.toString());
        },
      ),
    );
  });
});

describe('order', () => {
  it('is total, and kept by adding', () => {
    fc.assert(
      fc.property(...three, ({ length: a }, { length: b }, { length: c }) => {
        expect(a.compareTo(b) + b.compareTo(a)).toBe(0);
        expect(a.equals(b)).toBe(a.compareTo(b) === 0);
        expect(a.plus(c).compareTo(b.plus(c))).toBe(a.compareTo(b));
        const [low, middle, high] = [a, b, c].sort((x, y) => x.compareTo(y)) as [
          Length,
          Length,
          Length,
        ];
        expect([low.compareTo(middle), middle.compareTo(high)]).not.toContain(1);
        expect(low.compareTo(high)).not.toBe(1);
      }),
    );
  });

  it('of products follows the signs', () => {
    fc.assert(
      fc.property(sums, sums, ({ length: a }, { length: b }) => {
        expect(a.times(b).sign() + 0).toBe(a.sign() * b.sign() + 0);
      }),
    );
  });

  it('is that of an independent reckoning to 300 places', () => {
    fc.assert(
      fc.property(sums, sums, (a, b) => {
        expect(a.length.sign()).toBe(signOf(a.summands));
        const difference = b.summands.map((term) => ({ ...term, numerator: -term.numerator }));
        expect(a.length.compareTo(b.length)).toBe(signOf([...a.summands, ...difference]));
      }),
      { numRuns: 500 },
    );
  });

  it('tells sums of roots apart that agree in many digits', () => {
    // Found by trying, and told apart by the reckoning; the last pair differs by about 10^−45.
    const cases: readonly (readonly [bigint[], bigint[]])[] = [
      [
        [10n, 11n],
        [5n, 18n],
      ],
      [
        [5n, 6n, 18n],
        [4n, 12n, 12n],
      ],
      [
        [10n ** 30n, 10n ** 30n + 2n],
        [10n ** 30n + 1n, 10n ** 30n + 1n],
      ],
    ];
    for (const [left, right] of cases) {
      const terms = (radicands: readonly bigint[], numerator: bigint) =>
        radicands.map((radicand) => ({ numerator, denominator: 1n, radicand }));
      const expected = signOf([...terms(left, 1n), ...terms(right, -1n)]);
      expect(expected).not.toBe(0);
      expect(lengthOf(terms(left, 1n)).compareTo(lengthOf(terms(right, 1n)))).toBe(expected);
    }
  });
});

describe('like terms are found without factoring', () => {
  // Mersenne primes 2^89 − 1, 2^107 − 1, 2^127 − 1 (from memory; any large factors would do here).
  const large = [2n ** 89n - 1n, 2n ** 107n - 1n, 2n ** 127n - 1n];
  it.each(large)('√(2 · %i²) is that many √2', (p) => {
    const root = squareRoot(2n * p * p);
    expect(root.minus(squareRoot(2).times(p)).toString()).toBe('0');
    expect(root.equals(squareRoot(2).times(p))).toBe(true);
    expect(
      root
        .plus(squareRoot(2))
        .dividedBy(p + 1n)
        .equals(squareRoot(2)),
    ).toBe(true);
  });

  it('√(p·q³) and √(p³·q) differ by a factor of p/q', () => {
    const [p = 1n, q = 1n] = large;
    const left = squareRoot(p * q ** 3n).times(p);
    expect(left.minus(squareRoot(p ** 3n * q).times(q)).toString()).toBe('0');
    expect(left.times(squareRoot(p * q)).toString()).toBe(`${p ** 2n * q ** 2n}`);
  });

  it.each([
    ['8', '2√2'],
    ['12', '2√3'],
    ['961/4', '15 1/2'],
    ['1/2', '1/2√2'],
    ['2/3', '1/3√6'],
    ['0', '0'],
    [`${31n * 31n * 29n * 7n}`, '31√203'],
  ])('√(%s) is written %s', (radicand, text) => {
    expect(squareRoot(radicand).toString()).toBe(text);
  });
});

describe('toNumber', () => {
  it('is within one unit in the last place', () => {
    fc.assert(
      fc.property(sums, fc.integer({ min: 0, max: 60 }), ({ length: sum, summands }, power) => {
        const shrink = 10n ** BigInt(power);
        const number = sum.dividedBy(shrink).toNumber();
        expect(Math.sign(number)).toBe(signOf(summands));
        fc.pre(number !== 0);
        const exact = scaledSum(summands) / shrink;
        const [below, above] = neighbors(number);
        expect(scaledDouble(below) <= exact && exact <= scaledDouble(above)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it.each([
    ['0', 0],
    ['-1/3', -1 / 3],
    ['√2', Math.SQRT2],
    ['√2 - √2', 0],
    [`${2n ** 70n}/${3n ** 5n}`, 2 ** 70 / 3 ** 5],
    ['1e308', 1e308],
    ['1e309', Number.POSITIVE_INFINITY],
    ['-1e309', Number.NEGATIVE_INFINITY],
    ['5e-324', Number.MIN_VALUE],
    ['1e-400', 0],
  ])('of %s is %d', (text, number) => {
    expect(length(text).toNumber()).toBe(number);
  });

  // Found by trying: no double holds the numerator, and to divide the nearest one is not near enough.
  it.each([
    [1152921504606848380n, 399885n],
    [1152921504606847874n, 37379n],
    [1152921504606848639n, 177355n],
  ])('is so for %d/%d, of which no double holds the part above', (numerator, denominator) => {
    const exact = scaledSum([{ numerator, denominator, radicand: 1n }]);
    const [below, above] = neighbors(length(numerator).dividedBy(denominator).toNumber());
    expect(scaledDouble(below) <= exact && exact <= scaledDouble(above)).toBe(true);
  });

  it('sees what is left of two nearly equal numbers', () => {
    const nearly = length('1414213562373095048801688724209698/1000000000000000000000000000000000');
    // √2 = 1.41421356237309504880168872420969807856967… (from memory, and by the reckoning).
    const exact = scaledSum([
      { numerator: 1n, denominator: 1n, radicand: 2n },
      { numerator: -1414213562373095048801688724209698n, denominator: 10n ** 33n, radicand: 1n },
    ]);
    const [below, above] = neighbors(squareRoot(2).minus(nearly).toNumber());
    expect(scaledDouble(below) <= exact && exact <= scaledDouble(above)).toBe(true);
    expect(squareRoot(2).minus(nearly).toNumber()).toBeCloseTo(7.856967e-35, 40);
  });
});
