import {
  byFabric,
  type CuttingSpec,
  EighthsError,
  length,
  type OnHandSpec,
  type PieceInput,
  type YardageOptions,
} from '@eighths/core';
import type { Measures } from '../base/measures.js';
import { given, SettingsReader } from '../base/settingsReader.js';
import { readList } from '../base/text.js';
import type { FabricSettings } from './fields.js';
import { PIECE_COLUMNS, type PieceRow, readPieceRows } from './pieceRows.js';

/** What is to be solved for one fabric. */
export interface FabricTask {
  /** Undefined where the pieces name none. */
  readonly fabric: string | undefined;
  readonly spec: CuttingSpec;
  /** The rows of the table that its pieces stand in. */
  readonly rows: readonly number[];
}

/** What settings come to, before anything is solved. */
export interface FabricTasks {
  readonly tasks: readonly FabricTask[];
  readonly options: YardageOptions;
  /** A piece of fabric on hand, where one is given. */
  readonly onHand?: Pick<OnHandSpec, 'width' | 'length'>;
  /** By attribute, or by the input of a piece: `pieces[2].width`. */
  readonly faults: ReadonlyMap<string, EighthsError>;
}

/** Inputs of the table are fields by their paths. */
export const cellName = (row: number, column: string): string => `pieces[${row}].${column}`;

/** The text of every input, those of the table too. */
export function inputTexts(settings: FabricSettings): Readonly<Record<string, string>> {
  const cells = readPieceRows(settings.pieces).flatMap((row, index) =>
    PIECE_COLUMNS.map((column) => [cellName(index, column), row[column]]),
  );
  return { ...settings, ...Object.fromEntries(cells) };
}

const MOST_OF_ONE = 100_000;

/** A row as a piece; undefined while nothing stands in it, or something is wrong in it. */
function readPiece(
  row: PieceRow,
  index: number,
  reader: SettingsReader<string>,
): PieceInput | undefined {
  if (PIECE_COLUMNS.every((column) => row[column].trim() === '')) return undefined;
  const count = reader.count(cellName(index, 'count'), 0, MOST_OF_ONE) ?? 1;
  const width = reader.needed(cellName(index, 'width'));
  const long = reader.needed(cellName(index, 'length'));
  const fabric = row.fabric.trim();
  if (width === undefined || long === undefined) return undefined;
  return { width, length: long, count, ...(fabric === '' ? {} : { fabric }) };
}

/** `5 %` and `0.05` both mean a twentieth. */
function readShare(text: string): string {
  const percent = /^(.*)%$/.exec(text.trim())?.[1];
  const share = percent === undefined ? length(text) : length(percent).dividedBy(100);
  return share.toString();
}

export function fabricTasks(settings: FabricSettings, measures: Measures): FabricTasks {
  const reader = new SettingsReader<string>(inputTexts(settings), measures);
  const width = reader.length('width') ?? length(40);
  const layers = reader.count('layers', 1, 100);
  const pieces = readPieceRows(settings.pieces).flatMap((row, index) => {
    const piece = readPiece(row, index, reader);
    return piece === undefined ? [] : { ...piece, index };
  });
  if (pieces.length === 0 && reader.faults.size === 0) {
    const sentence = 'There is nothing to cut. Give at least one piece with a count.';
    reader.faults.set('pieces', new EighthsError('no-pieces', 'pieces', {}, sentence));
  }
  const options: YardageOptions = given({
    increment: reader.read('increment', (text) => readList(text, measures.read)),
    straightening: reader.length('straightening'),
    spare: reader.length('spare'),
    shrinkage: reader.read('shrinkage', readShare),
  });
  const onHand = given({
    width: reader.length('on-hand-width'),
    length: reader.length('on-hand-length'),
  });
  const tasks = byFabric(pieces).map(({ fabric, pieces: cut }): FabricTask => {
    const rows = cut.map(({ index }) => index);
    const listed = cut.map(({ index: _, ...piece }) => piece);
    return { fabric, rows, spec: { width, pieces: listed, ...given({ layers }) } };
  });
  return {
    tasks,
    options,
    ...(onHand.length === undefined ? {} : { onHand: { width, ...onHand, length: onHand.length } }),
    faults: reader.faults,
  };
}
