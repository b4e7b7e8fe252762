import type { Length } from '../length/length.js';
import type { Size } from '../plan/size.js';
import { stepsToCover } from './whole.js';

/** Which way the length of a fabric, or of a roll of batting, runs on the quilt. */
export type Runs = 'down' | 'across';

/** The side that panels are laid beside each other along, and the one that each is as long as. */
export const sidesFor = (
  runs: Runs,
  { width, height }: Size,
): { readonly beside: Length; readonly along: Length } =>
  runs === 'down' ? { beside: width, along: height } : { beside: height, along: width };

/** What panels measure when they are sewn side by side: p panels make pU − 2s(p − 1). */
export const panelsMake = (panels: number, width: Length, seam: Length): Length =>
  width.times(panels).minus(seam.times(2 * (panels - 1)));

/** The least number of panels that cover a side. The width has to be more than two allowances. */
export const panelsFor = (side: Length, width: Length, seam: Length): number =>
  Math.max(1, stepsToCover(side.minus(seam.times(2)), width.minus(seam.times(2))));
