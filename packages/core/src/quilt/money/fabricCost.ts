import { type Length, length } from '../../length/length.js';
import { type Money, ofCents } from './money.js';

/** What fabric is priced by. */
export type PricedBy = 'yard' | 'meter';

/** The price of a fabric. */
export interface FabricPrice {
  readonly each: Money;
  readonly per: PricedBy;
}

const UNITS: Readonly<Record<PricedBy, Length>> = { yard: length('1 yd'), meter: length('1 m') };

/**
 * What a length of fabric costs: the price times the length in yards or meters, exactly, and then
 * once to the nearest cent, half a cent up.
 *
 * @throws EighthsError `too-much-money`
 * @example
 * const price = { each: money('12.50', 'USD'), per: 'yard' };
 * fabricCost(price, length('1 3/8 yd')).cents; // 1719
 */
export function fabricCost({ each, per }: FabricPrice, amount: Length): Money {
  const exact = amount.times(each.cents).dividedBy(UNITS[per]);
  return ofCents(exact.toGrid(1, 'nearest').toNumber(), each.currency);
}
