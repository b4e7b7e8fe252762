import { fail } from '../errors/error.js';
import type { Length } from '../length/length.js';

/** @throws EighthsError `strip-too-narrow` */
export const tooNarrow = (field: string, log: Length, strip: Length, needed: Length): never =>
  fail(
    'strip-too-narrow',
    field,
    { log, strip, needed },
    'A log that finishes {log} needs a strip of at least {needed}, not {strip}.',
  );

/** @throws EighthsError `out-of-range` where a block has more steps of the grid than are searched */
export function checkSteps(finished: Length, grid: Length, steps: number): void {
  const most = grid.times(steps);
  if (finished.compareTo(most) <= 0) return;
  fail(
    'out-of-range',
    'finished',
    { value: finished, least: grid, most },
    'On this grid a block may finish up to {most}, not {value}. Take a coarser grid or a smaller block.',
  );
}
