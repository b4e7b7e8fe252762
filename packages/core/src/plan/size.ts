import type { Length, LengthInput } from '../length/length.js';
import { lengthField, type Sign } from './field.js';

/** Width across and height down, as the block faces the person. */
export interface Size {
  readonly width: Length;
  readonly height: Length;
}

/** A size as people give it: one length for a square, or width and height. */
export type SizeInput = LengthInput | { readonly width: LengthInput; readonly height: LengthInput };

const hasSides = (
  input: SizeInput,
): input is { readonly width: LengthInput; readonly height: LengthInput } =>
  typeof input === 'object' && input !== null && 'width' in input && 'height' in input;

/**
 * The size in a spec's field.
 *
 * @throws EighthsError `length-syntax` or `not-positive`, with the path of the side it is about.
 */
export function sizeField(input: SizeInput, field: string, sign: Sign = 'positive'): Size {
  if (!hasSides(input)) {
    const side = lengthField(input, field, sign);
    return { width: side, height: side };
  }
  return {
    width: lengthField(input.width, `${field}.width`, sign),
    height: lengthField(input.height, `${field}.height`, sign),
  };
}

/** A size with the same added to it on every side: a finished one and its seam allowances. */
export const grownBy = ({ width, height }: Size, side: Length): Size => ({
  width: width.plus(side.times(2)),
  height: height.plus(side.times(2)),
});

/** Its two sides, or the one of a square. */
export const sidesOf = ({ width, height }: Size): readonly Length[] =>
  width.equals(height) ? [width] : [width, height];
