import {
  byFabric,
  type CuttingMethod,
  EighthsError,
  type FabricOnHand,
  type FabricSpec,
  type Join,
  type Length,
  length,
  type PieceInput,
  PRECUT_NAMES,
  type PrecutName,
  type YardageOptions,
} from '@eighths/core';
import type { Measures } from '../base/measures.js';
import { choose, given, SettingsReader } from '../base/settingsReader.js';
import { readList, readSides } from '../base/text.js';
import { cellName } from './cells.js';
import type { FabricSettings } from './fields.js';
import { type ON_HAND_COLUMNS, type OnHandRow, readOnHandRows } from './onHandRows.js';
import { type PIECE_COLUMNS, type PieceRow, readPieceRows } from './pieceRows.js';
import { inputTexts } from './tables.js';

/** What is to be solved for one fabric. */
export interface FabricTask {
  /** Undefined where the pieces name none. */
  readonly fabric: string | undefined;
  readonly spec: Omit<FabricSpec, 'method' | 'effort' | 'seam'>;
  /** The rows of the table that its pieces stand in. */
  readonly rows: readonly number[];
  /** What there is of it, and in which rows of its table. */
  readonly onHand: readonly FabricOnHand[];
  readonly onHandRows: readonly number[];
}

/** In which precuts the fabric is bought. */
export interface PrecutChoice {
  readonly kind: PrecutName;
  readonly packOf: number;
}

/** What settings come to, before anything is solved. */
export interface FabricTasks {
  readonly tasks: readonly FabricTask[];
  readonly options: YardageOptions;
  /** Left out: whichever buys less, and the plain plan of equals. */
  readonly method?: CuttingMethod;
  readonly precut?: PrecutChoice;
  /** By attribute, or by the input of a table: `pieces[2].width`. */
  readonly faults: ReadonlyMap<string, EighthsError>;
}

const MOST_OF_ONE = 100_000;
const MOST_ON_HAND = 1_000;
const MOST_IN_PACK = 1_000;

/** What both selvages take of the width that a fabric is sold in. */
const SELVAGES = 2;

type Reader = SettingsReader<string>;

const isEmpty = (row: Readonly<Record<string, string>>): boolean =>
  Object.values(row).every((text) => text.trim() === '');

/** A row as a piece; undefined while nothing stands in it, or something is wrong in it. */
function readPiece(row: PieceRow, index: number, reader: Reader): PieceInput | undefined {
  if (isEmpty(row)) return undefined;
  const cell = (column: (typeof PIECE_COLUMNS)[number]) => cellName('pieces', index, column);
  const count = reader.count(cell('count'), 0, MOST_OF_ONE) ?? 1;
  const width = reader.needed(cell('width'));
  const long = reader.needed(cell('length'));
  const fabric = row.fabric.trim();
  if (width === undefined || long === undefined) return undefined;
  return {
    width,
    length: long,
    count,
    ...(fabric !== '' && { fabric }),
    ...(row.may === 'turned' && { turnable: true }),
    ...(row.may === 'joined' && { joinable: true }),
  };
}

/** A row as fabric on hand, and which of the fabrics to cut it is. */
function readOnHand(
  row: OnHandRow,
  index: number,
  reader: Reader,
  { read }: Measures,
  fabrics: readonly (string | undefined)[],
) {
  if (isEmpty(row)) return undefined;
  const cell = (column: (typeof ON_HAND_COLUMNS)[number]) => cellName('on-hand', index, column);
  const count = reader.count(cell('count'), 1, MOST_ON_HAND) ?? 1;
  const width = reader.needed(cell('width'));
  const long = reader.needed(cell('length'));
  const corner = reader.read(cell('corner'), (text) => readSides(text, read));
  const name = row.fabric.trim();
  const [only, another] = fabrics;
  // Where there is but one fabric it need not be named, nor where the pieces name none.
  const isOnly = another === undefined && (name === '' || only === undefined);
  const fabric = isOnly
    ? only
    : reader.attempt(
        () =>
          choose(
            name,
            cell('fabric'),
            fabrics.flatMap((each) => each ?? []),
          ),
        () => cell('fabric'),
      );
  if (width === undefined || long === undefined) return undefined;
  const missingCorner = corner && cornerOf(corner);
  return { fabric, index, piece: { count, width, length: long, ...given({ missingCorner }) } };
}

/** A square corner has one side. */
const cornerOf = (sides: Length | { readonly width: Length; readonly height: Length }) =>
  'height' in sides
    ? { width: sides.width, length: sides.height }
    : { width: sides, length: sides };

/** `5 %` and `0.05` both mean a twentieth. */
function readShare(text: string): string {
  const percent = /^(.*)%$/.exec(text.trim())?.[1];
  const share = percent === undefined ? length(text) : length(percent).dividedBy(100);
  return share.toString();
}

const JOINS: readonly Join[] = ['diagonal', 'straight'];
const METHODS: readonly CuttingMethod[] = ['plain', 'thrifty'];

export function fabricTasks(settings: FabricSettings, measures: Measures): FabricTasks {
  const reader = new SettingsReader<string>(inputTexts(settings), measures);
  const width = reader.length('width') ?? length(40);
  const layers = reader.count('layers', 1, 100);
  const join = reader.choice('join', JOINS);
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
  const kind = reader.choice('precut', PRECUT_NAMES);
  const packOf = reader.count('pack-of', 1, MOST_IN_PACK) ?? 1;
  const fabrics = byFabric(pieces);
  const names = fabrics.map(({ fabric }) => fabric);
  const shelf = readOnHandRows(settings['on-hand']).flatMap(
    (row, index) => readOnHand(row, index, reader, measures, names) ?? [],
  );
  const tasks = fabrics.map(({ fabric, pieces: cut }): FabricTask => {
    const own = shelf.filter((each) => each.fabric === fabric);
    return {
      fabric,
      rows: cut.map(({ index }) => index),
      spec: {
        width,
        pieces: cut.map(({ index: _, ...piece }) => piece),
        ...given({ layers, join }),
      },
      onHand: own.map(({ piece }) => piece),
      onHandRows: own.map(({ index }) => index),
    };
  });
  return {
    tasks,
    options,
    ...given({
      method: reader.choice('method', METHODS),
      precut: kind && { kind, packOf },
    }),
    faults: reader.faults,
  };
}

/** What a fabric is sold in, selvage to selvage. */
export const soldWidth = (usable: FabricSpec['width']): Length => length(usable).plus(SELVAGES);
