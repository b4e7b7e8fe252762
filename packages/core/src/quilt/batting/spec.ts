import type { LengthInput } from '../../length/length.js';
import type { SizeInput } from '../../plan/size.js';

/** The batting of a quilt. */
export interface BattingSpec {
  /** The quilt top's size. */
  readonly quilt: SizeInput;
  /** How far it reaches beyond the top on every side; default 4. */
  readonly overhang?: LengthInput;
  /** Sizes that are sold in packages, at most 100; default `BATTING_PACKAGES`. */
  readonly packages?: readonly SizeInput[];
  /** The width of a roll, where it is sold by the yard; default 96. */
  readonly rollWidth?: LengthInput;
  /** What the shop cuts from a roll in multiples of; default an eighth of a yard. */
  readonly increment?: LengthInput;
  /** How much less overhang on each side is still named as a near miss; default 1. */
  readonly near?: LengthInput;
  /** The finest line people measure to; default 1/8. */
  readonly grid?: LengthInput;
}
