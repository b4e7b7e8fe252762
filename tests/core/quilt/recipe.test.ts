import { EighthsError, type QuiltRecipe, quilt, readRecipe } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';
import { everything, onPoint, pattern, patternText, plain } from './recipes.js';

describe('a recipe', () => {
  it('is read from its JSON', () => {
    expect(readRecipe(patternText).name).toBe('Thaw at Fernhollow');
  });

  it('has what was left out filled in', () => {
    const { seam, currency, setting, fabrics } = readRecipe(plain);
    expect({ seam, currency, setting, width: fabrics[0]?.width }).toEqual({
      seam: '1/4',
      currency: 'USD',
      setting: { arrangement: 'straight', turns: 'none', oversize: '1/2' },
      width: 40,
    });
  });

  it('that was read is a recipe, and reads the same', () => {
    for (const recipe of [pattern, everything, onPoint, plain]) {
      const once = readRecipe(recipe);
      expect(readRecipe(once)).toEqual(once);
    }
  });

  it('may name its schema for an editor', () => {
    expect(readRecipe({ ...plain, $schema: 'recipe.schema.json' }).name).toBe(plain.name);
  });
});

/** A copy of a recipe with the value at a path replaced; undefined takes it out. */
function changed(recipe: QuiltRecipe, path: string, value: unknown): unknown {
  const copy = JSON.parse(JSON.stringify(recipe));
  const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
  const last = keys.pop() ?? '';
  let parent = copy;
  for (const key of keys) parent = parent[key];
  if (value === undefined) delete parent[last];
  else parent[last] = value;
  return copy;
}

describe('what is wrong with a recipe is said with its path and what would be accepted', () => {
  it.each<[string, unknown, string, string, string]>([
    // what stands there, its path, its code, and a word of the sentence
    ['colour', 'blue', 'unknown-field', 'colour', 'fabrics'],
    ['fabrics[0].colour', 'blue', 'unknown-field', 'fabrics[0].colour', 'directional'],
    ['blocks[1].pieces[0].widht', 6, 'unknown-field', 'blocks[1].pieces[0].widht', 'finished'],
    ['borders[0].corner', 'sky', 'unknown-field', 'borders[0].corner', 'corners'],
    ['fabrics[1].price.each', 2, 'unknown-field', 'fabrics[1].price.each', 'amount'],
    [
      'blocks[1].finished',
      { width: 6, heigth: 6 },
      'missing-field',
      'blocks[1].finished.height',
      'needed',
    ],
    ['name', undefined, 'missing-field', 'name', 'needed'],
    ['sizes', undefined, 'missing-field', 'sizes', 'needed'],
    ['blocks[0].rounds', undefined, 'missing-field', 'blocks[0].rounds', 'needed'],
    ['blocks[2].kind', undefined, 'missing-field', 'blocks[2].kind', 'needed'],
    ['name', '', 'not-a-text', 'name', 'Words'],
    ['name', 7, 'not-a-text', 'name', 'quotes'],
    ['fabrics[0].id', 'deep sky', 'not-an-id', 'fabrics[0].id', 'letter'],
    ['blocks[2].kind', 'patch', 'unknown-choice', 'blocks[2].kind', 'log-cabin'],
    ['blocks[3].unit', 'geese', 'unknown-choice', 'blocks[3].unit', 'flying-geese'],
    ['setting.turns', 'spiral', 'unknown-choice', 'setting.turns', 'barn-raising'],
    ['borders[0].style', 'wavy', 'unknown-choice', 'borders[0].style', 'mitered'],
    ['sizes[0].across', 0, 'not-a-count', 'sizes[0].across', 'from 1 to 100'],
    ['sizes[0].across', 2.5, 'not-a-count', 'sizes[0].across', 'whole'],
    ['sizes[0].across', '4', 'not-a-count', 'sizes[0].across', 'whole'],
    ['blocks[1].pieces[1].count', 401, 'not-a-count', 'blocks[1].pieces[1].count', '400'],
    ['sashing.width', 'wide', 'length-syntax', 'sashing.width', ''],
    ['sashing.width', -1, 'not-positive', 'sashing.width', 'more than 0'],
    ['sashing.width', 0, 'not-positive', 'sashing.width', 'more than 0'],
    ['sashing.width', null, 'wrong-kind', 'sashing.width', '10 1/2'],
    ['fabrics[0].width', [40], 'wrong-kind', 'fabrics[0].width', 'length'],
    ['fabrics[2].shrinkage', 1, 'not-a-share', 'fabrics[2].shrinkage', '0.05'],
    ['fabrics[2].shrinkage', '-0.1', 'not-a-share', 'fabrics[2].shrinkage', 'from 0'],
    ['fabrics[0].price', -12, 'not-money', 'fabrics[0].price', 'at least 0'],
    ['fabrics[0].price', '-12', 'not-money', 'fabrics[0].price', '12.50'],
    ['fabrics[1].price.amount', 'cheap', 'not-money', 'fabrics[1].price.amount', '12.50'],
    ['fabrics[0].directional', 'yes', 'wrong-kind', 'fabrics[0].directional', 'rue or false'],
    ['fabrics', [], 'not-a-list', 'fabrics', '1 to 60'],
    ['fabrics', { id: 'sky' }, 'not-a-list', 'fabrics', 'list'],
    ['sizes', [], 'not-a-list', 'sizes', '1 to 20'],
    ['setting', [], 'wrong-kind', 'setting', 'arrangement'],
    ['setting.pattern', [[]], 'not-a-list', 'setting.pattern[0]', '1 to 100'],
    ['blocks[1].units[0].at', [[0]], 'missing-field', 'blocks[1].units[0].at[0][1]', 'needed'],
    // What refers to something that is not there
    ['fabrics[1].id', 'sky', 'listed-twice', 'fabrics[1].id', 'second time'],
    ['blocks[1].id', 'cabin', 'listed-twice', 'blocks[1].id', 'second time'],
    ['sizes[1].name', 'Small', 'listed-twice', 'sizes[1].name', 'second time'],
    ['blocks[2].fabric', 'sea', 'unknown-choice', 'blocks[2].fabric', 'sand'],
    ['blocks[0].fabrics.top', ['sky', 'sea'], 'unknown-choice', 'blocks[0].fabrics.top[1]', 'sand'],
    [
      'blocks[1].units[0].fabrics.goose',
      'sea',
      'unknown-choice',
      'blocks[1].units[0].fabrics.goose',
      'sand',
    ],
    ['sashing.cornerstones', 'sea', 'unknown-choice', 'sashing.cornerstones', 'sand'],
    ['borders[0].fabric', 'sea', 'unknown-choice', 'borders[0].fabric', 'sand'],
    ['borders[1].block', 'wave', 'unknown-choice', 'borders[1].block', 'cabin'],
    ['binding.fabric', 'sea', 'unknown-choice', 'binding.fabric', 'sand'],
    ['backing.fabric', 'sea', 'unknown-choice', 'backing.fabric', 'sand'],
    ['setting.pattern', [['cabin', 'wave']], 'unknown-choice', 'setting.pattern[0][1]', 'geese'],
    ['sizes[1].pattern', [['wave']], 'unknown-choice', 'sizes[1].pattern[0][0]', 'geese'],
    ['setting.arrangement', 'on-point', 'missing-field', 'setting.triangles', 'needed'],
  ])('%s: %j', (path, value, code, field, word) => {
    const error = refusal(() => readRecipe(changed(everything, path, value)));
    expect([error.code, error.field]).toEqual([code, field]);
    expect(error.message).toContain(word);
  });

  it.each<[string, unknown]>([
    ['nothing', null],
    ['a number', 7],
    ['a list', [plain]],
    ['a function', () => plain],
  ])('%s is no recipe', (_, input) => {
    expect(refusal(() => readRecipe(input)).code).toBe('wrong-kind');
  });

  it('a text that is not JSON', () => {
    expect(refusal(() => readRecipe('{ name: }')).code).toBe('not-json');
  });

  it('a text of ten million characters is not read', () => {
    expect(refusal(() => readRecipe(' '.repeat(10_000_000))).code).toBe('text-too-long');
  });
});

describe('what does not fit is said when a size is made', () => {
  it.each<[string, unknown, string, string]>([
    ['blocks[0].log', 20, 'blocks[1]', 'blocks-differ'],
    ['blocks[0].fabrics.center', undefined, 'blocks[0].fabrics', 'unknown-choice'],
    ['blocks[0].finished', 7, 'blocks[0].finished', 'sizes-disagree'],
    [
      'blocks[0].trim',
      { after: 'never', oversize: 1 },
      'blocks[0].trim.oversize',
      'conflicting-fields',
    ],
    ['blocks[1].units[0].fabrics.goose', undefined, 'blocks[1].units[0]', 'unknown-choice'],
    ['blocks[1].units[0].finished', { width: 6, height: 2 }, 'blocks[1]', 'pieces-do-not-fill'],
    ['blocks[1].units[0].rails', 3, 'blocks[1].units[0].rails', 'unknown-field'],
    ['blocks[1].units[0].count', 2, 'blocks[1].units[0].at', 'list-length'],
    [
      'blocks[3]',
      { id: 'saw', kind: 'unit', unit: 'hexagon', finished: 3, fabrics: { hexagon: 'moss' } },
      'blocks[3].unit',
      'block-not-rectangular',
    ],
    ['blocks[1].pieces[0].at', [[0, 5]], 'blocks[1].pieces[0].at[0]', 'piece-outside'],
    ['blocks[1].pieces[0].at', [[0, 2]], 'blocks[1].units[0].at[0]', 'pieces-overlap'],
    ['blocks[1].pieces[0].finished', { width: 6, height: 3 }, 'blocks[1]', 'pieces-do-not-fill'],
    [
      'blocks[1].pieces[0].cut',
      { width: 6, height: 2 },
      'blocks[1].pieces[0].cut',
      'cut-too-small',
    ],
    ['blocks[1].pieces[1].cut', '1/2', 'blocks[1].pieces[1].cut', 'seam-too-wide'],
    ['blocks[2].finished', 5, 'blocks[2]', 'blocks-differ'],
    ['setting.turns', 'circles', 'sizes[1].across', 'odd-count'],
    ['borders[0].width', 2, 'borders[1].unit', 'repeat-does-not-fit'],
    ['seam', 2, 'blocks[1].pieces[1].cut', 'seam-too-wide'],
    ['fabrics[0].width', 2, 'blocks[1].units[0]', 'piece-too-long'],
    ['binding.strip', 41, 'binding.strip', 'out-of-range'],
    ['buying', { increment: 0 }, 'buying.increment', 'not-positive'],
  ])('%s: %j', (path, value, field, code) => {
    const recipe = readOrThrow(changed(everything, path, value));
    const error = refusal(() => {
      for (const { name } of recipe.sizes) quilt(recipe, name);
    });
    expect([error.code, error.field]).toEqual([code, field]);
  });

  it('a size that the recipe does not have', () => {
    const error = refusal(() => quilt(everything, 'Huge'));
    expect([error.code, error.field]).toEqual(['unknown-choice', 'size']);
    expect(error.message).toContain('Small');
  });

  it('a size of one’s own, with paths of its own', () => {
    const error = refusal(() => quilt(plain, { name: 'Mine', across: 0, down: 3 }));
    expect([error.code, error.field]).toEqual(['not-a-count', 'size.across']);
    const borders = [{ width: 2, fabric: 'sea' }];
    const other = refusal(() => quilt(plain, { name: 'Mine', across: 3, down: 3, borders }));
    expect([other.code, other.field]).toEqual(['unknown-choice', 'size.borders[0].fabric']);
  });
});

/** Errors of reading pass for errors of making: the table says which field it is. */
const readOrThrow = (input: unknown): QuiltRecipe => JSON.parse(JSON.stringify(input));

describe('whatever is handed over', () => {
  const onlyEighthsErrors = (act: () => unknown): void => {
    try {
      act();
    } catch (error) {
      if (!(error instanceof EighthsError)) throw error;
      // What the parser says of a text repeats a part of it.
      if (error.code === 'not-json') return;
      expect(error.message).not.toMatch(/\{\w+\}|undefined|\[object/);
    }
  };

  it('is read, or refused with a sentence', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        onlyEighthsErrors(() => readRecipe(value));
        onlyEighthsErrors(() => readRecipe(JSON.stringify(value)));
      }),
      { numRuns: 100 },
    );
  });

  it('in the place of any part of a recipe as well', () => {
    const paths = [
      ...pathsOf(everything).map((path) => [everything, path] as const),
      ...pathsOf(onPoint.setting, 'setting').map((path) => [onPoint, path] as const),
    ];
    const part = fc.oneof(
      fc.jsonValue({ maxDepth: 2 }),
      fc.constantFrom(
        '1/4',
        '-3',
        40,
        1e9,
        '1e400',
        '√2',
        'sky',
        'cabin',
        '__proto__',
        {},
        [],
        true,
      ),
    );
    fc.assert(
      fc.property(fc.constantFrom(...paths), part, ([recipe, path], value) => {
        const input = JSON.parse(JSON.stringify(changed(recipe, path, value)));
        onlyEighthsErrors(() => quilt(input));
      }),
      { numRuns: 120 },
    );
  });
});

/** The paths of all parts of a value. */
function pathsOf(value: unknown, path = ''): string[] {
  if (typeof value !== 'object' || value === null) return [path];
  const isList = Array.isArray(value);
  const inside = Object.entries(value).flatMap(([key, part]) =>
    pathsOf(part, isList ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`),
  );
  return path === '' ? inside : [path, ...inside];
}
