import { entryAt } from '../../plan/entryAt.js';
import { certificateOf } from '../certificate.js';
import { planOf } from '../plainPlan.js';
import type { CuttingPlan } from '../plan.js';
import type { CuttingTask } from '../readCutting.js';
import { cuttingStock } from '../stock/cuttingStock.js';
import type { Effort } from '../stock/effort.js';
import { thriftyTask } from './sheetOf.js';
import { thriftyCutting } from './thriftyCutting.js';
import { thriftyStrips } from './thriftyStrips.js';

/** The thrifty plan: as the plain one where none was found that is shorter. */
export function* thriftyPlan(
  task: CuttingTask,
  plain: CuttingPlan,
  effort: Effort,
): Generator<void, CuttingPlan> {
  const thrifty = thriftyTask(task.pieces, task.width);
  const { sheet, sizes, tall, unit } = thrifty;
  const certificate = [];
  for (const group of tall) {
    const { bound, searched } = yield* cuttingStock(group.stock, effort);
    certificate.push(certificateOf(group, bound, searched));
  }
  const { runs, height, proof } = yield* thriftyCutting(
    sheet,
    certificate.map(({ strips }) => strips),
    Math.round(plain.length.dividedBy(unit).toNumber()),
    thrifty.findable,
    effort,
  );
  const strips = runs === undefined ? plain.strips : thriftyStrips(thrifty, task.width, runs);
  const worths = proof.map(({ prices, rows }) => ({
    prices: task.pieces.map((_, index) => {
      const size = sizes.findIndex(({ pieces }) => pieces.includes(index));
      // What is listed and not cut, a count of 0, has no size.
      return size < 0 ? 0 : entryAt(prices, size);
    }),
    rows,
  }));
  return { ...planOf(task, 'thrifty', strips, unit.times(height), certificate), worths };
}
