import { type Row, readRows, rowOf, writeRows } from './cells.js';

export const PIECE_COLUMNS = ['count', 'width', 'length', 'fabric', 'may'] as const;

export type PieceColumn = (typeof PIECE_COLUMNS)[number];

/** A row of the table of pieces; `may` is empty, `turned` or `joined`. */
export type PieceRow = Row<PieceColumn>;

/** `24 of 2 1/2 by 8 1/2, dusk, turned`: the way a page's author writes a piece. */
const WRITTEN =
  /^(?:(\S+)\s+of\s+)?(.+?)\s*(?:×|\b(?:x|by|mal|sur|par|por)\b)\s*(.+?)(?:,\s+(?!(?:turned|joined)$)(.*?))?(?:,\s+(turned|joined))?$/i;

function writtenRow(text: string): PieceRow {
  const match = WRITTEN.exec(text.trim());
  // What cannot be read stays in sight, in the first input, where the error is shown.
  if (match === null) return rowOf(PIECE_COLUMNS, { count: text.trim() });
  const [, count = '1', width = '', length = '', fabric = '', may = ''] = match;
  return { count, width, length, fabric, may: may.toLowerCase() };
}

/**
 * The rows in the text of the setting `pieces`: as the table keeps it, or as a page's author writes it,
 * `4 of 2 1/2 by 88, dusk, joined; 6 of 3 by 7, turned`.
 */
export const readPieceRows = (text: string): readonly PieceRow[] =>
  readRows(text, PIECE_COLUMNS, writtenRow);

export const writePieceRows = (rows: readonly PieceRow[]): string => writeRows(rows, PIECE_COLUMNS);

/** What may be done with a piece of a list. */
const mayOf = (piece: object): string => {
  if (Reflect.get(piece, 'joinable') === true) return 'joined';
  return Reflect.get(piece, 'turnable') === true ? 'turned' : '';
};

/** The same text for a list of pieces that a page sets as a property, or another element tells. */
export const piecesText = (pieces: readonly unknown[], write: (value: unknown) => string): string =>
  writePieceRows(
    pieces.map((piece) => {
      if (typeof piece !== 'object' || piece === null) return rowOf(PIECE_COLUMNS);
      const cell = (column: PieceColumn): string => write(Reflect.get(piece, column));
      return {
        count: cell('count'),
        width: cell('width'),
        length: cell('length'),
        fabric: cell('fabric'),
        may: mayOf(piece),
      };
    }),
  );
