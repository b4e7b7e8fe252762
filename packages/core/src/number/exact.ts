import type { Rational } from './rational.js';
import * as rational from './rational.js';
import { perfectSquareRoot, squareRootFloor } from './squareRootFloor.js';

/** coefficient · √radicand; the radicand is 1 or a whole number that is not a perfect square. */
export interface Term {
  readonly coefficient: Rational;
  readonly radicand: bigint;
}

/**
 * An exact number: a sum of rational multiples of square roots, of which √1 makes the rational part.
 *
 * No two terms are like terms and none has a zero coefficient. Square roots of different square
 * classes are linearly independent over the rationals (Besicovitch 1940), so the only zero is the
 * empty sum, and a sum with a root in it is never rational. `sign` and `floor` rest on that.
 */
export type Exact = readonly Term[];

export const zero: Exact = [];

/** Square factors up to this one's come out of a root so that people can read it: √8 is 2√2. */
const LAST_SMALL_FACTOR = 31n;

/** coefficient · √radicand for any whole radicand ≥ 0, reduced. */
export function root(coefficient: Rational, radicand: bigint): Exact {
  if (radicand === 0n || rational.isZero(coefficient)) return zero;
  let outside = perfectSquareRoot(radicand);
  let inside = 1n;
  if (outside === undefined) {
    outside = 1n;
    inside = radicand;
    for (let factor = 2n; factor <= LAST_SMALL_FACTOR; factor += 1n) {
      const square = factor * factor;
      while (inside % square === 0n) {
        inside /= square;
        outside *= factor;
      }
    }
  }
  const reduced = rational.multiply(coefficient, rational.rational(outside));
  return [{ coefficient: reduced, radicand: inside }];
}

export const fromRational = (value: Rational): Exact =>
  rational.isZero(value) ? zero : [{ coefficient: value, radicand: 1n }];

/** The rational number that a value is, or undefined where it holds a root. */
export function toRational(value: Exact): Rational | undefined {
  const first = value[0];
  if (first === undefined) return rational.zero;
  return value.length === 1 && first.radicand === 1n ? first.coefficient : undefined;
}

/** √(n/d) = √(n·d) / d, for a rational that is not negative. */
export const squareRootOf = ({ n, d }: Rational): Exact => root(rational.rational(1n, d), n * d);

/**
 * √a and √b are like terms exactly when a·b is a perfect square k²: then √b = (k / a)·√a. That needs
 * no factoring, which for large radicands nobody could wait for.
 */
function addTerm(sum: Exact, term: Term): Exact {
  for (const like of sum) {
    const product = perfectSquareRoot(like.radicand * term.radicand);
    if (product === undefined) continue;
    const same = rational.multiply(term.coefficient, rational.rational(product, like.radicand));
    const coefficient = rational.add(like.coefficient, same);
    const others = sum.filter((other) => other !== like);
    return rational.isZero(coefficient) ? others : [...others, { ...like, coefficient }];
  }
  return [...sum, term];
}

/** Most lengths are rational: sums, differences, products and comparisons of those go a short way. */
const shortly = (
  a: Exact,
  b: Exact,
  operation: (a: Rational, b: Rational) => Rational,
): Exact | undefined => {
  const [left, right] = [toRational(a), toRational(b)];
  return left && right && fromRational(operation(left, right));
};

export const add = (a: Exact, b: Exact): Exact =>
  shortly(a, b, rational.add) ?? b.reduce(addTerm, a);

export const subtract = (a: Exact, b: Exact): Exact =>
  shortly(a, b, rational.subtract) ?? add(a, negate(b));

/** value · factor for a rational factor. */
export const scale = (value: Exact, factor: Rational): Exact =>
  multiply(value, fromRational(factor));

const minusOne = rational.rational(-1n);

export const negate = (value: Exact): Exact => scale(value, minusOne);

export function multiply(a: Exact, b: Exact): Exact {
  const short = shortly(a, b, rational.multiply);
  if (short !== undefined) return short;
  let product = zero;
  for (const left of a) {
    for (const right of b) {
      const coefficient = rational.multiply(left.coefficient, right.coefficient);
      product = add(product, root(coefficient, left.radicand * right.radicand));
    }
  }
  return product;
}

/** The divisor must not be zero. */
export const divide = (value: Exact, divisor: Rational): Exact =>
  shortly(value, fromRational(divisor), rational.divide) ??
  scale(value, rational.divide(rational.one, divisor));

/** Whole numbers between which value · denominator · 2^bits lies. */
function enclose(value: Exact, denominator: bigint, bits: bigint): [low: bigint, high: bigint] {
  let low = 0n;
  let high = 0n;
  for (const { coefficient, radicand } of value) {
    const factor = (rational.numerator(coefficient) * denominator) / coefficient.d;
    const size = squareRootFloor((factor * factor * radicand) << (2n * bits));
    low += factor > 0n ? size : -size - 1n;
    high += factor > 0n ? size + 1n : -size;
  }
  return [low, high];
}

/**
 * The greatest whole number that is not greater than the value. Precision is doubled until it
 * decides. It does: a sum with a root in it is never whole.
 */
export function floor(value: Exact): bigint {
  const known = toRational(value);
  if (known !== undefined) return rational.floorDivide(rational.numerator(known), known.d);
  const denominator = value.reduce((product, { coefficient }) => product * coefficient.d, 1n);
  for (let bits = 16n; ; bits *= 2n) {
    const [low, high] = enclose(value, denominator, bits);
    const least = rational.floorDivide(low, denominator << bits);
    if (least === rational.floorDivide(high, denominator << bits)) return least;
  }
}

export const isWhole = (value: Exact): boolean => toRational(value)?.d === 1n;

/** The least whole number that is not less than the value. */
export const ceiling = (value: Exact): bigint => floor(value) + (isWhole(value) ? 0n : 1n);

export const sign = (value: Exact): -1 | 0 | 1 =>
  value.length === 0 ? 0 : floor(value) < 0n ? -1 : 1;

export function compare(a: Exact, b: Exact): -1 | 0 | 1 {
  const [left, right] = [toRational(a), toRational(b)];
  return left && right ? rational.compare(left, right) : sign(subtract(a, b));
}

/** More digits than a double holds. */
const DIGITS = 20;
const MAX_SAFE = BigInt(Number.MAX_SAFE_INTEGER);

/** The value as a double, within one unit in its last place. For drawing, never for deciding. */
export function toNumber(value: Exact): number {
  const known = toRational(value);
  if (known !== undefined && known.n <= MAX_SAFE && known.d <= MAX_SAFE) {
    return Number(rational.numerator(known)) / Number(known.d);
  }
  for (let places = DIGITS; ; places *= 2) {
    const digits = String(floor(scale(value, rational.rational(10n ** BigInt(places)))));
    if (digits.length > DIGITS) return Number(`${digits}e-${places}`);
  }
}
