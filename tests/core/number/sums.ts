import { type Length, length, squareRoot } from '@eighths/core';
import fc from 'fast-check';
import type { Summand } from './oracle.js';

/** A length and the plain summands that it was made of. */
export interface Sum {
  readonly length: Length;
  readonly summands: readonly Summand[];
}

export const lengthOf = (summands: readonly Summand[]): Length =>
  summands.reduce(
    (sum, { numerator, denominator, radicand }) =>
      sum.plus(squareRoot(radicand).times(numerator).dividedBy(denominator)),
    length(0),
  );

const summand: fc.Arbitrary<Summand> = fc.record({
  numerator: fc.bigInt(-1000n, 1000n),
  denominator: fc.bigInt(1n, 64n),
  // Few radicands, many of them squares or alike (2, 8, 18, 50), so that terms meet and vanish.
  radicand: fc.constantFrom(1n, 2n, 3n, 4n, 5n, 6n, 8n, 12n, 18n, 50n, 1n << 61n, 1369n * 2n),
});

/** Lengths with up to four terms; with some luck they cancel. */
export const sums: fc.Arbitrary<Sum> = fc
  .array(summand, { maxLength: 4 })
  .map((summands) => ({ summands, length: lengthOf(summands) }));

/** Rational lengths. */
export const rationals: fc.Arbitrary<Length> = fc
  .tuple(fc.bigInt(-10_000n, 10_000n), fc.bigInt(1n, 1000n))
  .map(([n, d]) => length(n).dividedBy(d));

/** Steps of a grid. */
export const steps: fc.Arbitrary<Length> = fc
  .tuple(fc.bigInt(1n, 60n), fc.bigInt(1n, 64n))
  .map(([n, d]) => length(n).dividedBy(d));
