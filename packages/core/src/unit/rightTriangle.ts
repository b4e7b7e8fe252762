import { type Length, squareRoot } from '../length/length.js';
import type { Size } from '../plan/size.js';

/**
 * The legs to cut for a right triangle that finishes `width` by `height`, which have no roots:
 * w + s(1 + w/h + d/h) and h + s(1 + h/w + d/w) with d = √(w² + h²).
 *
 * The whole triangle grows about the middle of its inscribed circle, whose radius
 * (w + h − d) / 2 becomes larger by s; each leg grows by the same share.
 *
 * @example
 * const { width, height } = cutLegs({ width: length(3), height: length(4) }, length('1/4'));
 * `${width} by ${height}`; // '3 3/4 by 5'
 */
export function cutLegs({ width, height }: Size, seam: Length): Size {
  const long = squareRoot(width.times(width).plus(height.times(height)));
  return {
    width: width.plus(seam.times(long.plus(width).dividedBy(height).plus(1))),
    height: height.plus(seam.times(long.plus(height).dividedBy(width).plus(1))),
  };
}
