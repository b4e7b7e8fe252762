import type { Size } from '../../plan/size.js';
import type { QuiltBorders } from '../borders/plan.js';
import { quiltBorders } from '../borders/quiltBorders.js';
import type { BorderSpec } from '../borders/spec.js';
import { inField } from '../recipe/inField.js';
import type { ReadRecipe } from '../recipe/schema.js';
import type { QuiltBlock } from './block.js';
import type { ChosenSize } from './chooseSize.js';
import { widthOf } from './fabricTasks.js';
import type { SizeChoice } from './task.js';

type RecipeBorder = ReadRecipe['borders'][number];

function borderSpec(
  border: RecipeBorder,
  recipe: ReadRecipe,
  blocks: readonly QuiltBlock[],
): BorderSpec {
  switch (border.style) {
    case 'pieced': {
      const block = blocks.find(({ id }) => id === border.block);
      return {
        style: 'pieced',
        width: block?.finished.height ?? 0,
        unit: block?.finished.width ?? 0,
        corners: border.corners === undefined ? 'none' : 'squares',
      };
    }
    case 'mitered': {
      const { style, width, cut, extra, fabric } = border;
      return { style, width, cut, extra, fabricWidth: widthOf(recipe, fabric) };
    }
    default: {
      const { style, width, cut, fabric, corners } = border;
      return {
        style,
        width,
        cut,
        corners: corners === undefined ? 'none' : 'squares',
        fabricWidth: widthOf(recipe, fabric),
      };
    }
  }
}

/** The borders of this size, and where they stand in the recipe. */
export const bordersOf = ({ borders }: ReadRecipe, { size, field }: ChosenSize) =>
  size.borders === undefined
    ? { borders, path: 'borders' }
    : { borders: size.borders, path: `${field}.borders` };

export function readBorders(
  recipe: ReadRecipe,
  chosen: ChosenSize,
  blocks: readonly QuiltBlock[],
  quilt: Size,
  measured: SizeChoice['measured'],
): QuiltBorders | undefined {
  const { borders, path } = bordersOf(recipe, chosen);
  if (borders.length === 0) return undefined;
  const { seam, grid } = recipe;
  return inField(
    (name) => name.replace(/^borders/, path),
    () =>
      quiltBorders({
        quilt,
        borders: borders.map((border) => borderSpec(border, recipe, blocks)),
        ...(measured !== undefined && { measured }),
        seam,
        grid,
      }),
  );
}
