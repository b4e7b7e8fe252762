import { shorterOf } from '../../length/longer.js';
import { atOnce } from '../../plan/atOnce.js';
import { type Warning, warningsFrom } from '../../plan/notice.js';
import { fabricCost } from '../money/fabricCost.js';
import { type FabricTask, fabricTasks } from '../pattern/fabricTasks.js';
import { cutsOfBlocks, patternCuts } from '../pattern/patternCuts.js';
import { type FabricOptions, planFabric } from '../pattern/planFabrics.js';
import { boltsFor } from './bolts.js';
import { kitPrice } from './kitPrice.js';
import type { KitFabric, KitPrice, Kits } from './plan.js';
import { type KitsTask, readKits } from './readKits.js';
import { type KitWarningCode, kitSentences } from './sentences.js';
import type { KitsSpec } from './spec.js';

/** How far kits in the making have come. */
export interface KitsProgress {
  readonly planned: number;
  readonly fabrics: number;
}

/** What is cut for so many kits, by fabric. */
function tasksFor({ pattern, each, binding, backing }: KitsTask, kits: number) {
  if (each.kind === 'quilts') {
    const quilts = each.count * kits;
    const panels = backing ? (pattern.backing?.pieces ?? []) : [];
    return fabricTasks(
      pattern,
      patternCuts(pattern, quilts, { binding }),
      panels.map((panel) => ({ ...panel, count: panel.count * quilts })),
    );
  }
  const counts = [...each.counts].map(([id, count]) => [id, count * kits] as const);
  return fabricTasks(pattern, cutsOfBlocks(pattern, new Map(counts)), []);
}

function* kitFabric(
  one: FabricTask,
  all: FabricTask,
  task: KitsTask,
  options: FabricOptions,
): Generator<undefined, KitFabric, undefined> {
  const { recipe } = task.pattern;
  const kits = task.people + task.spares;
  const { id, name, role, cuts, yardage, backing, buy, price } = yield* planFabric(
    one,
    recipe,
    options,
  );
  const together = yield* planFabric(all, recipe, options);
  const separate = buy.times(kits);
  // Kits that are planned by themselves can be cut from one length too.
  const pooled = shorterOf(separate, together.buy);
  const proven = [together.yardage, together.backing].every(
    (part) => part === undefined || part.purchaseProven,
  );
  return {
    id,
    name,
    ...(role !== undefined && { role }),
    cuts,
    ...(yardage && { kit: yardage }),
    ...(backing && { backing }),
    perKit: buy,
    separate,
    pooled,
    pooledProven: proven && pooled.equals(together.buy),
    saves: separate.minus(pooled),
    bolts: boltsFor(kits, buy, pooled, task.bolt),
    ...(price && { price, cost: fabricCost(price, buy) }),
  };
}

const warn = warningsFrom(kitSentences);

function warningsOf(
  { pattern }: KitsTask,
  fabrics: readonly KitFabric[],
  price: KitPrice | undefined,
): readonly Warning<KitWarningCode>[] {
  const fieldOf = (id: string): string =>
    `recipe.fabrics[${pattern.recipe.fabrics.findIndex((fabric) => fabric.id === id)}]`;
  const below = price?.margin !== undefined && price.margin.gain.cents < 0;
  const anyPrice = fabrics.some((fabric) => fabric.price !== undefined);
  return [
    ...(below ? [warn('sold-below-cost', 'price')] : []),
    ...fabrics
      .filter((fabric) => anyPrice && fabric.price === undefined)
      .map(({ id, name }) => warn('no-price', fieldOf(id), { fabric: name })),
  ];
}

const madeOf = ({ pattern, each }: KitsTask): Kits['makes'] => {
  const { recipe, chosen, blocks } = pattern;
  if (each.kind === 'quilts') {
    return [{ name: `${recipe.name}, ${chosen.size.name}`, count: each.count }];
  }
  return blocks.flatMap(({ block }) => {
    const count = each.counts.get(block.id);
    return count === undefined ? [] : [{ name: block.name, count }];
  });
};

/**
 * Kits in the making: pauses between fabrics and every few milliseconds of work on one. Returns what
 * `kits` returns.
 *
 * @throws EighthsError as `kits`
 * @example
 * const recipe = {
 *   name: 'Nine Windows',
 *   fabrics: [{ id: 'linen' }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * const making = kitsInParts({ recipe, people: 12 });
 * let step = making.next();
 * while (!step.done) step = making.next();
 * step.value.kits; // 12
 */
export function* kitsInParts(spec: KitsSpec): Generator<KitsProgress, Kits, undefined> {
  const task = readKits(spec);
  const { method, effort, layers } = spec;
  const options: FabricOptions = {
    ...(method !== undefined && { method }),
    ...(effort !== undefined && { effort }),
    ...(layers !== undefined && { layers }),
  };
  const { people, spares, extras, pattern } = task;
  const ones = tasksFor(task, 1);
  const alls = tasksFor(task, people + spares);
  const fabrics: KitFabric[] = [];
  for (const [index, one] of ones.entries()) {
    const all = alls[index];
    if (all === undefined) continue;
    const progress = { planned: fabrics.length, fabrics: ones.length };
    yield progress;
    const making = kitFabric(one, all, task, options);
    let state = making.next();
    for (; !state.done; state = making.next()) yield progress;
    fabrics.push(state.value);
  }
  const price = kitPrice(task, fabrics);
  return {
    kind: 'kits',
    name: pattern.recipe.name,
    size: pattern.chosen.size.name,
    people,
    spares,
    kits: people + spares,
    makes: madeOf(task),
    fabrics,
    extras,
    ...(price && { price }),
    warnings: warningsOf(task, fabrics, price),
  };
}

/**
 * Kits for a class: for each fabric the piece that one kit gets, in one length from its own plan;
 * against that, all kits cut from one length; the bolts they are cut from, with what is left over too
 * short for a kit; and what a kit costs and is sold for.
 *
 * Lengths are rounded up to what the shop cuts, for each kit by itself; each fabric's cost once to the
 * nearest cent, half a cent up; a price from a margin up to the next cent.
 *
 * @throws EighthsError with the path of the field that cannot be so; paths in the recipe begin with
 *   `recipe`
 * @example
 * const recipe = {
 *   name: 'Nine Windows',
 *   fabrics: [{ id: 'linen', price: 12 }],
 *   blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
 *   sizes: [{ name: 'Cushion', across: 3, down: 3 }],
 * };
 * const { kits: count, fabrics: [linen], price } = kits({ recipe, people: 12, spares: 1, margin: '0.4' });
 * count; // 13
 * linen.perKit.dividedBy(36).toString(); // '1 1/8'
 * linen.saves.dividedBy(36).toString(); // '6 3/8'
 * price.price.cents; // 2250
 */
export function kits(spec: KitsSpec): Kits {
  return atOnce(kitsInParts(spec));
}
