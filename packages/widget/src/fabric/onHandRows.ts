import { type Row, readRows, rowOf, writeRows } from './cells.js';

export const ON_HAND_COLUMNS = ['count', 'width', 'length', 'corner', 'fabric'] as const;

export type OnHandColumn = (typeof ON_HAND_COLUMNS)[number];

/** A row of the table of fabric on hand; `corner` is what one of its corners lacks, `6 by 4`. */
export type OnHandRow = Row<OnHandColumn>;

/** `2 of 9 by 40 less 6 by 4, dusk`: the way a page's author writes a piece of fabric. */
const WRITTEN =
  /^(?:(\S+)\s+of\s+)?(.+?)\s*(?:×|\b(?:x|by|mal|sur|par|por)\b)\s*(.+?)(?:\s+less\s+(.+?))?(?:,\s+(.*))?$/i;

function writtenRow(text: string): OnHandRow {
  const match = WRITTEN.exec(text.trim());
  if (match === null) return rowOf(ON_HAND_COLUMNS, { count: text.trim() });
  const [, count = '1', width = '', length = '', corner = '', fabric = ''] = match;
  return { count, width, length, corner, fabric };
}

/**
 * The rows in the text of the setting `on-hand`: as the table keeps it, or as a page's author writes
 * it, `1 of 18 by 21; 2 of 9 by 40 less 6 by 4`.
 */
export const readOnHandRows = (text: string): readonly OnHandRow[] =>
  readRows(text, ON_HAND_COLUMNS, writtenRow);

export const writeOnHandRows = (rows: readonly OnHandRow[]): string =>
  writeRows(rows, ON_HAND_COLUMNS);
