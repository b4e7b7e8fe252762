import {
  type ErrorCode,
  kits,
  precutsFor,
  type QuiltRecipe,
  quilt,
  quiltBorders,
  quiltLayout,
  type SashingSpec,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';
import { plain } from './recipes.js';

type Case = readonly [what: string, make: () => unknown, code: ErrorCode, field: string];

const refused = (cases: readonly Case[]) =>
  it.each(cases)('%s', (_, make, code, field) => {
    expect(refusal(make)).toMatchObject({ code, field });
  });

const oblong: QuiltRecipe = {
  ...plain,
  blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: { width: 9, height: 6 } }],
};
const onPoint: QuiltRecipe = {
  ...plain,
  setting: { arrangement: 'on-point', triangles: 'linen' },
};
const turned: QuiltRecipe = { ...plain, setting: { turns: 'barn-raising' } };

describe('a recipe is refused where it says so, not where its quilt is worked out', () => {
  refused([
    [
      'oblong blocks on point',
      () => quilt({ ...oblong, setting: { arrangement: 'on-point', triangles: 'linen' } }),
      'not-square',
      'blocks[0]',
    ],
    [
      'oblong blocks that are turned by quarters',
      () => quilt({ ...oblong, setting: { turns: 'circles' } }),
      'not-square',
      'blocks[0]',
    ],
    ['an odd number of blocks about a middle', () => quilt(turned), 'odd-count', 'sizes[0].across'],
    [
      'more blocks on point than are laid out',
      () => quilt({ ...onPoint, sizes: [{ name: 'Field', across: 60, down: 3 }] }),
      'not-a-count',
      'sizes[0].across',
    ],
    [
      'setting triangles whose squares are wider than the fabric',
      () => quilt({ ...onPoint, blocks: [{ ...plain.blocks[0], finished: 30 }] as never }),
      'piece-too-long',
      'setting.triangles',
    ],
    [
      'a square that is wider than its fabric',
      () => quilt({ ...plain, fabrics: [{ id: 'linen', width: 9 }] }),
      'piece-too-long',
      'blocks[0]',
    ],
    [
      'sashes too wide to be joined on the diagonal',
      () => quilt({ ...plain, sashing: { width: 50, fabric: 'night' } }),
      'strip-too-wide',
      'sashing',
    ],
  ]);
});

describe('what is asked of a quilt is refused by the name it is asked by', () => {
  refused([
    ['an effort below 0', () => quilt(plain, undefined, { effort: -1 }), 'not-a-count', 'effort'],
    ['no layers', () => quilt(plain, undefined, { layers: 0 }), 'not-a-count', 'layers'],
    [
      'a method that there is not',
      () => quilt(plain, undefined, { method: 'frugal' as never }),
      'unknown-choice',
      'method',
    ],
  ]);
});

describe('kits and precuts tell what is wrong with the recipe from what is asked of it', () => {
  refused([
    [
      'kits of a size that there is not',
      () => kits({ recipe: plain, people: 3, size: 'King' }),
      'unknown-choice',
      'size',
    ],
    [
      'kits of a quilt that cannot be laid out',
      () => kits({ recipe: turned, people: 3 }),
      'odd-count',
      'recipe.sizes[0].across',
    ],
    [
      'precuts for a size that there is not',
      () => precutsFor({ recipe: plain, size: 'King' }),
      'unknown-choice',
      'size',
    ],
    [
      'precuts for a quilt that cannot be laid out',
      () => precutsFor({ recipe: turned }),
      'odd-count',
      'recipe.sizes[0].across',
    ],
    [
      'one extra where a list is needed',
      () => kits({ recipe: plain, people: 3, extras: { name: 'Thread' } as never }),
      'wrong-kind',
      'extras',
    ],
  ]);
});

describe('borders and layouts refuse', () => {
  const onPointWith = (sashing: Omit<SashingSpec, 'width'>) => () =>
    quiltLayout({
      block: 9,
      across: 3,
      down: 3,
      setting: 'on-point',
      sashing: { width: 1, ...sashing },
    });
  refused([
    [
      'one border where a list is needed',
      () => quiltBorders({ quilt: { width: 40, height: 40 }, borders: { width: 3 } as never }),
      'wrong-kind',
      'borders',
    ],
    [
      'a pieced border cut lengthwise',
      () =>
        quiltBorders({
          quilt: { width: 40, height: 40 },
          borders: [{ style: 'pieced', width: 3, unit: 4, cut: 'lengthwise' }],
        }),
      'conflicting-fields',
      'borders[0].cut',
    ],
    [
      'sashes on point that leave out the edge',
      onPointWith({ outer: false }),
      'conflicting-fields',
      'sashing.outer',
    ],
    [
      'sashes on point without cornerstones',
      onPointWith({ cornerstones: false }),
      'conflicting-fields',
      'sashing.cornerstones',
    ],
  ]);
});
