import { fail } from '../errors/error.js';
import { entryAt } from '../plan/entryAt.js';
import type { PerRound } from './spec.js';

/** A value for each round, by the round's index from 0. */
export type ByRound<Value> = (index: number) => Value;

const isList = <Value>(input: PerRound<Value>): input is readonly Value[] => Array.isArray(input);

/**
 * Reads one value for all rounds, or a list with one for each.
 *
 * @throws EighthsError `list-length` where a list does not have one entry a round
 */
export function eachRound<Input, Value>(
  input: PerRound<Input>,
  field: string,
  rounds: number,
  read: (input: Input, field: string) => Value,
): ByRound<Value> {
  if (!isList(input)) {
    const value = read(input, field);
    return () => value;
  }
  if (input.length !== rounds) {
    fail(
      'list-length',
      field,
      { entries: input.length, needed: rounds },
      'This list has {entries} entries where {needed} are needed: one for each round, or one for all.',
    );
  }
  const values = Array.from(input, (entry, index) => read(entry, `${field}[${index}]`));
  return (index) => entryAt(values, index);
}
