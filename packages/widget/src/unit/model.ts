import {
  commonInputs,
  compareMethods,
  EighthsError,
  type Size,
  type UnitComparison,
  type UnitDefinition,
  type UnitInput,
  type UnitPlan,
  type UnitSpec,
  unitNames,
} from '@eighths/core';
import type { Measures } from '../base/measures.js';
import { attributeName } from '../base/names.js';
import { anyGiven, given, SettingsReader } from '../base/settingsReader.js';
import { definitionOf, fabricField, fieldsOf, knownUnit, type UnitSettings } from './fields.js';

type Reader = SettingsReader<string>;

/** What settings come to: a plan where they can be cut, and what is wrong where they cannot. */
export interface UnitModel {
  readonly definition: UnitDefinition;
  readonly spec: UnitSpec & { readonly unit: string };
  readonly plan?: UnitPlan;
  /** The methods side by side, where there are several. */
  readonly comparison?: UnitComparison;
  readonly more: { readonly units: number };
  readonly faults: ReadonlyMap<string, EighthsError>;
}

/** A size's height may be left out: then the unit says what it is. */
function readSize(name: string, reader: Reader) {
  const height = reader.length(`${name}-height`);
  if (height !== undefined) return given({ width: reader.needed(`${name}-width`), height });
  return reader.length(`${name}-width`);
}

function readDegrees(
  { name, least, most }: UnitInput & { readonly kind: 'degrees' },
  reader: Reader,
): number | undefined {
  return reader.read(name, (text) => {
    const number = text.replace(/\s*(°|degrees)$/, '');
    const isNumber = /^\d{1,3}([.,]\d{1,9})?$/.test(number);
    const degrees = isNumber ? Number(number.replace(',', '.')) : Number.NaN;
    if (degrees >= least && degrees <= most) return degrees;
    throw new EighthsError(
      'angle-out-of-range',
      name,
      { value: text.slice(0, 40), least, most },
      'An angle from {least} to {most} degrees is needed here, not {value}.',
    );
  });
}

/** One input of a unit, as its kind is read. */
function readInput(input: UnitInput, reader: Reader): unknown {
  const { name } = input;
  switch (input.kind) {
    case 'length':
      return reader.length(name);
    case 'size':
      return readSize(name, reader);
    case 'count':
      return reader.count(name, input.least, input.most);
    case 'degrees':
      return readDegrees(input, reader);
    case 'choice':
      return reader.choice(name, input.choices);
    case 'lengths': {
      const lengths = reader.lengths(name);
      return lengths === undefined || Array.isArray(lengths) ? lengths : [lengths];
    }
    case 'flag':
      return reader.flag(name);
  }
}

function readSpec(definition: UnitDefinition, reader: Reader): UnitSpec {
  const inputs = [...definition.inputs, ...commonInputs].map((input) => [
    input.name,
    readInput(input, reader),
  ]);
  const methods = definition.methods.map(({ name }) => name);
  const fabrics = definition.fabrics.map((part) => [part, reader.text(fabricField(part))]);
  return given({
    ...Object.fromEntries(inputs),
    method: reader.choice('method', methods),
    fabrics: anyGiven(Object.fromEntries(fabrics)),
  });
}

/** The input that an error of the core is about: `finished.width` is typed in `finished-width`. */
function fieldOf({ field }: EighthsError, definition: UnitDefinition): string {
  const name = attributeName(field);
  const inputs = [...definition.inputs, ...commonInputs];
  if (inputs.some((input) => fieldsOf(input).includes(name))) return name;
  const whole = inputs.find((input) => input.name === name);
  return (whole && fieldsOf(whole)[0]) ?? name;
}

/** The finished size again as it is given: one length for a square. */
const asGiven = ({ width, height }: Size) => (width.equals(height) ? width : { width, height });

function compared(plan: UnitPlan, spec: UnitSpec, definition: UnitDefinition) {
  if (definition.methods.filter(({ part }) => !part).length < 2) return undefined;
  // A unit that is named by its center is compared in the size that comes of it.
  const { finished = asGiven(plan.finished), center: _, ...options } = spec;
  try {
    return compareMethods(knownUnit(plan.unit), finished, plan.count, options);
  } catch (error) {
    if (error instanceof EighthsError) return undefined;
    throw error;
  }
}

export function unitModel(settings: UnitSettings, measures: Measures): UnitModel {
  const reader = new SettingsReader(settings, measures);
  reader.choice('unit', unitNames());
  const definition = definitionOf(settings);
  const read = readSpec(definition, reader);
  const model = {
    definition,
    spec: { unit: definition.name, ...read },
    more: { units: read.count ?? 1 },
    faults: reader.faults,
  };
  if (reader.faults.size > 0) return model;
  const plan = reader.attempt(
    () => definition.plan(read),
    (error) => fieldOf(error, definition),
  );
  if (plan === undefined) return model;
  const comparison = compared(plan, read, definition);
  return { ...model, plan, ...(comparison && { comparison }) };
}
