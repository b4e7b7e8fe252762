import type { LengthFault } from '../errors/codes.js';
import { fail } from '../errors/error.js';
import { add, type Exact, fromRational, negate, root, zero } from '../number/exact.js';
import { add as addRational, multiply, type Rational, rational } from '../number/rational.js';
import { choiceField } from './choice.js';
import { plainText } from './typed.js';
import { beginsUnit, inchesIn, type LengthUnit, UNITS, unitSpelled } from './units.js';

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
  empty: 'There is no length here.',
  unfinished: '“{text}” stops before the length is complete.',
  syntax: '“{text}” is not a length: it cannot be read from character {at} on.',
  'too-long': `This text is longer than ${LONGEST} characters.`,
  'not-finite': '“{text}” is not a number that can be measured.',
  'zero-denominator': '“{text}” divides by zero.',
  exponent: `“{text}” has an exponent beyond ${LARGEST_EXPONENT}.`,
  thousands: '“{text}” can be read in two ways: write 1000 for a thousand, or 1.0 for one.',
  'spaced-slash': '“{text}” can be read in two ways: write a fraction without spaces.',
  'spaced-hyphen': '“{text}” can be read in two ways: write 10 1/2 for ten and a half.',
  'unit-order': '“{text}” must name the larger unit first, and each one once.',
  'wrong-kind': 'A length is a text, a number or a fraction.',
};

/** @throws EighthsError `length-syntax` with the text (shortened), the place counted from one, and why. */
export function refuse(text: string, at: number, reason: LengthFault): never {
  const shown = text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;
  const template = `${sentences[reason]} ${ACCEPTED}`;
  fail('length-syntax', 'length', { text: shown, at: at + 1, reason }, template);
}

// Sticky patterns without nested repetition: each character is looked at a bounded number of times.
/** 10-1/2 and 1/2, or 10.5 and .5e-3: whole, above, below; digits, exponent. */
const NUMBER =
  /(?:(\d+)(?:-| and | ?[+&] ?| ))?(\d+)\/(\d+)|(\d+(?:[.,]\d*)?|[.,]\d+)(?:e([+-]?\d+))?/y;
/** √2, 5√2 and 3/2√2: above, below, radicand. */
const ROOT = /(?:(\d+)(?:\/(\d+))?)?[*·]?√(\d+)/y;
const SIGN = /[+-] ?/y;
const OPERATOR = / ?([+-]) ?/y;
const UNIT = /[ -]?(\p{L}+|["'])\.?/uy;
/** What may stand last while somebody is still typing 10 and 1/2. */
const UNFINISHED = /(?:\/|(?:-| and | ?[+&] ?| )(?:\d+\/?)?| an?d?)$/y;
const BETWEEN_UNITS = /(?:,| and| ?&|-)? ?/y;
const SPACED_SLASH = /(?: \d+)?(?: \/ ?|\/ )\d/y;
const SPACED_HYPHEN = /(?: - ?|- )\d+\/\d/y;
/** A thousand to some and one to others; only the decimal sign in use settles it. */
const THOUSANDS = /^[1-9]\d?\d?[.,]\d{3}$/;

/** Larger units first, and only within one system. */
const SYSTEMS: readonly (readonly LengthUnit[])[] = [
  ['yd', 'ft', 'in'],
  ['m', 'cm', 'mm'],
];

function unitMayFollow(previous: LengthUnit, next: LengthUnit): boolean {
  const system = SYSTEMS.find((units) => units.includes(previous)) ?? [];
  return system.indexOf(next) > system.indexOf(previous);
}

/** Inches in what a bare number means. */
export const bareUnit = ({ unit = 'in' }: ReadOptions): Rational =>
  inchesIn[choiceField(unit, 'unit', UNITS)];

/**
 * Reads a length as people type it. Time is linear in the text, of which up to 1,000 characters are
 * read.
 *
 * @throws EighthsError `length-syntax`
 */
export function readLength(typed: string, options: ReadOptions): Exact {
  if (typed.length > LONGEST) refuse(typed, LONGEST, 'too-long');
  const { text, origins } = plainText(typed);
  const bareInches = bareUnit(options);
  const decimalSign = options.decimal ?? '.';
  let at = 0;

  const stop = (reason: LengthFault, place = at): never =>
    refuse(typed, origins[place] ?? typed.length, reason);
  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const match = pattern.exec(text);
    if (match !== null) at = pattern.lastIndex;
    return match;
  };
  const stuck = (): never => {
    const place = at;
    return stop(at >= text.length || take(UNFINISHED) ? 'unfinished' : 'syntax', place);
  };

  const fraction = (above: string, below: string, place: number): Rational => {
    const denominator = BigInt(below);
    if (denominator === 0n) stop('zero-denominator', place);
    return rational(BigInt(above), denominator);
  };
  const decimal = (digits: string, exponent: string, place: number): Rational => {
    if (THOUSANDS.test(digits) && !digits.includes(decimalSign)) stop('thousands', place);
    if (Math.abs(Number(exponent)) > LARGEST_EXPONENT) stop('exponent', place);
    const [whole = '', part = ''] = digits.split(/[.,]/);
    const value = rational(BigInt(whole + part));
    const shift = Number(exponent) - part.length;
    const power = 10n ** BigInt(Math.abs(shift));
    return multiply(value, shift < 0 ? rational(1n, power) : rational(power));
  };

  const readNumber = (): Rational => {
    const place = at;
    const match = take(NUMBER);
    if (match === null) return stop(at >= text.length ? 'unfinished' : 'syntax');
    const [, whole = '0', above, below = '1', digits = '', exponent = '0'] = match;
    if (above !== undefined) {
      return addRational(rational(BigInt(whole)), fraction(above, below, place));
    }
    if (take(SPACED_SLASH)) stop('spaced-slash', place);
    if (take(SPACED_HYPHEN)) stop('spaced-hyphen', place);
    return decimal(digits, exponent, place);
  };

  const readUnit = (): LengthUnit | undefined => {
    const place = at;
    const word = take(UNIT)?.[1];
    if (word === undefined) return undefined;
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
      let unit = readUnit();
      const bare = unit === undefined;
      if (previous !== undefined) {
        if (bare && previous !== 'ft') stuck();
        unit ??= 'in';
        if (!unitMayFollow(previous, unit)) stop('unit-order', place);
      }
      sum = addRational(sum, multiply(value, unit === undefined ? bareInches : inchesIn[unit]));
      if (at >= text.length) return fromRational(sum);
      if (bare) stuck();
      previous = unit;
      take(BETWEEN_UNITS);
    }
  };

  const readRoot = (): Exact | undefined => {
    const place = at;
    const match = take(ROOT);
    if (match === null) return undefined;
    const [, above = '1', below = '1', radicand = '0'] = match;
    return root(fraction(above, below, place), BigInt(radicand));
  };

  /** The exact writing of sums with roots: √2 terms first, then a number, as in 5√2 - 1/2. */
  const readSum = (): Exact => {
    let sign = take(SIGN)?.[0];
    let sum = zero;
    for (;;) {
      const radical = readRoot();
      const term = radical ?? readMeasure();
      sum = add(sum, sign?.startsWith('-') ? negate(term) : term);
      if (at >= text.length) return sum;
      sign = take(OPERATOR)?.[1];
      if (sign === undefined) return stuck();
    }
  };

  if (text === '') stop('empty');
  return readSum();
}
