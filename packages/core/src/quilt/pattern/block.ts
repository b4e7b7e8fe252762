import type { LogCabin } from '../../block/plan.js';
import type { Length } from '../../length/length.js';
import type { Size } from '../../plan/size.js';
import type { UnitPlan } from '../../unit/plan.js';
import type { UnitPoint } from '../../unit/point.js';

/** A rectangle of a block. */
export interface BlockRectangle {
  readonly label?: string;
  readonly fabric: string;
  readonly finished: Size;
  /** What to cut: on the grid, or as the recipe says. */
  readonly cut: Size;
  /** What a block takes. */
  readonly count: number;
  /** Upper left corners in the finished block; empty where the recipe does not say. */
  readonly at: readonly UnitPoint[];
}

/** Pieced units of a block. */
export interface BlockUnit {
  /** For all blocks of the quilt: some methods make several at a time. */
  readonly plan: UnitPlan;
  /** What a block takes. */
  readonly count: number;
  readonly at: readonly UnitPoint[];
}

interface BlockBasics {
  readonly id: string;
  readonly name: string;
  readonly finished: Size;
  readonly unfinished: Size;
}

/** A block of a quilt in numbers to cut and sew by, whatever its kind. */
export type QuiltBlock = BlockBasics &
  (
    | { readonly kind: 'log-cabin'; readonly plan: LogCabin }
    /** Its plan is for all blocks of the quilt. */
    | { readonly kind: 'unit'; readonly plan: UnitPlan }
    | { readonly kind: 'plain'; readonly fabric: string; readonly cut: Size }
    | {
        readonly kind: 'pieces';
        readonly rectangles: readonly BlockRectangle[];
        readonly units: readonly BlockUnit[];
      }
  );

/** A block, and how many a quilt takes. */
export interface CountedBlock {
  readonly block: QuiltBlock;
  readonly inTop: number;
  readonly inBorders: number;
}

/** What all blocks are made with. */
export interface Making {
  readonly seam: Length;
  readonly grid: Length;
  /** The usable width of the narrowest fabric: how long the strips are that units are cut from. */
  readonly usable: Length;
}
