import { fail } from '../../errors/error.js';
import { checkFields, countField, lengthField, missing } from '../../plan/field.js';
import type { Piece, PieceInput } from '../../plan/piece.js';
import { byFabric } from '../byFabric.js';
import { MOST_DIFFERENT_PIECES } from '../spec.js';
import { fractionOf } from '../units.js';

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
  // What a block's plan says of its pieces besides.
  'part',
  'logs',
] as const;

/**
 * Pieces of one fabric of any size, as people give them.
 *
 * @param most how many there may be of all together.
 * @throws EighthsError with the path of the field that cannot be so.
 */
export function readPieces(
  inputs: readonly PieceInput[],
  field = 'pieces',
  most = MOST_PACKED,
): readonly Piece[] {
  if (!Array.isArray(inputs)) {
    fail('wrong-kind', field, { expected: 'pieces' }, 'A list of {expected} is needed here.');
  }
  const pieces = inputs.map((input: PieceInput, index): Piece => {
    const at = `${field}[${index}]`;
    checkFields(input, at, PIECE_FIELDS);
    const width = lengthField(input.width ?? missing(`${at}.width`), `${at}.width`);
    const length = lengthField(input.length ?? missing(`${at}.length`), `${at}.length`);
    fractionOf(width, `${at}.width`);
    fractionOf(length, `${at}.length`);
    const count = countField(input.count ?? missing(`${at}.count`), `${at}.count`, 0, most);
    return { ...input, width, length, count };
  });
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
  const [one, other] = byFabric(pieces).flatMap(({ fabric }) => fabric ?? []);
  if (one !== undefined && other !== undefined) {
    fail(
      'several-fabrics',
      field,
      { one, other },
      'A plan is for one fabric, and these pieces are cut from “{one}” and “{other}”. Group them by fabric and make a plan for each.',
    );
  }
  return pieces;
}

/** Whether a piece may lie either way: where it says so, and where it is square. */
export const mayTurn = ({ width, length, turnable }: Piece): boolean =>
  turnable ?? width.equals(length);
