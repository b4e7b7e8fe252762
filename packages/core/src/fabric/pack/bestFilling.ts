import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import { dot } from '../stock/stock.js';
import type { Weighing } from './bounds.js';
import { fill, type Rule } from './fill.js';
import type { Filling, Item, Sheet } from './rectangles.js';

/**
 * The filling of a sheet that is worth most. With greed 1 a piece's worth grows with its size, so that
 * large pieces are not left for the end.
 */
export function bestFilling(
  sheet: Sheet,
  items: readonly Item[],
  left: readonly number[],
  { worths: areas, table }: Weighing,
  greed: number,
  effort: Effort,
): Filling {
  const all = sheet.width * sheet.height;
  const worths = areas.map((each) => each * (1 + (greed * each) / all));
  const most = Math.min(table?.worth(sheet.width, sheet.height) ?? all, dot(areas, left));
  let best: Filling = { parts: { kind: 'left', ...sheet }, counts: items.map(() => 0) };
  let chosen: Rule | undefined;
  const full = (): boolean => dot(areas, best.counts) >= most;
  /** Whether that rule is better than the best so far. */
  const better = (rule: Rule): boolean => {
    if (chosen !== undefined && (full() || !effort.allows(0))) return false;
    const filling = fill(sheet, items, left, rule, table, effort);
    if (chosen !== undefined && dot(worths, filling.counts) <= dot(worths, best.counts))
      return false;
    [best, chosen] = [filling, rule];
    return true;
  };
  for (const rule of rulesFor(items)) better(rule);

  // Other orders, and grids that leave room beside them, as long as they help.
  for (let improved = true; improved && !full() && effort.allows(0); ) {
    improved = false;
    for (const [at, item] of items.entries()) {
      const rule: Rule | undefined = chosen;
      if (rule === undefined || entryAt(left, at) === 0) continue;
      const order = [at, ...rule.order.filter((other) => other !== at)];
      const most = Math.min(
        MOST_CAP,
        entryAt(left, at),
        Math.floor(Math.max(sheet.width, sheet.height) / Math.min(item.width, item.height)),
      );
      for (let cap = 0; cap <= most; cap += 1) {
        const caps = new Map(rule.caps);
        if (cap > 0) caps.set(at, cap);
        for (const grow of ['across', 'down'] as const) {
          if (better({ ...rule, order, caps, grow })) improved = true;
        }
      }
    }
  }
  return best;
}

/** Grids are tried up to so many columns or rows less than all. */
const MOST_CAP = 12;

function rulesFor(items: readonly Item[]): readonly Rule[] {
  const by = (worth: (item: Item) => number): readonly number[] =>
    items
      .map((item, at) => ({ at, worth: worth(item) }))
      .sort((a, b) => b.worth - a.worth || a.at - b.at)
      .map(({ at }) => at);
  const orders = new Map(
    [
      by(({ width, height }) => width * height),
      by(({ width, height }) => Math.max(width, height)),
      by(({ width, height }) => Math.min(width, height)),
      by(({ width }) => width),
      by(({ height }) => height),
    ].map((order) => [order.join(), order]),
  );
  const rules: Rule[] = [];
  for (const table of [true, false]) {
    for (const order of orders.values()) {
      for (const smallestFirst of [true, false]) {
        for (const split of ['longer', 'across', 'down', 'shorter'] as const) {
          for (const grow of ['across', 'down'] as const) {
            rules.push({ order, grow, split, smallestFirst, table, caps: new Map() });
          }
        }
      }
    }
  }
  return rules;
}
