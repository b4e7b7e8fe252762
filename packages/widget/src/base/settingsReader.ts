import { EighthsError, type Length } from '@eighths/core';
import type { Measures } from './measures.js';
import { readList, readSides } from './text.js';

/** More of a text than this is not repeated in an error. */
const SHOWN = 40;

const shortened = (text: string): string =>
  text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;

/** An object without what is undefined, as the core's specs want it. */
export type Given<Values> = { [Name in keyof Values]?: Exclude<Values[Name], undefined> };

export function given<Values extends object>(values: Values): Given<Values> {
  const entries = Object.entries(values).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as Given<Values>;
}

/** The same, or undefined where nothing at all is given. */
export function anyGiven<Values extends object>(values: Values): Given<Values> | undefined {
  const some = given(values);
  return Object.keys(some).length > 0 ? some : undefined;
}

/**
 * Reads settings one by one, each an input's text, and keeps what is wrong with each. An empty text
 * says nothing and is undefined.
 */
export class SettingsReader<Field extends string> {
  readonly faults = new Map<Field, EighthsError>();
  readonly #settings: Readonly<Record<Field, string>>;
  readonly #measures: Measures;

  constructor(settings: Readonly<Record<Field, string>>, measures: Measures) {
    this.#settings = settings;
    this.#measures = measures;
  }

  read<Value>(field: Field, reading: (text: string) => Value): Value | undefined {
    const text = this.#settings[field].trim();
    return text === ''
      ? undefined
      : this.attempt(
          () => reading(text),
          () => field,
        );
  }

  /** Does what may fail, and keeps the error with the field it is about. */
  attempt<Value>(action: () => Value, fieldOf: (error: EighthsError) => Field): Value | undefined {
    try {
      return action();
    } catch (error) {
      if (!(error instanceof EighthsError)) throw error;
      this.faults.set(fieldOf(error), error);
      return undefined;
    }
  }

  length(field: Field): Length | undefined {
    return this.read(field, this.#measures.read);
  }

  /** A length that must be there. */
  needed(field: Field): Length | undefined {
    if (this.#settings[field].trim() !== '') return this.length(field);
    const error = new EighthsError(
      'missing-field',
      field,
      { name: field },
      'A length is needed here.',
    );
    this.faults.set(field, error);
    return undefined;
  }

  /** A square's side, or `6 by 9`. */
  size(field: Field) {
    return this.read(field, (text) => readSides(text, this.#measures.read));
  }

  /** One length, or one a round. */
  lengths(field: Field) {
    return this.read(field, (text) => readList(text, this.#measures.read));
  }

  text(field: Field): string | undefined {
    return this.read(field, (text) => text);
  }

  /** One name, or one a round. */
  names(field: Field) {
    return this.read(field, (text) => readList(text, (name) => name));
  }

  /** A whole number within limits. */
  count(field: Field, least: number, most: number): number | undefined {
    return this.read(field, (text) => {
      const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
      if (value >= least && value <= most) return value;
      throw new EighthsError(
        'not-a-count',
        field,
        { value: shortened(text), least, most },
        'A whole number from {least} to {most} is needed here.',
      );
    });
  }

  choice<Choice extends string>(field: Field, choices: readonly Choice[]): Choice | undefined {
    return this.read(field, (text) => choose(text, field, choices));
  }

  /** On where the attribute is there, whatever it says but `false`. */
  flag(field: Field): true | undefined {
    return this.read(field, (text) => (text === 'false' ? undefined : true));
  }
}

/** @throws EighthsError `unknown-choice` */
export function choose<Choice extends string>(
  text: string,
  field: string,
  choices: readonly Choice[],
): Choice {
  const choice = choices.find((each) => each === text);
  if (choice !== undefined) return choice;
  throw new EighthsError(
    'unknown-choice',
    field,
    { value: shortened(text), choices: choices.join(', ') },
    '“{value}” is not known here. Use one of: {choices}.',
  );
}
