import { grownBy } from '../../plan/size.js';
import { onPointCells } from './onPoint.js';
import { layoutParts, partPieces } from './parts.js';
import type { Cell, CellKind, LayoutCounts, QuiltLayout } from './plan.js';
import { type LayoutTask, readLayout } from './readLayout.js';
import type { QuiltLayoutSpec } from './spec.js';
import { straightCells } from './straight.js';
import { topSize } from './topSize.js';
import { layoutWarnings } from './warnings.js';

/** How many cells of each kind there are. */
function countCells({ setting, sashing }: LayoutTask, cells: readonly Cell[]): LayoutCounts {
  const of = (kind: CellKind): readonly Cell[] => cells.filter((cell) => cell.kind === kind);
  const halfCornerstones = of('cornerstone').filter(({ corners }) => corners.length === 3).length;
  const wholeRows = setting === 'straight' && !sashing?.cornerstones;
  const longSashes = wholeRows ? of('sash').filter(({ column }) => column < 0) : [];
  return {
    blocks: of('block').length,
    alternates: of('alternate').length,
    sashes: of('sash').length - longSashes.length,
    longSashes: longSashes.length,
    cornerstones: of('cornerstone').length - halfCornerstones,
    halfCornerstones,
    sideTriangles: of('side-triangle').length,
    cornerTriangles: of('corner-triangle').length,
  };
}

/**
 * A quilt top of blocks in rows or on point: its size, how many of everything, what is cut besides the
 * blocks, and where each cell lies and how it is turned.
 *
 * Straight, with block f, sash b, n across: the top is n·f + (n − 1)·b wide, with an outer sash
 * n·f + (n + 1)·b. On point it is n·(f + b)·√2 wide, exactly, and holds n·m + (n − 1)(m − 1) blocks,
 * 2(n − 1) + 2(m − 1) side triangles and 4 corners. Sizes to cut are rounded up to the grid, once;
 * finished sizes are never rounded.
 *
 * On point, blocks stand turned by half a quarter clockwise; `turns` counts from there, along the
 * diagonal rows.
 *
 * @throws EighthsError `missing-field`, `unknown-field`, `not-a-count`, `not-positive`, `out-of-range`,
 *   `not-square`, `odd-count`, `even-sum`, `conflicting-fields`, `seam-too-wide` and others
 * @example
 * const top = quiltLayout({ block: 9, across: 6, down: 8, sashing: { width: '1 1/2', cornerstones: true } });
 * top.finished; // {"width":"61 1/2","height":"82 1/2"}
 * top.counts.sashes; // 82
 * const onPoint = quiltLayout({ block: 6, setting: 'on-point', across: 4, down: 5, oversize: 0 });
 * onPoint.blocks; // 32
 * onPoint.parts.map(({ part, cut }) => `${part} ${cut.width}`); // ["side-triangle 9 3/4","corner-triangle 5 1/8"]
 */
export function quiltLayout(spec: QuiltLayoutSpec): QuiltLayout {
  const task = readLayout(spec);
  const { setting, across, down, turns, block, sashing, seam, grid } = task;
  const cells = setting === 'straight' ? straightCells(task) : onPointCells(task);
  const finished = topSize(task);
  const counts = countCells(task, cells);
  const parts = layoutParts(task, counts, finished);
  return {
    setting,
    across,
    down,
    turns,
    block,
    ...(sashing && { sash: sashing.width }),
    seam,
    grid,
    finished,
    unfinished: grownBy(finished, seam),
    blocks: counts.blocks,
    counts,
    cells,
    parts,
    pieces: partPieces(parts),
    warnings: layoutWarnings(task, cells, finished),
  };
}
