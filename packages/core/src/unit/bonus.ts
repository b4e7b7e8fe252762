import { type Length, squareRoot } from '../length/length.js';
import type { BonusTriangles } from './plan.js';

/**
 * What the corners make that stitch and flip cuts away, where a second seam is sewn before they are
 * cut. The corner square of k + 2s is cut s beyond its diagonal, which leaves triangles of legs
 * k + 2s − s√2; two of them sewn together finish k − 2s√2.
 *
 * @returns undefined where nothing would be left
 */
export function bonusOf(leg: Length, seam: Length, count: number): BonusTriangles | undefined {
  const finished = leg.minus(squareRoot(2).times(seam).times(2));
  return finished.sign() > 0 ? { finished, count } : undefined;
}
