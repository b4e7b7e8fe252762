import { entryAt } from '../../plan/entryAt.js';
import { Effort } from '../stock/effort.js';
import { dot } from '../stock/stock.js';
import { bestFilling } from './bestFilling.js';
import { byArea, byCount, fewestSheets, type Weighing } from './bounds.js';
import { exactPacking } from './exact.js';
import type { Layout } from './layout.js';
import { areaOf, countInto, fitsIn, type Item, type Sheet } from './rectangles.js';

/** What is cut from the sheets, and what is known of it. */
export interface Packing {
  readonly layouts: readonly Layout[];
  /** How many of each item are not cut. */
  readonly left: readonly number[];
  /** Whether it is proven that no cutting leaves less of the items' area. */
  readonly leastLeft: boolean;
  /** So many sheets are needed at least for all items that fit; said where all sheets are of one size. */
  readonly fewest: number;
}

/**
 * Packs items into sheets by guillotine cuts: little area of items is left uncut, and few sheets are
 * used. Deterministic: the effort is counted in steps.
 *
 * Sheet by sheet, the best of many fillings by rule, made better by other orders; then, where there
 * are few pieces and a doubt is left, a complete search.
 */
export function pack(sheets: readonly Sheet[], items: readonly Item[], steps: number): Packing {
  const needed = items.map((item) =>
    sheets.some((sheet) => fitsIn(item, sheet)) ? item.count : 0,
  );
  const fitting = items.map((item, i) => ({ ...item, count: entryAt(needed, i) }));
  const weighed = byArea(sheets, fitting, new Effort(steps / 3));
  const { worths: areas } = weighed;
  const oneSize = sheets.length === 1;
  let fewest = oneSize ? fewestSheets([weighed], needed) : 0;

  const leftOf = (layouts: readonly Layout[]): readonly number[] => {
    const cut = items.map(() => 0);
    for (const { parts, count } of layouts) {
      countInto(
        items.map(() => 0),
        parts,
      ).forEach((each, i) => {
        cut[i] = entryAt(cut, i) + count * each;
      });
    }
    return items.map(({ count }, i) => count - entryAt(cut, i));
  };
  const unfit = dot(
    areas,
    items.map(({ count }, i) => count - entryAt(needed, i)),
  );
  const holds = sheets.reduce((sum, { count }, i) => sum + count * entryAt(weighed.most, i), 0);
  const leastArea = unfit + Math.max(0, dot(areas, needed) - holds);
  const score = (layouts: readonly Layout[]): readonly number[] => [
    dot(areas, leftOf(layouts)),
    layouts.reduce((sum, { count }) => sum + count, 0),
    layouts.length,
  ];
  const settled = (layouts: readonly Layout[]): boolean => {
    const [area = 0, used = 0] = score(layouts);
    return area === leastArea && (area > unfit || !oneSize || used === fewest);
  };

  const effort = new Effort(steps / 3);
  let best: readonly Layout[] = [];
  const offer = (other: readonly Layout[]): void => {
    if (best.length === 0 || before(score(other), score(best))) best = other;
  };
  for (const order of sheetOrders(sheets)) {
    if (best.length > 0 && settled(best)) continue;
    offer(sheetBySheet(sheets, order, fitting, weighed, 0, effort));
  }
  if (oneSize && !settled(best)) {
    const counted = byCount(sheets, fitting, new Effort(steps / 3));
    fewest = fewestSheets([weighed, ...counted], needed);
  }
  for (const order of sheetOrders(sheets)) {
    if (settled(best) || !effort.allows(0)) continue;
    offer(sheetBySheet(sheets, order, fitting, weighed, 1, effort));
  }
  let searched = false;
  if (!settled(best)) {
    const found = exactPacking(sheets, fitting, new Effort(steps));
    searched = found !== undefined;
    if (found !== undefined) offer(together(found));
  }
  const [area = 0, used = 0] = score(best);
  return {
    layouts: best,
    left: leftOf(best),
    leastLeft: searched || area === leastArea,
    fewest: searched && oneSize ? used : fewest,
  };
}

/** Whether one list of numbers comes before another: the first difference decides. */
function before(one: readonly number[], other: readonly number[]): boolean {
  const at = one.findIndex((value, i) => value !== other[i]);
  return at >= 0 && entryAt(one, at) < entryAt(other, at);
}

/** The small sheets first, and the great ones first. */
function sheetOrders(sheets: readonly Sheet[]): readonly (readonly number[])[] {
  const area = (at: number): number => areaOf(entryAt(sheets, at));
  const upward = sheets.map((_, at) => at).sort((a, b) => area(a) - area(b));
  return sheets.length > 1 ? [upward, [...upward].reverse()] : [upward];
}

/** Layouts that are cut alike, as one. */
function together(layouts: readonly Layout[]): readonly Layout[] {
  const by = new Map<string, Layout>();
  for (const layout of layouts) {
    const key = JSON.stringify([layout.sheet, layout.parts]);
    by.set(key, { ...layout, count: layout.count + (by.get(key)?.count ?? 0) });
  }
  return [...by.values()];
}

/** Each sheet is filled as well as can be from what is left, and as many alike as there are pieces for. */
function sheetBySheet(
  sheets: readonly Sheet[],
  order: readonly number[],
  items: readonly Item[],
  weighed: Weighing,
  greed: number,
  effort: Effort,
): readonly Layout[] {
  const layouts: Layout[] = [];
  let left: readonly number[] = items.map(({ count }) => count);
  for (const index of order) {
    const sheet = entryAt(sheets, index);
    let remaining = sheet.count;
    while (remaining > 0 && left.some((count) => count > 0)) {
      const { parts, counts } = bestFilling(sheet, items, left, weighed, greed, effort);
      if (parts.kind === 'left') break;
      const times = Math.min(
        remaining,
        ...left.map((each, i) =>
          entryAt(counts, i) > 0 ? Math.floor(each / entryAt(counts, i)) : remaining,
        ),
      );
      layouts.push({ sheet: index, count: times, parts });
      left = left.map((each, i) => each - times * entryAt(counts, i));
      remaining -= times;
    }
  }
  return layouts;
}
