import { type Length, length, squareRoot } from '../../length/length.js';
import { leastCount, leastOnGrid } from '../leastOnGrid.js';
import { stepsThatFit } from '../whole.js';
import { bindingBasics, warn } from './basics.js';
import { biasRectangle, joinedBias, leastStrips, stripsIn } from './biasLength.js';
import type { BiasStripBinding } from './plan.js';
import type { BindingTask } from './readBinding.js';
import { tooWide } from './tooWide.js';

/** What all strips of so many rectangles make. */
function allOf(width: Length, height: Length, rectangles: number, task: BindingTask): Length {
  const rectangle = biasRectangle(width, height, task);
  return joinedBias(rectangle, stripsIn(rectangle, rectangles), rectangles, task);
}

/**
 * The least length of fabric whose whole width gives enough. Up to a square, a longer piece can lose a
 * strip of the band: so one number of those after the other is asked for, in each of which more is never
 * less.
 */
function leastFabric(task: BindingTask): Length {
  const { fabricWidth, grid, needed, strip } = task;
  const isEnough = (height: Length): boolean =>
    allOf(fabricWidth, height, 1, task).compareTo(needed) >= 0;
  const step = strip.times(squareRoot(2));
  // By area it cannot be less.
  let from = needed.times(strip).dividedBy(fabricWidth);
  for (let band = stepsThatFit(fabricWidth.minus(from), step); band >= 0; band -= 1) {
    const to = fabricWidth.minus(step.times(band));
    const found = leastOnGrid(grid, from, to, isEnough);
    if (found !== undefined) return found;
    if (to.compareTo(from) > 0) from = to;
  }
  // Beyond a square, more length only adds strips to the band.
  let most = fabricWidth.times(2);
  while (!isEnough(most)) most = most.times(2);
  return leastOnGrid(grid, from, most.plus(grid), isEnough) ?? most;
}

/** Strips at 45 degrees from the whole width of the fabric, and from squares. */
export function biasStrips(task: BindingTask): BiasStripBinding {
  const { fabricWidth, grid, needed } = task;
  const largest = fabricWidth.toGrid(grid, 'down');
  if (stripsIn(biasRectangle(largest, largest, task)) === 0) tooWide(task);
  const squares = leastCount(
    (count) => allOf(largest, largest, count, task).compareTo(needed) >= 0,
  );
  const square =
    leastOnGrid(
      grid,
      length(0),
      largest,
      (side) => allOf(side, side, squares, task).compareTo(needed) >= 0,
    ) ?? largest;
  const cutUp = biasRectangle(square, square, task);
  const fromSquares = leastStrips(cutUp, squares, task);
  const fabric = leastFabric(task);
  const piece = biasRectangle(fabricWidth, fabric, task);
  const strips = leastStrips(piece, 1, task);
  return {
    ...bindingBasics(task, joinedBias(piece, strips, 1, task)),
    cut: 'bias-strips',
    strips,
    fabric,
    fromSquares: {
      squares,
      square,
      strips: fromSquares,
      length: joinedBias(cutUp, fromSquares, squares, task),
    },
    joins: strips - 1,
    pieces: [{ label: 'binding', width: fabric, length: fabricWidth, count: 1 }],
    warnings:
      squares > 1 ? [warn('several-squares', 'fabricWidth', { fabricWidth, squares, square })] : [],
  };
}
