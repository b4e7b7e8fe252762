import { fail } from '../errors/error.js';
import { shownText } from '../length/choice.js';
import type { FractionInput, Length } from '../length/length.js';
import { checkFields, choiceField, countField, lengthField, missing } from '../plan/field.js';
import type { Piece, PieceInput } from '../plan/piece.js';
import {
  type CuttingMethod,
  type CuttingSpec,
  DEFAULT_EFFORT,
  MOST_DIFFERENT_PIECES,
  MOST_OF_ONE_PIECE,
  MOST_PIECES,
} from './spec.js';
import { type StripGroup, stripGroups } from './stripGroups.js';
import { fractionOf } from './units.js';

/** A spec that was read: what to cut, by the widths of its strips. */
export interface CuttingTask {
  readonly width: Length;
  readonly pieces: readonly Piece[];
  readonly method: CuttingMethod;
  /** Widest first. */
  readonly groups: readonly StripGroup[];
  readonly effort: number;
  readonly layers: number;
}

const METHODS: readonly CuttingMethod[] = ['thrifty', 'plain'];
const SPEC_FIELDS = ['width', 'pieces', 'method', 'effort', 'layers'] as const;
const PIECE_FIELDS = [
  'label',
  'fabric',
  'width',
  'length',
  'count',
  'turnable',
  'joinable',
  // What a block's plan says of its pieces besides; a misspelled field is still refused.
  'part',
  'logs',
] as const;

/**
 * What a spec asks for.
 *
 * @throws EighthsError with the path of the field that cannot be so.
 */
export function readCutting(spec: CuttingSpec): CuttingTask {
  checkFields(spec, '', SPEC_FIELDS);
  const width = lengthField(spec.width ?? missing('width'), 'width');
  const room = fractionOf(width, 'width');
  const pieces = readPieces(spec.pieces ?? missing('pieces'), room, width);
  const rational = pieces.every((piece) => piece.width.toFraction() !== undefined);
  return {
    width,
    pieces,
    method: choiceField(spec.method ?? (rational ? 'thrifty' : 'plain'), 'method', METHODS),
    groups: stripGroups(room, pieces),
    effort: countField(spec.effort ?? DEFAULT_EFFORT, 'effort', 0, Number.MAX_SAFE_INTEGER),
    layers: countField(spec.layers ?? 1, 'layers', 1, 100),
  };
}

function readPieces(
  inputs: readonly PieceInput[],
  room: FractionInput,
  width: Length,
): readonly Piece[] {
  if (!Array.isArray(inputs)) {
    fail('wrong-kind', 'pieces', { expected: 'pieces' }, 'A list of {expected} is needed here.');
  }
  // `map` would pass over the gaps of a list.
  const pieces = Array.from(inputs, (input: PieceInput, index) => {
    const piece = readPiece(input, `pieces[${index}]`);
    const { n, d } = fractionOf(piece.length, `pieces[${index}].length`);
    if (n * room.d > room.n * d) {
      fail(
        'piece-too-long',
        `pieces[${index}].length`,
        { length: piece.length, width },
        'A piece {length} long does not fit across fabric that is {width} wide. Make it at most {width}, turn it, or join it from shorter ones.',
      );
    }
    return piece;
  });
  checkAmounts(pieces);
  checkFabrics(pieces);
  return pieces;
}

function readPiece(input: PieceInput, field: string): Piece {
  checkFields(input, field, PIECE_FIELDS);
  if (typeof (input.fabric ?? '') !== 'string') {
    fail('wrong-kind', `${field}.fabric`, { expected: 'a name' }, 'A fabric needs a name here.');
  }
  return {
    ...input,
    width: lengthField(input.width ?? missing(`${field}.width`), `${field}.width`),
    length: lengthField(input.length ?? missing(`${field}.length`), `${field}.length`),
    count: countField(
      input.count ?? missing(`${field}.count`),
      `${field}.count`,
      0,
      MOST_OF_ONE_PIECE,
    ),
  };
}

function checkAmounts(pieces: readonly Piece[]): void {
  const total = pieces.reduce((sum, { count }) => sum + count, 0);
  if (total === 0) {
    fail(
      'no-pieces',
      'pieces',
      {},
      'There is nothing to cut. Give at least one piece with a count.',
    );
  }
  if (total > MOST_PIECES) {
    fail(
      'too-many-pieces',
      'pieces',
      { total, most: MOST_PIECES },
      'These are {total} pieces. One plan takes up to {most}: make several.',
    );
  }
  const different = new Set(pieces.map((piece) => `${piece.width} by ${piece.length}`)).size;
  if (different > MOST_DIFFERENT_PIECES) {
    fail(
      'too-many-sizes',
      'pieces',
      { different, most: MOST_DIFFERENT_PIECES },
      'These pieces are of {different} different sizes. One plan takes up to {most}: make several.',
    );
  }
}

function checkFabrics(pieces: readonly Piece[]): void {
  const [one, other] = new Set(pieces.flatMap(({ fabric }) => fabric ?? []));
  if (one === undefined || other === undefined) return;
  const index = pieces.findIndex(({ fabric }) => fabric === other);
  fail(
    'several-fabrics',
    `pieces[${index}].fabric`,
    { one: shownText(one), other: shownText(other) },
    'A plan is for one fabric, and these pieces are cut from “{one}” and “{other}”. Group them by fabric and make a plan for each.',
  );
}
