import { choiceField } from '../plan/field.js';
import type { UnitPlan } from './plan.js';
import type { UnitSpec } from './spec.js';
import { UNITS, type UnitName } from './units.js';

/**
 * Every unit's name, in the order of the registry.
 *
 * @example
 * unitNames()[0]; // 'half-square-triangles'
 */
export const unitNames = (): readonly UnitName[] =>
  Object.keys(UNITS).filter((name): name is UnitName => name in UNITS);

/**
 * The plan of a unit that is chosen by name.
 *
 * @throws EighthsError `unknown-choice` where there is no such unit, and what the unit itself refuses
 * @example
 * planUnit('half-square-triangles', { finished: 3 }).cuts[0].width.toString(); // '3 7/8'
 */
export const planUnit = (name: UnitName, spec: UnitSpec): UnitPlan =>
  UNITS[choiceField(name, 'unit', unitNames())].plan(spec);
