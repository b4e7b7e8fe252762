import { type LengthInput, length, type SizeInput, type UnitDefinition } from '@eighths/core';
import { measuresFor, type Units } from '../base/measures.js';
import { readSides, textOf } from '../base/text.js';
import { definitionOf, sizeFields, takesSize, type UnitSettings, unitFields } from './fields.js';

/** What the page or the reader has set; what nobody has is not there. */
export type GivenUnitSettings = Readonly<Partial<Record<string, string>>>;

/** Where any of these is given, nobody needs an example's size. */
const SIZES = [...sizeFields, 'center'];

/** The trade's metric seam allowance, and a grid of millimeters. */
export const METRIC_GRID = '1 mm';
const metric: GivenUnitSettings = { seam: '0.75', grid: METRIC_GRID };

const nothing: UnitSettings = Object.fromEntries(unitFields.map((field) => [field, '']));

/** An example's inches as they are typed; in metric an inch becomes the round 2.5 centimeters. */
function typedExample(value: LengthInput, units: Units): string {
  const inches = length(value);
  const shown = units === 'metric' ? inches.times(length('2.5 cm')) : inches;
  return measuresFor(units, 'en').typed(shown);
}

function typedSize(value: SizeInput, units: Units): string {
  if (typeof value === 'object' && 'width' in value) {
    return textOf({
      width: typedExample(value.width, units),
      height: typedExample(value.height, units),
    });
  }
  return typedExample(value, units);
}

/** What a unit starts with, for a page that names no size. */
function exampleOf({ example }: UnitDefinition, given: GivenUnitSettings, units: Units) {
  const { finished, strips } = example;
  const named = SIZES.some((field) => given[field] !== undefined);
  return {
    ...(named || finished === undefined ? {} : { finished: typedSize(finished, units) }),
    ...(strips && { strips: strips.map((strip) => typedExample(strip, units)).join('; ') }),
  };
}

/** The finished size in the inputs that the unit has for it: one length, or width and height. */
function sized(settings: UnitSettings, definition: UnitDefinition): UnitSettings {
  const { finished = '', 'finished-width': width = '' } = settings;
  if (!takesSize(definition)) {
    const side = finished.trim() === '' ? width : finished;
    return { ...settings, finished: side, 'finished-width': '', 'finished-height': '' };
  }
  if (finished.trim() === '') return settings;
  const sides = readSides(finished, (side) => side);
  const [across, down] = typeof sides === 'string' ? [sides, ''] : [sides.width, sides.height];
  return { ...settings, finished: '', 'finished-width': across, 'finished-height': down };
}

/** Every setting, with what is not given filled in. */
export function withUnitDefaults(given: GivenUnitSettings, units: Units): UnitSettings {
  const named = Object.entries(given).flatMap(([field, text]) =>
    text === undefined ? [] : [[field, text] as const],
  );
  const unit = { ...nothing, unit: given.unit ?? '' };
  const definition = definitionOf(unit);
  const filled = {
    ...nothing,
    unit: definition.name,
    count: '1',
    ...(units === 'metric' ? metric : {}),
    ...exampleOf(definition, given, units),
    ...Object.fromEntries(named),
  };
  return sized(filled, definition);
}

/** What stays when the reader takes another unit, if that can be made so. */
const KEPT = ['count', 'seam', 'grid', 'usable', 'oversize', ...sizeFields];

/** The same size as another unit where that can be made, else the unit's own example. */
export function otherUnit(
  unit: string,
  settings: UnitSettings,
  units: Units,
  canBeMade: (settings: UnitSettings) => boolean,
): UnitSettings {
  const kept = (fields: readonly string[]) =>
    withUnitDefaults(
      { unit, ...Object.fromEntries(fields.map((field) => [field, settings[field] ?? ''])) },
      units,
    );
  const same = kept(KEPT);
  return canBeMade(same) ? same : kept(KEPT.slice(0, 3));
}
