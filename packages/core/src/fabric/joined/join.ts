import { fail } from '../../errors/error.js';
import type { Length, LengthInput } from '../../length/length.js';
import { choiceField, lengthField } from '../../plan/field.js';

/** How the ends of strips are sewn together. */
export type Join = 'straight' | 'diagonal';

/** @throws EighthsError `unknown-choice` */
export const readJoin = (join: Join = 'diagonal'): Join =>
  choiceField(join, 'join', ['straight', 'diagonal']);

/** @throws EighthsError `not-positive` where it is below 0 */
export const readSeam = (seam: LengthInput = '1/4'): Length =>
  lengthField(seam, 'seam', 'zero or more');

/** What a join uses up of the strips' length. */
export const joinUses = (join: Join, width: Length, seam: Length): Length =>
  join === 'diagonal' ? width : seam.times(2);

/**
 * How many strips make up a length.
 *
 * @throws EighthsError `strip-too-short` where a join would use up a whole strip.
 */
export function stripsFor(total: Length, usable: Length, uses: Length): number {
  if (total.compareTo(usable) <= 0) return 1;
  if (usable.compareTo(uses) <= 0) {
    fail(
      'strip-too-short',
      'width',
      { usable, needed: uses },
      'A strip {usable} long is too short to be joined: each join uses up {needed}. It must be longer than that.',
    );
  }
  return total.minus(uses).dividedBy(usable.minus(uses)).toGrid(1, 'up').toNumber();
}
