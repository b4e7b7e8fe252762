/** Lines that must and must not compile; `tsc -p tsconfig.json` reads them, nothing runs them. */
import {
  EighthsError,
  type ErrorCode,
  type FractionInput,
  fillSentence,
  formatLength,
  Length,
  type LengthInput,
  length,
  squareRoot,
} from '@eighths/core';

// What is a length: a length, a fraction's shape, a number, a whole number, a text.
const inputs: readonly LengthInput[] = [
  length(1),
  { s: 1n, n: 1n, d: 2n },
  10.5,
  10n,
  '10 1/2',
  squareRoot(2),
];
const results: readonly Length[] = inputs.map((input) => length(input));

// What is none.
// @ts-expect-error nothing at all
length();
// @ts-expect-error null
length(null);
// @ts-expect-error undefined
length(undefined);
// @ts-expect-error a boolean
length(true);
// @ts-expect-error a list
length([10]);
// @ts-expect-error a fraction of numbers
length({ s: 1, n: 1, d: 2 });
// @ts-expect-error a fraction without its sign
length({ n: 1n, d: 2n });
// @ts-expect-error an arbitrary object
length({ inches: 10 });

// Options are closed.
length('10', { unit: 'cm', decimal: ',' });
// @ts-expect-error a unit that is not read
length('10', { unit: 'furlong' });
// @ts-expect-error no decimal sign
length('10', { decimal: ';' });
// @ts-expect-error a misspelled option
length('10', { units: 'cm' });
// @ts-expect-error an option that is there but undefined
length('10', { unit: undefined });

// A length is made by length() and squareRoot() only, and never changed.
// @ts-expect-error the constructor is private
new Length();
// @ts-expect-error a text is no length
const text: Length = '10';
// @ts-expect-error a look-alike is no length
const alike: Length = { ...length(1) };

// Lengths are compared by compareTo, not by operators that would take a number.
// @ts-expect-error plus is a method
length(1) + length(2);
// @ts-expect-error minus is a method
length(1) - length(2);
// @ts-expect-error no number
const number: number = length(1);
const order: -1 | 0 | 1 = length(1).compareTo('2');
const sign: -1 | 0 | 1 = length(1).sign();

// The direction of rounding is always said.
length(1).toGrid('1/8', 'up');
// @ts-expect-error without a direction
length(1).toGrid('1/8');
// @ts-expect-error no direction
length(1).toGrid('1/8', 'sideways');

// A fraction may be missing, and cannot be written to.
const fraction: FractionInput | undefined = length(1).toFraction();
// @ts-expect-error it may be undefined
fraction.n;
// @ts-expect-error read-only
if (fraction !== undefined) fraction.n = 2n;

// Writing.
formatLength('10 1/2', { unit: 'ft-in', style: 'spoken', grid: '1/8', mode: 'up', locale: 'en' });
// @ts-expect-error feet alone are not written
formatLength('10', { unit: 'ft' });
// @ts-expect-error an unknown style
formatLength('10', { style: 'roman' });
// @ts-expect-error an unknown mode
formatLength('10', { mode: 'off' });
// @ts-expect-error an unknown way to say that a value was rounded
formatLength('10', { rounded: 'never' });

// Errors: the codes are closed, and each has its values.
const code: ErrorCode = 'length-syntax';
// @ts-expect-error an unknown code
const wrong: ErrorCode = 'length-wrong';
declare const error: EighthsError<'length-syntax'>;
const at: number = error.values.at;
// @ts-expect-error the place is a number
const place: string = error.values.at;
// @ts-expect-error read-only
error.field = 'width';
// @ts-expect-error the values of another code
new EighthsError('length-syntax', 'length', { divisor: length(0) }, '');
fillSentence('{a}', { a: 1, b: 'two', c: length(3) });
// @ts-expect-error a sentence speaks of numbers, words and lengths
fillSentence('{a}', { a: null });

export { alike, at, code, number, order, place, results, sign, text, wrong };
