import { type Length, length, squareRoot } from '../../length/length.js';
import { leastCount, leastOnGrid } from '../leastOnGrid.js';
import { stepsThatFit } from '../whole.js';
import { bindingBasics, warn } from './basics.js';
import type { ContinuousBiasBinding } from './plan.js';
import type { BindingTask } from './readBinding.js';
import { tooWide } from './tooWide.js';

const rootOfTwo = squareRoot(2);

/** Whole strips of a tube: its seam takes two allowances, a strip √2 times its width. */
const stripsOf = (square: Length, { strip, seam }: BindingTask): number =>
  stepsThatFit(square.minus(seam.times(2)), strip.times(rootOfTwo));

/** What a square gives as one strip, exactly: k√2(S − 2s) of its k whole strips. */
function lengthFrom(square: Length, task: BindingTask): Length {
  const strips = stripsOf(square, task);
  return strips === 0 ? length(0) : square.minus(task.seam.times(2)).times(rootOfTwo).times(strips);
}

/** The bindings of several squares, joined on the diagonal. */
const joined = (each: Length, squares: number, strip: Length): Length =>
  each.times(squares).minus(strip.times(squares - 1));

/** As few squares as the fabric's width allows, each as small as is enough. */
export function continuousBias(task: BindingTask): ContinuousBiasBinding {
  const { needed, strip, fabricWidth, grid } = task;
  const largest = fabricWidth.toGrid(grid, 'down');
  const most = lengthFrom(largest, task);
  if (most.compareTo(strip) <= 0) tooWide(task);
  const squares = leastCount((count) => joined(most, count, strip).compareTo(needed) >= 0);
  const square =
    leastOnGrid(
      grid,
      length(0),
      largest,
      (side) => joined(lengthFrom(side, task), squares, strip).compareTo(needed) >= 0,
    ) ?? largest;
  const perSquare = lengthFrom(square, task);
  const stripsPerSquare = stripsOf(square, task);
  const customarySquare =
    leastOnGrid(
      grid,
      length(0),
      needed.plus(strip).plus(grid),
      (side) => side.times(side).compareTo(needed.times(strip)) >= 0,
    ) ?? square;
  const fromCustomary = lengthFrom(customarySquare, task);
  const warnings = [
    ...(squares > 1
      ? [warn('several-squares', 'fabricWidth', { fabricWidth, squares, square })]
      : []),
    ...(squares === 1 && fromCustomary.compareTo(needed) < 0
      ? [
          warn('customary-short', 'cut', {
            customary: customarySquare,
            length: fromCustomary,
            needed,
          }),
        ]
      : []),
  ];
  return {
    ...bindingBasics(task, joined(perSquare, squares, strip)),
    cut: 'bias-continuous',
    squares,
    square,
    stripsPerSquare,
    perSquare,
    customary: { perSquare: square.times(square).dividedBy(strip), square: customarySquare },
    joins: squares - 1,
    pieces: [{ label: 'binding', width: square, length: square, count: squares }],
    warnings,
  };
}
