import type { Length } from '../length/length.js';
import { shapesPerStrip } from '../plan/stripShapes.js';
import type { StripCuts } from './plan.js';

/**
 * What a strip yields: after the first angled cut, one shape for each step.
 *
 * @throws EighthsError `strip-too-short` where it yields none
 */
export const cutStrip = (cuts: Omit<StripCuts, 'perStrip'>, grid: Length): StripCuts => ({
  ...cuts,
  perStrip: shapesPerStrip(cuts, grid, 'usable'),
});
