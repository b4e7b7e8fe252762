/** The names of mattresses whose sizes are known here. */
export type MattressName = 'crib' | 'twin' | 'full' | 'queen' | 'king';

/** A mattress's width and its length along the bed, in inches. */
export interface Mattress {
  readonly width: number;
  readonly height: number;
}

/**
 * Mattresses as they are usually sold. There is no standard for adult sizes: this is editable data, and
 * anyone can give a size instead. A twin is 38 or 39 wide, a full 53 or 54; both circulate.
 *
 * The crib's is in a sleep industry council's size table; the others are in the school lesson “Can You
 * Figure the Amount of Yardage to Buy?”.
 */
export const MATTRESSES: Readonly<Record<MattressName, Mattress>> = {
  crib: { width: 27, height: 52 },
  twin: { width: 39, height: 75 },
  full: { width: 54, height: 75 },
  queen: { width: 60, height: 80 },
  king: { width: 76, height: 80 },
};
