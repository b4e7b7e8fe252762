import {
  backing,
  bedQuilt,
  cutFromHand,
  cuttingPlan,
  EighthsError,
  fabricPlan,
  fitArc,
  howManyBlocks,
  joinStrips,
  kits,
  lengthwise,
  precuts,
  precutsFor,
  quiltBorders,
  quiltLayout,
  rescueBlocks,
  seamTest,
  shapesFromStrips,
  squareInSquare,
  stripSet,
  trapezoid,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';

const pieces = [{ width: '2 1/2', length: '4 1/2', count: 8 }];
const quilt = { width: 48, height: 60 };
const border = { width: 3 };
const piecedBorder = { style: 'pieced', unit: 3, width: 3 };
const recipe = {
  name: 'Nine Windows',
  fabrics: [{ id: 'linen' }],
  blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
  sizes: [{ name: 'Cushion', across: 3, down: 3 }],
};

/** What a page calls, a spec that has all it needs, and every field that it cannot do without. */
const calls: readonly [string, (spec: never) => unknown, object, readonly string[]][] = [
  [
    'a cutting plan',
    cuttingPlan,
    { width: 42, pieces },
    ['pieces', 'pieces[0].width', 'pieces[0].length', 'pieces[0].count'],
  ],
  [
    'a plan of one fabric',
    fabricPlan,
    { width: 40, pieces },
    ['pieces', 'pieces[0].width', 'pieces[0].length', 'pieces[0].count'],
  ],
  ['strips that are joined', joinStrips, { width: 40, pieces }, ['pieces', 'pieces[0].length']],
  ['borders cut lengthwise', lengthwise, { width: 40, pieces }, ['pieces', 'pieces[0].width']],
  ['precuts', precuts, { kind: 'fat-quarter', pieces }, ['kind', 'pieces', 'pieces[0].count']],
  ['precuts for a recipe', precutsFor, { recipe }, ['recipe']],
  [
    'pieces from fabric on hand',
    cutFromHand,
    { onHand: [{ width: 20, length: 18 }], pieces },
    ['onHand', 'pieces'],
  ],
  [
    'blocks from fabric on hand',
    howManyBlocks,
    { onHand: [{ width: 20, length: 18 }], block: pieces },
    ['onHand', 'block', 'block[0].width'],
  ],
  [
    'shapes from strips',
    shapesFromStrips,
    { strip: { width: 3, first: 1, step: 4 }, count: 30, width: 42 },
    ['strip', 'strip.width', 'strip.first', 'strip.step', 'count'],
  ],
  ['a strip set', stripSet, { finished: 2, strips: [1, 2, 1] }, ['finished', 'strips']],
  ['squares in a square', squareInSquare, { finished: 4 }, ['finished']],
  ['a trapezoid', trapezoid, { finished: { width: 6, height: 2 } }, ['finished']],
  ['a test of the seam', seamTest, { measured: '3 3/8' }, ['measured']],
  [
    'blocks of several sizes',
    rescueBlocks,
    { measured: ['12 3/8'], finished: 12, across: 4, down: 5 },
    ['measured', 'finished', 'across', 'down'],
  ],
  [
    'logs along an arc',
    fitArc,
    { rounds: 3, finished: 9, center: { most: 2 }, wide: { most: 2 }, narrow: { most: 1 } },
    ['rounds', 'finished', 'center', 'wide.most', 'narrow.most'],
  ],
  [
    'a layout',
    quiltLayout,
    { block: 9, across: 4, down: 5, sashing: { width: 2 } },
    ['block', 'across', 'down', 'sashing.width'],
  ],
  [
    'borders',
    quiltBorders,
    { quilt, borders: [border, piecedBorder] },
    ['quilt', 'borders', 'borders[0].width', 'borders[1].unit'],
  ],
  ['a backing', backing, { quilt }, ['quilt']],
  [
    'a quilt for a bed',
    bedQuilt,
    { mattress: 'twin', drop: { sides: 12, foot: 12 }, block: 9, sashing: { width: 2 } },
    ['mattress', 'drop.foot', 'block', 'sashing.width'],
  ],
  [
    'kits',
    kits,
    {
      recipe,
      people: 12,
      each: [{ block: 'window', count: 4 }],
      extras: [{ name: 'Thread', cost: 2 }],
    },
    ['recipe', 'people', 'each[0].block', 'each[0].count', 'extras[0].name'],
  ],
];

/** The path of a limit that a strip would give as well. */
const alsoKnownAs: Readonly<Record<string, string>> = {
  'wide.most': 'strips.wide',
  'narrow.most': 'strips.narrow',
};

/** The same spec, without the field at a path. */
function without(spec: object, path: string): object {
  const copy = structuredClone(spec);
  const steps = path.split(/[.[\]]+/).filter((step) => step !== '');
  const last = steps.pop() ?? '';
  const holder = steps.reduce<object>((one, step) => Reflect.get(one, step), copy);
  expect(Reflect.has(holder, last), path).toBe(true);
  Reflect.deleteProperty(holder, last);
  return copy;
}

describe.each(calls)('%s', (_, make, spec, fields) => {
  const from = (some: object) => () => make(some as never);

  it('needs no more than this', () => {
    expect(from(spec)).not.toThrow();
  });

  it.each(fields)('is refused without “%s”, by its name', (path) => {
    const field = alsoKnownAs[path] ?? path;
    let refused: unknown;
    try {
      from(without(spec, path))();
    } catch (error) {
      refused = error;
    }
    expect(refused).toBeInstanceOf(EighthsError);
    expect(refused).toMatchObject({ code: 'missing-field', field, values: { name: field } });
  });
});
