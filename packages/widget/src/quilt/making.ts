import { quiltInParts } from '@eighths/core';
import type { QuiltTask } from './model.js';
import { picturing } from './picture.js';
import type { MadeQuilt } from './shown.js';

/**
 * Works out a quilt and draws it bit by bit: whoever asks for no more stops it.
 *
 * @throws EighthsError with the path in the recipe that it is about
 */
export function* making({ recipe, size, options }: QuiltTask): Generator<undefined, MadeQuilt> {
  const planning = quiltInParts(recipe, size, options);
  let state = planning.next();
  for (; !state.done; state = planning.next()) yield;
  const plan = state.value;
  const fabrics = recipe.fabrics.map(({ id }) => id);
  return { recipe, plan, picture: yield* picturing(plan, fabrics) };
}
