import { fail } from '../errors/error.js';
import { shownText } from '../length/choice.js';
import { checkFields, countField, lengthField, listField, missing } from '../plan/field.js';
import type { Piece, PieceInput } from '../plan/piece.js';
import { MOST_DIFFERENT_PIECES, MOST_OF_ONE_PIECE } from './spec.js';
import { fractionOf } from './units.js';

/** One packing takes so many pieces. */
export const MOST_PACKED = 10_000;

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

/** Cut sizes lie on a grid. */
function checkSize({ width, length }: Piece, field: string): void {
  fractionOf(width, `${field}.width`);
  fractionOf(length, `${field}.length`);
}

/**
 * Pieces of one fabric, as people give them.
 *
 * @param most how many there may be of all together.
 * @param check refuses a piece of a size that cannot be cut, by its path.
 * @throws EighthsError with the path of the field that cannot be so.
 */
export function readPieces(
  inputs: readonly PieceInput[],
  field = 'pieces',
  most = MOST_PACKED,
  check: (piece: Piece, field: string) => void = checkSize,
): readonly Piece[] {
  const pieces = listField(inputs, field, 'pieces').map((input, index) => {
    const piece = readPiece(input, `${field}[${index}]`, Math.min(most, MOST_OF_ONE_PIECE));
    check(piece, `${field}[${index}]`);
    return piece;
  });
  checkAmounts(pieces, field, most);
  checkFabrics(pieces, field);
  return pieces;
}

function readPiece(input: PieceInput, field: string, most: number): Piece {
  checkFields(input, field, PIECE_FIELDS);
  if (typeof (input.fabric ?? '') !== 'string') {
    fail('wrong-kind', `${field}.fabric`, { expected: 'a name' }, 'A fabric needs a name here.');
  }
  return {
    ...input,
    width: lengthField(input.width ?? missing(`${field}.width`), `${field}.width`),
    length: lengthField(input.length ?? missing(`${field}.length`), `${field}.length`),
    count: countField(input.count ?? missing(`${field}.count`), `${field}.count`, 0, most),
  };
}

function checkAmounts(pieces: readonly Piece[], field: string, most: number): void {
  const total = pieces.reduce((sum, { count }) => sum + count, 0);
  if (total === 0) {
    fail('no-pieces', field, {}, 'There is nothing to cut. Give at least one piece with a count.');
  }
  if (total > most) {
    fail(
      'too-many-pieces',
      field,
      { total, most },
      'These are {total} pieces. One plan takes up to {most}: make several.',
    );
  }
  const different = new Set(pieces.map((piece) => `${piece.width} by ${piece.length}`)).size;
  if (different > MOST_DIFFERENT_PIECES) {
    fail(
      'too-many-sizes',
      field,
      { different, most: MOST_DIFFERENT_PIECES },
      'These pieces are of {different} different sizes. One plan takes up to {most}: make several.',
    );
  }
}

function checkFabrics(pieces: readonly Piece[], field: string): void {
  const [one, other] = new Set(pieces.flatMap(({ fabric }) => fabric ?? []));
  if (one === undefined || other === undefined) return;
  const index = pieces.findIndex(({ fabric }) => fabric === other);
  fail(
    'several-fabrics',
    `${field}[${index}].fabric`,
    { one: shownText(one), other: shownText(other) },
    'A plan is for one fabric, and these pieces are cut from “{one}” and “{other}”. Group them by fabric and make a plan for each.',
  );
}

/** Whether a piece may lie either way: where it says so, and where it is square. */
export const mayTurn = ({ width, length, turnable }: Piece): boolean =>
  turnable ?? width.equals(length);
