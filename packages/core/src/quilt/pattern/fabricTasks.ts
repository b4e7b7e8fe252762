import type { LengthInput } from '../../length/length.js';
import type { Piece } from '../../plan/piece.js';
import type { FabricPrice } from '../money/fabricCost.js';
import type { ReadRecipe } from '../recipe/schema.js';
import type { PatternCut } from './cut.js';
import type { PatternTask } from './task.js';

/** The usable width of one of the recipe's fabrics. */
export const widthOf = ({ fabrics }: ReadRecipe, fabric: string): LengthInput =>
  fabrics.find(({ id }) => id === fabric)?.width ?? 40;

/** What is cut from one fabric. */
export interface FabricTask {
  readonly fabric: ReadRecipe['fabrics'][number];
  /** Its place in the recipe. */
  readonly index: number;
  readonly price: FabricPrice | undefined;
  readonly cuts: readonly PatternCut[];
  readonly backing: readonly Piece[];
}

/** The cuts by their fabrics, in the recipe's order; fabrics that nothing is cut from are left out. */
export function fabricTasks(
  { recipe, prices }: PatternTask,
  cuts: readonly PatternCut[],
  panels: readonly Piece[],
): readonly FabricTask[] {
  return recipe.fabrics
    .map((fabric, index) => ({
      fabric,
      index,
      price: prices.get(fabric.id),
      cuts: cuts.filter((cut) => cut.fabric === fabric.id),
      backing: recipe.backing?.fabric === fabric.id ? panels : [],
    }))
    .filter((task) => task.cuts.length + task.backing.length > 0);
}
