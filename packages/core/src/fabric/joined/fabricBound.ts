import type { Length } from '../../length/length.js';
import { areaOf, type Piece } from '../../plan/piece.js';
import { unitsOf } from '../pack/packFabric.js';
import { mayTurn } from '../readPieces.js';
import { type Join, joinUses, stripsFor } from './join.js';

/**
 * So much fabric is needed at least for the area of pieces, what joins use up included; a length of
 * fabric is a sum of what pieces measure down it.
 */
export function boundByArea(
  pieces: readonly Piece[],
  width: Length,
  join: Join,
  seam: Length,
  isAlong: (piece: Piece) => boolean,
): Length {
  const { unit } = unitsOf([], downwards(pieces, isAlong));
  return areaNeeded(pieces, width, join, seam).dividedBy(width).toGrid(unit, 'up');
}

/** Squares of what pieces can measure down the fabric: its length is a sum of these. */
const downwards = (
  pieces: readonly Piece[],
  isAlong: (piece: Piece) => boolean,
): readonly Piece[] =>
  pieces
    .filter(({ count }) => count > 0)
    .map((piece) => {
      if (isAlong(piece)) return { ...piece, width: piece.length };
      return mayTurn(piece) ? piece : { ...piece, length: piece.width };
    });

/** The area that pieces take at least, what joins use up included, as square inches. */
const areaNeeded = (pieces: readonly Piece[], width: Length, join: Join, seam: Length): Length =>
  pieces.reduce((sum, piece) => {
    if (piece.count === 0 || piece.joinable !== true) return sum;
    const uses = joinUses(join, piece.width, seam);
    const joins = stripsFor(piece.length, width, uses) - 1;
    return sum.plus(uses.times(joins).times(piece.width).times(piece.count));
  }, areaOf(pieces));
