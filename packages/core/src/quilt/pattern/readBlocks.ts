import { fail } from '../../errors/error.js';
import { length } from '../../length/length.js';
import { shorterOf } from '../../length/longer.js';
import type { Size } from '../../plan/size.js';
import type { ReadRecipe } from '../recipe/schema.js';
import type { Making, QuiltBlock } from './block.js';
import { readBlock } from './readBlock.js';

/** How all blocks of a recipe are made. */
export function makingOf({ seam, grid, fabrics }: ReadRecipe): Making {
  const widths = fabrics.map(({ width }) => length(width));
  return {
    seam: length(seam),
    grid: length(grid),
    usable: widths.reduce(shorterOf),
  };
}

/**
 * Every block of a recipe, in its order. A plain block without a size finishes like the first block
 * that has one.
 */
export function readBlocks(recipe: ReadRecipe, making: Making): readonly QuiltBlock[] {
  const { blocks } = recipe;
  const sized = blocks.findIndex(({ kind, ...block }) => kind !== 'plain' || hasSize(block));
  const source = blocks[sized];
  const first = source && readBlock(source, making, undefined, `blocks[${sized}]`);
  return blocks.map((block, index) =>
    first !== undefined && index === sized
      ? first
      : readBlock(block, making, first?.finished, `blocks[${index}]`),
  );
}

const hasSize = (block: object): boolean => 'finished' in block;

/**
 * The size that all blocks of the top have.
 *
 * @param ids the ids of those blocks.
 * @throws EighthsError `blocks-differ`
 */
export function commonSize(blocks: readonly QuiltBlock[], ids: ReadonlySet<string>): Size {
  let needed: Size | undefined;
  for (const [index, { id, finished: size }] of blocks.entries()) {
    if (!ids.has(id)) continue;
    needed ??= size;
    if (size.width.equals(needed.width) && size.height.equals(needed.height)) continue;
    fail(
      'blocks-differ',
      `blocks[${index}]`,
      { size, needed },
      'The blocks of a top finish to one size. This one finishes {size}, and others {needed}.',
    );
  }
  return needed ?? { width: length(1), height: length(1) };
}
