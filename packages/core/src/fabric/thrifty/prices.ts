import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import { Simplex, TINY } from '../stock/simplex.js';
import { dot } from '../stock/stock.js';
import type { Sheet } from './sheet.js';
import { type PlannedStrip, Tables } from './tables.js';

/** Something that strips count for besides their pieces. */
export interface Need {
  /** How much of it is needed; below nothing where strips use it up. */
  readonly amount: number;
  /** What it costs otherwise. */
  readonly cost: number;
  /** What a strip of each level counts for. */
  readonly of: readonly number[];
}

/** What the problem would take if parts of strips could be cut. */
export interface Relaxed {
  readonly cost: number;
  readonly prices: readonly number[];
  /** The strips that are cut, and how many of each. */
  readonly parts: readonly { readonly strip: PlannedStrip; readonly amount: number }[];
}

/** How much more than it costs a strip must be worth to be taken. */
const WORTHWHILE = 1e-7;

/**
 * What one more of each size would cost, and then of each need: column generation (Gilmore and Gomory
 * 1961, 1965) over strips of every level, parts of strips allowed.
 *
 * @param stripCosts what a strip of each level costs
 * @param known strips met so far; new ones are added
 */
export function* pricesFor(
  sheet: Sheet,
  needs: readonly Need[],
  stripCosts: readonly number[],
  known: PlannedStrip[],
  effort: Effort,
): Generator<void, Relaxed> {
  const { demands, levels } = sheet;
  const sizes = demands.length;
  // A piece by itself costs the narrowest strip that it can be cut from.
  const alone = demands.map((_, item) =>
    Math.min(...levels.map(({ height, items }) => (items.includes(item) ? height : Infinity))),
  );
  const simplex = new Simplex(
    [...demands, ...needs.map(({ amount }) => amount)],
    (i) => (i >= sizes && entryAt(needs, i - sizes).amount < 0 ? -1 : 1),
    (i) => alone[i] ?? needs[i - sizes]?.cost ?? 0,
  );
  const columnOf = (strip: PlannedStrip) => ({
    strip,
    counts: [...strip.counts, ...needs.map(({ of }) => entryAt(of, strip.level))],
    cost: stripCosts[strip.level] ?? 0,
  });
  const columns = known.map(columnOf);
  while (effort.allows(0)) {
    effort.spend((columns.length + sizes + needs.length) * (sizes + needs.length));
    let most = WORTHWHILE;
    let best: (typeof columns)[number] | undefined;
    for (const column of columns) {
      const gain = dot(column.counts, simplex.duals) - column.cost;
      if (gain > most) [most, best] = [gain, column];
    }
    if (best !== undefined) {
      simplex.use(best);
      continue;
    }
    if (simplex.releaseSurplus()) continue;
    yield;
    const tables = new Tables(sheet, simplex.duals.slice(0, sizes), effort);
    const before = columns.length;
    for (const level of levels.keys()) {
      const needed = needs.reduce(
        (sum, { of }, i) => sum + entryAt(of, level) * entryAt(simplex.duals, sizes + i),
        0,
      );
      if (tables.strip(level) + needed - (stripCosts[level] ?? 0) <= WORTHWHILE) continue;
      const strip = tables.plannedStrip(level);
      known.push(strip);
      columns.push(columnOf(strip));
    }
    if (columns.length === before) break;
  }
  const parts = columns.flatMap((column) => {
    const amount = simplex.amountOf(column);
    return amount > TINY ? [{ strip: column.strip, amount }] : [];
  });
  return { cost: simplex.cost, prices: simplex.duals, parts };
}
