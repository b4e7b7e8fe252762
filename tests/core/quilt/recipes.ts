import { readFileSync } from 'node:fs';
import type { KitsSpec, QuiltRecipe } from '@eighths/core';

const read = (name: string): string =>
  readFileSync(new URL(`../../../docs/pages/recipes/${name}.json`, import.meta.url), 'utf8');

/** The invented pattern of the demo pages, as its page reads it. */
export const patternText = read('thaw-at-fernhollow');
export const pattern: QuiltRecipe = JSON.parse(patternText);

/** The invented class that sews it. */
export const classOf: Omit<KitsSpec, 'recipe'> = JSON.parse(read('thaw-at-fernhollow-class'));

/** The least that a recipe can be: plain squares, three by three. */
export const plain: QuiltRecipe = {
  name: 'Nine Windows',
  fabrics: [{ id: 'linen' }, { id: 'night' }],
  blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
  sizes: [{ name: 'Cushion', across: 3, down: 3 }],
};

/** Every kind of block, sashing, and every kind of border, invented for these tests. */
export const everything: QuiltRecipe = {
  name: 'Weather Table',
  about: 'One of everything.',
  fabrics: [
    { id: 'sky', name: 'Sky', directional: true, price: 12 },
    { id: 'sand', name: 'Sand', width: 42, price: { amount: '21.50', per: 'meter' } },
    { id: 'moss', shrinkage: '0.04', price: '9.95' },
    { id: 'back', name: 'Wide back', width: 104, price: 18 },
  ],
  blocks: [
    {
      id: 'cabin',
      kind: 'log-cabin',
      rounds: 2,
      center: 2,
      log: 1,
      fabrics: { center: 'moss', top: 'sky', left: 'sky', right: 'sand', bottom: 'sand' },
    },
    {
      id: 'geese',
      name: 'Flight',
      kind: 'pieces',
      finished: 6,
      units: [
        {
          unit: 'flying-geese',
          finished: { width: 6, height: 3 },
          fabrics: { goose: 'moss', sky: 'sky' },
          at: [[0, 0]],
        },
      ],
      pieces: [
        { label: 'ground', fabric: 'sand', finished: { width: 6, height: 2 }, at: [[0, 3]] },
        {
          fabric: 'sky',
          cut: { width: '3 1/2', height: '1 1/2' },
          count: 2,
          at: [
            [0, 5],
            [3, 5],
          ],
        },
      ],
    },
    { id: 'rest', kind: 'plain', fabric: 'sand' },
    {
      id: 'saw',
      kind: 'unit',
      unit: 'half-square-triangles',
      finished: 3,
      method: 'eight-at-a-time',
      fabrics: { light: 'sand', dark: 'moss' },
    },
  ],
  setting: {
    pattern: [
      ['cabin', 'geese'],
      ['rest', 'cabin'],
    ],
  },
  sashing: { width: '1 1/2', fabric: 'moss', outer: true, cornerstones: 'sky' },
  borders: [
    { width: '3 3/4', fabric: 'sand' },
    { style: 'pieced', block: 'saw', corners: 'sky' },
    { style: 'mitered', width: 4, fabric: 'sky', cut: 'lengthwise' },
  ],
  binding: { fabric: 'moss', strip: '2 1/4' },
  backing: { fabric: 'back' },
  batting: {},
  sizes: [
    { name: 'Small', across: 4, down: 4 },
    { name: 'Without borders', across: 3, down: 5, borders: [] },
  ],
};

/** The same blocks on point. */
export const onPoint: QuiltRecipe = {
  ...everything,
  setting: { arrangement: 'on-point', pattern: [['cabin']], between: 'rest', triangles: 'sand' },
  borders: [{ width: 5, fabric: 'sky' }],
  sashing: { width: 1, fabric: 'moss', cornerstones: 'sky' },
  sizes: [{ name: 'Lap', across: 4, down: 5 }],
};
