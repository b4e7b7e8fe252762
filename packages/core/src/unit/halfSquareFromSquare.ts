import { type Length, type LengthInput, squareRoot } from '../length/length.js';
import { choiceField, lengthBetween, lengthField, rationalField } from '../plan/field.js';
import { halfSquareAllowance } from './allowances.js';
import { type HalfSquareMethod, squareFor } from './halfSquareMethod.js';

/** What half-square triangles a square makes that is already cut. */
export interface HalfSquareFromSquare {
  /** The largest exact finished side. */
  readonly exact: Length;
  /** The largest finished side on the grid. */
  readonly finished: Length;
  /** By how much the sewn unit is then larger than it is trimmed to. */
  readonly oversize: Length;
}

const METHODS: readonly HalfSquareMethod[] = [
  'two-at-a-time',
  'four-at-a-time',
  'eight-at-a-time',
  'cut-triangles',
];

function sideFrom(square: Length, method: HalfSquareMethod, seam: Length): Length {
  if (method === 'four-at-a-time') {
    const inside = square.minus(seam.times(2));
    return inside.times(squareRoot('1/2')).minus(seam.times(2));
  }
  const one = method === 'eight-at-a-time' ? square.dividedBy(2) : square;
  return one.minus(halfSquareAllowance(seam));
}

/**
 * The largest half-square triangles from squares of a given size, such as precut 5-inch squares:
 * the reverse of `halfSquareTriangles`. The finished side is rounded down to the grid.
 *
 * @throws EighthsError `out-of-range` where the square is too small for a line of the grid
 * @example
 * halfSquareFromSquare({ square: 5, method: 'two-at-a-time' }).finished.toString(); // '4 1/8'
 * halfSquareFromSquare({ square: 5, method: 'four-at-a-time' }).finished.toString(); // '2 5/8'
 */
export function halfSquareFromSquare(spec: {
  readonly square: LengthInput;
  readonly method?: HalfSquareMethod;
  readonly seam?: LengthInput;
  readonly grid?: LengthInput;
}): HalfSquareFromSquare {
  const method = choiceField(spec.method ?? 'two-at-a-time', 'method', METHODS);
  const seam = lengthField(spec.seam ?? '1/4', 'seam');
  const grid = rationalField(spec.grid ?? '1/8', 'grid');
  // The square of a unit that finishes one step, which is the least that is worth a cut.
  const least = squareFor(method, grid, seam).toGrid(grid, 'up');
  const square = lengthBetween(spec.square, 'square', least, 1000);
  const exact = sideFrom(square, method, seam);
  const finished = exact.toGrid(grid, 'down');
  return { exact, finished, oversize: exact.minus(finished) };
}
