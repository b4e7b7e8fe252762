import { EighthsError } from '../../errors/error.js';

/**
 * Does something whose errors speak of the fields of its own spec, and says where those stand in the
 * recipe.
 *
 * @param fieldOf the recipe's path for a path of the spec.
 */
export function inField<Result>(fieldOf: (field: string) => string, make: () => Result): Result {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof EighthsError)) throw error;
    throw new EighthsError(error.code, fieldOf(error.field), error.values, error.template);
  }
}

/** The path of what is asked for in a recipe: its size stands beside it, all else in it. */
export const besideSize = (field: string): string =>
  /^size(?!s)/.test(field) ? field : `recipe.${field}`;

/** A path below another: `wide` below `blocks[0]` is `blocks[0].wide`. */
export const below =
  (parent: string) =>
  (field: string): string =>
    field === '' ? parent : `${parent}.${field}`;
