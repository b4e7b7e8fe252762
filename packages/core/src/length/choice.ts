import { fail } from '../errors/error.js';

/** @throws EighthsError `unknown-choice` naming the words accepted. */
export function refuseChoice(field: string, value: unknown, choices: readonly string[]): never {
  const values = { value: String(value), choices: choices.join(', ') };
  fail('unknown-choice', field, values, '“{value}” is not known here. Use one of: {choices}.');
}
