/** The settings that hold a whole table. */
export const TABLES = ['pieces', 'on-hand'] as const;

export type TableName = (typeof TABLES)[number];

/** A row of a table: what stands in each of its inputs. */
export type Row<Column extends string> = Readonly<Record<Column, string>>;

const CELL = '\t';
const ROW = '\n';

/** Inputs of a table are fields by their paths: `pieces[2].width`. */
export const cellName = (table: TableName, row: number, column: string): string =>
  `${table}[${row}].${column}`;

/** The table, row and column of such a path; undefined where it is none. */
export function cellAt(
  field: string,
): { readonly table: TableName; readonly row: number; readonly column: string } | undefined {
  const [, name, row, column] = /^([\w-]+)\[(\d+)\]\.(\w+)$/.exec(field) ?? [];
  const table = TABLES.find((each) => each === name);
  return table === undefined || column === undefined
    ? undefined
    : { table, row: Number(row), column };
}

const emptyCells = <Column extends string>(columns: readonly Column[]): Row<Column> =>
  Object.fromEntries(columns.map((column) => [column, ''])) as Row<Column>;

/** A row with what is known of it. */
export const rowOf = <Column extends string>(
  columns: readonly Column[],
  known: Partial<Record<Column, string>> = {},
): Row<Column> => ({ ...emptyCells(columns), ...known });

/**
 * The rows in a setting's text: as the table keeps it, with tabs between the inputs, or as a page's
 * author writes it, one row after another with semicolons between.
 */
export function readRows<Column extends string>(
  text: string,
  columns: readonly Column[],
  written: (text: string) => Row<Column>,
): readonly Row<Column>[] {
  if (!text.includes(CELL)) {
    return text
      .split(/[;\n]/)
      .filter((part) => part.trim() !== '')
      .map(written);
  }
  return text.split(ROW).map((line) => {
    const texts = line.split(CELL);
    const cells = columns.map((column, index) => [column, texts[index] ?? ''] as const);
    return { ...emptyCells(columns), ...Object.fromEntries(cells) };
  });
}

/** The text that `readRows` reads back, whatever stands in the inputs. */
export const writeRows = <Column extends string>(
  rows: readonly Row<Column>[],
  columns: readonly Column[],
): string => rows.map((row) => columns.map((column) => row[column]).join(CELL)).join(ROW);
