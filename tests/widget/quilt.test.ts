import { readFileSync } from 'node:fs';
import { length, type Mark, type QuiltRecipe, quilt, readRecipe } from '@eighths/core';
import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { measuresFor } from '../../packages/widget/src/base/measures.js';
import { Working } from '../../packages/widget/src/base/working.js';
import { cartLines } from '../../packages/widget/src/quilt/cart.js';
import { withQuiltDefaults } from '../../packages/widget/src/quilt/defaults.js';
import { eachText, onlyOneEach, readEach } from '../../packages/widget/src/quilt/each.js';
import type { GivenQuiltSettings } from '../../packages/widget/src/quilt/fields.js';
import { making } from '../../packages/widget/src/quilt/making.js';
import { mergedMarks } from '../../packages/widget/src/quilt/mergedMarks.js';
import { inputOf, readTask } from '../../packages/widget/src/quilt/model.js';
import { EighthsQuilt, renderTag } from '../../packages/widget/src/render/index.js';

const file = new URL('../../docs/pages/recipes/thaw-at-fernhollow.json', import.meta.url);
const text = readFileSync(file, 'utf8');
const thaw = readRecipe(text);

const small: QuiltRecipe = {
  name: 'Nine Windows',
  fabrics: [
    { id: 'linen', name: 'Linen', role: 'squares', price: '10.00' },
    { id: 'wide', width: 108 },
  ],
  blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
  backing: { fabric: 'wide' },
  sizes: [
    { name: 'Cushion', across: 3, down: 3 },
    { name: 'Cot', across: 4, down: 5 },
  ],
};

const inches = measuresFor('inches', 'en');

const read = (given: GivenQuiltSettings, recipe = small) =>
  readTask(withQuiltDefaults(given, recipe, 'inches'), recipe, inches);

describe('settings of a quilt', () => {
  test('are the first size of the recipe where nothing is said', () => {
    const { task, faults } = read({});
    expect(faults.size).toBe(0);
    expect(task).toMatchObject({ size: 'Cushion', recipe: small, options: { method: 'plain' } });
    expect(task.kits).toBeUndefined();
  });

  test('name one of the recipe’s sizes', () => {
    expect(read({ size: 'Cot' }).task.size).toBe('Cot');
    expect(read({ size: 'Cot', across: '4', down: '5' }).task.size).toBe('Cot');
  });

  test('make a size of one’s own with the borders of the named one', () => {
    const borders = [{ width: 2, fabric: 'linen' }] as const;
    const recipe = { ...small, sizes: [{ name: 'Cushion', across: 3, down: 3, borders }] };
    expect(read({ down: '7' }, recipe).task.size).toEqual({
      ...{ name: '3 by 7', across: 3, down: 7, borders },
    });
  });

  test('widen the fabrics that are as wide as the first, and leave others alone', () => {
    const { fabrics } = read({ 'fabric-width': '42 1/2' }).task.recipe;
    expect(fabrics.map(({ width }) => width)).toEqual(['42 1/2', 108]);
  });

  test.each([
    ['across', '0'],
    ['across', '101'],
    ['down', 'six'],
    ['fabric-width', 'wide'],
    ['fabric-width', '0'],
    ['method', 'lavish'],
    ['people', '1001'],
    ['spares', '-1'],
    ['each', 'a few'],
    ['bolt', 'a bolt'],
    ['bolt', '0'],
    ['margin', '100'],
  ] as const)('tell what is wrong with %s of %j at its input', (field, value) => {
    expect([...read({ [field]: value }).faults.keys()]).toEqual([field]);
  });

  test('ask for kits where there are people', () => {
    const { kits } = read({ people: '12', spares: '1', each: '4 of window' }).task;
    expect(kits).toMatchObject({ people: 12, spares: 1, each: [{ block: 'window', count: 4 }] });
  });
});

describe('what a shop says of its kits', () => {
  const kitsOf = (settings: Partial<Record<string, string>>) =>
    read({ people: '12', ...settings }).task.kits;

  test.each([
    ['15', '540'],
    ['15 yd', '540'],
    ['9.144 m', '360'],
  ])('a bolt of %s is so many inches', (bolt, inches) => {
    expect(kitsOf({ bolt })?.bolt?.toString()).toBe(inches);
  });

  test.each([
    ['48', '48'],
    ['$48.50', '48.50'],
    ['48.50 €', '48.50'],
  ])('a price of %s', (price, read) => {
    expect(kitsOf({ price })?.price).toBe(read);
  });

  test('a margin in hundredths', () => {
    expect(kitsOf({ margin: '35' })?.margin?.toString()).toBe('7/20');
  });
});

describe('what each makes', () => {
  test.each([
    ['2', 2],
    ['4 of cabin', [{ block: 'cabin', count: 4 }]],
    [
      '4 of cabin; 2 of night-sky',
      [
        { block: 'cabin', count: 4 },
        { block: 'night-sky', count: 2 },
      ],
    ],
  ])('is read: %s', (typed, made) => {
    expect(readEach(typed)).toEqual(made);
  });

  test('is one kind and a number, there and back', () => {
    for (const typed of ['3', '4 of cabin']) {
      const each = onlyOneEach(typed);
      expect(each && eachText(each.block, each.count)).toBe(typed);
    }
    expect(onlyOneEach('4 of cabin; 2 of window')).toBeUndefined();
  });
});

describe('an error of the core stands', () => {
  const at = (field: string): string => {
    try {
      readRecipe({ ...small, [field]: 'x' });
    } catch (error) {
      if (error instanceof Error && 'field' in error) return inputOf(Object(error));
    }
    return 'no error';
  };

  test('at its path in the recipe', () => {
    expect(at('blocks')).toBe('blocks');
    expect(at('color')).toBe('color');
  });

  test.each([
    ['size.across', 'across'],
    ['people', 'people'],
    ['each[0].block', 'each'],
    ['recipe.blocks[0].finished', 'blocks[0].finished'],
    ['', 'recipe'],
  ])('of %j at %s', (field, input) => {
    const error: Parameters<typeof inputOf>[0] = Object.assign(Object.create(null), { field });
    expect(inputOf(error)).toBe(input);
  });
});

describe('lines for a shop’s cart', () => {
  test('say what to cut in whole increments, and what it costs', () => {
    const [linen] = quilt(small).fabrics;
    expect(linen && cartLines(linen)).toEqual([
      {
        fabric: 'linen',
        name: 'Linen',
        role: 'squares',
        yards: '1 1/8',
        meters: '1.03',
        increment: '1/8 yd',
        increments: 9,
        price: { cents: 1000, currency: 'USD', per: 'yard' },
        cost: { cents: 1125, currency: 'USD' },
      },
    ]);
  });

  test('are tenths of a meter where the shop cuts in those', () => {
    const [linen] = quilt({ ...small, buying: { increment: '0.1 m' } }).fabrics;
    const [line] = linen ? cartLines(linen) : [];
    expect(line).toMatchObject({
      increment: '0.1 m',
      increments: 10,
      meters: '1',
      yards: '1 1/8',
    });
  });

  test('add up to what is bought, for every size of the demo’s pattern, as plain data', () => {
    for (const { name } of thaw.sizes) {
      for (const fabric of quilt(thaw, name).fabrics) {
        const lines = cartLines(fabric);
        expect(JSON.parse(JSON.stringify(lines))).toEqual(lines);
        const sum = lines.reduce(
          (all, { increment, increments }) => all.plus(length(increment).times(increments)),
          length(0),
        );
        expect(sum.equals(fabric.buy)).toBe(true);
      }
    }
  });
});

describe('the picture', () => {
  const made = (recipe: QuiltRecipe, size: string) => {
    const parts = making({ recipe, size, options: {}, kits: undefined });
    let state = parts.next();
    while (!state.done) state = parts.next();
    return state.value;
  };

  test('of a king is a few dozen marks, and says how many blocks there are', () => {
    const { picture } = made(thaw, 'King');
    expect(picture?.cells.length).toBeLessThan(40);
    expect(picture?.frame.description.text).toContain('100 blocks');
  });

  test('is left out where there are more cells than anybody sees', () => {
    const sizes = [{ name: 'Field', across: 60, down: 60 }];
    expect(made({ ...small, sizes }, 'Field').picture).toBeUndefined();
  });

  test('keeps every path when marks are merged', () => {
    const mark = fc.record({
      kind: fc.constant('path' as const),
      role: fc.constantFrom('fabric' as const, 'hatch' as const, 'outline' as const),
      d: fc.integer({ min: 1, max: 9999 }).map((n) => `M${n} 0Z`),
      tint: fc.integer({ min: 0, max: 3 }),
    });
    fc.assert(
      fc.property(fc.array(mark, { maxLength: 40 }), (marks) => {
        const paths = (list: readonly Mark[]): readonly string[] =>
          list.flatMap((each) => (each.kind === 'path' ? each.d.match(/M[^Z]*Z/g) : null) ?? []);
        expect([...paths(mergedMarks(marks))].sort()).toEqual([...paths(marks)].sort());
      }),
      { numRuns: 50 },
    );
  });
});

describe('work in slices', () => {
  afterEach(() => {
    vi.useRealTimers();
    vi.restoreAllMocks();
  });

  /** Every step takes longer than a slice. */
  function* slow(name: string): Generator<undefined, string> {
    for (let step = 0; step < 3; step += 1) yield;
    return name;
  }

  const slowly = () => {
    vi.useFakeTimers({ toFake: ['setTimeout'] });
    let now = 0;
    vi.spyOn(performance, 'now').mockImplementation(() => {
      now += 20;
      return now;
    });
    const settled = vi.fn();
    return { settled, working: new Working<string>(settled) };
  };

  test('is done at once where it is short, and tells nobody', () => {
    const settled = vi.fn();
    const working = new Working<string>(settled);
    expect(working.ask('one', () => slow('one'))).toEqual({ answer: 'one' });
    expect(settled).not.toHaveBeenCalled();
  });

  test('goes on in later turns where it is long, and tells when it is done', () => {
    const { settled, working } = slowly();
    expect(working.ask('one', () => slow('one'))).toEqual({});
    vi.runAllTimers();
    expect(settled).toHaveBeenCalledTimes(1);
    expect(working.ask('one', () => slow('other'))).toEqual({ answer: 'one' });
  });

  test('ends where something else is asked meanwhile', () => {
    const { settled, working } = slowly();
    working.ask('one', () => slow('one'));
    working.ask('two', () => slow('two'));
    vi.runAllTimers();
    expect(settled).toHaveBeenCalledTimes(1);
    expect(working.ask('two', () => slow('other'))).toEqual({ answer: 'two' });
  });
});

describe('a quilt’s tag', () => {
  const elements = { 'eighths-quilt': EighthsQuilt };

  test('is written out with the recipe of its file, and keeps its address', async () => {
    const markup = await renderTag(
      '<eighths-quilt src="thaw.json" size="Throw">',
      elements,
      async () => text,
    );
    expect(markup.startsWith('<eighths-quilt src="thaw.json" size="Throw">\n')).toBe(true);
    expect(markup).toContain('<caption>What to buy</caption>');
    expect(markup).toContain('Square up the end of the fabric.');
    expect(markup).toContain('65 finished');
  });

  test('keeps the script in it, and makes no markup of what that says', async () => {
    const recipe = JSON.stringify({ ...small, name: 'Nine <b>Windows</b>' });
    const markup = await renderTag(
      `<eighths-quilt><script type="application/json">${recipe}</script>`,
      elements,
    );
    expect(markup).toContain(`<script type="application/json">${recipe}</script>`);
    expect(markup).toContain('Nine &lt;b&gt;Windows&lt;/b&gt;');
  });

  test('without a recipe is told what it needs', async () => {
    await expect(renderTag('<eighths-quilt>', elements)).rejects.toThrow('no pattern here yet');
  });
});
