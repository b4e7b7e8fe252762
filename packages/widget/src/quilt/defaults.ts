import { length, type QuiltRecipe, type QuiltSize } from '@eighths/core';
import { measuresFor, type Units } from '../base/measures.js';
import { type GivenQuiltSettings, type QuiltSettings, quiltFields } from './fields.js';

const nothing = Object.fromEntries(quiltFields.map((field) => [field, ''])) as QuiltSettings;

/** The usable width of fabric that a recipe's is where it says nothing. */
const USUAL_WIDTH = 40;

/** The width of the recipe's first fabric stands for those of all that are as wide. */
export const usualWidth = ({ fabrics: [first] }: QuiltRecipe) =>
  length(first?.width ?? USUAL_WIDTH);

/** One of a recipe's sizes by its name. */
export const namedSize = ({ sizes }: QuiltRecipe, name: string): QuiltSize | undefined =>
  sizes.find((size) => size.name === name);

/** The inputs of one of a recipe's sizes. */
export const sizeTexts = ({ name, across, down }: QuiltSize) => ({
  size: name,
  across: String(across),
  down: String(down),
});

/** Every setting, with what is not given filled in from the recipe. */
export function withQuiltDefaults(
  given: GivenQuiltSettings,
  recipe: QuiltRecipe | undefined,
  units: Units,
): QuiltSettings {
  if (recipe === undefined) return { ...nothing, ...given };
  const size = namedSize(recipe, given.size ?? '') ?? recipe.sizes[0];
  return {
    ...nothing,
    ...(size === undefined ? {} : sizeTexts(size)),
    'fabric-width': measuresFor(units, 'en').typed(usualWidth(recipe)),
    method: 'plain',
    ...given,
  };
}
