import type { Length } from '../length/length.js';
import { stepsThatFit, stepsToCover } from './whole.js';

/**
 * The least multiple of `grid` from `least` to `most` that is enough, where more is never less enough;
 * undefined where none is. Found by halving.
 */
export function leastOnGrid(
  grid: Length,
  least: Length,
  most: Length,
  isEnough: (value: Length) => boolean,
): Length | undefined {
  let below = stepsToCover(least, grid) - 1;
  let enough = stepsThatFit(most, grid);
  if (enough <= below || !isEnough(grid.times(enough))) return undefined;
  while (enough - below > 1) {
    const middle = Math.floor((enough + below) / 2);
    if (isEnough(grid.times(middle))) enough = middle;
    else below = middle;
  }
  return grid.times(enough);
}

/** The least count from 1 that is enough, where more is never less enough and some count is. */
export function leastCount(isEnough: (count: number) => boolean): number {
  let enough = 1;
  while (!isEnough(enough)) enough *= 2;
  let below = Math.floor(enough / 2);
  while (enough - below > 1) {
    const middle = Math.floor((enough + below) / 2);
    if (isEnough(middle)) enough = middle;
    else below = middle;
  }
  return enough;
}
