import type { Size, SizeInput } from '../../plan/size.js';
import type { Backing } from '../backing/plan.js';
import type { Batting } from '../batting/plan.js';
import type { Binding } from '../binding/plan.js';
import type { QuiltBorders } from '../borders/plan.js';
import type { QuiltLayout } from '../layout/plan.js';
import type { FabricPrice } from '../money/fabricCost.js';
import type { QuiltSize, ReadRecipe } from '../recipe/schema.js';
import type { CountedBlock, Making } from './block.js';
import type { ChosenSize } from './chooseSize.js';

/** A recipe in one size: everything that is decided before fabric is planned. */
export interface PatternTask {
  readonly recipe: ReadRecipe;
  readonly chosen: ChosenSize;
  readonly making: Making;
  /** By the fabrics' ids. */
  readonly prices: ReadonlyMap<string, FabricPrice>;
  /** In the recipe's order. */
  readonly blocks: readonly CountedBlock[];
  readonly layout: QuiltLayout;
  /** Which block each of the layout's cells is; undefined for what is none. */
  readonly blockOfCell: readonly (string | undefined)[];
  readonly borders: QuiltBorders | undefined;
  /** The finished quilt, borders and all. */
  readonly quilt: Size;
  readonly binding: Binding | undefined;
  readonly backing: Backing | undefined;
  readonly batting: Batting | undefined;
}

/** What is not in the recipe and still decides what is cut. */
export interface SizeChoice {
  /** The name of one of the recipe's sizes, or another one; left out, its first. */
  readonly size?: string | QuiltSize;
  /** The sewn top as it measures, raw edge to raw edge, to cut borders by. */
  readonly measured?: SizeInput;
}
