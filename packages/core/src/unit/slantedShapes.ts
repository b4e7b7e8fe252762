import type { Length } from '../length/length.js';
import type { Step, Warning } from '../plan/notice.js';
import type { Angle } from './angle.js';
import { cutStrip } from './fromStrips.js';
import type { StripCuts } from './plan.js';
import { at, type UnitPoint } from './point.js';
import type { UnitSentence } from './sentences/all.js';
import { sayOfStrips, warnOfStrips } from './stripUnit.js';

/** A parallelogram with its lower left corner acute, from its base along the strip and its height. */
export function slantedOutline(
  base: Length,
  height: Length,
  lean: Length,
  direction: 'right' | 'left' = 'right',
): readonly UnitPoint[] {
  return direction === 'right'
    ? [at(lean, 0), at(lean.plus(base), 0), at(base, height), at(0, height)]
    : [at(0, 0), at(base, 0), at(base.plus(lean), height), at(lean, height)];
}

/** A strip that is cut across at an angle, every cut parallel to the one before. */
export interface ParallelCuts {
  readonly angle: Angle;
  /** The strip's exact width, and the exact distance between two cuts. */
  readonly width: Length;
  readonly rulerLine: Length;
  readonly usable: Length;
  readonly grid: Length;
}

/**
 * Parallelograms from a strip. The first cut takes width · cot off the end, and along the strip's edge
 * the cuts are rulerLine / sin apart; both from the sizes on the grid.
 */
export function parallelCuts({ angle, width, rulerLine, usable, grid }: ParallelCuts): StripCuts {
  const cutWidth = width.toGrid(grid, 'up');
  const cutLine = rulerLine.toGrid(grid, 'up');
  return cutStrip(
    {
      width: cutWidth,
      usable,
      first: cutWidth.times(angle.cotangent.most),
      step: cutLine.times(angle.cosecant.most),
      rulerLine: cutLine,
    },
    grid,
  );
}

export const angledSteps = ({ degrees }: Angle, strip: StripCuts): Step<UnitSentence>[] => [
  sayOfStrips('first-angle', { angle: degrees }),
  sayOfStrips('next-angle', { line: strip.rulerLine, perStrip: strip.perStrip }),
];

export const angleWarnings = ({ exact, degrees }: Angle): Warning<UnitSentence>[] =>
  exact ? [] : [warnOfStrips('angle-approximate', 'angle', { angle: degrees })];
