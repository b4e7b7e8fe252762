import { type EighthsError, type LogCabin, type LogCabinSpec, logCabin } from '@eighths/core';
import type { Measures } from '../base/measures.js';
import { attributeName } from '../base/names.js';
import { SettingsReader } from '../base/settingsReader.js';
import {
  type LogCabinField,
  type LogCabinSettings,
  logCabinFields,
  logCabinInputs,
} from './fields.js';
import { readSpec } from './spec.js';

/** What settings come to: a plan where they can be sewn, and what is wrong where they cannot. */
export interface LogCabinModel {
  readonly spec: LogCabinSpec;
  readonly plan?: LogCabin;
  /** How many blocks are cut. */
  readonly more: { readonly blocks: number };
  readonly faults: ReadonlyMap<LogCabinField, EighthsError>;
}

/** The input that an error of the core is about: `strips.wide[1]` is typed in `strips-wide`. */
function fieldOf({ field }: EighthsError): LogCabinField {
  const name = attributeName(field);
  // A size's side (`finished.width`) is typed in the size's own input.
  const whole = name.replace(/-[^-]*$/, '');
  const find = (wanted: string) => logCabinFields.find((known) => known === wanted);
  return find(name) ?? find(whole) ?? 'finished';
}

export function logCabinModel(settings: LogCabinSettings, measures: Measures): LogCabinModel {
  const reader = new SettingsReader(settings, measures);
  const spec = readSpec(reader);
  const blocks = reader.count('blocks', 1, logCabinInputs.blocks) ?? 1;
  const model = { spec, more: { blocks }, faults: reader.faults };
  if (reader.faults.size > 0) return model;
  const plan = reader.attempt(() => logCabin(spec), fieldOf);
  return plan === undefined ? model : { ...model, plan };
}
