import { fail } from '../../errors/error.js';
import { type Length, type LengthInput, length } from '../../length/length.js';
import { lengthField } from '../../plan/field.js';
import { type Money, ofCents } from './money.js';
import { lessMoney } from './sums.js';

/** What is left of a price. */
export interface Margin {
  /** The price less the cost; below 0 where it costs more than it is sold for. */
  readonly gain: Money;
  /** The gain's part of the price, exactly; 0 where the price is 0. `2/5` is forty percent. */
  readonly share: Length;
}

/**
 * What is left of a price when the cost is paid, exactly.
 *
 * @example
 * marginOf(money(30, 'USD'), money(50, 'USD')).share.toString(); // '2/5'
 */
export function marginOf(cost: Money, price: Money): Margin {
  const gain = lessMoney(price, cost);
  const share = price.cents === 0 ? length(0) : length(gain.cents).dividedBy(price.cents);
  return { gain, share };
}

/**
 * The price of which at least this part is left when the cost is paid: cost / (1 − share), up to the
 * next cent.
 *
 * @throws EighthsError `not-a-margin` where the share is not at least 0 and below 1
 * @example
 * priceForMargin(money(30, 'USD'), '0.4').cents; // 5000
 */
export function priceForMargin(cost: Money, share: LengthInput, field = 'margin'): Money {
  const value = lengthField(share, field, 'any');
  const kept = length(1).minus(value);
  if (value.sign() < 0 || kept.sign() <= 0 || value.toFraction() === undefined) {
    fail(
      'not-a-margin',
      field,
      { value },
      'A margin is the part of the price that is left, from 0 up to but not including 1 (0.4 for forty in a hundred), not {value}.',
    );
  }
  const exact = length(cost.cents).dividedBy(kept);
  return ofCents(exact.toGrid(1, 'up').toNumber(), cost.currency);
}
