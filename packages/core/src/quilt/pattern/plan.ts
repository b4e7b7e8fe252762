import type { LogCabinWarningCode } from '../../block/sentences.js';
import type { CuttingWarningCode } from '../../fabric/sentences.js';
import type { Yardage } from '../../fabric/yardage.js';
import type { Length } from '../../length/length.js';
import type { Warning } from '../../plan/notice.js';
import type { Size } from '../../plan/size.js';
import type { UnitSentence } from '../../unit/sentences/all.js';
import type { Backing } from '../backing/plan.js';
import type { Batting } from '../batting/plan.js';
import type { Binding } from '../binding/plan.js';
import type { BindingWarningCode } from '../binding/sentences.js';
import type { QuiltBorders } from '../borders/plan.js';
import type { BorderWarningCode } from '../borders/sentences.js';
import type { Cell, QuiltLayout } from '../layout/plan.js';
import type { LayoutWarningCode } from '../layout/sentences.js';
import type { FabricPrice } from '../money/fabricCost.js';
import type { Money } from '../money/money.js';
import type { QuiltBlock } from './block.js';
import type { PatternCut } from './cut.js';
import type { PatternWarningCode } from './sentences.js';

/** Every code a warning of a whole quilt can carry. */
export type QuiltWarningCode =
  | PatternWarningCode
  | LayoutWarningCode
  | BorderWarningCode
  | BindingWarningCode
  | LogCabinWarningCode
  | UnitSentence
  | CuttingWarningCode;

/** A cell of the top with what it is made of. */
export interface QuiltCell extends Cell {
  /** The id of the block it is; left out where it is none. */
  readonly block?: string;
  /** The fabric of a sash, a cornerstone or a triangle. */
  readonly fabric?: string;
}

/** A block of the quilt, and how many there are. */
export interface QuiltBlockCount {
  readonly block: QuiltBlock;
  readonly count: number;
  /** Those of them that are in pieced borders. */
  readonly inBorders: number;
}

/** What is bought of one fabric, and how it is cut. */
export interface QuiltFabric {
  readonly id: string;
  readonly name: string;
  readonly role?: string;
  readonly directional: boolean;
  /** Usable, washed if it is washed. */
  readonly width: Length;
  /** In the order of the pattern. */
  readonly cuts: readonly PatternCut[];
  /** What the cuts take; left out where there are none. Its plan’s pieces are the cuts in their order. */
  readonly yardage?: Yardage;
  /** What the backing takes, where this is its fabric. */
  readonly backing?: Yardage;
  /** Both together. */
  readonly buy: Length;
  /** The same in yards, exactly, as people write it. */
  readonly yards: string;
  /** The same in meters, up to the next centimeter where it is no whole one. */
  readonly meters: string;
  readonly price?: FabricPrice;
  readonly cost?: Money;
}

/** A recipe in one size: what to buy, to cut and to sew, in the order of a printed pattern. */
export interface QuiltPlan {
  readonly kind: 'quilt';
  readonly name: string;
  readonly about?: string;
  /** The size's name. */
  readonly size: string;
  readonly currency: string;
  readonly seam: Length;
  readonly grid: Length;
  /** Borders and all. */
  readonly finished: Size;
  /** Raw edge to raw edge. */
  readonly unfinished: Size;
  /** Those that are used, in the recipe's order. */
  readonly blocks: readonly QuiltBlockCount[];
  readonly layout: QuiltLayout;
  /** The layout's cells, and what each is made of. */
  readonly cells: readonly QuiltCell[];
  readonly borders?: QuiltBorders;
  readonly binding?: Binding;
  readonly backing?: Backing;
  readonly batting?: Batting;
  /** Those that are used, in the recipe's order. */
  readonly fabrics: readonly QuiltFabric[];
  /** What all fabrics cost; left out where one of them has no price. */
  readonly cost?: Money;
  readonly warnings: readonly Warning<QuiltWarningCode>[];
}
