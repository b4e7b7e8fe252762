import { fail } from '../errors/error.js';

/** More of what was given than this makes no sentence clearer. */
const SHOWN = 60;

/** What was given, as a text; not every object has one. */
export function textOf(input: unknown): string {
  if (Array.isArray(input)) return 'a list';
  try {
    const text = String(input);
    return text.startsWith('[object ') ? 'an object' : text;
  } catch {
    return 'an object';
  }
}

/** The same for a sentence, which a long text would drown. */
export function shownText(input: unknown): string {
  const text = textOf(input);
  return text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;
}

/** @throws EighthsError `unknown-choice` naming the words accepted */
export function notAChoice(input: unknown, field: string, choices: readonly string[]): never {
  const values = { value: shownText(input), choices: choices.join(', ') };
  fail('unknown-choice', field, values, '“{value}” is not known here. Use one of: {choices}.');
}

/**
 * One of a list of words.
 *
 * @throws EighthsError `unknown-choice` naming the words accepted.
 */
export const choiceField = <Choice extends string>(
  input: Choice,
  field: string,
  choices: readonly Choice[],
): Choice => (choices.includes(input) ? input : notAChoice(input, field, choices));
