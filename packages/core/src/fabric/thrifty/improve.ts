import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import { dot } from '../stock/stock.js';
import { fillSheet, heightOf, type SheetRun, totalHeight } from './fillSheet.js';
import type { Sheet } from './sheet.js';

/** Strips cut alike that are taken apart at once, at most. */
const ALIKE = 3;
/** How far prices are moved, up and down together. */
const SPREAD = 0.4;
/** Rounds that change nothing before it is given up. */
const PATIENCE = 40;

/** Numbers from 0 up to 1 without a pattern, the same ones each time (a linear congruential sequence). */
function scattered(): () => number {
  let state = 1;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/**
 * A cutting made shorter: again and again a few strips, rather wasteful ones, are taken apart and
 * filled anew, by area and by prices that are moved a little; what is no longer than before is kept
 * (large neighborhood search, Shaw 1998).
 */
export function* improved(
  sheet: Sheet,
  given: readonly SheetRun[],
  enough: number,
  areas: readonly number[],
  prices: readonly number[],
  effort: Effort,
): Generator<void, readonly SheetRun[]> {
  const random = scattered();
  const wasteOf = ({ layout }: SheetRun): number =>
    1 - dot(layout.counts, areas) / (heightOf(sheet, layout) * sheet.capacity);
  let runs = given;
  let total = totalHeight(sheet, runs);
  for (let idle = 0; idle < PATIENCE && total > enough && effort.allows(0); idle += 1) {
    yield;
    const chosen = runs
      .flatMap((run) => Array.from({ length: Math.min(run.times, ALIKE) }, () => run))
      .map((run) => ({ run, weight: (wasteOf(run) + 1 / 50) * random() }))
      .sort((a, b) => b.weight - a.weight)
      .slice(0, 2 + Math.floor(15 * random()))
      .map(({ run }) => run);
    const part = {
      ...sheet,
      demands: sheet.demands.map((_, item) =>
        chosen.reduce((sum, { layout }) => sum + entryAt(layout.counts, item), 0),
      ),
    };
    const old = chosen.reduce((sum, { layout }) => sum + heightOf(sheet, layout), 0);
    const moved = prices.map((price) => price * (1 + SPREAD * (random() - 1 / 2)));
    const tries = [areas, moved].map((values) => fillSheet(part, values, effort));
    const better = tries
      .map((filled) => ({ filled, height: totalHeight(sheet, filled) }))
      .reduce((a, b) => (b.height <= a.height ? b : a));
    if (better.height > old) continue;
    runs = [
      ...runs.flatMap((run) => {
        const times = run.times - chosen.filter((one) => one === run).length;
        return times === 0 ? [] : [{ ...run, times }];
      }),
      ...better.filled,
    ];
    if (better.height < old) idle = 0;
    total -= old - better.height;
  }
  return runs;
}
