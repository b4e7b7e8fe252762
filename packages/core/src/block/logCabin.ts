import { grownBy } from '../plan/size.js';
import { cutSize } from './cutSize.js';
import { readDesign } from './design.js';
import { blockPieces, stripTotals } from './pieces.js';
import type { LogCabin } from './plan.js';
import { sew } from './sew.js';
import type { LogCabinSpec } from './spec.js';
import { logCabinWarnings } from './warnings.js';

/**
 * A log cabin block from its spec: what to cut, in which order to sew it, and what each round is
 * trimmed to.
 *
 * All lengths are exact inches. Cut sizes are rounded up to the grid (default 1/8), with the exact
 * size beside them where that differs; finished and trim sizes are never rounded, and a warning says
 * where one is off the grid. Unfinished = finished + 2 seam allowances.
 *
 * @throws EighthsError with the path of the field it is about: `missing-field`, `unknown-field`,
 *   `strip-too-narrow`, `center-not-positive`, `sizes-disagree`, `list-length` and others.
 * @example
 * const block = logCabin({
 *   rounds: 4,
 *   center: 2,
 *   wide: '1 1/4',
 *   narrow: '1/2',
 *   strips: { wide: 2, narrow: '1 1/2' },
 * });
 * block.unfinished.width.toString(); // '9 1/2'
 * block.rounds[0].centerSeamToEdge.right.toString(); // '1 1/2'
 */
export function logCabin(spec: LogCabinSpec): LogCabin {
  const design = readDesign(spec);
  const { layout, direction, sides, seam, grid, trimAfter, finished } = design;
  const center = {
    fabric: design.fabrics.center,
    finished: design.center,
    ...cutSize(grownBy(design.center, seam), grid),
  };
  const { logs, cornerstones, rounds } = sew(design);
  return {
    layout,
    direction,
    sides,
    seam,
    grid,
    trimAfter,
    finished,
    unfinished: grownBy(finished, seam),
    center,
    logs,
    cornerstones,
    rounds,
    strips: stripTotals(logs),
    pieces: blockPieces(center, logs, cornerstones),
    warnings: logCabinWarnings(design, rounds),
  };
}
