import { type Length, squareRoot } from '../length/length.js';
import { halfSquareAllowance } from './allowances.js';

/** How half-square triangles are made. */
export type HalfSquareMethod =
  | 'two-at-a-time'
  | 'four-at-a-time'
  | 'eight-at-a-time'
  | 'cut-triangles';

/** The exact square that each method starts from, where sewn units measure `finished` and two seams. */
export function squareFor(method: string, finished: Length, seam: Length): Length {
  const one = finished.plus(halfSquareAllowance(seam));
  if (method === 'eight-at-a-time') return one.times(2);
  if (method !== 'four-at-a-time') return one;
  return squareRoot(2)
    .times(finished.plus(seam.times(2)))
    .plus(seam.times(2));
}
