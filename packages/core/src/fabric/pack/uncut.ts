import { entryAt } from '../../plan/entryAt.js';
import type { Piece } from '../../plan/piece.js';
import type { Packing } from './pack.js';

/** A piece that is not cut as often as it is needed. */
export interface UncutPiece extends Piece {
  /** Its place in the spec. */
  readonly piece: number;
}

/** The pieces that are not cut, each with how many are missing. */
export const uncutPieces = (
  pieces: readonly Piece[],
  { left }: Pick<Packing, 'left'>,
): readonly UncutPiece[] =>
  pieces.flatMap((piece, at) => {
    const count = entryAt(left, at);
    return count > 0 ? [{ ...piece, piece: at, count }] : [];
  });

/** A piece as people would call it: its label, or its size. */
export const nameOf = ({ label, width, length: long }: Piece): string =>
  label === undefined ? `${width} by ${long}` : `${label}, ${width} by ${long}`;
