import type { Length } from '../../length/length.js';
import type { Size } from '../../plan/size.js';
import type { QuiltSetting } from '../layout/spec.js';

/** A layout whose quilt comes near the size that a bed asks for. */
export interface BedCandidate {
  readonly across: number;
  readonly down: number;
  /** Blocks to sew; on point with those between the rows. */
  readonly blocks: number;
  /** The finished width of all borders together, on each side: on the grid. */
  readonly border: Length;
  /** The finished top without borders. */
  readonly center: Size;
  /** The finished top with borders, before quilting. */
  readonly finished: Size;
  /** How much larger that is than the target; below 0, smaller. */
  readonly over: Size;
  /** The greater of the two, without its sign. */
  readonly distance: Length;
  /** After quilting and washing. */
  readonly washed: Size;
  /** How far it then hangs down. */
  readonly drop: { readonly sides: Length; readonly foot: Length };
}

/** Layouts for a bed, the nearest first. Lengths are exact inches. */
export interface BedQuilt {
  readonly mattress: Size;
  readonly setting: QuiltSetting;
  /** What the quilt is to measure in use: the mattress, the drop and the tuck. */
  readonly wanted: Size;
  /** What it is to finish before quilting and washing take their part. */
  readonly target: Size;
  readonly within: Length;
  /**
   * The nearest first; of equals the one whose two differences add up to less, then the one with fewer
   * blocks, then with fewer across. Each numbers of blocks comes once, with the border that suits best.
   */
  readonly candidates: readonly BedCandidate[];
  /** All layouts within the distance, whether they are among the candidates or not. */
  readonly found: number;
}
