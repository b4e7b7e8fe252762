import type { Length } from '../length/length.js';
import type { Warning } from '../plan/notice.js';
import { areaOf } from '../plan/piece.js';
import type { Size } from '../plan/size.js';
import { type FabricShare, fabricShares, type LogCabinCurve, logCabinCurve } from './curve.js';
import { logCabin } from './logCabin.js';
import type { LogCabin, StripTotal } from './plan.js';
import type { LogCabinWarningCode } from './sentences.js';
import type { LogCabinSpec } from './spec.js';

/** One block beside others. */
export interface LogCabinComparison {
  /** Its place in the list that was given, from 0. */
  readonly index: number;
  readonly plan: LogCabin;
  readonly finished: Size;
  readonly unfinished: Size;
  readonly center: Size;
  /** What each fabric shows when the block is finished. */
  readonly shares: readonly FabricShare[];
  /** The area of all pieces as they are cut, in square inches. */
  readonly fabric: Length;
  readonly strips: readonly StripTotal[];
  /** Pieces to cut for one block. */
  readonly pieces: number;
  /** Cuts that trim it: one for each side that is trimmed. */
  readonly trims: number;
  /** Left out for plain blocks, and where the center is no square. */
  readonly curve?: LogCabinCurve;
  readonly warnings: readonly Warning<LogCabinWarningCode>[];
}

function compare(plan: LogCabin, index: number): LogCabinComparison {
  const { finished, unfinished, center, strips, warnings, pieces, logs, trimAfter } = plan;
  const { width, height } = center.finished;
  const curved = logs.some(({ kind }) => kind !== 'log') && width.equals(height);
  return {
    index,
    plan,
    finished,
    unfinished,
    center: center.finished,
    shares: fabricShares(plan),
    fabric: areaOf(pieces),
    strips,
    pieces: pieces.reduce((sum, { count }) => sum + count, 0),
    trims: trimAfter === 'never' ? 0 : logs.length,
    ...(curved && { curve: logCabinCurve(plan) }),
    warnings,
  };
}

/**
 * Blocks side by side: sizes, what each fabric shows, fabric to cut, cuts, and how round they are.
 *
 * @throws EighthsError as `logCabin`
 * @example
 * const shared = { rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2' };
 * const [wide, narrow] = compareLogCabins([shared, { ...shared, first: 'narrow' }]);
 * [wide.shares[1].area, narrow.shares[2].area]; // ["52 1/2","57 1/2"]
 */
export const compareLogCabins = (specs: readonly LogCabinSpec[]): readonly LogCabinComparison[] =>
  specs.map((spec, index) => compare(logCabin(spec), index));
