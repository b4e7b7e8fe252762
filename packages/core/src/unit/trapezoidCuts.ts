import type { Length } from '../length/length.js';
import type { Angle } from './angle.js';
import { cutStrip } from './fromStrips.js';
import type { StripCuts } from './plan.js';

/** A finished trapezoid, and what it is cut from. */
interface Trapezoid {
  readonly angle: Angle;
  readonly long: Length;
  readonly height: Length;
  /** How many of its ends are slanted. */
  readonly slanted: 1 | 2;
  readonly seam: Length;
  readonly grid: Length;
  readonly usable: Length;
}

/** The exact width of the strip, the exact long edge, and the cuts. */
interface TrapezoidCuts {
  readonly exact: Length;
  readonly edge: Length;
  readonly strip: StripCuts;
}

/**
 * Trapezoids turned by turns: two of them take one long and one short edge along the strip. With both
 * ends slanted a strip's first cut takes height · cot off its end; with one, pairs share their slants
 * and nothing is lost, so that the strip is reckoned in single ones of half a pair each, beginning
 * with what a whole one takes more than that.
 */
export function trapezoidCuts(shape: Trapezoid): TrapezoidCuts {
  const { angle, long, height, slanted, seam, grid, usable } = shape;
  const exact = height.plus(seam.times(2));
  const slant = seam.times(angle.cosecant.most.plus(angle.cotangent.most));
  const edge = long.plus(slant.times(slanted)).plus(slanted === 1 ? seam : 0);
  const width = exact.toGrid(grid, 'up');
  const rulerLine = edge.toGrid(grid, 'up');
  const lean = width.times(angle.cotangent.most);
  const share = slanted === 2 ? lean : lean.dividedBy(2);
  const strip = cutStrip(
    { width, usable, first: share, step: rulerLine.minus(share), rulerLine },
    grid,
  );
  return { exact, edge, strip };
}
