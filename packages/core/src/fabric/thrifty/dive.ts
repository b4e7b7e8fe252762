import type { Effort } from '../stock/effort.js';
import { TINY } from '../stock/simplex.js';
import { timesWithin, without } from '../stock/stock.js';
import { fillSheet, layoutOf, type SheetRun } from './fillSheet.js';
import { pricesFor } from './prices.js';
import type { Sheet } from './sheet.js';
import type { PlannedStrip } from './tables.js';

/**
 * Cuttings near the relaxation: whole strips of it are settled, at least one of those that it cuts
 * most of, and what is left is relaxed again.
 *
 * @param known strips met so far; new ones are added
 * @param offer takes each cutting that is found
 */
export function* dive(
  sheet: Sheet,
  known: PlannedStrip[],
  effort: Effort,
  offer: (runs: readonly SheetRun[]) => void,
): Generator<void, void> {
  const heights = sheet.levels.map(({ height }) => height);
  const runs: SheetRun[] = [];
  let left = sheet.demands;
  while (left.some((count) => count > 0) && effort.allows(0)) {
    const { prices, parts } = yield* pricesFor(
      { ...sheet, demands: left },
      [],
      heights,
      known,
      effort,
    );
    const most = Math.max(...parts.map(({ amount }) => amount));
    const before = runs.length;
    for (const { strip, amount } of parts) {
      let wanted = Math.max(amount === most ? 1 : 0, Math.floor(amount + TINY));
      while (wanted > 0) {
        const rest = { ...sheet, demands: left };
        const layout = layoutOf(rest, strip.level, strip.sections, prices, effort);
        const times = Math.min(wanted, timesWithin(layout.counts, left));
        if (layout.sections.length === 0) break;
        runs.push({ layout, times });
        left = without(left, layout.counts, times);
        wanted -= times;
      }
    }
    if (runs.length === before) break;
    offer([...runs, ...fillSheet({ ...sheet, demands: left }, prices, effort)]);
  }
}
