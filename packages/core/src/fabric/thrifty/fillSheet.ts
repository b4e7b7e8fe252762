import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import { bestPattern } from '../stock/knapsack.js';
import { dot, timesWithin, without } from '../stock/stock.js';
import type { Layout, Row, Sheet } from './sheet.js';
import { type PlannedSection, Tables } from './tables.js';

/** Strips that are cut alike. */
export interface SheetRun {
  readonly layout: Layout;
  readonly times: number;
}

/** What a strip takes besides its knapsacks, which count by themselves. */
const STEPS_BETWEEN = 500;

export const heightOf = ({ levels }: Sheet, { level }: Layout): number =>
  entryAt(levels, level).height;

export const totalHeight = (sheet: Sheet, runs: readonly SheetRun[]): number =>
  runs.reduce((sum, { layout, times }) => sum + times * heightOf(sheet, layout), 0);

/** A strip with sections as planned, whose rows hold no more than there is left to cut. */
export function layoutOf(
  sheet: Sheet,
  level: number,
  planned: readonly PlannedSection[],
  values: readonly number[],
  effort: Effort,
  first?: Row,
): Layout {
  const left = [...sheet.demands];
  const take = ({ level: at, pattern }: Row): void => {
    sheet.levels[at]?.items.forEach((item, i) => {
      left[item] = entryAt(left, item) - entryAt(pattern, i);
    });
  };
  const lengthOf = (row: Row): number => dot(row.pattern, entryAt(sheet.levels, row.level).sizes);
  const sections: Row[][] = [];
  let room = sheet.capacity;
  if (first !== undefined) {
    sections.push([first]);
    take(first);
    room -= lengthOf(first);
  }
  const cut = (length: number, wanted: readonly number[]): void => {
    const rows: Row[] = [];
    let height = entryAt(sheet.levels, level).height;
    const add = (at: number): boolean => {
      const row = sheet.levels[at];
      if (row === undefined || row.height > height) return false;
      const demands = row.items.map((item) => entryAt(left, item));
      if (!row.sizes.some((size, i) => size <= length && entryAt(demands, i) > 0)) return false;
      const worth = row.items.map((item) => entryAt(values, item));
      const pattern = bestPattern({ capacity: length, sizes: row.sizes, demands }, worth, effort);
      if (pattern === undefined || !pattern.some((count) => count > 0)) return false;
      rows.push({ level: at, pattern });
      take({ level: at, pattern });
      height -= row.height;
      return true;
    };
    wanted.forEach(add);
    for (let at = level; at < sheet.levels.length; ) if (!add(at)) at += 1;
    if (rows.length === 0) return;
    sections.push(rows);
    room -= Math.max(...rows.map(lengthOf));
  };
  for (const { length, levels } of planned) cut(length, levels);
  // What pieces of other sections left over may hold more.
  for (let before = sheet.capacity + 1; room > 0 && room < before; ) {
    before = room;
    cut(room, []);
  }
  const counts = sheet.demands.map((demand, item) => demand - entryAt(left, item));
  return { level, sections, counts };
}

/** The piece that needs the widest strip, the longest of several: alone in a row, one way or another. */
function tallest({ levels, demands }: Sheet): { readonly item: number; readonly rows: Row[] } {
  let item = -1;
  const seen = new Set<number>();
  for (const { items } of [...levels].reverse()) {
    item = items.find((one) => entryAt(demands, one) > 0 && !seen.has(one)) ?? item;
    for (const one of items) seen.add(one);
  }
  const rows = levels.flatMap(({ items }, level) => {
    const pattern = items.map((one) => (one === item ? 1 : 0));
    return items.includes(item) ? [{ level, pattern }] : [];
  });
  return { item, rows };
}

/** Strip by strip: the piece that needs the widest strip, and beside it whatever is worth most. */
export function fillSheet(sheet: Sheet, values: readonly number[], effort: Effort): SheetRun[] {
  const runs: SheetRun[] = [];
  let left = sheet.demands;
  while (left.some((count) => count > 0)) {
    effort.spend(STEPS_BETWEEN);
    const rest = { ...sheet, demands: left };
    const { item, rows } = tallest(rest);
    const beside = { ...sheet, demands: left.map((count, i) => (i === item ? count - 1 : count)) };
    const tables = new Tables(beside, values, effort);
    let best: Layout | undefined;
    let most = -1;
    for (const first of rows) {
      const { level, pattern } = first;
      const long = dot(pattern, entryAt(sheet.levels, level).sizes);
      const planned = tables.sections(level, sheet.capacity - long);
      const layout = layoutOf(rest, level, planned, values, effort, first);
      const rate = dot(layout.counts, values) / heightOf(sheet, layout);
      if (rate > most) [best, most] = [layout, rate];
    }
    if (best === undefined) break;
    const times = timesWithin(best.counts, left);
    runs.push({ layout: best, times });
    left = without(left, best.counts, times);
  }
  return runs;
}
