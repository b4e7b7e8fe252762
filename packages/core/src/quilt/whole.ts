import { fail } from '../errors/error.js';
import { type Length, type LengthInput, length } from '../length/length.js';
import { lengthField } from '../plan/field.js';
import { type Size, type SizeInput, sizeField } from '../plan/size.js';

/** No quilt is longer: a bound, so that nothing is counted without end. */
const LONGEST_QUILT = 10_000;

/** How often `step` has to be laid end to end to reach `whole`, at least 0. Exact. */
export function stepsToCover(whole: Length, step: Length): number {
  const steps = ratio(whole, step).toGrid(1, 'up').toNumber();
  return Math.max(0, steps);
}

/** How often `step` fits into `whole`, at least 0. Exact. */
export function stepsThatFit(whole: Length, step: Length): number {
  const steps = ratio(whole, step).toGrid(1, 'down').toNumber();
  return Math.max(0, steps);
}

/** A ratio of lengths; the divisor is rational, or rational times a root. */
function ratio(whole: Length, step: Length): Length {
  if (step.toFraction() !== undefined) return whole.dividedBy(step);
  return whole.times(step).dividedBy(step.times(step));
}

/**
 * A length of at most 10,000 inches.
 *
 * @throws EighthsError `out-of-range`, and as `lengthField`
 */
export function boundedLength(
  input: LengthInput,
  field: string,
  sign: 'positive' | 'zero or more' = 'positive',
): Length {
  const value = lengthField(input, field, sign);
  checkBound(value, field);
  return value;
}

/**
 * A size of at most 10,000 inches each way.
 *
 * @throws EighthsError `out-of-range`, and as `sizeField`
 */
export function boundedSize(input: SizeInput, field: string): Size {
  const size = sizeField(input, field);
  checkBound(size.width, field);
  checkBound(size.height, field);
  return size;
}

function checkBound(value: Length, field: string): void {
  if (value.compareTo(LONGEST_QUILT) <= 0) return;
  fail(
    'out-of-range',
    field,
    { value, least: length(0), most: length(LONGEST_QUILT) },
    'This must be at most {most} inches, not {value}.',
  );
}

/** A size whose sides are moved to the grid. */
export const sizeToGrid = ({ width, height }: Size, grid: Length, way: 'up' | 'down'): Size => ({
  width: width.toGrid(grid, way),
  height: height.toGrid(grid, way),
});
