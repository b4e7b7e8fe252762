import { fail } from '../../errors/error.js';
import { type Length, length } from '../../length/length.js';
import { shorterOf } from '../../length/longer.js';
import { missing } from '../../plan/field.js';
import { grownBy, type Size, sizeField } from '../../plan/size.js';
import type { ReadRecipe } from '../recipe/schema.js';
import { sizeToGrid } from '../whole.js';
import type { BlockRectangle, BlockUnit, Making } from './block.js';

type PiecedBlock = Extract<ReadRecipe['blocks'][number], { kind: 'pieces' }>;

/** How many there are, and where: one for each place, if places are given. */
export function placed(
  count: number | undefined,
  at: PiecedBlock['units'][number]['at'],
  field: string,
): Pick<BlockUnit, 'count' | 'at'> {
  const points = (at ?? []).map(([x, y]) => ({ x: length(x), y: length(y) }));
  if (at !== undefined && count !== undefined && count !== at.length) {
    fail(
      'list-length',
      `${field}.at`,
      { entries: at.length, needed: count },
      'There are {needed} of these, and {entries} places for them. Give a place for each, or leave the places out.',
    );
  }
  return { count: count ?? (at === undefined ? 1 : at.length), at: points };
}

/** A rectangle of a block that is listed by hand: what shows of it, and what is cut. */
export function readRectangle(
  { label, fabric, finished, cut, count, at }: PiecedBlock['pieces'][number],
  { seam, grid }: Making,
  field: string,
): BlockRectangle {
  const given = cut === undefined ? undefined : sizeField(cut, `${field}.cut`);
  const size =
    finished === undefined
      ? shrunk(given ?? missing(`${field}.finished`), seam, field)
      : sizeField(finished, `${field}.finished`);
  const needed = grownBy(size, seam);
  const cuts = given ?? sizeToGrid(needed, grid, 'up');
  if (cuts.width.compareTo(needed.width) < 0 || cuts.height.compareTo(needed.height) < 0) {
    fail(
      'cut-too-small',
      `${field}.cut`,
      { cut: cuts, needed },
      'Cut {cut}, this piece is too small: with its seams it has to be {needed} at least.',
    );
  }
  return {
    ...(label !== undefined && { label }),
    fabric,
    finished: size,
    cut: cuts,
    ...placed(count, at, field),
  };
}

/** What shows of a piece that is cut to an exact size. */
function shrunk(cut: Size, seam: Length, field: string): Size {
  const finished = grownBy(cut, seam.negated());
  if (finished.width.sign() <= 0 || finished.height.sign() <= 0) {
    fail(
      'seam-too-wide',
      `${field}.cut`,
      { seam, finished: shorterOf(cut.width, cut.height) },
      'With seams of {seam} nothing shows of a piece that is cut {finished}. Cut it larger.',
    );
  }
  return finished;
}
