import { fail } from '../../errors/error.js';
import { type Length, length } from '../../length/length.js';
import type { Piece } from '../../plan/piece.js';
import { joinedStrips } from '../joinedStrips.js';
import type { LayoutPart } from '../layout/plan.js';
import type { ReadRecipe } from '../recipe/schema.js';
import { blockCuts } from './blockCuts.js';
import type { PatternCut } from './cut.js';
import { widthOf } from './fabricTasks.js';
import { bordersOf } from './readBorders.js';
import type { PatternTask } from './task.js';

/** Which fabric the parts between and round the blocks are cut from, and where that is said. */
export function fabricOfPart(
  part: LayoutPart,
  { sashing, setting }: ReadRecipe,
): { readonly fabric: string | undefined; readonly field: string } {
  const triangles = { fabric: setting.triangles, field: 'setting.triangles' };
  const sash = { fabric: sashing?.fabric, field: 'sashing' };
  const stone = { fabric: sashing?.cornerstones, field: 'sashing.cornerstones' };
  const places: Readonly<Record<LayoutPart, ReturnType<typeof fabricOfPart>>> = {
    sash,
    cornerstone: stone,
    'side-triangle': triangles,
    'corner-triangle': triangles,
    alternate: triangles,
  };
  return places[part];
}

/** Sashes from edge to edge are joined from strips where the fabric is not wide enough. */
function joinedWhereLong(
  piece: Pick<Piece, 'width' | 'length' | 'count'>,
  fabricWidth: Length,
  field: string,
): Pick<Piece, 'width' | 'length' | 'count' | 'joinable'> {
  if (piece.length.compareTo(fabricWidth) <= 0) return piece;
  const running = piece.length.times(piece.count);
  const { count } = joinedStrips(running, piece.width, fabricWidth, field);
  return { width: piece.width, length: fabricWidth, count, joinable: true };
}

function layoutCuts({ layout, recipe }: PatternTask): readonly PatternCut[] {
  return layout.parts.flatMap(({ part, cut, count, diagonalCuts }): PatternCut[] => {
    if (part === 'alternate') return [];
    const { fabric = '', field } = fabricOfPart(part, recipe);
    const size = { width: cut.height, length: cut.width, count };
    return [
      {
        fabric,
        field,
        part,
        label: part.replace('-', ' '),
        ...(part === 'sash' ? joinedWhereLong(size, length(widthOf(recipe, fabric)), field) : size),
        ...(diagonalCuts > 0 && { diagonalCuts }),
      },
    ];
  });
}

function borderCuts({ borders, recipe, chosen }: PatternTask): readonly PatternCut[] {
  if (borders === undefined) return [];
  const { borders: sources, path } = bordersOf(recipe, chosen);
  return borders.borders.flatMap(({ pieces }, index) =>
    pieces.flatMap((piece): PatternCut[] => {
      const source = sources[index];
      if (source === undefined) return [];
      const corner = piece.label === 'border corner';
      const corners = source.style === 'mitered' ? undefined : source.corners;
      const strips = source.style === 'pieced' ? undefined : source.fabric;
      const number = sources.length > 1 ? ` ${index + 1}` : '';
      return [
        {
          ...piece,
          fabric: (corner ? corners : strips) ?? '',
          part: corner ? 'border-corner' : 'border',
          label: corner ? `border${number}, corner` : `border${number}`,
          border: index + 1,
          field: `${path}[${index}]`,
        },
      ];
    }),
  );
}

const bindingCuts = ({ binding, recipe }: PatternTask): readonly PatternCut[] =>
  (binding?.pieces ?? []).map((piece) => ({
    ...piece,
    fabric: recipe.binding?.fabric ?? '',
    part: 'binding',
    label: 'binding',
    field: 'binding',
  }));

/** @throws EighthsError `unknown-choice` where a block's part has no fabric of the recipe. */
function checkFabrics({ fabrics }: ReadRecipe, cuts: readonly PatternCut[]): void {
  const known = fabrics.map(({ id }) => id);
  for (const { fabric: value, field } of cuts) {
    if (known.includes(value)) continue;
    fail(
      'unknown-choice',
      field,
      { value, choices: known.join(', ') },
      'The recipe has no fabric “{value}”. Say which of its fabrics that part is cut from: {choices}.',
    );
  }
}

/** Cuts that differ in nothing but their number, told together. */
function merged(cuts: readonly PatternCut[]): readonly PatternCut[] {
  const alike = new Map<string, PatternCut>();
  for (const cut of cuts) {
    const { count, width, length: long, ...rest } = cut;
    const key = JSON.stringify([rest, width, long]);
    const before = alike.get(key);
    alike.set(key, before === undefined ? cut : { ...cut, count: before.count + count });
  }
  return [...alike.values()];
}

/** How often each block is needed, by its id. */
export type BlockCounts = ReadonlyMap<string, number>;

/** What so many blocks of each kind take. */
export function cutsOfBlocks(task: PatternTask, counts: BlockCounts): readonly PatternCut[] {
  const { recipe, blocks, making } = task;
  const cuts = recipe.blocks.flatMap((source, index) => {
    const count = counts.get(source.id) ?? 0;
    const block = blocks.find((each) => each.block.id === source.id)?.block;
    if (count === 0 || block === undefined) return [];
    return blockCuts(source, block, count, making, `blocks[${index}]`);
  });
  checkFabrics(recipe, cuts);
  return merged(cuts);
}

/** All that is cut for so many quilts, in the order of a printed pattern; the backing is not in it. */
export function patternCuts(
  task: PatternTask,
  quilts = 1,
  parts: { readonly binding: boolean } = { binding: true },
): readonly PatternCut[] {
  const counts = new Map(
    task.blocks.map(({ block, inTop, inBorders }) => [block.id, (inTop + inBorders) * quilts]),
  );
  const others = [
    ...layoutCuts(task),
    ...borderCuts(task),
    ...(parts.binding ? bindingCuts(task) : []),
  ];
  checkFabrics(task.recipe, others);
  return [
    ...cutsOfBlocks(task, counts),
    ...merged(others).map((cut) => ({ ...cut, count: cut.count * quilts })),
  ];
}
