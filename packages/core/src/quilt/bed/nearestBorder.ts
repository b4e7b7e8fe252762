import type { Length } from '../../length/length.js';
import { absolute, longerOf, shorterOf } from '../../length/longer.js';
import type { Size } from '../../plan/size.js';
import type { BedTask } from './readBed.js';

/** A border, how far its quilt lies from the target each way, and how far at most. */
export interface BorderFit {
  readonly border: Length;
  readonly over: Size;
  readonly distance: Length;
  /** Both differences together, without their signs. */
  readonly sum: Length;
}

/** How well a border fits a top that lacks so much. */
function fitOf(border: Length, lacks: Size): BorderFit {
  const both = border.times(2);
  const over = { width: both.minus(lacks.width), height: both.minus(lacks.height) };
  const [across, down] = [absolute(over.width), absolute(over.height)];
  return {
    border,
    over,
    distance: longerOf(across, down),
    sum: across.plus(down),
  };
}

/** The lesser comes first. */
export const byFit = (a: BorderFit, b: BorderFit): number =>
  a.distance.compareTo(b.distance) || a.sum.compareTo(b.sum);

/**
 * The border on the grid and within its limits that brings a top nearest to the target: the one next to
 * half the middle of what it lacks each way, where the greater difference is least. Of equals the
 * narrower one. Undefined where no line of the grid lies within the limits.
 */
export function nearestBorder(lacks: Size, { border, grid }: BedTask): BorderFit | undefined {
  const lowest = border.least.toGrid(grid, 'up');
  const highest = border.most.toGrid(grid, 'down');
  if (lowest.compareTo(highest) > 0) return undefined;
  const middle = lacks.width.plus(lacks.height).dividedBy(4);
  const clamp = (value: Length): Length => longerOf(lowest, shorterOf(value, highest));
  const below = fitOf(clamp(middle.toGrid(grid, 'down')), lacks);
  const above = fitOf(clamp(middle.toGrid(grid, 'up')), lacks);
  return byFit(above, below) < 0 ? above : below;
}

/** What a top lacks of the target. */
export const lacking = (target: Size, width: Length, height: Length): Size => ({
  width: target.width.minus(width),
  height: target.height.minus(height),
});
