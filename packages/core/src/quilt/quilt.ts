import { atOnce } from '../plan/atOnce.js';
import { checkFields } from '../plan/field.js';
import { grownBy } from '../plan/size.js';
import { sumMoney } from './money/sums.js';
import { fabricTasks } from './pattern/fabricTasks.js';
import { fabricOfPart, patternCuts } from './pattern/patternCuts.js';
import type { QuiltCell, QuiltFabric, QuiltPlan } from './pattern/plan.js';
import { type FabricOptions, planFabric } from './pattern/planFabrics.js';
import { readPattern } from './pattern/readPattern.js';
import type { PatternTask, SizeChoice } from './pattern/task.js';
import { quiltWarnings } from './pattern/warnings.js';
import { completeRecipe } from './recipe/readRecipe.js';
import type { QuiltRecipe, QuiltSize } from './recipe/schema.js';

/** What is not in a recipe and still decides how its quilt is cut. */
export interface QuiltOptions extends FabricOptions, Pick<SizeChoice, 'measured'> {}

/** How far a quilt's plan in the making has come. */
export interface QuiltProgress {
  /** How many fabrics are planned, and how many there are. */
  readonly planned: number;
  readonly fabrics: number;
}

const OPTIONS: readonly (keyof QuiltOptions)[] = ['method', 'effort', 'layers', 'measured'];

const cellsOf = ({ layout, blockOfCell, recipe }: PatternTask): readonly QuiltCell[] =>
  layout.cells.map((cell, index) => {
    const block = blockOfCell[index];
    if (cell.kind === 'block') return { ...cell, ...(block !== undefined && { block }) };
    const { fabric } = fabricOfPart(cell.kind, recipe);
    return { ...cell, ...(fabric !== undefined && { fabric }) };
  });

function assemble(task: PatternTask, fabrics: readonly QuiltFabric[]): QuiltPlan {
  const { recipe, chosen, making, layout, borders, binding, backing, batting, quilt } = task;
  const costs = fabrics.flatMap(({ cost }) => cost ?? []);
  const cost = costs.length === fabrics.length ? sumMoney(costs) : undefined;
  return {
    kind: 'quilt',
    name: recipe.name,
    ...(recipe.about !== undefined && { about: recipe.about }),
    size: chosen.size.name,
    currency: recipe.currency,
    seam: making.seam,
    grid: making.grid,
    finished: quilt,
    unfinished: grownBy(quilt, making.seam),
    blocks: task.blocks.map(({ block, inTop, inBorders }) => ({
      block,
      count: inTop + inBorders,
      inBorders,
    })),
    layout,
    cells: cellsOf(task),
    ...(borders && { borders }),
    ...(binding && { binding }),
    ...(backing && { backing }),
    ...(batting && { batting }),
    fabrics,
    ...(cost && { cost }),
    warnings: quiltWarnings(task, fabrics),
  };
}

/**
 * The plan of a quilt in the making: pauses between fabrics and every few milliseconds of work on one,
 * so that a page can stay responsive. Returns what `quilt` returns.
 *
 * @throws EighthsError as `quilt`
 * @example
 * const recipe = {
 *   name: 'Nine Windows',
 *   fabrics: [{ id: 'linen' }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * const making = quiltInParts(recipe);
 * let step = making.next();
 * // A page waits for its next frame between two steps, or leaves.
 * while (!step.done) step = making.next();
 * step.value.finished.width.toString(); // '27'
 */
export function* quiltInParts(
  recipe: QuiltRecipe,
  size?: string | QuiltSize,
  options: QuiltOptions = {},
): Generator<QuiltProgress, QuiltPlan, undefined> {
  checkFields(options, 'options', OPTIONS);
  const { measured, ...fabricOptions } = options;
  const task = readPattern(completeRecipe(recipe), {
    ...(size !== undefined && { size }),
    ...(measured !== undefined && { measured }),
  });
  const tasks = fabricTasks(task, patternCuts(task), task.backing?.pieces ?? []);
  const fabrics: QuiltFabric[] = [];
  for (const each of tasks) {
    const progress = { planned: fabrics.length, fabrics: tasks.length };
    yield progress;
    const making = planFabric(each, task.recipe, fabricOptions);
    let state = making.next();
    for (; !state.done; state = making.next()) yield progress;
    fabrics.push(state.value);
  }
  return assemble(task, fabrics);
}

/**
 * A whole quilt from its recipe, in one of its sizes: what it finishes to, how many of everything, what
 * is cut from each fabric and how, and what to buy, in the order of a printed pattern.
 *
 * Exact: finished sizes are never rounded, cut sizes are rounded up to the recipe's grid once, what is
 * bought up to the shop's increment, and what it costs to the nearest cent, half a cent up.
 *
 * @param size the name of one of the recipe's sizes, by default its first; or a size of one's own.
 * @throws EighthsError with the path of the field in the recipe that cannot be so, and what would be
 *   accepted there
 * @example
 * const recipe = {
 *   name: 'Nine Windows',
 *   fabrics: [{ id: 'linen', price: 12 }, { id: 'night', price: '9.50' }],
 *   blocks: [
 *     { id: 'light', kind: 'plain', fabric: 'linen', finished: 9 },
 *     { id: 'dark', kind: 'plain', fabric: 'night' },
 *   ],
 *   setting: { pattern: [['light', 'dark'], ['dark', 'light']] },
 *   binding: { fabric: 'night' },
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * const plan = quilt(recipe, 'Cushion');
 * plan.finished.width.toString(); // '27'
 * plan.fabrics.map(({ id, buy }) => `${id} ${buy}`); // ["linen 31 1/2","night 31 1/2"]
 */
export function quilt(
  recipe: QuiltRecipe,
  size?: string | QuiltSize,
  options: QuiltOptions = {},
): QuiltPlan {
  return atOnce(quiltInParts(recipe, size, options));
}
