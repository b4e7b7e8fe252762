import { EighthsError, fail } from '../errors/error.js';
import { shownText } from '../length/choice.js';
import { type Length, type LengthInput, length } from '../length/length.js';

export { choiceField, notAChoice } from '../length/choice.js';

/** What a length in a field may be. */
export type Sign = 'any' | 'zero or more' | 'positive';

/**
 * The length in a spec's field.
 *
 * @throws EighthsError `length-syntax` or `not-positive`, with the field's path.
 */
export function lengthField(input: LengthInput, field: string, sign: Sign = 'positive'): Length {
  const value = readAt(input, field);
  if (sign === 'positive' && value.sign() <= 0) {
    fail('not-positive', field, { value }, 'This length must be more than 0, not {value}.');
  }
  if (sign === 'zero or more' && value.sign() < 0) {
    fail('not-positive', field, { value }, 'This length must be at least 0, not {value}.');
  }
  return value;
}

function readAt(input: LengthInput, field: string): Length {
  try {
    return length(input);
  } catch (error) {
    if (!(error instanceof EighthsError)) throw error;
    throw new EighthsError(error.code, field, error.values, error.template);
  }
}

/**
 * A length that has to be a fraction, such as a grid's step.
 *
 * @throws EighthsError `length-with-root`, and as `lengthField`
 */
export function rationalField(input: LengthInput, field: string, sign?: Sign): Length {
  const value = lengthField(input, field, sign);
  if (value.toFraction() === undefined) {
    fail(
      'length-with-root',
      field,
      { value },
      'A length without a root is needed here, such as 3 1/2, not {value}.',
    );
  }
  return value;
}

/**
 * A length within limits, both of which it may reach.
 *
 * @throws EighthsError `out-of-range`, `not-positive`, or of a length
 */
export function lengthBetween(
  input: LengthInput,
  field: string,
  least: LengthInput,
  most: LengthInput,
  sign?: Sign,
): Length {
  const value = lengthField(input, field, sign);
  if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
    fail(
      'out-of-range',
      field,
      { value, least: length(least), most: length(most) },
      'This must be from {least} to {most}, not {value}.',
    );
  }
  return value;
}

/**
 * A whole number within limits.
 *
 * @throws EighthsError `not-a-count`
 */
export function countField(input: number, field: string, least: number, most: number): number {
  if (Number.isInteger(input) && input >= least && input <= most) return input;
  return notACount(typeof input === 'number' ? input : shownText(input), field, least, most);
}

/** @throws EighthsError `not-a-count` */
export const notACount = (
  value: number | string,
  field: string,
  least: number,
  most: number,
): never =>
  fail(
    'not-a-count',
    field,
    { value, least, most },
    'A whole number from {least} to {most} is needed here, not {value}.',
  );

/**
 * Yes or no.
 *
 * @throws EighthsError `wrong-kind`
 */
export const booleanField = (input: boolean, field: string): boolean =>
  typeof input === 'boolean' ? input : notABoolean(field);

/** @throws EighthsError `wrong-kind` */
export const notABoolean = (field: string): never =>
  fail(
    'wrong-kind',
    field,
    { expected: 'true or false' },
    'True or false is needed here, without quotes.',
  );

/**
 * A list, whose gaps are entries that are not there.
 *
 * @param expected what is listed, for the sentence.
 * @throws EighthsError `wrong-kind`
 */
export const listField = <Entry>(
  input: readonly Entry[],
  field: string,
  expected: string,
): readonly Entry[] =>
  Array.isArray(input)
    ? Array.from(input)
    : fail('wrong-kind', field, { expected }, 'A list of {expected} is needed here.');

/**
 * Refuses what is not an object, and fields that the spec does not have: a misspelled field would
 * otherwise be a silent default.
 *
 * @throws EighthsError `wrong-kind` or `unknown-field`
 */
export function checkFields(input: object, field: string, known: readonly string[]): void {
  if (typeof input !== 'object' || input === null || Array.isArray(input)) {
    notAnObject(field, known);
  }
  for (const name of Object.keys(input)) {
    if (!known.includes(name)) notAField(name, field === '' ? name : `${field}.${name}`, known);
  }
}

/** @throws EighthsError `wrong-kind` */
export const notAnObject = (field: string, known: readonly string[]): never =>
  fail(
    'wrong-kind',
    field,
    { expected: known.join(', ') },
    'An object with these fields is needed here: {expected}.',
  );

/** @throws EighthsError `unknown-field` */
export const notAField = (name: unknown, field: string, known: readonly string[]): never =>
  fail(
    'unknown-field',
    field,
    { name: shownText(name), known: known.join(', ') },
    'There is no field “{name}” here. The fields are: {known}.',
  );

/** @throws EighthsError `missing-field` */
export function missing(field: string): never {
  return fail('missing-field', field, { name: field }, 'The field “{name}” is needed.');
}
