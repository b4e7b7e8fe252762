import { type Length, length, squareRoot } from '../../length/length.js';
import { stepsThatFit, stepsToCover } from '../whole.js';
import type { BindingTask } from './readBinding.js';

/**
 * Strips at 45 degrees from a rectangle. Cut from corner to edge at 45 degrees, it falls into two
 * triangles and a band between them; in a square there is no band. With a the shorter side and w the
 * strip's width, strip j of a triangle measures a√2 − (2j + 1)w along its middle, and one of the band
 * a√2. Ends lie on straight edges at 45 degrees, so a join takes 2s√2 along the middle.
 */
export interface BiasRectangle {
  /** Strips of the band, each `longest` long. */
  readonly band: number;
  /** Strips of each triangle that are worth a join. */
  readonly steps: number;
  readonly longest: Length;
}

const rootOfTwo = squareRoot(2);

/** What a join takes. */
const joinOf = ({ seam }: BindingTask): Length => seam.times(2).times(rootOfTwo);

export function biasRectangle(width: Length, height: Length, task: BindingTask): BiasRectangle {
  const { strip } = task;
  const [shorter, longer] = width.compareTo(height) < 0 ? [width, height] : [height, width];
  const longest = shorter.times(rootOfTwo);
  const whole = stepsThatFit(longest, strip.times(2));
  const worth = stepsToCover(longest.minus(joinOf(task)).minus(strip), strip.times(2));
  return {
    band: stepsThatFit(longer.minus(shorter), strip.times(rootOfTwo)),
    steps: Math.min(whole, worth),
    longest,
  };
}

/** How many strips rectangles that are alike give. */
export const stripsIn = ({ band, steps }: BiasRectangle, rectangles = 1): number =>
  (band + 2 * steps) * rectangles;

/** What so many strips of them make when they are joined, the longest taken first. Exact. */
export function joinedBias(
  { band, longest }: BiasRectangle,
  strips: number,
  rectangles: number,
  task: BindingTask,
): Length {
  if (strips === 0) return length(0);
  const two = 2 * rectangles;
  const whole = Math.min(strips, band * rectangles);
  const full = Math.floor((strips - whole) / two);
  const rest = strips - whole - full * two;
  const shorter = two * full * full + rest * (2 * full + 1);
  return longest
    .times(strips)
    .minus(task.strip.times(shorter))
    .minus(joinOf(task).times(strips - 1));
}

/** The least number of strips that make the length, of `most` that do. */
export function leastStrips(
  rectangle: BiasRectangle,
  rectangles: number,
  task: BindingTask,
): number {
  let enough = stripsIn(rectangle, rectangles);
  let below = 0;
  while (enough - below > 1) {
    const middle = Math.floor((enough + below) / 2);
    const makes = joinedBias(rectangle, middle, rectangles, task);
    if (makes.compareTo(task.needed) >= 0) enough = middle;
    else below = middle;
  }
  return enough;
}
