import { fail } from '../../errors/error.js';
import { type Money, ofCents } from './money.js';

/** @throws EighthsError `several-currencies` */
function checkSame(one: Money, other: Money): void {
  if (one.currency === other.currency) return;
  fail(
    'several-currencies',
    'currency',
    { one: one.currency, other: other.currency },
    'Amounts in {one} and in {other} cannot be added up. Give all of them in one currency.',
  );
}

/**
 * Amounts of one currency added up, exactly; of none, there is none.
 *
 * @throws EighthsError `several-currencies`, `too-much-money`
 * @example
 * sumMoney([money('12.50', 'USD'), money('0.75', 'USD')])?.cents; // 1325
 */
export function sumMoney(amounts: readonly Money[]): Money | undefined {
  const [first, ...others] = amounts;
  return others.reduce((sum, each) => {
    if (sum === undefined) return each;
    checkSame(sum, each);
    return ofCents(sum.cents + each.cents, each.currency);
  }, first);
}

/** One amount less another, exactly; below 0 where the other is more. */
export function lessMoney(from: Money, amount: Money): Money {
  checkSame(from, amount);
  return ofCents(from.cents - amount.cents, from.currency);
}

/** An amount so many times, exactly. */
export const timesMoney = ({ cents, currency }: Money, count: number): Money =>
  ofCents(cents * count, currency);
