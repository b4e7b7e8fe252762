import { PRECUT_NAMES, type PrecutName } from '../../fabric/precut/kinds.js';
import { type Precuts, precuts } from '../../fabric/precut/precuts.js';
import type { LengthInput } from '../../length/length.js';
import { atOnce } from '../../plan/atOnce.js';
import { checkFields, choiceField, countField, missing } from '../../plan/field.js';
import { type FabricTask, fabricTasks } from '../pattern/fabricTasks.js';
import { patternCuts } from '../pattern/patternCuts.js';
import { readPattern } from '../pattern/readPattern.js';
import { below, besideSize, inField } from '../recipe/inField.js';
import { completeRecipe } from '../recipe/readRecipe.js';
import type { QuiltRecipe, QuiltSize, ReadRecipe } from '../recipe/schema.js';

/** A quilt, and the precuts that its blocks could be cut from. */
export interface PrecutsForSpec {
  readonly recipe: QuiltRecipe;
  /** The name of one of the recipe's sizes, or another one; left out, its first. */
  readonly size?: string | QuiltSize;
  /** Which kinds; default all. */
  readonly kinds?: readonly PrecutName[];
  /** How many of a kind are sold together; default 1. */
  readonly packOf?: Readonly<Partial<Record<PrecutName, number>>>;
  /** What the precuts' fabric is sold in, selvage to selvage; default 42. */
  readonly fabricWidth?: LengthInput;
  /** How much work each fabric may take, in elementary steps; default 200,000. */
  readonly effort?: number;
}

/** How the pieces of one fabric are cut from precuts. */
export interface PrecutFabric {
  readonly id: string;
  readonly name: string;
  readonly precuts: Precuts;
}

/** What the blocks of a quilt take of one kind of precut. */
export interface PrecutChoice {
  readonly kind: PrecutName;
  /** Whether every piece of every block can be cut from it. */
  readonly possible: boolean;
  readonly fabrics: readonly PrecutFabric[];
  /** Of all fabrics; pieces that fit into none are not in it. */
  readonly needed: number;
  readonly packOf: number;
  readonly packs: number;
  /** Precuts left over of the last pack. */
  readonly spare: number;
}

const FIELDS: readonly (keyof PrecutsForSpec)[] = [
  'recipe',
  'size',
  'kinds',
  'packOf',
  'fabricWidth',
  'effort',
];
const MOST_IN_PACK = 1000;
const USUAL_EFFORT = 200_000;

/** How far precuts in the making have come. */
export interface PrecutsProgress {
  /** How many plans, one of each kind for each fabric, are made, and how many there are. */
  readonly planned: number;
  readonly plans: number;
}

/**
 * Precuts in the making: pauses between the plans of fabrics. Returns what `precutsFor` returns.
 *
 * @throws EighthsError as `precutsFor`, before the first pause but for `too-many-pieces`
 * @example
 * const recipe = {
 *   name: 'Nine Windows',
 *   fabrics: [{ id: 'linen' }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * const making = precutsForInParts({ recipe });
 * let step = making.next();
 * while (!step.done) step = making.next();
 * step.value.length; // 5
 */
export function* precutsForInParts(
  spec: PrecutsForSpec,
): Generator<PrecutsProgress, readonly PrecutChoice[], undefined> {
  checkFields(spec, '', FIELDS);
  const { size, kinds = PRECUT_NAMES, packOf = {}, fabricWidth, effort = USUAL_EFFORT } = spec;
  const input = spec.recipe ?? missing('recipe');
  checkFields(packOf, 'packOf', PRECUT_NAMES);
  const asked = kinds.map((name, index) => {
    const kind = choiceField(name, `kinds[${index}]`, PRECUT_NAMES);
    return { kind, packOf: countField(packOf[kind] ?? 1, `packOf.${kind}`, 1, MOST_IN_PACK) };
  });
  const recipe = inField(below('recipe'), () => completeRecipe(input));
  const tasks = blockTasks(recipe, size);
  const plans = asked.length * tasks.length;
  const choices: PrecutChoice[] = [];
  for (const { kind, packOf: inPack } of asked) {
    const fabrics: PrecutFabric[] = [];
    for (const { fabric, cuts } of tasks) {
      yield { planned: choices.length * tasks.length + fabrics.length, plans };
      const pieces = cuts.map(({ label, width, length, count }) => {
        return { label, width, length, count, turnable: !fabric.directional };
      });
      const options = { effort, ...(fabricWidth !== undefined && { fabricWidth }) };
      const plan = precuts({ kind, pieces, ...options });
      fabrics.push({ id: fabric.id, name: fabric.name ?? fabric.id, precuts: plan });
    }
    const needed = fabrics.reduce((sum, each) => sum + each.precuts.needed, 0);
    const packs = Math.ceil(needed / inPack);
    const possible = fabrics.every((each) => each.precuts.possible);
    const spare = packs * inPack - needed;
    choices.push({ kind, possible, fabrics, needed, packOf: inPack, packs, spare });
  }
  return [
    ...choices.filter(({ possible }) => possible),
    ...choices.filter(({ possible }) => !possible),
  ];
}

/** What the blocks of a quilt take, by fabric. */
function blockTasks(recipe: ReadRecipe, size: PrecutsForSpec['size']): readonly FabricTask[] {
  return inField(besideSize, () => {
    const task = readPattern(recipe, { ...(size !== undefined && { size }) });
    const cuts = patternCuts(task).filter(({ part }) => part === 'block');
    return fabricTasks(task, cuts, []);
  });
}

/**
 * Which precuts the blocks of a quilt could be cut from, and how many packs of each: of every kind that
 * is asked for, those that can make all blocks first. Sashing, borders, setting triangles and binding
 * are cut from yardage.
 *
 * Pieces may lie either way, except of a print that has an up and a down. Packs are reckoned as if each
 * held whatever fabrics are wanted.
 *
 * @throws EighthsError as `quilt`, with paths in the recipe that begin with `recipe`; `unknown-choice`,
 *   `not-a-count`, `too-many-pieces`
 * @example
 * const recipe = {
 *   name: 'Nine Windows',
 *   fabrics: [{ id: 'linen' }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: '4 1/2' }],
 *   sizes: [{ name: 'Cushion', across: 4, down: 4 }],
 * };
 * const choices = precutsFor({ recipe, packOf: { 'square-5': 12 } });
 * choices.map(({ possible }) => possible); // [true,true,true,true,false]
 * choices[2].kind; // 'square-5'
 * choices[2].needed; // 16
 * choices[2].packs; // 2
 */
export function precutsFor(spec: PrecutsForSpec): readonly PrecutChoice[] {
  return atOnce(precutsForInParts(spec));
}
