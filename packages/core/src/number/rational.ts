import Fraction from 'fraction.js';

/**
 * An exact rational number in lowest terms, s · n / d with s = ±1, n ≥ 0 and d > 0.
 *
 * Read-only on purpose. This is the only file that knows which library does the sums.
 */
export type Rational = Readonly<Pick<Fraction, 's' | 'n' | 'd' | 'add' | 'mul' | 'div' | 'neg'>>;

/** `numerator / denominator`; the denominator must not be zero. */
export const rational = (numerator: bigint, denominator = 1n): Rational =>
  new Fraction(numerator, denominator);

export const zero = rational(0n);
export const one = rational(1n);

export const numerator = (value: Rational): bigint => value.s * value.n;
export const isZero = (value: Rational): boolean => value.n === 0n;

export const add = (a: Rational, b: Rational): Rational => a.add(b);
export const multiply = (a: Rational, b: Rational): Rational => a.mul(b);
/** The divisor must not be zero. */
export const divide = (a: Rational, b: Rational): Rational => a.div(b);
export const negate = (value: Rational): Rational => value.neg();

/** The greatest whole number that is not greater than a / b, for b > 0. */
export function floorDivide(a: bigint, b: bigint): bigint {
  const quotient = a / b;
  return quotient * b > a ? quotient - 1n : quotient;
}
