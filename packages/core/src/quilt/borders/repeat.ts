import { fail } from '../../errors/error.js';
import type { Length } from '../../length/length.js';
import { stepsThatFit } from '../whole.js';

/**
 * How many repeat units make a side of a pieced border.
 *
 * @throws EighthsError `repeat-does-not-fit` where they do not make it exactly: with the two units next
 *   to it that would, and how wide a plain border inside would make the side fit the unit as it is
 */
export function unitsAlong(side: Length, unit: Length, field: string): number {
  const fewer = stepsThatFit(side, unit);
  if (fewer > 0 && unit.times(fewer).equals(side)) return fewer;
  const more = fewer + 1;
  return fail(
    'repeat-does-not-fit',
    `${field}.unit`,
    {
      side,
      unit,
      fewer: Math.max(fewer, 1),
      fewerUnit: side.dividedBy(Math.max(fewer, 1)),
      more,
      moreUnit: side.dividedBy(more),
      spacer: unit.times(more).minus(side).dividedBy(2),
    },
    'A repeat of {unit} does not divide a side of {side} exactly. {fewer} of {fewerUnit} or {more} of {moreUnit} would, or a plain border that finishes {spacer} wide inside it.',
  );
}
