import type { FabricPrice } from '../money/fabricCost.js';
import { moneyReader } from '../money/money.js';
import type { ReadRecipe } from '../recipe/schema.js';

/**
 * The prices of a recipe's fabrics by their ids; those that have none are left out.
 *
 * @throws EighthsError `unknown-currency`, `not-money`, `too-much-money`
 */
export function pricesOf({ fabrics, currency }: ReadRecipe): ReadonlyMap<string, FabricPrice> {
  const read = moneyReader(currency, 'currency');
  const prices = new Map<string, FabricPrice>();
  fabrics.forEach(({ id, price }, index) => {
    if (price === undefined) return;
    const field = `fabrics[${index}].price`;
    prices.set(
      id,
      typeof price === 'object'
        ? { each: read(price.amount, `${field}.amount`), per: price.per }
        : { each: read(price, field), per: 'yard' },
    );
  });
  return prices;
}
