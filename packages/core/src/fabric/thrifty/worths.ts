import { entryAt } from '../../plan/entryAt.js';
import type { Effort } from '../stock/effort.js';
import { dot } from '../stock/stock.js';
import type { Worth } from './choose.js';
import type { Sheet } from './sheet.js';
import { Tables } from './tables.js';

/** What strips are worth at whole prices of the sizes, and of the rows of tall pieces. */
export interface PricedWorth extends Worth {
  readonly prices: readonly number[];
  readonly rows: readonly number[];
}

/** Of the rows of tall pieces, so many are needed, and a strip has room for so many. */
export const tallWorths = ({ levels, tall }: Sheet, tallRows: readonly number[]): Worth[] =>
  tall.map((row, i) => ({
    worths: levels.map(({ height }) => Math.floor(height / row)),
    total: tallRows[i] ?? 0,
  }));

/**
 * What strips are worth at prices that are rounded to whole numbers: whatever floating point did to
 * find the prices, all pieces together are worth theirs, and no strip more than the tables say.
 *
 * @param duals the prices of sizes and, after them, of rows of tall pieces
 * @param scale how finely the prices are rounded
 * @returns undefined where the effort does not allow to find it
 */
export function worthOf(
  sheet: Sheet,
  tallRows: readonly number[],
  duals: readonly number[],
  scale: number,
  effort: Effort,
): PricedWorth | undefined {
  const whole = duals.map((dual) => Math.max(0, Math.round(dual * scale)));
  const prices = whole.slice(0, sheet.demands.length);
  const rows = whole.slice(sheet.demands.length);
  const tables = new Tables(sheet, prices, effort);
  const tall = tallWorths(sheet, tallRows);
  const worths = sheet.levels.map((_, level) => {
    const room = rows.map((_, i) => entryAt(entryAt(tall, i).worths, level));
    return tables.strip(level) + dot(rows, room);
  });
  const total = dot(prices, sheet.demands) + dot(rows, tallRows);
  return tables.complete ? { prices, rows, worths, total } : undefined;
}
