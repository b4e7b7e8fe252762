import { marginOf, priceForMargin } from '../money/margin.js';
import { lessMoney, sumMoney, timesMoney } from '../money/sums.js';
import type { KitFabric, KitPrice } from './plan.js';
import type { KitsTask } from './readKits.js';

/** What a kit costs and is sold for; undefined where a fabric has no price. */
export function kitPrice(task: KitsTask, fabrics: readonly KitFabric[]): KitPrice | undefined {
  if (fabrics.some(({ cost }) => cost === undefined)) return undefined;
  const { people, spares, extras, margin } = task;
  const parts = [...fabrics, ...extras].flatMap(({ cost }) => cost ?? []);
  const cost = sumMoney(parts);
  if (cost === undefined) return undefined;
  const total = timesMoney(cost, people + spares);
  const price = margin === undefined ? task.price : priceForMargin(cost, margin);
  if (price === undefined) return { cost, total };
  return {
    cost,
    total,
    price,
    margin: marginOf(cost, price),
    gain: lessMoney(timesMoney(price, people), total),
  };
}
