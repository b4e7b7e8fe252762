import { type Length, squareRoot } from '../length/length.js';

const rootOfTwo = squareRoot(2);

/**
 * What a square that is cut once on the diagonal has beyond the finished leg of its triangles:
 * s(2 + √2), which a quarter-inch seam makes 0.8536, up to the eighth 7/8.
 *
 * The leg is longer by s at the right angle and by s + s√2 at the sharp corner, where the seam line
 * along the long edge meets the cut.
 *
 * @example
 * halfSquareAllowance(length('1/4')).toGrid('1/8', 'up').toString(); // '7/8'
 */
export const halfSquareAllowance = (seam: Length): Length => seam.times(rootOfTwo.plus(2));

/**
 * What a square that is cut twice on the diagonal has beyond the finished long edge of its triangles:
 * 2s(1 + √2), which a quarter-inch seam makes 1.2071, up to the eighth 1 1/4.
 *
 * @example
 * quarterSquareAllowance(length('1/4')).toGrid('1/8', 'up').toString(); // '1 1/4'
 */
export const quarterSquareAllowance = (seam: Length): Length =>
  seam.times(rootOfTwo.plus(1)).times(2);
