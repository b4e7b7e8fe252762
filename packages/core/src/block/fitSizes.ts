import type { Length, LengthInput } from '../length/length.js';
import { rationalField } from '../plan/field.js';
import { answerer, type LogCabinFit } from './fitAnswer.js';
import { countCandidates } from './fitCandidates.js';
import { type FitProblem, readFitProblem } from './fitProblem.js';
import type { FitLimits, LogCabinFitRequest } from './fitRequest.js';
import { searchFits } from './fitSearch.js';

/** Strips and rounds, with the finished size left open. */
export interface ReachableSizesRequest extends Omit<LogCabinFitRequest, 'finished' | 'most'> {
  /** Default from one step of the grid to 24 inches. */
  readonly finished?: FitLimits;
  /** Only finished sizes that are multiples of this; default the grid. */
  readonly step?: LengthInput;
}

/** A finished size that comes out. */
export interface ReachableSize {
  readonly finished: Length;
  /** How many blocks of this size there are. */
  readonly ways: number;
  /** The best of them, by the finder's order. */
  readonly best: LogCabinFit;
}

const USUAL_MOST = 24;

/** The best block of a size. */
export function bestOf(problem: FitProblem, size: number): LogCabinFit | undefined {
  const one = { ...problem, finished: { least: size, most: size }, most: 1 };
  const { best, total } = searchFits(one);
  const [first] = best;
  return first && answerer(one, total)(first, 1);
}

/**
 * Which finished sizes can be made in so many rounds, from strips on hand or within limits, smallest
 * first: of each, how many blocks there are and the best of them.
 *
 * @throws EighthsError as `findLogCabins`
 * @example
 * const strips = { log: '1 1/2' };
 * const sizes = reachableSizes({ rounds: 3, strips, log: 1, center: { most: 2 }, step: 1 });
 * sizes.map(({ finished }) => finished); // ["7","8"]
 */
export function reachableSizes(request: ReachableSizesRequest): readonly ReachableSize[] {
  const { step: stepInput, finished = { most: USUAL_MOST }, ...rest } = request;
  const problem = readFitProblem({ ...rest, finished });
  const { grid } = problem;
  const step = stepInput === undefined ? grid : rationalField(stepInput, 'step');
  const sizes: ReachableSize[] = [];
  for (let size = problem.finished.least; size <= problem.finished.most; size += 1) {
    const ways = countCandidates(problem, size);
    const finished = grid.times(size);
    if (ways === 0 || !finished.isOnGrid(step)) continue;
    const best = bestOf(problem, size);
    if (best !== undefined) sizes.push({ finished, ways, best });
  }
  return sizes;
}
