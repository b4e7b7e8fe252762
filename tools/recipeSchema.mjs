// The recipe's JSON Schema, from the schema that its types and checks are made from. The core's build
// runs this last; the same build writes the same file.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { toJsonSchema } from '@valibot/to-json-schema';
import { isProgram, root } from './run.mjs';

const core = join(root, 'packages', 'core', 'dist');

/**
 * What an editor or another program checks a recipe by. Whether a text is a length, and whether what
 * a recipe refers to is in it, it does not say: that is what `readRecipe` is for.
 *
 * @param {Parameters<typeof toJsonSchema>[0]} recipeSchema
 */
export const recipeJsonSchema = (recipeSchema) => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: 'A quilt recipe',
  ...toJsonSchema(recipeSchema, {
    typeMode: 'input',
    target: 'draft-2020-12',
    // Whether a text is a length is beyond JSON Schema.
    ignoreActions: ['check'],
  }),
});

if (isProgram(import.meta)) {
  /** @type {{ recipeSchema: Parameters<typeof toJsonSchema>[0] }} */
  const { recipeSchema } = await import(
    pathToFileURL(join(core, 'quilt', 'recipe', 'schema.js')).href
  );
  await writeFile(
    join(core, 'recipe.schema.json'),
    `${JSON.stringify(recipeJsonSchema(recipeSchema), null, 2)}\n`,
  );
}
