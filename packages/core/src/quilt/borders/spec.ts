import type { LengthInput } from '../../length/length.js';
import type { SizeInput } from '../../plan/size.js';

/** How a border meets at its corners, and whether it is pieced. */
export type BorderStyle = 'straight' | 'mitered' | 'pieced';

/** Whether a border's strips run across the fabric and are joined, or along its length, unjoined. */
export type BorderGrain = 'crosswise' | 'lengthwise';

/** One border round a quilt. */
export interface BorderSpec {
  /** Finished; more than 0. */
  readonly width: LengthInput;
  /** Default `straight`: the sides first, then top and bottom. */
  readonly style?: BorderStyle;
  /** Squares in the corners; not of a mitered border. Default `none`. */
  readonly corners?: 'none' | 'squares';
  /** Default `crosswise`; a pieced border has none. */
  readonly cut?: BorderGrain;
  /** The usable width of its fabric; default 40. */
  readonly fabricWidth?: LengthInput;
  /** What mitered strips are cut beyond the least; default 4 (common practice, no source). */
  readonly extra?: LengthInput;
  /** A pieced border's repeat: the finished length along the border of one of its units. */
  readonly unit?: LengthInput;
}

/** A quilt and its borders, the innermost first. */
export interface QuiltBordersSpec {
  /** The finished size of what the borders go round. */
  readonly quilt: SizeInput;
  /** From 1 to 20. */
  readonly borders: readonly BorderSpec[];
  /** The sewn top as it measures through its middle, raw edge to raw edge. */
  readonly measured?: SizeInput;
  /** The seam allowance; default 1/4. */
  readonly seam?: LengthInput;
  /** The finest line people cut to; default 1/8. */
  readonly grid?: LengthInput;
}
