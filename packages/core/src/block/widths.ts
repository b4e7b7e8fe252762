import { fail } from '../errors/error.js';
import type { Length, LengthInput } from '../length/length.js';
import { lengthField, missing } from '../plan/field.js';
import { eachRound } from './perRound.js';
import type { LogCabinSpec, LogKind } from './spec.js';

/** The finished width of a kind's logs in a round, by the round's index. */
export type FinishedWidths = (kind: LogKind, index: number) => Length;

const positive = (input: LengthInput, field: string): Length => lengthField(input, field);

/** @throws EighthsError `missing-field`, `conflicting-fields`, `list-length` or of a length */
export function readWidths(spec: LogCabinSpec): FinishedWidths {
  const { rounds, log, wide, narrow } = spec;
  if (log === undefined) {
    if (wide === undefined) missing(narrow === undefined ? 'log' : 'wide');
    if (narrow === undefined) missing('narrow');
    const wideWidth = eachRound(wide, 'wide', rounds, positive);
    const narrowWidth = eachRound(narrow, 'narrow', rounds, positive);
    return (kind, index) => (kind === 'wide' ? wideWidth(index) : narrowWidth(index));
  }
  for (const other of ['wide', 'narrow', 'wideSides', 'first'] as const) {
    if (spec[other] === undefined) continue;
    fail(
      'conflicting-fields',
      other,
      { one: 'log', other },
      '“{one}” makes all sides alike, so “{other}” has no place beside it. Leave one of them out.',
    );
  }
  const logWidth = eachRound(log, 'log', rounds, positive);
  return (_, index) => logWidth(index);
}
