import { fail } from '../../errors/error.js';
import { type Length, type LengthInput, length } from '../../length/length.js';
import { lengthField, missing } from '../../plan/field.js';
import { fractionOf } from '../units.js';

/** A hundred yards: nobody has a longer piece on the shelf. */
export const LONGEST = 3_600;

/**
 * A side of a piece of fabric.
 *
 * @throws EighthsError `not-positive`, `out-of-range` beyond a hundred yards, `not-a-fraction`
 */
export function fabricSide(input: LengthInput | undefined, field: string): Length {
  const value = lengthField(input ?? missing(field), field);
  if (value.compareTo(LONGEST) > 0) {
    fail(
      'out-of-range',
      field,
      { value, least: length(0), most: length(LONGEST) },
      'A piece of fabric of {value} is more than can be planned. Give a size up to {most}, its usable part.',
    );
  }
  fractionOf(value, field);
  return value;
}
