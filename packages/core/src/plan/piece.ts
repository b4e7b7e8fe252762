import { type Length, type LengthInput, length } from '../length/length.js';

/** A rectangle to cut, and how many. */
export interface Piece {
  readonly label?: string;
  readonly fabric?: string;
  /** The width of the strip it is cut from. */
  readonly width: Length;
  /** Its extent along the width of the fabric. */
  readonly length: Length;
  readonly count: number;
  /** Whether it may lie the other way; left out, only a square may. */
  readonly turnable?: boolean;
  /** Whether it may be joined from several strips, as binding is. */
  readonly joinable?: boolean;
}

/** A piece as people give it. */
export interface PieceInput extends Omit<Piece, 'width' | 'length'> {
  readonly width: LengthInput;
  readonly length: LengthInput;
}

/** The area of pieces, as square inches. */
export const areaOf = (pieces: readonly Pick<Piece, 'width' | 'length' | 'count'>[]): Length =>
  pieces.reduce(
    (sum, each) => sum.plus(each.width.times(each.length).times(each.count)),
    length(0),
  );
