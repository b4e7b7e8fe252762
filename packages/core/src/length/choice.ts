import { fail } from '../errors/error.js';

/** What was given, as a text; not every object has one. */
export function textOf(input: unknown): string {
  try {
    return String(input);
  } catch {
    return 'an object';
  }
}

/**
 * One of a list of words.
 *
 * @throws EighthsError `unknown-choice` naming the words accepted.
 */
export function choiceField<Choice extends string>(
  input: Choice,
  field: string,
  choices: readonly Choice[],
): Choice {
  if (!choices.includes(input)) {
    const values = { value: textOf(input), choices: choices.join(', ') };
    fail('unknown-choice', field, values, '“{value}” is not known here. Use one of: {choices}.');
  }
  return input;
}
