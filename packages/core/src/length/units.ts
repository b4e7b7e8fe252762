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

/**
 * The ways people write a unit in English, German, French, Spanish and Japanese, in lower case,
 * without the dot that may follow.
 */
const spellings: Readonly<Record<LengthUnit, string>> = {
  in: 'in inch inches " zoll pouce pouces po pulgada pulgadas pulg インチ',
  ft: "ft foot feet ' fuß fuss pied pieds pie pies フィート",
  yd: 'yd yds yard yards yarda yardas ヤード',
  mm: 'mm millimeter millimeters millimetre millimetres millimètre millimètres milímetro milímetros ミリ ミリメートル',
  cm: 'cm centimeter centimeters centimetre centimetres zentimeter centimètre centimètres centímetro centímetros センチ センチメートル',
  m: 'm meter meters metre metres mètre mètres metro metros メートル',
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
