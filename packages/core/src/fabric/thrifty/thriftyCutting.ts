import { entryAt } from '../../plan/entryAt.js';
import { Effort } from '../stock/effort.js';
import { TINY } from '../stock/simplex.js';
import { dot } from '../stock/stock.js';
import { boundOf, choose, type Worth } from './choose.js';
import { dive } from './dive.js';
import { fillSheet, type SheetRun, totalHeight } from './fillSheet.js';
import { improved } from './improve.js';
import { pricesFor } from './prices.js';
import type { Sheet } from './sheet.js';
import type { PlannedStrip } from './tables.js';
import { type PricedWorth, tallWorths, worthOf } from './worths.js';

/** A cutting, and why it cannot take less. */
export interface ThriftyCutting {
  /** Left out where none was found that is lower than what was known before. */
  readonly runs: readonly SheetRun[] | undefined;
  /** So high the strips must be together at least. */
  readonly height: number;
  readonly proof: readonly PricedWorth[];
}

/** How finely prices are rounded: coarse ones may prove more, fine ones lose nothing. */
const FINE = 2 ** 20;
const SCALES = [12, 2520, FINE];
/** Steps in which a choice of strips is looked for; the checker takes as many. */
export const STEPS_TO_CHOOSE = 50_000;
/** Improving takes at most so many steps where a problem is small: a few milliseconds. */
const IMPROVING = 150_000;
/** How many times the steps that it took to come so far improving may take, beyond small problems. */
const IMPROVING_RATE = 4;
/** How many choices of strips are refuted, each with prices of its own. */
const MOST_REFUTED = 24;

/**
 * A low cutting of a sheet, with a bound. Yields between pieces of work.
 *
 * Prices come from a linear program (`pricesFor`), with the tall pieces' rows as needs of their own.
 * Cuttings are filled strip by strip, or near what the program cuts in parts of strips, and the lowest
 * is improved. Then the bound is raised: the lowest choice of strips that all prices allow is either
 * cut, in parts of strips, or gives prices that refute it.
 *
 * @param tallRows how many rows the tall pieces need at least
 * @param known how high a cutting is that is known already
 * @param findable whether a cutting is looked for at all
 */
export function* thriftyCutting(
  sheet: Sheet,
  tallRows: readonly number[],
  known: number,
  findable: boolean,
  effort: Effort,
): Generator<void, ThriftyCutting> {
  const { levels, demands } = sheet;
  const heights = levels.map(({ height }) => height);
  const ways: Worth[] = tallWorths(sheet, tallRows);
  const proof: PricedWorth[] = [];
  let height = boundOf(heights, ways);
  if (!findable || height >= known) return { runs: undefined, height, proof };

  const met: PlannedStrip[] = [];
  const needs = ways.map(({ worths, total }, i) => ({
    amount: total,
    cost: entryAt(sheet.tall, i),
    of: worths,
  }));
  const relaxed = yield* pricesFor(sheet, needs, heights, met, effort);
  const prices = relaxed.prices.slice(0, demands.length);
  for (const scale of SCALES) {
    const worth = worthOf(sheet, tallRows, relaxed.prices, scale, effort);
    if (worth === undefined) continue;
    proof.push(worth);
    ways.push(worth);
  }
  height = Math.max(height, boundOf(heights, ways));

  const areas = demands.map((_, item) =>
    levels.reduce((area, { height: high, items, sizes }) => {
      const size = sizes[items.indexOf(item)];
      return size === undefined ? area : size * high;
    }, 0),
  );
  const [byArea, byPrice] = [areas, prices].map((values) => fillSheet(sheet, values, effort));
  let runs: readonly SheetRun[] = byArea ?? [];
  if (byPrice !== undefined && totalHeight(sheet, byPrice) < totalHeight(sheet, runs))
    runs = byPrice;
  yield* dive(sheet, met, effort, (other) => {
    if (totalHeight(sheet, other) < totalHeight(sheet, runs)) runs = other;
  });
  const improving = effort.atMost(
    Math.max(IMPROVING, IMPROVING_RATE * effort.spent - 2 * IMPROVING),
  );
  runs = yield* improved(sheet, runs, height, areas, prices, improving);
  effort.spend(improving.spent);
  const least = Math.min(known, totalHeight(sheet, runs));

  for (let refuted = 0; height < least && refuted < MOST_REFUTED && effort.allows(0); ) {
    const choosing = new Effort(STEPS_TO_CHOOSE);
    const choice = choose(heights, ways, height, choosing);
    effort.spend(choosing.spent);
    if (choice === 'unknown') break;
    if (choice === 'none') {
      height += 1;
      continue;
    }
    const strips = heights.map((_, level) => choice[level] ?? 0);
    const uses = strips.map((amount, level) => ({
      amount: -amount,
      cost: 0,
      of: strips.map((_, other) => (level === other ? -1 : 0)),
    }));
    const { cost, prices: own } = yield* pricesFor(sheet, uses, [], met, effort);
    if (cost < TINY * height) break;
    const of = own.slice(0, demands.length);
    const worth = worthOf(sheet, [], of, FINE / Math.max(...of), effort);
    if (worth === undefined || dot(worth.worths, strips) >= worth.total) break;
    refuted += 1;
    proof.push(worth);
    ways.push(worth);
  }
  return { runs: totalHeight(sheet, runs) < known ? runs : undefined, height, proof };
}
