import { type LogCabinSpec, SIDES } from '@eighths/core';
import { propertyName } from '../base/names.js';
import { choose, type SettingsReader } from '../base/settingsReader.js';
import { type InputKind, type LogCabinField, logCabinFields, logCabinInputs } from './fields.js';

type Reader = SettingsReader<LogCabinField>;

function readInput(field: LogCabinField, plain: boolean, reader: Reader): unknown {
  const kind: InputKind = logCabinInputs[field];
  if (typeof kind === 'number') return reader.count(field, 1, kind);
  if (typeof kind !== 'string') {
    // A curved block has logs on all four sides.
    const choices = plain ? kind : kind.filter((choice) => choice !== 'quarter');
    return reader.choice(field, choices);
  }
  if (kind !== 'sides') return reader[kind](field);
  return reader.read(field, (text) =>
    text.split(/[\s,;]+/).map((side) => choose(side, field, SIDES)),
  );
}

/** `strips-wide` is the field `wide` of `strips`. */
const GROUPED = /^(strips|trim|fabrics)-(.*)$/;

/** What the spec of a plain block, or of a curved one, has no place for. */
const NOT_PLAIN = /^(kind|blocks|(strips-)?(wide|narrow)|first|wide-sides)$/;
const NOT_CURVED = /^(kind|blocks|(strips-)?log)$/;

/** The core's spec from settings. What is left empty is left out: the core says what it misses. */
export function readSpec(reader: Reader): LogCabinSpec {
  const plain = reader.choice('kind', logCabinInputs.kind) === 'plain';
  const fields = logCabinFields.filter((field) => !(plain ? NOT_PLAIN : NOT_CURVED).test(field));
  const spec: Record<string, unknown> = {};
  for (const field of fields) {
    const value = readInput(field, plain, reader);
    if (value === undefined) continue;
    const [, group, name] = GROUPED.exec(field) ?? [];
    if (group === undefined || name === undefined) spec[propertyName(field)] = value;
    else spec[group] = { ...Object(spec[group]), [name]: value };
  }
  // The core looks at each field, whatever the page has set.
  return spec as unknown as LogCabinSpec;
}
