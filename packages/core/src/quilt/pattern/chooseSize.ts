import { fail } from '../../errors/error.js';
import { completeSize } from '../recipe/readRecipe.js';
import type { QuiltSize, ReadRecipe } from '../recipe/schema.js';

/** A size, and where what it says stands. */
export interface ChosenSize {
  readonly size: ReadRecipe['sizes'][number];
  readonly field: string;
}

/**
 * The size that is made: one of the recipe's by its name, or one that is given whole.
 *
 * @throws EighthsError `unknown-choice` where there is none of that name
 */
export function chooseSize(recipe: ReadRecipe, choice: string | QuiltSize | undefined): ChosenSize {
  const { sizes } = recipe;
  if (typeof choice === 'object') return { size: completeSize(choice, recipe), field: 'size' };
  const index = choice === undefined ? 0 : sizes.findIndex(({ name }) => name === choice);
  const size = sizes[index];
  if (size !== undefined) return { size, field: `sizes[${index}]` };
  return fail(
    'unknown-choice',
    'size',
    { value: choice ?? '', choices: sizes.map(({ name }) => name).join(', ') },
    'The recipe has no size “{value}”. Its sizes are: {choices}.',
  );
}
