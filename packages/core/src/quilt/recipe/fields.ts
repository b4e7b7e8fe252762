import {
  array,
  boolean,
  check,
  description,
  type GenericSchema,
  integer,
  maxLength,
  maxValue,
  minLength,
  minValue,
  number,
  type ObjectEntries,
  picklist,
  pipe,
  regex,
  strictObject,
  string,
  tuple,
  union,
} from 'valibot';
import { length } from '../../length/length.js';
import type { Sign } from '../../plan/field.js';
import { accepts } from './accepts.js';

/** An object with these fields and no others. A list is none, though it could have no entries. */
export const fields = <const Entries extends ObjectEntries>(entries: Entries, what: string) => {
  const object = strictObject(entries, accepts({ kind: 'fields', known: Object.keys(entries) }));
  const run = object['~run'];
  const noList: typeof object = {
    ...object,
    '~run': (dataset, config) =>
      run.call(
        object,
        Array.isArray(dataset.value) ? { ...dataset, value: 'a list' } : dataset,
        config,
      ),
  };
  return pipe(noList, description(what));
};

/** A list of so many entries. */
export const list = <const Item extends GenericSchema>(
  item: Item,
  least: number,
  most: number,
  what: string,
) => {
  const message = accepts({ kind: 'list', least, most });
  return pipe(
    array(item, message),
    minLength(least, message),
    maxLength(most, message),
    description(what),
  );
};

/** A whole number within limits. */
export const count = (least: number, most: number, what: string) => {
  const message = accepts({ kind: 'count', least, most });
  return pipe(
    number(message),
    integer(message),
    minValue(least, message),
    maxValue(most, message),
    description(what),
  );
};

/** Words for people. */
export const text = (most: number, what: string) => {
  const message = accepts({ kind: 'text', most });
  return pipe(string(message), regex(/\S/, message), maxLength(most, message), description(what));
};

/** A name that other fields refer to. */
export const id = (what: string) => {
  const message = accepts({ kind: 'id' });
  return pipe(string(message), regex(/^[A-Za-z][A-Za-z0-9_-]{0,59}$/, message), description(what));
};

/** What refers to a fabric. */
export const fabricId = id('The id of a fabric.');

/** One of these words. */
export const choice = <const Choices extends readonly string[]>(choices: Choices, what: string) =>
  pipe(picklist(choices, accepts({ kind: 'choice', choices })), description(what));

/** Yes or no. */
export const yesOrNo = (what: string) =>
  pipe(boolean(accepts({ kind: 'yes or no' })), description(what));

function isLength(input: number | string, sign: Sign): boolean {
  try {
    const value = length(input).sign();
    return sign === 'any' || value > 0 || (sign === 'zero or more' && value === 0);
  } catch {
    return false;
  }
}

/** A length as `length()` reads it: a number or a bare text is inches. */
export const measure = (sign: Sign, what: string) => {
  const message = accepts({ kind: 'length', sign });
  return pipe(
    union([number(message), string(message)], message),
    check((input) => isLength(input, sign), message),
    description(what),
  );
};

/** Of a border or a sash. */
export const finishedWidth = measure('positive', 'The finished width.');

/** One length for a square, or width and height. */
export const size = (what: string) =>
  pipe(
    union(
      [
        measure('positive', 'The side of a square.'),
        fields(
          {
            width: measure('positive', 'Across.'),
            height: measure('positive', 'Down.'),
          },
          'Width across and height down.',
        ),
      ],
      accepts({ kind: 'length', sign: 'positive' }),
    ),
    description(what),
  );

/** One for all rounds, or a list with one for each. */
export const perRound = <const Item extends GenericSchema>(item: Item, what: string) =>
  union([item, list(item, 1, 50, what)], accepts({ kind: 'list', least: 1, most: 50 }));

/** Where something lies: across, then down. */
export const place = (what: string) => {
  const message = accepts({ kind: 'list', least: 2, most: 2 });
  const along = measure('zero or more', 'A distance in the finished block.');
  return pipe(tuple([along, along], message), description(what));
};

/** A part of a whole, from 0 up to 1. */
export const share = (what: string) => {
  const message = accepts({ kind: 'share' });
  return pipe(
    union([number(message), string(message)], message),
    check((input) => isLength(input, 'zero or more') && length(input).compareTo(1) < 0, message),
    description(what),
  );
};

/** An angle in degrees. */
export const degrees = (what: string) => {
  const message = accepts({ kind: 'degrees' });
  return pipe(number(message), minValue(1, message), maxValue(179, message), description(what));
};

/** An amount of money, in the recipe's currency. */
export const amount = (what: string) => {
  const message = accepts({ kind: 'money' });
  return pipe(
    union(
      [
        pipe(number(message), minValue(0, message)),
        pipe(string(message), regex(/^\d{1,16}(\.\d{1,16})?$/, message)),
      ],
      message,
    ),
    description(what),
  );
};
