import type { Length } from '../../length/length.js';
import type { Warning } from '../../plan/notice.js';
import type { Piece } from '../../plan/piece.js';
import type { BindingWarningCode } from './sentences.js';

/** What all bindings say. Lengths are exact inches. */
interface BindingBasics {
  /** Round the quilt. */
  readonly perimeter: Length;
  readonly extra: Length;
  /** The perimeter and the extra. */
  readonly needed: Length;
  /** The cut width. */
  readonly strip: Length;
  readonly fabricWidth: Length;
  /** What the joined binding measures; never less than `needed`. */
  readonly length: Length;
  readonly leftOver: Length;
  /** Strips or seams sewn to one another, all told. */
  readonly joins: number;
  /** What to cut, without a fabric. */
  readonly pieces: readonly Piece[];
  readonly warnings: readonly Warning<BindingWarningCode>[];
}

/** Strips across the width of fabric, joined on the diagonal. */
export interface StraightBinding extends BindingBasics {
  readonly cut: 'straight';
  readonly strips: number;
  /** How much of the fabric's length the strips take. */
  readonly fabric: Length;
}

/** Strips at 45 degrees, joined along the ends that the fabric's straight edges give them. */
export interface BiasStripBinding extends BindingBasics {
  readonly cut: 'bias-strips';
  readonly strips: number;
  /** The least of the fabric's length, on the grid, whose whole width gives enough. */
  readonly fabric: Length;
  /** The same from squares. */
  readonly fromSquares: {
    readonly squares: number;
    /** A square's side, on the grid: the least that is enough. */
    readonly square: Length;
    /** Strips of all squares that are used, the longest first. */
    readonly strips: number;
    readonly length: Length;
  };
}

/** Squares sewn to tubes, each cut round and round. */
export interface ContinuousBiasBinding extends BindingBasics {
  readonly cut: 'bias-continuous';
  readonly squares: number;
  /** A square's side, on the grid: the least that is enough. */
  readonly square: Length;
  /** Whole strips marked on each square. */
  readonly stripsPerSquare: number;
  /** What each square gives. */
  readonly perSquare: Length;
  /** What the customary rule says, side² / width: more than a square really gives. */
  readonly customary: {
    /** Of one such square. */
    readonly perSquare: Length;
    /** The side that one square would need by it, on the grid. */
    readonly square: Length;
  };
}

/** Binding in numbers to cut by. */
export type Binding = StraightBinding | BiasStripBinding | ContinuousBiasBinding;
