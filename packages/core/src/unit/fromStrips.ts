import { fail } from '../errors/error.js';
import type { Length } from '../length/length.js';
import type { Piece } from '../plan/piece.js';
import type { CutLabel, StripCuts } from './plan.js';

/** The greatest whole number of steps that a room has space for; 0 where there is none. Exact. */
export function stepsIn(room: Length, step: Length): number {
  const fit = (count: number): boolean => step.times(count).compareTo(room) <= 0;
  if (!fit(1)) return 0;
  let jump = 1;
  while (fit(jump * 2)) jump *= 2;
  let count = 0;
  for (; jump >= 1; jump /= 2) {
    if (fit(count + jump)) count += jump;
  }
  return count;
}

/**
 * What a strip yields: after the first angled cut, one shape for each step.
 *
 * @throws EighthsError `strip-too-short` where it yields none
 */
export function cutStrip(cuts: Omit<StripCuts, 'perStrip'>, grid: Length): StripCuts {
  const { usable, first, step } = cuts;
  const perStrip = stepsIn(usable.minus(first), step);
  if (perStrip === 0) {
    const needed = first.plus(step);
    fail(
      'strip-too-short',
      'usable',
      { usable, needed: needed.toGrid(grid, 'up') },
      'A strip {usable} long is too short for one piece. It must be at least {needed} long.',
    );
  }
  return { ...cuts, perStrip };
}

/** How much of a strip a number of shapes takes, up to the grid and no longer than the strip. */
function lengthFor(count: number, { first, step, usable }: StripCuts, grid: Length): Length {
  const long = first.plus(step.times(count)).toGrid(grid, 'up');
  return long.compareTo(usable) > 0 ? usable : long;
}

/** Whole strips, and a last one that is only as long as needed. */
export function stripPieces(
  label: CutLabel,
  fabric: string,
  count: number,
  strip: StripCuts,
  grid: Length,
): readonly Piece[] {
  const { width, perStrip } = strip;
  const piece = (shapes: number, strips: number): Piece => ({
    label,
    fabric,
    width,
    length: lengthFor(shapes, strip, grid),
    count: strips,
  });
  const whole = Math.floor(count / perStrip);
  const rest = count % perStrip;
  return [...(whole > 0 ? [piece(perStrip, whole)] : []), ...(rest > 0 ? [piece(rest, 1)] : [])];
}
