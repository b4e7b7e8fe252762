import { cuttingPlanInParts } from '../../fabric/cuttingPlan.js';
import type { CuttingPlan } from '../../fabric/plan.js';
import type { CuttingMethod } from '../../fabric/spec.js';
import { type Yardage, type YardageOptions, yardage } from '../../fabric/yardage.js';
import { formatLength } from '../../length/format.js';
import { type Length, length } from '../../length/length.js';
import type { Piece, PieceInput } from '../../plan/piece.js';
import { fabricCost } from '../money/fabricCost.js';
import { inField } from '../recipe/inField.js';
import type { ReadRecipe } from '../recipe/schema.js';
import type { FabricTask } from './fabricTasks.js';
import type { QuiltFabric } from './plan.js';

type RecipeFabric = ReadRecipe['fabrics'][number];

/** How fabric is planned. */
export interface FabricOptions {
  /** Default `plain`. */
  readonly method?: CuttingMethod;
  /** How much work each fabric's plan may take, in elementary steps. */
  readonly effort?: number;
  /** How many layers of strips are subcut at once; default 1. */
  readonly layers?: number;
}

/** A piece that is longer than the fabric is wide lies along its length, if it can. */
function laid({ width, length: long }: Piece, fabricWidth: Length) {
  const turned = long.compareTo(fabricWidth) > 0 && width.compareTo(fabricWidth) <= 0;
  return turned ? { width: long, length: width } : { width, length: long };
}

const pieceOf = (cut: Piece, { width, directional }: RecipeFabric): PieceInput => {
  const { label, count, turnable, joinable } = cut;
  return {
    ...(label !== undefined && { label }),
    ...laid(cut, length(width)),
    count,
    // A square may be turned unless its print has an up and a down.
    ...(directional ? { turnable: false } : turnable !== undefined && { turnable }),
    ...(joinable !== undefined && { joinable }),
  };
};

function* planOf(
  pieces: readonly PieceInput[],
  fields: readonly string[],
  { fabric, index }: FabricTask,
  options: FabricOptions,
): Generator<undefined, CuttingPlan, undefined> {
  const { method = 'plain', effort, layers } = options;
  const fieldOf = (field: string): string => {
    const [, place] = /^pieces\[(\d+)\]/.exec(field) ?? [];
    if (place !== undefined) return fields[Number(place)] ?? field;
    return field === 'effort' || field === 'layers' || field === 'method'
      ? field
      : `fabrics[${index}]${field === 'width' ? '.width' : ''}`;
  };
  const making = cuttingPlanInParts({
    width: fabric.width,
    pieces,
    method,
    ...(effort !== undefined && { effort }),
    ...(layers !== undefined && { layers }),
  });
  let state = inField(fieldOf, () => making.next());
  while (!state.done) {
    yield;
    state = making.next();
  }
  return state.value;
}

/** How fabric is bought, as the recipe says. */
const buyingOf = (
  { buying }: ReadRecipe,
  { fabric: { shrinkage } }: FabricTask,
): YardageOptions => ({ ...buying, shrinkage });

/** The plan of one fabric in the making; pauses every few milliseconds of work. */
export function* planFabric(
  task: FabricTask,
  recipe: ReadRecipe,
  options: FabricOptions,
): Generator<undefined, QuiltFabric, undefined> {
  const { fabric, cuts, backing, price } = task;
  const { id, name = id, role, directional } = fabric;
  const buying = buyingOf(recipe, task);
  const pieces = cuts.map((cut) => pieceOf(cut, fabric));
  const fields = cuts.map(({ field }) => field);
  const top =
    pieces.length > 0 ? yardage(yield* planOf(pieces, fields, task, options), buying) : undefined;
  const panels = backing.map((piece) => pieceOf(piece, fabric));
  const back =
    panels.length > 0
      ? yardage(
          yield* planOf(
            panels,
            panels.map(() => 'backing'),
            task,
            { method: 'plain' },
          ),
          {
            ...buying,
            spare: 0,
          },
        )
      : undefined;
  const buy = length(0)
    .plus(top?.buy ?? 0)
    .plus(back?.buy ?? 0);
  return {
    id,
    name,
    ...(role !== undefined && { role }),
    directional,
    width: length(fabric.width),
    cuts,
    ...(top && { yardage: top }),
    ...(back && { backing: back }),
    buy,
    ...inShops(buy, [top, back]),
    ...(price && { price, cost: fabricCost(price, buy) }),
  };
}

/** What is bought, as it is written where fabric is sold by the yard, and by the meter. */
function inShops(
  buy: Length,
  parts: readonly (Yardage | undefined)[],
): Pick<Yardage, 'yards' | 'meters'> {
  const [only, other] = parts.filter((part) => part !== undefined);
  if (only !== undefined && other === undefined) return { yards: only.yards, meters: only.meters };
  return {
    yards: formatLength(buy, { unit: 'yd' }),
    meters: formatLength(buy, { unit: 'm', grid: '1 cm', mode: 'up' }),
  };
}
