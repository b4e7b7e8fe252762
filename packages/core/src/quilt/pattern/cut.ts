import type { Piece } from '../../plan/piece.js';

/** What a piece becomes. */
export type PatternPart =
  | 'block'
  | 'sash'
  | 'cornerstone'
  | 'side-triangle'
  | 'corner-triangle'
  | 'border'
  | 'border-corner'
  | 'binding';

/** Pieces of a pattern that are cut alike, and what they become. */
export interface PatternCut extends Piece {
  readonly fabric: string;
  readonly part: PatternPart;
  /** What it is, in English: `center`, `border 1, sides`. */
  readonly label: string;
  /** The id of the block it is for. */
  readonly block?: string;
  /** The border it is for, from 1. */
  readonly border?: number;
  /** How often each is cut from corner to corner. */
  readonly diagonalCuts?: 0 | 1 | 2;
  /** The path of what it is for in the recipe. */
  readonly field: string;
}
