import { type Length, length } from '../../length/length.js';
import type { Piece } from '../../plan/piece.js';
import { grownBy, type Size } from '../../plan/size.js';
import { settingTriangles } from '../../unit/settingTriangles.js';
import { sizeToGrid } from '../whole.js';
import type { LayoutCounts, LayoutPart, QuiltPart } from './plan.js';
import type { LayoutTask } from './readLayout.js';

/** Rectangles that are cut one by one, with a seam on every side. */
function rectangles(
  part: LayoutPart,
  finished: Size,
  count: number,
  { seam, grid }: LayoutTask,
): QuiltPart {
  const exact = grownBy(finished, seam);
  const cut = sizeToGrid(exact, grid, 'up');
  return { part, finished, cut, exact, count, yield: 1, needed: count, diagonalCuts: 0 };
}

/** Triangles cut from squares, their long or short edges on the straight grain of the quilt's edge. */
function triangles(
  part: LayoutPart,
  triangle: 'side' | 'corner',
  square: Length,
  needed: number,
  { seam, grid, oversize }: LayoutTask,
): QuiltPart[] {
  if (needed === 0) return [];
  const plan = settingTriangles({
    finished: square,
    count: needed,
    triangle,
    seam,
    grid,
    oversize,
  });
  return plan.cuts.map(({ width, height, exact, count, diagonalCuts }) => ({
    part,
    finished: plan.finished,
    cut: { width, height },
    exact,
    count: count * plan.sets,
    yield: plan.yield,
    needed,
    diagonalCuts,
  }));
}

/** Sashes as long as the block is wide and as it is high, and those from edge to edge. */
function sashes(task: LayoutTask, counts: LayoutCounts, top: Size): QuiltPart[] {
  const { block, sashing, across, down } = task;
  if (sashing === undefined) return [];
  const sash = (side: Length, count: number): QuiltPart =>
    rectangles('sash', { width: side, height: sashing.width }, count, task);
  const beside = down * (sashing.outer ? across + 1 : across - 1);
  const below = counts.sashes - beside;
  const short = block.width.equals(block.height)
    ? [sash(block.width, counts.sashes)]
    : [sash(block.height, beside), sash(block.width, below)];
  return [...short, sash(top.width, counts.longSashes)].filter(({ count }) => count > 0);
}

/** What is cut for a top besides its blocks, each kind and size once. */
export function layoutParts(
  task: LayoutTask,
  counts: LayoutCounts,
  top: Size,
): readonly QuiltPart[] {
  const { block, sashing } = task;
  const stone = sashing?.width ?? length(0);
  const square = (side: Length): Size => ({ width: side, height: side });
  return [
    rectangles('alternate', block, counts.alternates, task),
    ...sashes(task, counts, top),
    rectangles('cornerstone', square(stone), counts.cornerstones, task),
    ...triangles('cornerstone', 'side', stone, counts.halfCornerstones, task),
    ...triangles('side-triangle', 'side', block.width, counts.sideTriangles, task),
    ...triangles('corner-triangle', 'corner', block.width, counts.cornerTriangles, task),
  ].filter(({ count }) => count > 0);
}

/** The parts as rectangles to cut; the width of a strip is a part's height. */
export const partPieces = (parts: readonly QuiltPart[]): readonly Piece[] =>
  parts.map(({ part, cut, count }) => ({
    label: part.replace('-', ' '),
    width: cut.height,
    length: cut.width,
    count,
  }));
