import { type Length, length } from '../../length/length.js';
import type { Size } from '../../plan/size.js';
import { quarterSquareAllowance } from '../../unit/allowances.js';
import type { BorderPart, StripSize } from './plan.js';
import type { BordersTask, BorderTask } from './readBorders.js';
import { unitsAlong } from './repeat.js';

/** A top before a border: by the plan, and as it was measured. Finished, both. */
export interface Inside {
  readonly planned: Size;
  readonly measured: Size;
}

type Seams = Pick<BordersTask, 'seam' | 'grid'>;

/** A border's two sides, or its top and bottom: how long they show, by the plan and as measured. */
interface Run {
  readonly part: BorderPart['part'];
  readonly planned: Length;
  readonly measured: Length;
}

/** What a strip is cut beyond the length it shows. */
function allowance({ style, extra }: BorderTask, { seam }: Seams): Length {
  return style === 'mitered' ? quarterSquareAllowance(seam).plus(extra) : seam.times(2);
}

function stripPart(run: Run, count: 2 | 4, border: BorderTask, seams: Seams): BorderPart {
  const { seam, grid } = seams;
  const beyond = run.part === 'corners' ? seam.times(2) : allowance(border, seams);
  const raw = border.width.plus(seam.times(2));
  const toCut = (strip: StripSize): StripSize => ({
    width: strip.width.toGrid(grid, 'up'),
    length: strip.length.toGrid(grid, 'up'),
  });
  const exact = { width: raw, length: run.measured.plus(beyond) };
  const cut = toCut(exact);
  const planned = toCut({ width: raw, length: run.planned.plus(beyond) });
  return {
    part: run.part,
    count,
    finished: { width: border.width, length: run.planned },
    cut,
    exact,
    planned,
    differs: cut.length.minus(planned.length),
  };
}

/**
 * The strips of a border in the order of sewing: sides as long as the top, then top and bottom as wide
 * as it has become; with corner squares as wide as it was; mitered all along the outer edge.
 */
export function borderParts(border: BorderTask, inside: Inside, seams: Seams): BorderPart[] {
  const { width, style, corners, unit } = border;
  const both = width.times(2);
  const run = (part: Run['part'], of: (size: Size) => Length): Run => ({
    part,
    planned: of(inside.planned),
    measured: of(inside.measured),
  });
  const sides = run('sides', ({ height }) => (style === 'mitered' ? height.plus(both) : height));
  const ends = run('top-and-bottom', (size) =>
    corners === 'squares' ? size.width : size.width.plus(both),
  );
  const strips = [sides, ends].map((each) => {
    const part = stripPart(each, 2, border, seams);
    if (unit === undefined) return part;
    return { ...part, units: unitsAlong(each.planned, unit, border.field) };
  });
  if (corners === 'none') return strips;
  const square = { part: 'corners', planned: width, measured: width } as const;
  return [...strips, stripPart(square, 4, border, seams)];
}

/** The least that mitered strips may measure: the outer edge and 2s(1 + √2), up to the grid. */
export function leastMitered(
  { width }: BorderTask,
  { measured }: Inside,
  { seam, grid }: Seams,
): Size {
  const least = (side: Length): Length =>
    side.plus(width.times(2)).plus(quarterSquareAllowance(seam)).toGrid(grid, 'up');
  return { width: least(measured.width), height: least(measured.height) };
}

/** The lengths of all strips of a border one after the other; corner squares are none. */
export const runningLength = (parts: readonly BorderPart[]): Length =>
  parts
    .filter(({ part }) => part !== 'corners')
    .reduce((sum, { cut, count }) => sum.plus(cut.length.times(count)), length(0));
