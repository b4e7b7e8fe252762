import type { LengthFault } from '../errors/codes.js';
import { fail } from '../errors/error.js';
import { add, type Exact, fromRational, negate, root, zero } from '../number/exact.js';
import { add as addRational, multiply, type Rational, rational } from '../number/rational.js';
import { plainText } from './typed.js';
import { beginsUnit, inchesIn, type LengthUnit, unitSpelled } from './units.js';

/** How a text is read. */
export interface ReadOptions {
  /** What a bare number means; inches by default. */
  readonly unit?: LengthUnit;
  /** The decimal sign in use; a point by default. */
  readonly decimal?: '.' | ',';
}

/** More is not a length but a paragraph. */
const LONGEST = 1000;
/** A double's shortest writing goes from 5e-324 to 1.8e308. */
const LARGEST_EXPONENT = 400;
const SHOWN = 40;

const ACCEPTED = 'Lengths look like 10 1/2, 10.5, 10½, 3 ft 4 in, 1 1/2 yd or 26.5 cm.';

const sentences: Readonly<Record<LengthFault, string>> = {
  empty: `There is no length here. ${ACCEPTED}`,
  unfinished: `“{text}” stops before the length is complete. ${ACCEPTED}`,
  syntax: `“{text}” is not a length: it cannot be read from character {at} on. ${ACCEPTED}`,
  'too-long': `This text is longer than ${LONGEST} characters. ${ACCEPTED}`,
  'not-finite': `“{text}” is not a number that can be measured. ${ACCEPTED}`,
  'zero-denominator': `“{text}” divides by zero. A fraction needs a number other than 0 below the line.`,
  exponent: `“{text}” has an exponent beyond ${LARGEST_EXPONENT}. ${ACCEPTED}`,
  thousands: `“{text}” can be read in two ways: is the sign before the three digits a decimal sign? Write 1000 for a thousand, or 1.0 for one.`,
  'spaced-slash': `“{text}” can be read in two ways. Write a fraction without spaces, as in 10 1/2.`,
  'spaced-hyphen': `“{text}” can be read in two ways. Write 10 1/2 for ten and a half.`,
  'unit-order': `“{text}” names its units twice or out of order. Write the larger unit first, as in 3 ft 4 in.`,
  'wrong-kind': `A length is a text, a number or a fraction. ${ACCEPTED}`,
};

/** @throws EighthsError `length-syntax` with the text (shortened), the place counted from one, and why. */
export function refuse(text: string, at: number, reason: LengthFault): never {
  const shown = text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;
  fail('length-syntax', 'length', { text: shown, at: at + 1, reason }, sentences[reason]);
}

// Sticky patterns without nested repetition: each character is looked at a bounded number of times.
const MIXED = /(\d+)(?:-| ?\+ ?| ?& ?| and | )(\d+)\/(\d+)/y;
const FRACTION = /(\d+)\/(\d+)/y;
const DECIMAL = /(\d+(?:[.,]\d*)?|[.,]\d+)(?:e([+-]?\d+))?/y;
const ROOT = /[*·]?√(\d+)/y;
const SIGN = /[+-] ?/y;
const OPERATOR = / ?([+-]) ?/y;
const UNIT = /[ -]?(?:([a-z]+)\.?|(["']))/y;
/** What may stand last while somebody is still typing 10 and 1/2. */
const UNFINISHED = /(?:\/|(?: |-| ?\+ ?| ?& ?| and )(?:\d+\/?)?| an?d?)$/y;
const BETWEEN_UNITS = /(?:,| and| ?&|-)? ?/y;
const SPACED_SLASH = /(?: \/ ?|\/ )\d/y;
const SPACED_HYPHEN = /(?: - ?|- )\d+\/\d/y;

/** Larger units first, and only within one system. */
const SYSTEMS: readonly (readonly LengthUnit[])[] = [
  ['yd', 'ft', 'in'],
  ['m', 'cm', 'mm'],
];

function unitMayFollow(previous: LengthUnit, next: LengthUnit): boolean {
  const system = SYSTEMS.find((units) => units.includes(previous)) ?? [];
  return system.indexOf(next) > system.indexOf(previous);
}

/**
 * Reads a length as people type it. Time is linear in the text, of which up to 1,000 characters are
 * read.
 *
 * @throws EighthsError `length-syntax`
 */
export function readLength(typed: string, options: ReadOptions = {}): Exact {
  if (typed.length > LONGEST) refuse(typed, LONGEST, 'too-long');
  const { text, origins } = plainText(typed);
  const decimalSign = options.decimal ?? '.';
  let at = 0;

  const stop = (reason: LengthFault, place = at): never =>
    refuse(typed, origins[place] ?? typed.length, reason);
  const stuck = (): never => {
    const place = at;
    const unfinished = at >= text.length || take(UNFINISHED) !== null;
    return stop(unfinished ? 'unfinished' : 'syntax', place);
  };
  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const match = pattern.exec(text);
    if (match !== null) at = pattern.lastIndex;
    return match;
  };
  const over = (above: string | undefined, below: string | undefined): Rational => {
    const denominator = BigInt(below ?? '1');
    if (denominator === 0n) stop('zero-denominator');
    return rational(BigInt(above ?? '0'), denominator);
  };

  const readDecimal = (digits: string, exponent: string | undefined, place: number): Rational => {
    const [whole = '', part = ''] = digits.split(/[.,]/);
    const sign = digits[whole.length];
    // 1,000 is a thousand to some and one to others; only the decimal sign in use settles it.
    if (sign !== undefined && sign !== decimalSign && /^\d{3}$/.test(part) && whole !== '') {
      stop('thousands', place);
    }
    const power = Number(exponent ?? '0');
    if (Math.abs(power) > LARGEST_EXPONENT) stop('exponent', place);
    const shift = power - part.length;
    const value = BigInt(whole + part);
    return shift < 0
      ? rational(value, 10n ** BigInt(-shift))
      : rational(value * 10n ** BigInt(shift));
  };

  const readNumber = (): Rational => {
    const place = at;
    const mixed = take(MIXED);
    if (mixed !== null) {
      return addRational(rational(BigInt(mixed[1] ?? '0')), over(mixed[2], mixed[3]));
    }
    const fraction = take(FRACTION);
    if (fraction !== null) return over(fraction[1], fraction[2]);
    const decimal = take(DECIMAL);
    if (decimal === null) return stop(at >= text.length ? 'unfinished' : 'syntax');
    const value = readDecimal(decimal[1] ?? '', decimal[2], place);
    if (/[.,]\d/y.test(text.slice(at, at + 2))) stop('thousands', place);
    if (take(SPACED_SLASH) !== null) stop('spaced-slash', place);
    if (take(SPACED_HYPHEN) !== null) stop('spaced-hyphen', place);
    return value;
  };

  const readUnit = (): LengthUnit | undefined => {
    const place = at;
    const match = take(UNIT);
    if (match === null) return undefined;
    const word = match[1] ?? match[2] ?? '';
    const unit = unitSpelled(word);
    if (unit !== undefined) return unit;
    if (at >= text.length && beginsUnit(word)) stop('unfinished', place);
    at = place;
    return stuck();
  };

  /** Parts such as 3 ft 4 1/2 in; a bare number after feet is inches. */
  const readMeasure = (): Exact => {
    let sum = rational(0n);
    let previous: LengthUnit | undefined;
    for (;;) {
      const place = at;
      const value = readNumber();
      let unit = at < text.length ? readUnit() : undefined;
      if (previous !== undefined) {
        if (unit === undefined && previous !== 'ft') stuck();
        unit ??= 'in';
        if (!unitMayFollow(previous, unit)) stop('unit-order', place);
      }
      const bare = unit === undefined;
      unit ??= options.unit ?? 'in';
      sum = addRational(sum, multiply(value, inchesIn[unit]));
      previous = unit;
      if (at >= text.length) return fromRational(sum);
      if (bare) stuck();
      take(BETWEEN_UNITS);
    }
  };

  /** A number may stand before the root as whole number or fraction: 3/2√2. */
  const readRoot = (): Exact | undefined => {
    const place = at;
    const factor = take(FRACTION) ?? take(/(\d+)/y);
    const radical = take(ROOT);
    if (radical !== null)
      return root(over(factor?.[1] ?? '1', factor?.[2]), BigInt(radical[1] ?? '0'));
    at = place;
    return undefined;
  };

  /** The exact writing of sums with roots: √2 terms first, then a number, as in 5√2 - 1/2. */
  const readSum = (): Exact => {
    let negative = take(SIGN)?.[0].startsWith('-') ?? false;
    let sum = zero;
    for (;;) {
      const radical = readRoot();
      const term = radical ?? readMeasure();
      sum = add(sum, negative ? negate(term) : term);
      if (at >= text.length) return sum;
      const operator = radical === undefined ? null : take(OPERATOR);
      if (operator === null) return stuck();
      negative = operator[1] === '-';
    }
  };

  if (text === '') stop('empty');
  return readSum();
}
