import { type QuiltRecipe, readRecipe } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recipeSchema } from '../../../packages/core/src/quilt/recipe/schema.js';
import { recipeJsonSchema } from '../../../tools/recipeSchema.mjs';
import { refusal } from '../block/support.js';
import { fault } from './jsonSchema.js';
import { everything, onPoint, pattern, plain } from './recipes.js';

const schema: unknown = JSON.parse(JSON.stringify(recipeJsonSchema(recipeSchema)));

describe('the published schema of recipes', () => {
  it('is the same each time it is made', () => {
    expect(JSON.stringify(recipeJsonSchema(recipeSchema))).toBe(JSON.stringify(schema));
  });

  it.each<[string, QuiltRecipe]>([
    ['the pattern of the demo pages', pattern],
    ['a recipe with one of everything', everything],
    ['a recipe on point', onPoint],
    ['the least recipe', plain],
  ])('accepts %s', (_, recipe) => {
    expect(fault(schema, recipe)).toBeUndefined();
  });

  it('accepts a recipe that was read', () => {
    const read: unknown = JSON.parse(JSON.stringify(readRecipe(everything)));
    expect(fault(schema, read)).toBeUndefined();
  });

  const bad: readonly (readonly [string, unknown])[] = [
    ['nothing', null],
    ['a list', []],
    ['an unknown field', { ...plain, colour: 'blue' }],
    ['no name', { ...plain, name: undefined }],
    ['an empty name', { ...plain, name: ' ' }],
    ['no fabrics', { ...plain, fabrics: [] }],
    ['a fabric without an id', { ...plain, fabrics: [{ name: 'Linen' }] }],
    ['an id with a space', { ...plain, fabrics: [{ id: 'deep sky' }] }],
    ['a price below 0', { ...plain, fabrics: [{ id: 'linen', price: -1 }] }],
    ['a price that is none', { ...plain, fabrics: [{ id: 'linen', price: 'cheap' }] }],
    ['a block of no kind', { ...plain, blocks: [{ id: 'window' }] }],
    ['a block of another kind', { ...plain, blocks: [{ id: 'window', kind: 'patch' }] }],
    ['a part of a block', { ...plain, sizes: [{ name: 'Half', across: 0.5, down: 1 }] }],
    ['101 blocks across', { ...plain, sizes: [{ name: 'Wide', across: 101, down: 1 }] }],
    ['an unknown turn', { ...plain, setting: { turns: 'spiral' } }],
    ['a list for a setting', { ...plain, setting: [] }],
    ['a pattern with an empty row', { ...plain, setting: { pattern: [[]] } }],
    ['a border of no width', { ...plain, borders: [{ fabric: 'linen' }] }],
    [
      'a mitered border with corners',
      { ...plain, borders: [{ style: 'mitered', width: 2, fabric: 'linen', corners: 'linen' }] },
    ],
    ['a length that is a list', { ...plain, seam: [1, 4] }],
  ];

  it.each(bad)('refuses %s, as reading does', (_, recipe) => {
    const input: unknown = JSON.parse(JSON.stringify(recipe));
    expect(fault(schema, input)).toBeDefined();
    expect(refusal(() => readRecipe(input)).code).toBeTruthy();
  });

  it('accepts whatever is read', () => {
    const name = fc.constantFrom('linen', 'night', 'a b', '', 7);
    const measure = fc.constantFrom<unknown>('1/4', 2, '-1', '', true, 'wide');
    const recipes = fc.record(
      {
        name,
        seam: measure,
        fabrics: fc.array(
          fc.record({ id: name, width: measure, price: measure }, { requiredKeys: ['id'] }),
          { maxLength: 2 },
        ),
        blocks: fc.constant([{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }]),
        borders: fc.array(fc.record({ width: measure, fabric: name }), { maxLength: 2 }),
        sizes: fc.constant([{ name: 'Cushion', across: 3, down: 3 }]),
      },
      { requiredKeys: ['name', 'fabrics', 'blocks', 'sizes'] },
    );
    fc.assert(
      fc.property(recipes, (recipe) => {
        const isRead = (() => {
          try {
            return readRecipe(recipe).name !== '';
          } catch {
            return false;
          }
        })();
        if (isRead) expect(fault(schema, recipe)).toBeUndefined();
      }),
      { numRuns: 150 },
    );
  });
});
