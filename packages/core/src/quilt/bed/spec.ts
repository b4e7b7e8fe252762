import type { LengthInput } from '../../length/length.js';
import type { SizeInput } from '../../plan/size.js';
import type { QuiltSetting } from '../layout/spec.js';
import type { MattressName } from './mattresses.js';

/** How far a quilt hangs down: the same on both sides and at the foot, or told apart. */
export type DropInput = LengthInput | { readonly sides: LengthInput; readonly foot: LengthInput };

/** A quilt for a bed. */
export interface BedQuiltSpec {
  /** A name of `MATTRESSES`, or the mattress's own width and height, its length along the bed. */
  readonly mattress: MattressName | SizeInput;
  /** Default 12. */
  readonly drop?: DropInput;
  /** What is tucked under and goes over the pillows; default 0. */
  readonly tuck?: LengthInput;
  /** A block's finished size. */
  readonly block: SizeInput;
  /** Default `straight`. */
  readonly setting?: QuiltSetting;
  /** Sashes between the blocks: their finished width, and whether they go round the outside. */
  readonly sashing?: { readonly width: LengthInput; readonly outer?: boolean };
  /**
   * The finished width of all borders together on each side: at least and at most. Default from 0 to
   * the shorter side of a block. From 0 to 0 has no borders.
   */
  readonly border?: { readonly least?: LengthInput; readonly most?: LengthInput };
  /** What border widths are whole multiples of; default 1/2. */
  readonly grid?: LengthInput;
  /** Which numbers of blocks may stand across and down: a barn raising needs even ones. Default `any`. */
  readonly counts?: 'any' | 'even' | 'odd';
  /** The part of its size that quilting and washing take, from 0 to one half; default 0. */
  readonly shrinkage?: number | string;
  /** How far a quilt's width or height may lie from the target before quilting; default 3. */
  readonly within?: LengthInput;
  /** How many candidates are wanted at most, from 1 to 1,000; default 12. */
  readonly most?: number;
}
