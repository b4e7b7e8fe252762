import { cellAt, cellName, type Row, rowOf, type TableName } from './cells.js';
import type { FabricSettings } from './fields.js';
import { ON_HAND_COLUMNS, readOnHandRows, writeOnHandRows } from './onHandRows.js';
import { PIECE_COLUMNS, readPieceRows, writePieceRows } from './pieceRows.js';

/** What becomes of a table: a setting with its new text. */
type Edit = Readonly<Partial<FabricSettings>>;

/** A change of a table's rows, whatever their columns are. */
type Change = <Column extends string>(
  rows: readonly Row<Column>[],
  columns: readonly Column[],
) => readonly Row<Column>[];

function edited(table: TableName, settings: FabricSettings, change: Change): Edit {
  return table === 'pieces'
    ? { pieces: writePieceRows(change(readPieceRows(settings.pieces), PIECE_COLUMNS)) }
    : {
        'on-hand': writeOnHandRows(change(readOnHandRows(settings['on-hand']), ON_HAND_COLUMNS)),
      };
}

/** A cell is given a text; undefined where the field is no cell of a table. */
export function withCell(field: string, text: string, settings: FabricSettings): Edit | undefined {
  const cell = cellAt(field);
  return (
    cell &&
    edited(cell.table, settings, (rows) =>
      rows.map((row, index) => (index === cell.row ? { ...row, [cell.column]: text } : row)),
    )
  );
}

export const withRow = (table: TableName, settings: FabricSettings): Edit =>
  edited(table, settings, (rows, columns) => [...rows, rowOf(columns)]);

export const withoutRow = (table: TableName, at: number, settings: FabricSettings): Edit =>
  edited(table, settings, (rows) => rows.filter((_, index) => index !== at));

/** The columns that hold lengths. */
export const isLengthColumn = (column: string): boolean =>
  column === 'width' || column === 'length' || column === 'corner';

/** Every length in both tables is written anew. */
export function withLengths(settings: FabricSettings, rewrite: (text: string) => string): Edit {
  const change: Change = (rows, columns) =>
    rows.map((row) => {
      const lengths = columns
        .filter(isLengthColumn)
        .map((column) => [column, rewrite(row[column])] as const);
      return { ...row, ...Object.fromEntries(lengths) };
    });
  return { ...edited('pieces', settings, change), ...edited('on-hand', settings, change) };
}

/** The text of every input, those of the tables too. */
export function inputTexts(settings: FabricSettings): Readonly<Record<string, string>> {
  const cells = <Column extends string>(
    table: TableName,
    rows: readonly Row<Column>[],
    columns: readonly Column[],
  ) =>
    rows.flatMap((row, index) =>
      columns.map((column) => [cellName(table, index, column), row[column]] as const),
    );
  return {
    ...settings,
    ...Object.fromEntries(cells('pieces', readPieceRows(settings.pieces), PIECE_COLUMNS)),
    ...Object.fromEntries(cells('on-hand', readOnHandRows(settings['on-hand']), ON_HAND_COLUMNS)),
  };
}
