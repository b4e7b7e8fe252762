import { length } from '@eighths/core';
import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, test } from 'vitest';
import {
  add,
  compare,
  divide,
  floorDivide,
  multiply,
  numerator,
  rational,
  subtract,
} from '../../../packages/core/src/number/rational.js';

// Outside check: fraction.js 5.3.4, a general-purpose library of exact fractions.
const whole = fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n });
const notZero = whole.filter((value) => value !== 0n);
const text = ({ s, n, d }: { s: bigint; n: bigint; d: bigint }): string => `${s * n}/${d}`;

describe('rational numbers agree with fraction.js', () => {
  test.each([
    ['sum', add, 'add'],
    ['difference', subtract, 'sub'],
    ['product', multiply, 'mul'],
  ] as const)('in every %s', (_, operation, method) => {
    fc.assert(
      fc.property(whole, notZero, whole, notZero, (a, b, c, d) => {
        const theirs = new Fraction(a, b)[method](new Fraction(c, d));
        expect(text(operation(rational(a, b), rational(c, d)))).toBe(text(theirs));
      }),
    );
  });

  test('in every quotient', () => {
    fc.assert(
      fc.property(whole, notZero, notZero, notZero, (a, b, c, d) => {
        const theirs = new Fraction(a, b).div(new Fraction(c, d));
        expect(text(divide(rational(a, b), rational(c, d)))).toBe(text(theirs));
      }),
    );
  });

  test('in order, and in the whole part', () => {
    fc.assert(
      fc.property(whole, notZero, whole, notZero, (a, b, c, d) => {
        const [left, right] = [rational(a, b), rational(c, d)];
        expect(compare(left, right)).toBe(new Fraction(a, b).compare(new Fraction(c, d)));
        const { s, n } = new Fraction(a, b).floor();
        expect(floorDivide(numerator(left), left.d)).toBe(s * n);
      }),
    );
  });

  test('one of its fractions is a length', () => {
    expect(length(new Fraction(21, 2)).toString()).toBe('10 1/2');
  });
});
