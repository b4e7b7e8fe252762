import { textOf } from '../base/text.js';

/** A row of the table of pieces: what stands in each of its inputs. */
export interface PieceRow {
  readonly count: string;
  readonly width: string;
  readonly length: string;
  readonly fabric: string;
}

export type PieceColumn = keyof PieceRow;

export const PIECE_COLUMNS: readonly PieceColumn[] = ['count', 'width', 'length', 'fabric'];

export const emptyRow: PieceRow = { count: '', width: '', length: '', fabric: '' };

const CELL = '\t';
const ROW = '\n';

/** `24 of 2 1/2 by 8 1/2, dusk`: the way a page's author writes a piece. */
const WRITTEN = /^(?:(\S+)\s+of\s+)?(.+?)\s*(?:×|\bx\b|\bby\b)\s*(.+?)(?:,\s+(.*))?$/i;

function writtenRow(text: string): PieceRow {
  const match = WRITTEN.exec(text.trim());
  // What cannot be read stays in sight, in the first input, where the error is shown.
  if (match === null) return { ...emptyRow, count: text.trim() };
  const [, count = '1', width = '', length = '', fabric = ''] = match;
  return { count, width, length, fabric };
}

/**
 * The rows in the text of the setting `pieces`: as the table keeps it (tabs between the inputs), or as
 * a page's author writes it, `24 of 2 1/2 by 8 1/2, dusk; 12 of 5 by 5`.
 */
export function readPieceRows(text: string): readonly PieceRow[] {
  if (text.includes(CELL)) {
    return text.split(ROW).map((line) => {
      const [count = '', width = '', length = '', fabric = ''] = line.split(CELL);
      return { count, width, length, fabric };
    });
  }
  return text
    .split(/[;\n]/)
    .filter((part) => part.trim() !== '')
    .map(writtenRow);
}

export const writePieceRows = (rows: readonly PieceRow[]): string =>
  rows.map((row) => PIECE_COLUMNS.map((column) => row[column]).join(CELL)).join(ROW);

/** The same text for a list of pieces that a page sets as a property. */
export const piecesText = (pieces: readonly unknown[]): string =>
  writePieceRows(
    pieces.map((piece) => {
      const row: Record<PieceColumn, string> = { ...emptyRow };
      if (typeof piece !== 'object' || piece === null) return row;
      for (const column of PIECE_COLUMNS) row[column] = textOf(Reflect.get(piece, column));
      return row;
    }),
  );
