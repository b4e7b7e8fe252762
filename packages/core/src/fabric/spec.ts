import type { LengthInput } from '../length/length.js';
import type { PieceInput } from '../plan/piece.js';

/**
 * Which cutting plans may be made. `plain` cuts every strip for pieces of one width, as given.
 * `thrifty` also cuts ends of strips into lower rows, and turns pieces that may be turned.
 */
export type CuttingMethod = 'plain' | 'thrifty';

/** What to cut, and from what. */
export interface CuttingSpec {
  /** The usable width of the fabric: selvages off, and shrunk if it is washed before it is cut. */
  readonly width: LengthInput;
  /** Pieces of one fabric; `width` is the width of the strip a piece is cut from. */
  readonly pieces: readonly PieceInput[];
  /** Default `thrifty`; `plain` where a width holds a root, which no row of an end can have. */
  readonly method?: CuttingMethod;
  /**
   * How much work may be done, in elementary steps; the same number gives the same plan on every
   * machine. The default, 50 million, takes about a second where it is used up, which is rare.
   */
  readonly effort?: number;
  /** How many layers of strips are subcut at once, for the steps' words; default 1. */
  readonly layers?: number;
}

export const DEFAULT_EFFORT = 50_000_000;
export const MOST_DIFFERENT_PIECES = 200;
export const MOST_OF_ONE_PIECE = 100_000;
export const MOST_PIECES = 1_000_000;
/** A strip may be this many of the smallest common unit long: eighths of an inch need 352. */
export const MOST_UNITS = 2 ** 20;
