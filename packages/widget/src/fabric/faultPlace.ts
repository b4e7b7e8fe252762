import type { EighthsError } from '@eighths/core';
import { attributeName } from '../base/names.js';
import { cellAt, cellName } from './cells.js';
import { fabricFields } from './fields.js';

/** Faults of settings that have no input for their text are told below the form. */
export const WITHOUT_INPUT = [
  'pieces',
  'on-hand',
  'method',
  'join',
  'precut',
  'increment',
] as const;

/** The input that an error of the core is about. */
export function inputOf({ field }: EighthsError): string {
  const [, row, side] = /^onHand\[(\d+)\]\.(.+)$/.exec(field) ?? [];
  if (side !== undefined) {
    return cellName('on-hand', Number(row), side.startsWith('missingCorner') ? 'corner' : side);
  }
  if (cellAt(field) !== undefined) return field;
  return fabricFields.find((known) => known === attributeName(field)) ?? 'pieces';
}
