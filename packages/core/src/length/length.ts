import { fail } from '../errors/error.js';
import type { Exact } from '../number/exact.js';
import * as exact from '../number/exact.js';
import { isZero, multiply, numerator, type Rational, rational } from '../number/rational.js';
import { choiceField } from './choice.js';
import { exactText } from './exactText.js';
import { bareUnit, type ReadOptions, readLength, refuse } from './read.js';

/** A fraction s · n / d with s = ±1, in whole numbers. */
export interface FractionInput {
  readonly s: bigint;
  readonly n: bigint;
  readonly d: bigint;
}

/** Whatever is accepted for a length. A number, a fraction or a bare text is inches. */
export type LengthInput = Length | FractionInput | number | bigint | string;

/** Which way a length that lies between two lines of a grid is moved. */
export type Rounding = 'up' | 'down' | 'nearest';

const ROUNDINGS: readonly Rounding[] = ['up', 'down', 'nearest'];

const half = exact.fromRational(rational(1n, 2n));

/**
 * An exact length in inches: a rational number, or a sum with rational multiples of square roots.
 *
 * Immutable. Nothing is rounded except by `toGrid` (in the direction named) and `toNumber` (for
 * drawing). Made by `length()` and `squareRoot()`.
 *
 * @example
 * length('10 1/2').plus('1/4').toString(); // '10 3/4'
 */
export class Length {
  readonly #exact: Exact;

  private constructor(value: Exact) {
    this.#exact = value;
  }

  /** @internal `length()` and `squareRoot()` are the ways in. */
  static of(value: Exact): Length {
    return new Length(value);
  }

  plus(other: LengthInput): Length {
    return new Length(exact.add(this.#exact, exactOf(other)));
  }

  minus(other: LengthInput): Length {
    return new Length(exact.subtract(this.#exact, exactOf(other)));
  }

  times(factor: LengthInput): Length {
    return new Length(exact.multiply(this.#exact, exactOf(factor)));
  }

  /** @throws EighthsError `length-divisor` where the divisor is zero or holds a root. */
  dividedBy(divisor: LengthInput): Length {
    const value = rationalOf(divisor);
    if (value === undefined || isZero(value)) {
      fail(
        'length-divisor',
        'divisor',
        { divisor: length(divisor) },
        'A divisor is a number other than 0 without a root, not {divisor}.',
      );
    }
    return new Length(exact.divide(this.#exact, value));
  }

  negated(): Length {
    return new Length(exact.negate(this.#exact));
  }

  /** −1 where this is shorter than the other, 0 where they are equal, 1 where it is longer. Exact. */
  compareTo(other: LengthInput): -1 | 0 | 1 {
    return exact.compare(this.#exact, exactOf(other));
  }

  equals(other: LengthInput): boolean {
    return this.compareTo(other) === 0;
  }

  sign(): -1 | 0 | 1 {
    return exact.sign(this.#exact);
  }

  /**
   * The multiple of `step` that is next in the direction named; of two that are equally near,
   * `nearest` takes the greater one. Decided exactly.
   *
   * @throws EighthsError `length-step` where the step is not a positive number without roots.
   * @example
   * squareRoot(2).times(9).toGrid('1/8', 'up').toString(); // '12 3/4'
   */
  toGrid(step: LengthInput, rounding: Rounding): Length {
    const size = stepOf(step);
    const steps = exact.divide(this.#exact, size);
    const nearest = choiceField(rounding, 'rounding', ROUNDINGS) === 'nearest';
    const below = exact.floor(nearest ? exact.add(steps, half) : steps);
    const count = rounding === 'up' ? exact.ceiling(steps) : below;
    return new Length(exact.fromRational(multiply(size, rational(count))));
  }

  /**
   * Whether this is a whole number of steps.
   *
   * @throws EighthsError `length-step` as `toGrid`
   */
  isOnGrid(step: LengthInput): boolean {
    return exact.isWhole(exact.divide(this.#exact, stepOf(step)));
  }

  /** The fraction this is, or undefined where it holds a root. */
  toFraction(): FractionInput | undefined {
    const value = exact.toRational(this.#exact);
    return value && { s: value.s, n: value.n, d: value.d };
  }

  /** The nearest double, within one unit in its last place. For drawing and charts only. */
  toNumber(): number {
    return exact.toNumber(this.#exact);
  }

  /** Exact, in inches; `length()` reads it back to an equal length: `10 1/2`, `5√2 + 1/2`. */
  toString(): string {
    return exactText(this.#exact);
  }

  toJSON(): string {
    return this.toString();
  }

  /** Two lengths are compared by `compareTo`; `<` would go through a text or a rounded number. */
  [Symbol.toPrimitive](hint: string): string {
    if (hint === 'number') {
      throw new TypeError('Compare lengths with compareTo() and convert them with toNumber().');
    }
    return this.toString();
  }

  /** @internal The number in it, where this copy of the package made the value. */
  static exactOf(value: object): Exact | undefined {
    return #exact in value ? value.#exact : undefined;
  }
}

const rationalOf = (input: LengthInput): Rational | undefined => exact.toRational(exactOf(input));

function stepOf(step: LengthInput): Rational {
  const size = rationalOf(step);
  if (size === undefined || numerator(size) <= 0n) {
    fail(
      'length-step',
      'step',
      { step: length(step) },
      'A step is a number above 0 without a root, such as 1/8, not {step}.',
    );
  }
  return size;
}

function exactOfObject(value: object, options: ReadOptions): Exact {
  const own = Length.exactOf(value);
  if (own !== undefined) return own;
  if ('s' in value && 'n' in value && 'd' in value) {
    const { s, n, d } = value;
    if (typeof s === 'bigint' && typeof n === 'bigint' && typeof d === 'bigint') {
      if (d === 0n) refuse(`${s * n}/0`, 0, 'zero-denominator');
      return exact.fromRational(multiply(rational(s * n, d), bareUnit(options)));
    }
  }
  // A length that another copy of this package made; it writes itself in inches.
  if ('toJSON' in value && typeof value.toJSON === 'function') {
    const text: unknown = value.toJSON();
    if (typeof text === 'string') return readLength(text, {});
  }
  return refuse('', 0, 'wrong-kind');
}

function exactOf(input: LengthInput, options: ReadOptions = {}): Exact {
  switch (typeof input) {
    case 'string':
      return readLength(input, options);
    case 'number':
      if (Number.isSafeInteger(input)) {
        return exact.fromRational(multiply(rational(BigInt(input)), bareUnit(options)));
      }
      if (!Number.isFinite(input)) refuse(String(input), 0, 'not-finite');
      return readLength(String(input), { ...options, decimal: '.' });
    case 'bigint':
      return readLength(String(input), options);
    case 'object':
      if (input !== null) return exactOfObject(input, options);
  }
  return refuse('', 0, 'wrong-kind');
}

/**
 * A length from whatever people write for one. Exact: nothing is rounded, and a number is read by
 * its shortest decimal writing (0.1 is one tenth).
 *
 * Texts are read in inches (`10 1/2`, `10-1/2`, `10½"`), feet, yards, millimeters, centimeters and
 * meters; `options.unit` says what a bare number means and `options.decimal` which decimal sign is
 * in use.
 *
 * @throws EighthsError `length-syntax` with the text, the place where reading stopped, and why.
 * @example
 * length('10-1/2').toString(); // '10 1/2'
 * length('26.5 cm').toString(); // '10 55/127'
 */
export const length = (input: LengthInput, options?: ReadOptions): Length =>
  Length.of(exactOf(input, options));

/**
 * The exact square root of a rational length, for diagonals.
 *
 * @throws EighthsError `length-root` where the radicand is negative or holds a root itself.
 * @example
 * squareRoot(2).times(5).plus('1/2').toString(); // '5√2 + 1/2'
 */
export function squareRoot(radicand: LengthInput): Length {
  const value = rationalOf(radicand);
  if (value === undefined || numerator(value) < 0n) {
    fail(
      'length-root',
      'radicand',
      { radicand: length(radicand) },
      'A square root is taken of a number of at least 0 without a root, not {radicand}.',
    );
  }
  return Length.of(exact.squareRootOf(value));
}
