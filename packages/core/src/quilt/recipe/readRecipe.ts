import { safeParse } from 'valibot';
import { fail } from '../../errors/error.js';
import { textOf } from '../../length/choice.js';
import { checkReferences } from './checkReferences.js';
import { refuse } from './complaint.js';
import { inField } from './inField.js';
import { type QuiltRecipe, type ReadRecipe, recipeSchema, sizeSchema } from './schema.js';

/** A longer text is not read: the recipe of a large pattern has about ten thousand characters. */
const MOST_CHARACTERS = 1_000_000;

function parsed(text: string): unknown {
  if (text.length > MOST_CHARACTERS) {
    fail(
      'text-too-long',
      '',
      { characters: text.length, most: MOST_CHARACTERS },
      'This text has {characters} characters. A recipe of up to {most} is read.',
    );
  }
  try {
    return JSON.parse(text);
  } catch (error) {
    return fail(
      'not-json',
      '',
      { reason: error instanceof Error ? error.message : textOf(error) },
      'This is not JSON: {reason}.',
    );
  }
}

/**
 * A recipe with everything checked that can be told without reckoning: its fields, its words and
 * lengths, and that what it refers to is there; with what was left out filled in.
 */
export function completeRecipe(input: unknown): ReadRecipe {
  const result = safeParse(recipeSchema, input, { abortEarly: true });
  if (!result.success) return refuse(result.issues[0]);
  checkReferences(result.output);
  return result.output;
}

/** A size that is none of the recipe's, checked like one of them; its paths begin with `size`. */
export function completeSize(input: unknown, recipe: ReadRecipe): ReadRecipe['sizes'][number] {
  const result = safeParse(sizeSchema, input, { abortEarly: true });
  if (!result.success) return refuse(result.issues[0], ['size']);
  inField(
    (field) => field.replace(/^sizes\[0\]/, 'size'),
    () => checkReferences({ ...recipe, sizes: [result.output] }),
  );
  return result.output;
}

/**
 * A recipe from its JSON, checked: a text, or what was parsed from one. Whether its sizes fit, `quilt`
 * says.
 *
 * @throws EighthsError with the path of the field that cannot be so: `unknown-field`,
 *   `missing-field`, `unknown-choice` and others; `not-json`, `text-too-long`
 * @example
 * const recipe = readRecipe(`{
 *   "name": "Nine Windows",
 *   "fabrics": [{ "id": "linen" }],
 *   "blocks": [{ "id": "window", "kind": "plain", "fabric": "linen", "finished": 9 }],
 *   "sizes": [{ "name": "Cushion", "across": 3, "down": 3 }]
 * }`);
 * recipe.name; // 'Nine Windows'
 */
export function readRecipe(input: unknown): QuiltRecipe {
  return completeRecipe(typeof input === 'string' ? parsed(input) : input);
}
