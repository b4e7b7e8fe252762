import { fail } from '../errors/error.js';
import type { Length } from '../length/length.js';
import { shorterOf } from '../length/longer.js';
import type { Piece } from './piece.js';

/** How shapes are cut from a strip: a first cut, then one shape for each step. */
export interface StripShapes {
  readonly width: Length;
  /** How long a strip is. */
  readonly usable: Length;
  readonly first: Length;
  readonly step: Length;
}

/** The greatest whole number of steps that a room has space for; 0 where there is none. Exact. */
export function stepsIn(room: Length, step: Length): number {
  const fit = (count: number): boolean => step.times(count).compareTo(room) <= 0;
  let jump = 1;
  while (fit(jump * 2)) jump *= 2;
  let count = 0;
  for (; jump >= 1; jump /= 2) {
    if (fit(count + jump)) count += jump;
  }
  return count;
}

/**
 * How many shapes a strip yields.
 *
 * @throws EighthsError `strip-too-short` where it yields none
 */
export function shapesPerStrip(
  { usable, first, step }: Omit<StripShapes, 'width'>,
  grid: Length,
  field: string,
): number {
  const perStrip = stepsIn(usable.minus(first), step);
  if (perStrip > 0) return perStrip;
  return fail(
    'strip-too-short',
    field,
    { usable, needed: first.plus(step).toGrid(grid, 'up') },
    'A strip {usable} long is too short for one piece. It must be at least {needed} long.',
  );
}

/** Whole strips, and a last one that is only as long as needed, up to the grid. */
export function stripPieces(
  named: Pick<Piece, 'label' | 'fabric'>,
  count: number,
  strip: StripShapes & { readonly perStrip: number },
  grid: Length,
): readonly Piece[] {
  const { width, usable, first, step, perStrip } = strip;
  const piece = (shapes: number, strips: number): Piece => ({
    ...named,
    width,
    length: shorterOf(first.plus(step.times(shapes)).toGrid(grid, 'up'), usable),
    count: strips,
  });
  const whole = Math.floor(count / perStrip);
  const rest = count % perStrip;
  return [...(whole > 0 ? [piece(perStrip, whole)] : []), ...(rest > 0 ? [piece(rest, 1)] : [])];
}
