import type { DocumentTable } from './document.js';

/** What a spreadsheet takes for the beginning of a formula, full-width signs included. */
const FORMULA = /^\s*[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/;

/**
 * A cell: what would begin a formula in a spreadsheet is kept a text by an apostrophe; quotes,
 * commas, line breaks and spaces at the ends are kept by quotes.
 */
export function csvCell(text: string): string {
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",;\r\n\t]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A table with its titles in the first line; lines end as spreadsheets write them. */
export const csv = ({ columns, rows }: DocumentTable): string =>
  [columns.map(({ title }) => title), ...rows]
    .map((cells) => `${cells.map(csvCell).join(',')}\r\n`)
    .join('');
