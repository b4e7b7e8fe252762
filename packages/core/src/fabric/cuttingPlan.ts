import { atOnce } from '../plan/atOnce.js';
import { type PlannedStrips, plainPlan } from './plainPlan.js';
import type { CuttingPlan } from './plan.js';
import { readCutting } from './readCutting.js';
import type { CuttingSpec } from './spec.js';
import { cuttingStock } from './stock/cuttingStock.js';
import { Effort } from './stock/effort.js';
import { thriftyPlan } from './thrifty/thriftyPlan.js';

/** How far a plan in the making has come. */
export interface CuttingProgress {
  /** How many widths of strips are planned, and how many there are; a thrifty plan counts as one more. */
  readonly planned: number;
  readonly widths: number;
  /** The elementary steps done so far. */
  readonly effort: number;
}

/** About so many steps lie between two pauses: a few milliseconds. */
const PAUSE = 200_000;
/** A thrifty plan is seldom better for more: a fraction of a second. */
const THRIFTY_EFFORT = 10_000_000;

/**
 * The cutting plan in the making: pauses every few milliseconds of work, so that a page can stay
 * responsive, and stops for good when it is asked for no more. Returns what `cuttingPlan` returns.
 *
 * @throws EighthsError as `cuttingPlan`, before the first pause.
 * @example
 * const making = cuttingPlanInParts({ width: 42, pieces: [{ width: 5, length: 5, count: 8 }] });
 * let step = making.next();
 * // A page waits for its next frame between two steps, or leaves.
 * while (!step.done) step = making.next();
 * step.value.length.toString(); // '5'
 */
export function* cuttingPlanInParts(
  spec: CuttingSpec,
): Generator<CuttingProgress, CuttingPlan, undefined> {
  const task = readCutting(spec);
  const thrifty = task.method === 'thrifty';
  const widths = task.groups.length + (thrifty ? 1 : 0);
  const planned: PlannedStrips[] = [];
  let spent = 0;
  let paused = 0;
  function* paced<Result>(
    solving: Generator<void, Result>,
    effort: Effort,
  ): Generator<CuttingProgress, Result, undefined> {
    let state = solving.next();
    for (; !state.done; state = solving.next()) {
      const done = spent + effort.spent;
      if (done - paused < PAUSE) continue;
      paused = done;
      yield { planned: planned.length, widths, effort: done };
    }
    return state.value;
  }
  for (const group of task.groups) {
    // What one width of strips leaves of its share, the widths after it may use.
    const effort = new Effort((task.effort - spent) / (widths - planned.length));
    planned.push({ group, cutting: yield* paced(cuttingStock(group.stock, effort), effort) });
    spent += effort.spent;
  }
  const plain = plainPlan(task, planned);
  if (!thrifty) return plain;
  const effort = new Effort(Math.min(task.effort - spent, THRIFTY_EFFORT));
  return yield* paced(thriftyPlan(task, plain, effort), effort);
}

/**
 * The least fabric that all pieces can be cut from, strip by strip across its width, and how to cut
 * them. A strip is as wide as one of the pieces. In a plain plan each strip is for pieces of one
 * width, as given. In a thrifty one, a strip's ends may be cut into lower rows and those subcut, and
 * pieces that may be turned are where that helps; it is never longer than the plain plan, and is that
 * plan where it would not be shorter.
 *
 * Exact: lengths are never rounded. Where the search did not settle within its effort whether less
 * would do, `optimal` is false, `lowerBound` says what is proven, and a warning says so.
 *
 * @throws EighthsError `piece-too-long`, `no-pieces`, `not-a-count`, `not-positive`,
 *   `several-fabrics`, `too-many-sizes`, `too-many-pieces`, `not-a-fraction`, `no-common-grid`, or
 *   what is wrong with the spec's writing, with the path of the field.
 * @example
 * const plan = cuttingPlan({ width: 42, pieces: [{ width: 5, length: 5, count: 12 }] });
 * plan.length.toString(); // '10'
 * plan.optimal; // true
 * // Four of the narrow pieces come from the end of the wide strip, two above two.
 * const pieces = [
 *   { width: 5, length: 5, count: 6 },
 *   { width: '2 1/2', length: 6, count: 4 },
 * ];
 * cuttingPlan({ width: 42, pieces }).length.toString(); // '5'
 * cuttingPlan({ width: 42, pieces, method: 'plain' }).length.toString(); // '7 1/2'
 */
export function cuttingPlan(spec: CuttingSpec): CuttingPlan {
  return atOnce(cuttingPlanInParts(spec));
}
