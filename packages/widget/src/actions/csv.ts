import type { ReadTable } from './plainText.js';

/** A spreadsheet takes a cell that begins like this for a formula. */
const FORMULA = /^[=+\-@\t\r]/;

/** A cell as RFC 4180 has it; what a spreadsheet would run as a formula stays text. */
function cell(text: string): string {
  const safe = FORMULA.test(text) && !/^-?[\d ./]+$/.test(text) ? `'${text}` : text;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Tables as comma-separated values, each under its caption, an empty line between two. */
export const csv = (tables: readonly ReadTable[]): string =>
  tables
    .map(({ caption, rows }) =>
      [[caption], ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join(''),
    )
    .join('\r\n');
