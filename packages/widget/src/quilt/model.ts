import {
  EighthsError,
  type KitsSpec,
  type Length,
  length,
  type QuiltOptions,
  type QuiltRecipe,
  type QuiltSize,
} from '@eighths/core';
import type { Measures } from '../base/measures.js';
import { attributeName } from '../base/names.js';
import { withDecimalSign } from '../base/numbers.js';
import { given, SettingsReader } from '../base/settingsReader.js';
import { namedSize, usualWidth } from './defaults.js';
import { readEach } from './each.js';
import { type QuiltField, type QuiltSettings, quiltFields } from './fields.js';

/** What settings ask of a recipe. */
export interface QuiltTask {
  readonly recipe: QuiltRecipe;
  readonly size: string | QuiltSize;
  readonly options: QuiltOptions;
  /** Kits for a class, where there are people in it. */
  readonly kits: KitsSpec | undefined;
}

/** A task without the recipe, and what is wrong with the settings. */
export interface ReadQuiltTask {
  readonly task: QuiltTask;
  readonly faults: ReadonlyMap<string, EighthsError>;
}

const MOST_BLOCKS = 100;
const MOST_PEOPLE = 1000;
/** Of a price, what is left is less than all of it. */
const MOST_PERCENT = 99;

/** All fabrics that are as wide as the first are so wide. */
function withWidth(recipe: QuiltRecipe, width: Length): QuiltRecipe {
  const usual = usualWidth(recipe);
  if (usual.equals(width)) return recipe;
  const fabrics = recipe.fabrics.map((fabric) =>
    usual.equals(fabric.width ?? usual) ? { ...fabric, width: width.toString() } : fabric,
  );
  return { ...recipe, fabrics };
}

/** One of the recipe's sizes, or one with other numbers of blocks and its borders. */
function sizeOf(recipe: QuiltRecipe, name: string, across?: number, down?: number) {
  const size = namedSize(recipe, name);
  if (size === undefined) return name;
  const own = { across: across ?? size.across, down: down ?? size.down };
  if (own.across === size.across && own.down === size.down) return name;
  return { ...size, ...own, name: `${own.across} by ${own.down}` };
}

/** What settings come to, before anything is worked out. */
export function readTask(
  settings: QuiltSettings,
  recipe: QuiltRecipe,
  measures: Measures,
): ReadQuiltTask {
  const reader = new SettingsReader<QuiltField>(settings, measures);
  const across = reader.count('across', 1, MOST_BLOCKS);
  const down = reader.count('down', 1, MOST_BLOCKS);
  const width = reader.read('fabric-width', (text) =>
    positive(measures.read(text), 'fabric-width'),
  );
  const method = reader.choice('method', ['plain', 'thrifty']);
  const people = reader.count('people', 1, MOST_PEOPLE);
  const spares = reader.count('spares', 0, MOST_PEOPLE);
  const each = reader.read('each', readEach);
  const bolt = reader.read('bolt', (text) => positive(readBolt(text, measures), 'bolt'));
  const price = reader.read('price', (text) => readPrice(text, measures));
  const percent = reader.count('margin', 0, MOST_PERCENT);
  const margin = percent === undefined ? undefined : length(percent).dividedBy(100);
  const made = width === undefined ? recipe : withWidth(recipe, width);
  const size = sizeOf(recipe, settings.size, across, down);
  const options = given({ method });
  const kits =
    people === undefined
      ? undefined
      : { recipe: made, size, people, ...given({ each, spares, bolt, price, margin }), ...options };
  return { task: { recipe: made, size, options, kits }, faults: reader.faults };
}

/** What is on a bolt: a bare number is yards, or meters. */
const readBolt = (text: string, { units, decimalSign }: Measures): Length =>
  length(text, { unit: units === 'metric' ? 'm' : 'yd', decimal: decimalSign });

/** An amount of money as the library reads it: without a currency's sign, with a decimal point. */
const readPrice = (text: string, { decimalSign }: Measures): string =>
  withDecimalSign(text.replace(/[\p{Sc}\s]/gu, ''), decimalSign, '.');

function positive(value: Length, field: QuiltField): Length {
  if (value.sign() > 0) return value;
  throw new EighthsError(
    'not-positive',
    field,
    { value },
    'A length above 0 is needed here, not {value}.',
  );
}

/**
 * The input that an error of the core is about, or else its path in the recipe: sizes of one's own and
 * kits have inputs.
 */
export function inputOf({ field }: EighthsError): string {
  const own = attributeName(field.replace(/^size\./, '').replace(/^each\b.*/, 'each'));
  const known = quiltFields.find((each) => each === own);
  return known ?? (field.replace(/^recipe\./, '') || 'recipe');
}
