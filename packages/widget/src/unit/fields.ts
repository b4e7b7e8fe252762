import {
  commonInputs,
  UNITS,
  type UnitDefinition,
  type UnitInput,
  type UnitName,
  unitNames,
} from '@eighths/core';

/** What stands in each input, as text; empty where nothing is given. */
export type UnitSettings = Readonly<Record<string, string>>;

const distinct = <Item>(items: readonly Item[]): readonly Item[] => [...new Set(items)];

const definitions: readonly UnitDefinition[] = Object.values(UNITS);

/** The attribute that names the fabric of a part: `fabrics-inside-curve`. */
export const fabricField = (part: string): string => `fabrics-${part.replace(/\s+/g, '-')}`;

/** The attributes that an input of a unit is typed in: a size has two sides. */
export const fieldsOf = ({ kind, name }: UnitInput): readonly string[] =>
  kind === 'size' ? [`${name}-width`, `${name}-height`] : [name];

/** The inputs of all units, by the names of their attributes, as the units say them. */
export const unitFields: readonly string[] = distinct([
  'unit',
  'method',
  'finished',
  ...[...definitions.flatMap(({ inputs }) => inputs), ...commonInputs].flatMap(fieldsOf),
  ...definitions.flatMap(({ fabrics }) => fabrics.map(fabricField)),
]);

/** A finished size: one length, or width and height. */
export const sizeFields = ['finished', 'finished-width', 'finished-height'] as const;

const isMeasured = ({ kind }: UnitInput): boolean =>
  kind === 'length' || kind === 'size' || kind === 'lengths';

/** Those that hold lengths: what they hold is written anew when the reader changes the units. */
export const lengthFields: readonly string[] = distinct(
  [...definitions.flatMap(({ inputs }) => inputs), ...commonInputs]
    .filter(isMeasured)
    .flatMap(fieldsOf),
);

const [usual = 'half-square-triangles'] = unitNames();

/** The name of a unit that there is. */
export const knownUnit = (text: string | undefined): UnitName =>
  unitNames().find((name) => name === text?.trim()) ?? usual;

export const definitionOf = ({ unit }: UnitSettings): UnitDefinition => UNITS[knownUnit(unit)];

/** Whether a unit is named by a width and a height. */
export const takesSize = ({ inputs }: UnitDefinition): boolean =>
  inputs.some(({ kind, name }) => kind === 'size' && name === 'finished');
