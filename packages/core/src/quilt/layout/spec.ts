import type { BlockSetting } from '../../block/turns.js';
import type { LengthInput } from '../../length/length.js';
import type { SizeInput } from '../../plan/size.js';

/** Strips between the blocks. */
export interface SashingSpec {
  /** Finished; more than 0. */
  readonly width: LengthInput;
  /** Whether sashes go round the outside as well; default false, on point always. */
  readonly outer?: boolean;
  /** Whether squares stand where sashes meet; default false, on point always. */
  readonly cornerstones?: boolean;
}

/** How the blocks of a quilt top stand: in rows, or on their corners. */
export type QuiltSetting = 'straight' | 'on-point';

/** A quilt top of blocks of one size. */
export interface QuiltLayoutSpec {
  /** A block's finished size; square where blocks stand on point or are turned by a quarter. */
  readonly block: SizeInput;
  /** Default `straight`. */
  readonly setting?: QuiltSetting;
  /** Blocks in a row: from 1 to 100, on point to 50. */
  readonly across: number;
  /** Rows: from 1 to 100, on point to 50. On point each two rows hold another one between them. */
  readonly down: number;
  /** How blocks are turned by quarters; default `none`. */
  readonly turns?: BlockSetting | 'none';
  /** Whether every second place (on point, each between the rows) is a plain square; default false. */
  readonly alternate?: boolean;
  readonly sashing?: SashingSpec;
  /** The seam allowance; default 1/4. */
  readonly seam?: LengthInput;
  /** The finest line people cut to; default 1/8. */
  readonly grid?: LengthInput;
  /** What the squares for setting triangles are cut beyond the exact size; default 1/2. */
  readonly oversize?: LengthInput;
}
