import { type Rational, rational } from '../number/rational.js';

/** The units that lengths are read and written in. */
export type LengthUnit = 'in' | 'ft' | 'yd' | 'mm' | 'cm' | 'm';

/**
 * Inches in one of each unit, exactly. 1 in = 25.4 mm and 1 yd = 0.9144 m: international yard and
 * pound agreement, in the United States by an addendum to NBS Circular 572 (1 July 1959).
 */
export const inchesIn: Readonly<Record<LengthUnit, Rational>> = {
  in: rational(1n),
  ft: rational(12n),
  yd: rational(36n),
  mm: rational(5n, 127n),
  cm: rational(50n, 127n),
  m: rational(5000n, 127n),
};

export const UNITS = Object.keys(inchesIn) as readonly LengthUnit[];

/** The ways people write a unit, in lower case, without the dot that may follow. */
const spellings: Readonly<Record<LengthUnit, string>> = {
  in: 'in inch inches "',
  ft: "ft foot feet '",
  yd: 'yd yds yard yards',
  mm: 'mm millimeter millimeters millimetre millimetres',
  cm: 'cm centimeter centimeters centimetre centimetres',
  m: 'm meter meters metre metres',
};

const bySpelling: ReadonlyMap<string, LengthUnit> = new Map(
  UNITS.flatMap((unit) =>
    spellings[unit].split(' ').map((spelling): [string, LengthUnit] => [spelling, unit]),
  ),
);

export const unitSpelled = (spelling: string): LengthUnit | undefined => bySpelling.get(spelling);

/** Whether somebody may be on the way to a unit: `inc`. */
export const beginsUnit = (text: string): boolean =>
  [...bySpelling.keys()].some((spelling) => spelling.startsWith(text));
