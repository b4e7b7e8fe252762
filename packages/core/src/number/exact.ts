import type { Rational } from './rational.js';
import * as rational from './rational.js';
import { perfectSquareRoot, squareRootFloor } from './squareRootFloor.js';

/** coefficient · √radicand; the radicand is a whole number above one and not a perfect square. */
export interface Root {
  readonly coefficient: Rational;
  readonly radicand: bigint;
}

/**
 * An exact number: a rational and a sum of rational multiples of square roots.
 *
 * No two roots are like terms and none has a zero coefficient. Square roots of different square
 * classes are linearly independent over the rationals (Besicovitch 1940), so the only zero is the
 * empty sum, and a sum with a root in it is never rational. `sign` and `floor` rest on that.
 */
export interface Exact {
  readonly rational: Rational;
  readonly roots: readonly Root[];
}

const noRoots: readonly Root[] = [];

export const fromRational = (value: Rational): Exact => ({ rational: value, roots: noRoots });

export const zero = fromRational(rational.zero);

/** Small square factors come out of a root so that people can read it: √8 is 2√2. */
const SMALL_FACTORS = [2n, 3n, 5n, 7n, 11n, 13n, 17n, 19n, 23n, 29n, 31n];

/** coefficient · √radicand for any whole radicand ≥ 0, reduced. */
export function root(coefficient: Rational, radicand: bigint): Exact {
  let outside = 1n;
  let inside = radicand;
  if (inside > 0n) {
    for (const factor of SMALL_FACTORS) {
      const square = factor * factor;
      while (inside % square === 0n) {
        inside /= square;
        outside *= factor;
      }
    }
  }
  const whole = perfectSquareRoot(inside);
  if (whole !== undefined) {
    return fromRational(rational.multiply(coefficient, rational.rational(outside * whole)));
  }
  if (rational.isZero(coefficient)) return zero;
  const reduced = rational.multiply(coefficient, rational.rational(outside));
  return { rational: rational.zero, roots: [{ coefficient: reduced, radicand: inside }] };
}

/** √(n/d) = √(n·d) / d, for a rational that is not negative. */
export const squareRootOf = ({ n, d }: Rational): Exact => root(rational.rational(1n, d), n * d);

/**
 * √a and √b are like terms exactly when a·b is a perfect square k²: then √b = (k / a)·√a. That needs
 * no factoring, which for large radicands nobody could wait for.
 */
function addRoot(roots: readonly Root[], term: Root): readonly Root[] {
  for (const [index, { coefficient, radicand }] of roots.entries()) {
    const product = perfectSquareRoot(radicand * term.radicand);
    if (product === undefined) continue;
    const ratio = rational.rational(product, radicand);
    const sum = rational.add(coefficient, rational.multiply(term.coefficient, ratio));
    const others = roots.filter((_, other) => other !== index);
    return rational.isZero(sum) ? others : [...others, { coefficient: sum, radicand }];
  }
  return [...roots, term];
}

export function add(a: Exact, b: Exact): Exact {
  return {
    rational: rational.add(a.rational, b.rational),
    roots: b.roots.length === 0 ? a.roots : b.roots.reduce(addRoot, a.roots),
  };
}

export function negate(value: Exact): Exact {
  return {
    rational: rational.negate(value.rational),
    roots: value.roots.map(({ coefficient, radicand }) => ({
      coefficient: rational.negate(coefficient),
      radicand,
    })),
  };
}

/** value · factor for a rational factor. */
function scale(value: Exact, factor: Rational): Exact {
  if (rational.isZero(factor)) return zero;
  return {
    rational: rational.multiply(value.rational, factor),
    roots: value.roots.map(({ coefficient, radicand }) => ({
      coefficient: rational.multiply(coefficient, factor),
      radicand,
    })),
  };
}

export function multiply(a: Exact, b: Exact): Exact {
  let product = scale(a, b.rational);
  for (const right of b.roots) {
    product = add(product, scale({ rational: rational.zero, roots: [right] }, a.rational));
    for (const left of a.roots) {
      const coefficient = rational.multiply(left.coefficient, right.coefficient);
      product = add(product, root(coefficient, left.radicand * right.radicand));
    }
  }
  return product;
}

/** The divisor must not be zero. */
export const divide = (value: Exact, divisor: Rational): Exact =>
  scale(value, rational.divide(rational.one, divisor));

/** Whole numbers between which value · denominator · 2^bits lies. */
function enclose(value: Exact, denominator: bigint, bits: bigint): [low: bigint, high: bigint] {
  const whole = ({ s, n, d }: Rational): bigint => (s * n * denominator) / d;
  let low = whole(value.rational) << bits;
  let high = low;
  for (const { coefficient, radicand } of value.roots) {
    const factor = whole(coefficient);
    const size = squareRootFloor((factor * factor * radicand) << (2n * bits));
    low += factor > 0n ? size : -size - 1n;
    high += factor > 0n ? size + 1n : -size;
  }
  return [low, high];
}

const commonDenominator = ({ rational: { d }, roots }: Exact): bigint =>
  roots.reduce((product, { coefficient }) => product * coefficient.d, d);

/** Precision is doubled until it decides. It does: a sum with a root in it is never zero, nor whole. */
const FIRST_BITS = 16n;

export function sign(value: Exact): -1 | 0 | 1 {
  if (value.roots.length === 0) {
    const { s, n } = value.rational;
    return n === 0n ? 0 : s > 0n ? 1 : -1;
  }
  const denominator = commonDenominator(value);
  for (let bits = FIRST_BITS; ; bits *= 2n) {
    const [low, high] = enclose(value, denominator, bits);
    if (low >= 0n) return 1;
    if (high <= 0n) return -1;
  }
}

/** The greatest whole number that is not greater than the value. */
export function floor(value: Exact): bigint {
  if (value.roots.length === 0) {
    return rational.floorDivide(rational.numerator(value.rational), value.rational.d);
  }
  const denominator = commonDenominator(value);
  for (let bits = FIRST_BITS; ; bits *= 2n) {
    const [low, high] = enclose(value, denominator, bits);
    const least = rational.floorDivide(low, denominator << bits);
    if (least === rational.floorDivide(high, denominator << bits)) return least;
  }
}

/** Bits of a whole number's size that make a double as good as it gets, with some to spare. */
const DOUBLE_BITS = 64;

const MAX_SAFE = BigInt(Number.MAX_SAFE_INTEGER);

/** The value as a double, within one unit in its last place. For drawing, never for deciding. */
export function toNumber(value: Exact): number {
  const { n, d } = value.rational;
  if (value.roots.length === 0 && n <= MAX_SAFE && d <= MAX_SAFE) {
    return Number(rational.numerator(value.rational)) / Number(d);
  }
  for (let bits = DOUBLE_BITS; ; bits *= 2) {
    const scaled = floor(scale(value, rational.rational(1n << BigInt(bits))));
    const size = (scaled < 0n ? -scaled : scaled).toString(2).length;
    if (size < DOUBLE_BITS) continue;
    const surplus = size - DOUBLE_BITS;
    // Two steps, since 2 to the power of −1100 is no double but the product may be.
    const power = surplus - bits;
    const half = Math.trunc(power / 2);
    return Number(scaled >> BigInt(surplus)) * 2 ** half * 2 ** (power - half);
  }
}
