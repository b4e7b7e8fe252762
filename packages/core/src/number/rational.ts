import { greatestDivisor } from './greatestDivisor.js';

/** An exact rational number in lowest terms, s · n / d with s = ±1, n ≥ 0 and d > 0. */
export interface Rational {
  readonly s: bigint;
  readonly n: bigint;
  readonly d: bigint;
}

const size = (value: bigint): bigint => (value < 0n ? -value : value);

/** `numerator / denominator`; the denominator must not be zero. */
export function rational(numerator: bigint, denominator = 1n): Rational {
  const s = numerator < 0n === denominator < 0n ? 1n : -1n;
  const [n, d] = [size(numerator), size(denominator)];
  const divisor = d === 1n ? d : greatestDivisor(d, n);
  return divisor === 1n ? { s, n, d } : { s, n: n / divisor, d: d / divisor };
}

export const zero = rational(0n);
export const one = rational(1n);

export const numerator = ({ s, n }: Rational): bigint => (s < 0n ? -n : n);
export const isZero = (value: Rational): boolean => value.n === 0n;

export const add = (a: Rational, b: Rational): Rational =>
  a.d === b.d
    ? rational(numerator(a) + numerator(b), a.d)
    : rational(numerator(a) * b.d + numerator(b) * a.d, a.d * b.d);
export const subtract = (a: Rational, b: Rational): Rational => add(a, { ...b, s: -b.s });
export const multiply = (a: Rational, b: Rational): Rational =>
  rational(numerator(a) * numerator(b), a.d * b.d);
/** The divisor must not be zero. */
export const divide = (a: Rational, b: Rational): Rational =>
  rational(numerator(a) * b.d, a.d * numerator(b));

/** −1 where a < b, 0 where they are equal, 1 where a > b; nothing is brought to lowest terms. */
export const compare = (a: Rational, b: Rational): -1 | 0 | 1 => {
  const [left, right] = [numerator(a) * b.d, numerator(b) * a.d];
  return left < right ? -1 : left > right ? 1 : 0;
};

/** The greatest whole number that is not greater than a / b, for b > 0. */
export function floorDivide(a: bigint, b: bigint): bigint {
  const quotient = a / b;
  return quotient * b > a ? quotient - 1n : quotient;
}
