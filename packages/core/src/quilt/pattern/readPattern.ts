import { entryAt } from '../../plan/entryAt.js';
import type { QuiltBorders } from '../borders/plan.js';
import type { Cell, QuiltLayout } from '../layout/plan.js';
import { quiltLayout } from '../layout/quiltLayout.js';
import type { SashingSpec } from '../layout/spec.js';
import { inField } from '../recipe/inField.js';
import type { ReadRecipe } from '../recipe/schema.js';
import type { CountedBlock, Making, QuiltBlock } from './block.js';
import { type ChosenSize, chooseSize } from './chooseSize.js';
import { pricesOf } from './prices.js';
import { makeBlocks } from './readBlock.js';
import { commonSize, makingOf, readBlocks } from './readBlocks.js';
import { bordersOf, readBorders } from './readBorders.js';
import { readFinishing } from './readFinishing.js';
import type { PatternTask, SizeChoice } from './task.js';

type RecipeBorder = ReadRecipe['borders'][number];

/** Rows of block ids, repeated across and down; one block everywhere where nothing is said. */
const patternOf = ({ setting, blocks }: ReadRecipe, { size }: ChosenSize) =>
  size.pattern ?? setting.pattern ?? [[entryAt(blocks, 0).id]];

/** The block at a place of the pattern; between the rows on point it may be another one. */
function blockAt(
  { kind, row, column }: Cell,
  pattern: readonly (readonly string[])[],
  { arrangement, between }: ReadRecipe['setting'],
): string | undefined {
  if (kind !== 'block') return undefined;
  // On point every second row lies between two others.
  const others = arrangement === 'on-point' && between !== undefined;
  if (others && row % 2 === 1) return between;
  const line = entryAt(pattern, (others ? row / 2 : row) % pattern.length);
  return line[column % line.length];
}

function sashingOf({ sashing }: ReadRecipe): SashingSpec | undefined {
  if (sashing === undefined) return undefined;
  const { width, outer, cornerstones } = sashing;
  return { width, ...(outer !== undefined && { outer }), cornerstones: cornerstones !== undefined };
}

function layoutOf(
  recipe: ReadRecipe,
  { size, field }: ChosenSize,
  blocks: readonly QuiltBlock[],
  ids: ReadonlySet<string>,
): QuiltLayout {
  const { setting, seam, grid } = recipe;
  const sashing = sashingOf(recipe);
  const block = commonSize(blocks, ids);
  const index = blocks.findIndex(({ id }) => ids.has(id));
  const fieldOf = (name: string): string => {
    if (name.startsWith('block')) return `blocks[${index}]`;
    return name === 'across' || name === 'down' ? `${field}.${name}` : name;
  };
  return inField(fieldOf, () =>
    quiltLayout({
      block,
      setting: setting.arrangement,
      across: size.across,
      down: size.down,
      turns: size.turns ?? setting.turns,
      ...(sashing && { sashing }),
      seam,
      grid,
      oversize: setting.oversize,
    }),
  );
}

/** How often each block is in the top and in pieced borders. */
function countBlocks(
  blocks: readonly QuiltBlock[],
  placed: readonly (string | undefined)[],
  borders: QuiltBorders | undefined,
  sources: readonly RecipeBorder[],
): readonly CountedBlock[] {
  const inTop = new Map<string, number>();
  for (const id of placed) if (id !== undefined) inTop.set(id, (inTop.get(id) ?? 0) + 1);
  return blocks.map((block) => ({
    block,
    inTop: inTop.get(block.id) ?? 0,
    inBorders: sources.reduce((sum, source, index) => {
      const repeats = source.style === 'pieced' && source.block === block.id;
      return repeats ? sum + (borders?.borders[index]?.units ?? 0) : sum;
    }, 0),
  }));
}

/** Recipes of quilts that could not be sewn are refused, with the path of what does not fit. */
export function readPattern(recipe: ReadRecipe, choice: SizeChoice): PatternTask {
  const chosen = chooseSize(recipe, choice.size);
  const making: Making = makingOf(recipe);
  const blocks = readBlocks(recipe, making);
  const pattern = patternOf(recipe, chosen);
  const { between, arrangement } = recipe.setting;
  const ids = new Set(pattern.flat());
  if (arrangement === 'on-point' && between !== undefined) ids.add(between);
  const layout = layoutOf(recipe, chosen, blocks, ids);
  const blockOfCell = layout.cells.map((cell) => blockAt(cell, pattern, recipe.setting));
  const borders = readBorders(recipe, chosen, blocks, layout.finished, choice.measured);
  const quilt = borders?.finished ?? layout.finished;
  return {
    recipe,
    chosen,
    making,
    prices: pricesOf(recipe),
    blocks: countBlocks(blocks, blockOfCell, borders, bordersOf(recipe, chosen).borders).flatMap(
      ({ block, inTop, inBorders }, index) => {
        const source = recipe.blocks[index];
        const count = inTop + inBorders;
        if (source === undefined || count === 0) return [];
        const made = makeBlocks(source, block, count, making, `blocks[${index}]`);
        return [{ block: made, inTop, inBorders }];
      },
    ),
    layout,
    blockOfCell,
    borders,
    quilt,
    ...readFinishing(recipe, quilt),
  };
}
