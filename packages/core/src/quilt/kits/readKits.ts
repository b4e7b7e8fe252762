import { fail } from '../../errors/error.js';
import { type Length, length } from '../../length/length.js';
import {
  booleanField,
  checkFields,
  countField,
  lengthField,
  listField,
  missing,
} from '../../plan/field.js';
import { type Money, moneyReader } from '../money/money.js';
import { readPattern } from '../pattern/readPattern.js';
import type { PatternTask } from '../pattern/task.js';
import { below, besideSize, inField } from '../recipe/inField.js';
import { completeRecipe } from '../recipe/readRecipe.js';
import type { KitExtra } from './plan.js';
import type { KitsSpec } from './spec.js';

/** What each person makes: quilts, or blocks by their ids. */
export type MadeByEach =
  | { readonly kind: 'quilts'; readonly count: number }
  | { readonly kind: 'blocks'; readonly counts: ReadonlyMap<string, number> };

/** A class that was read. */
export interface KitsTask {
  readonly pattern: PatternTask;
  readonly people: number;
  readonly spares: number;
  readonly each: MadeByEach;
  readonly binding: boolean;
  readonly backing: boolean;
  readonly bolt: Length;
  readonly extras: readonly KitExtra[];
  readonly price: Money | undefined;
  readonly margin: KitsSpec['margin'];
}

const FIELDS: readonly (keyof KitsSpec)[] = [
  'recipe',
  'size',
  'people',
  'each',
  'spares',
  'binding',
  'backing',
  'bolt',
  'extras',
  'price',
  'margin',
  'method',
  'effort',
  'layers',
];

const MOST_PEOPLE = 1000;
const MOST_EXTRAS = 50;
/** Common practice, no source. */
const USUAL_BOLT = '15 yd';

function readEach(each: NonNullable<KitsSpec['each']>, { blocks }: PatternTask): MadeByEach {
  if (typeof each === 'number') return { kind: 'quilts', count: countField(each, 'each', 1, 20) };
  if (!Array.isArray(each) || each.length === 0) {
    return fail(
      'wrong-kind',
      'each',
      { expected: '[{ "block": "…", "count": 4 }]' },
      'A number of quilts is needed here, or a list of blocks such as {expected}.',
    );
  }
  const counts = new Map<string, number>();
  const known = blocks.map(({ block }) => block.id);
  each.forEach((entry, index) => {
    const field = `each[${index}]`;
    checkFields(entry, field, ['block', 'count']);
    const id = entry.block ?? missing(`${field}.block`);
    if (!known.includes(id)) {
      fail(
        'unknown-choice',
        `${field}.block`,
        { value: String(id), choices: known.join(', ') },
        'The quilt has no block “{value}”. Its blocks are: {choices}.',
      );
    }
    const count = countField(entry.count ?? missing(`${field}.count`), `${field}.count`, 1, 1000);
    counts.set(id, (counts.get(id) ?? 0) + count);
  });
  return { kind: 'blocks', counts };
}

function readExtras(
  extras: NonNullable<KitsSpec['extras']>,
  read: ReturnType<typeof moneyReader>,
): KitExtra[] {
  const entries = listField(extras, 'extras', 'extras');
  countField(entries.length, 'extras', 0, MOST_EXTRAS);
  return entries.map((extra, index) => {
    const field = `extras[${index}]`;
    checkFields(extra, field, ['name', 'cost']);
    const { name = missing(`${field}.name`), cost } = extra;
    if (typeof name !== 'string' || name.trim() === '' || name.length > 100) {
      fail(
        'not-a-text',
        `${field}.name`,
        { most: 100 },
        'Words are needed here, in quotes, of at most {most} characters.',
      );
    }
    return {
      name,
      ...(cost !== undefined && { cost: read(cost, `${field}.cost`) }),
    };
  });
}

/**
 * What a class's spec asks for.
 *
 * @throws EighthsError with the path of the field that cannot be so
 */
export function readKits(spec: KitsSpec): KitsTask {
  checkFields(spec, '', FIELDS);
  const { size, each = 1, extras = [], price, margin } = spec;
  const people = countField(spec.people ?? missing('people'), 'people', 1, MOST_PEOPLE);
  const spares = countField(spec.spares ?? 0, 'spares', 0, MOST_PEOPLE);
  if (price !== undefined && margin !== undefined) {
    fail(
      'conflicting-fields',
      'margin',
      { one: 'price', other: 'margin' },
      'Give either “{one}” or “{other}”: each follows from the other.',
    );
  }
  const input = spec.recipe ?? missing('recipe');
  const recipe = inField(below('recipe'), () => completeRecipe(input));
  const pattern = inField(besideSize, () =>
    readPattern(recipe, { ...(size !== undefined && { size }) }),
  );
  const backing = booleanField(spec.backing ?? false, 'backing');
  if (backing && recipe.backing === undefined) missing('recipe.backing');
  const read = moneyReader(recipe.currency, 'recipe.currency');
  return {
    pattern,
    people,
    spares,
    each: readEach(each, pattern),
    binding: booleanField(spec.binding ?? true, 'binding'),
    backing,
    bolt: lengthField(spec.bolt ?? length(USUAL_BOLT), 'bolt'),
    extras: readExtras(extras, read),
    price: price === undefined ? undefined : read(price, 'price'),
    margin,
  };
}
