import type { LengthInput } from '../../length/length.js';
import type { SizeInput } from '../../plan/size.js';

/** The back of a quilt. */
export interface BackingSpec {
  /** The quilt top's size. */
  readonly quilt: SizeInput;
  /** How far the backing reaches beyond the top on every side; default 4. */
  readonly overhang?: LengthInput;
  /** The usable width of the fabric, selvages off; default 40. */
  readonly width?: LengthInput;
  /** The seam allowance of the backing's own seams; default 1/2. */
  readonly seam?: LengthInput;
  /** Widths of wide backing fabric to compare; default 108. An empty list compares none. */
  readonly wide?: readonly LengthInput[];
  /** What the shop cuts in multiples of; default an eighth of a yard. */
  readonly increment?: LengthInput;
  /** How much less overhang on each side is still named as a near miss; default 1. */
  readonly near?: LengthInput;
  /** The finest line people measure to; default 1/8. */
  readonly grid?: LengthInput;
}
