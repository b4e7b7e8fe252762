import { fail } from '../errors/error.js';
import type { FractionInput, Length } from '../length/length.js';
import { greatestDivisor } from '../number/greatestDivisor.js';
import { MOST_UNITS } from './spec.js';
import type { Stock } from './stock/stock.js';

/**
 * Lengths as whole numbers of the greatest unit that they are all multiples of. The room, which is
 * none of them, is floored to that unit; and no strip has use for more room than all pieces take.
 *
 * @param lengths each with how many are needed.
 * @throws EighthsError `no-common-grid` where the unit is so small that plans could not be made.
 */
export function inUnits(
  room: FractionInput,
  lengths: readonly FractionInput[],
  demands: readonly number[],
): Stock {
  const denominator = lengths.reduce((all, { d }) => (all / greatestDivisor(all, d)) * d, 1n);
  const numerators = lengths.map(({ n, d }) => n * (denominator / d));
  const unit = numerators.reduce(greatestDivisor, 0n);
  const sizes = numerators.map((numerator) => numerator / unit);
  const all = sizes.reduce((sum, size, i) => sum + size * BigInt(demands[i] ?? 0), 0n);
  const fit = (room.n * denominator) / (room.d * unit);
  const capacity = Math.min(Number(fit), Number(all));
  if (capacity > MOST_UNITS) {
    fail(
      'no-common-grid',
      'pieces',
      { units: capacity, most: MOST_UNITS },
      'The lengths of these pieces have no common grid that a plan can be made on. Use lengths on one grid, such as eighths of an inch.',
    );
  }
  return { capacity, sizes: sizes.map(Number), demands };
}

/**
 * The fraction that a cut size is.
 *
 * @throws EighthsError `not-a-fraction` where it holds a root.
 */
export function fractionOf(value: Length, field: string): FractionInput {
  const fraction = value.toFraction();
  if (fraction !== undefined) return fraction;
  return fail(
    'not-a-fraction',
    field,
    { value },
    'A cut size lies on the lines of a ruler; {value} does not. Round it up to a grid, such as eighths of an inch.',
  );
}
