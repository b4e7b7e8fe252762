import type { FitProblem, StepRange } from './fitProblem.js';
import type { FitKind } from './fitRequest.js';
import { shareDown } from './fitUnits.js';

/** A block that comes out, in steps of the grid. */
export interface Candidate {
  readonly kind: FitKind;
  readonly finished: number;
  readonly center: number;
  /** A plain block's logs stand under both names. */
  readonly wide: number;
  readonly narrow: number;
}

/** How many logs of a round lie across a plain block. */
export const logsAcross = ({ layout }: Pick<FitProblem, 'layout'>): 1 | 2 =>
  layout === 'quarter' ? 1 : 2;

/** What a round adds: between the widths that the center's limits leave room for. */
function roundRange({ rounds, limits }: FitProblem, finished: number): StepRange {
  const { least, most } = limits.center;
  return {
    least: Math.max(1, Math.ceil((finished - most) / rounds)),
    most: Math.floor((finished - Math.max(least, 1)) / rounds),
  };
}

/** The narrow logs of curved blocks whose rounds add `sum`, wide being wider than narrow. */
function narrowRange({ limits, shown, ratio }: FitProblem, sum: number): StepRange {
  const { wide, narrow } = limits;
  let least = Math.max(narrow.least, sum - Math.min(wide.most, shown.wide), 1);
  let most = Math.min(narrow.most, shown.narrow, sum - wide.least, Math.ceil(sum / 2) - 1);
  // wide / narrow ≥ n/d with wide = sum − narrow means narrow ≤ sum · d / (n + d).
  if (ratio.least)
    most = Math.min(most, shareDown(sum, ratio.least.d, ratio.least.n + ratio.least.d));
  if (ratio.most) {
    const { n, d } = ratio.most;
    least = Math.max(least, sum - shareDown(sum, n, n + d));
  }
  return { least, most };
}

/** The logs of a plain block whose rounds add `sum`, or undefined. */
function plainLog(problem: FitProblem, sum: number): number | undefined {
  const log = sum / logsAcross(problem);
  const { least, most } = problem.limits.log;
  const fits = Number.isInteger(log) && log >= least && log <= Math.min(most, problem.shown.log);
  return fits ? log : undefined;
}

/** How many blocks of a finished size there are, without looking at each. */
export function countCandidates(problem: FitProblem, finished: number): number {
  const sums = roundRange(problem, finished);
  let count = 0;
  for (let sum = sums.least; sum <= sums.most; sum += 1) {
    if (problem.kinds.includes('plain') && plainLog(problem, sum) !== undefined) count += 1;
    if (!problem.kinds.includes('curved')) continue;
    const { least, most } = narrowRange(problem, sum);
    count += Math.max(0, most - least + 1);
  }
  return count;
}

/** Every block of a finished size: finished = center + rounds · (what a round adds). */
export function eachCandidate(
  problem: FitProblem,
  finished: number,
  visit: (candidate: Candidate) => void,
): void {
  const { rounds, kinds } = problem;
  const sums = roundRange(problem, finished);
  for (let sum = sums.least; sum <= sums.most; sum += 1) {
    const center = finished - rounds * sum;
    const log = kinds.includes('plain') ? plainLog(problem, sum) : undefined;
    if (log !== undefined) visit({ kind: 'plain', finished, center, wide: log, narrow: log });
    if (!kinds.includes('curved')) continue;
    const { least, most } = narrowRange(problem, sum);
    for (let narrow = least; narrow <= most; narrow += 1) {
      visit({ kind: 'curved', finished, center, wide: sum - narrow, narrow });
    }
  }
}
