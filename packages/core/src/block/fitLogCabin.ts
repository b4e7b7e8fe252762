import type { Length } from '../length/length.js';
import { type Notice, type Warning, warningsFrom } from '../plan/notice.js';
import { answerer, type LogCabinFit } from './fitAnswer.js';
import { orderOf } from './fitOrder.js';
import { type FitProblem, MOST_STEPS, readFitProblem } from './fitProblem.js';
import { type FitRelaxation, relaxations, relaxGrid } from './fitRelax.js';
import type { LogCabinFitRequest } from './fitRequest.js';
import { type Found, searchFits } from './fitSearch.js';
import { type FitCriterion, type FitNoteCode, fitSentences } from './fitSentences.js';
import { bestOf } from './fitSizes.js';

/** All that the finder has to say. */
export interface LogCabinFindings {
  /** Best first. */
  readonly fits: readonly LogCabinFit[];
  /** How many blocks come out, given or left out. */
  readonly total: number;
  readonly leftOut: number;
  /** The finished sizes of which every block was looked at. */
  readonly searched: { readonly least: Length; readonly most: Length };
  /** What decides which fits come first, in this order. */
  readonly order: readonly Notice<FitCriterion>[];
  /** Where nothing fits: the best block of the next smaller and of the next larger size that does. */
  readonly closest: readonly LogCabinFit[];
  /** Where nothing fits: each limit that stands alone in the way, and how far it had to give. */
  readonly relax: readonly FitRelaxation[];
  readonly warnings: readonly Warning<FitNoteCode>[];
}

const warning = warningsFrom(fitSentences);

function answers(problem: FitProblem, { best, total }: Found): readonly LogCabinFit[] {
  const answer = answerer(problem, total);
  return best.map((ranked, index) => answer(ranked, index + 1));
}

/** The best block of the next size in a direction that has one. */
function nextSize(problem: FitProblem, from: number, step: 1 | -1): readonly LogCabinFit[] {
  for (let size = from + step; size >= 1 && size <= MOST_STEPS; size += step) {
    const best = bestOf(problem, size);
    if (best !== undefined) return [best];
  }
  return [];
}

function warnOf(problem: FitProblem, { best, total, searched }: Found): Warning<FitNoteCode>[] {
  const warnings: Warning<FitNoteCode>[] = [];
  if (total > best.length) {
    const values = { total, shown: best.length, leftOut: total - best.length };
    warnings.push(warning('fits-left-out', 'most', values));
  }
  if (searched.most < problem.finished.most) {
    const [least, most] = [problem.grid.times(searched.least), problem.grid.times(searched.most)];
    warnings.push(warning('sizes-left-out', 'finished', { least, most }));
  }
  return warnings;
}

/**
 * Every log cabin that comes out exactly on the grid, with what is said beside them: how many there
 * are, in which order they stand, and where none fits, what is closest and which limit to relax.
 *
 * A block comes out where finished = center + rounds × (wide + narrow), or rounds × 2 × log, with the
 * center and the logs whole steps of the grid. A curved block's wide logs are wider than its narrow
 * ones. A strip cut `W` can show logs up to `W` less two seam allowances and the least trim.
 *
 * @throws EighthsError `limits-cross`, `strip-too-narrow`, `out-of-range`, `missing-field` and those
 *   of single fields
 * @example
 * const nine = { finished: 9, rounds: 4, wide: { least: '1/2' }, narrow: { least: '1/2' } };
 * const { fits, total, leftOut } = findLogCabins({ ...nine, wish: { ratio: '5/2' }, most: 3 });
 * [total, leftOut]; // [25, 22]
 * fits.map(({ center }) => center); // ["2","1/2","1 1/2"]
 */
export function findLogCabins(request: LogCabinFitRequest): LogCabinFindings {
  const problem = readFitProblem(request);
  const found = searchFits(problem);
  const { finished, grid } = problem;
  const none = found.total === 0;
  return {
    fits: answers(problem, found),
    total: found.total,
    leftOut: found.total - found.best.length,
    searched: {
      least: grid.times(found.searched.least),
      most: grid.times(found.searched.most),
    },
    order: orderOf(problem),
    closest: none
      ? [...nextSize(problem, finished.least, -1), ...nextSize(problem, finished.most, 1)]
      : [],
    relax: none ? [...relaxations(problem), ...relaxGrid(request, problem)] : [],
    warnings: warnOf(problem, found),
  };
}

/**
 * Every log cabin of a finished size, or of a range of them, that comes out exactly on the grid in so
 * many rounds, best first: closest to the ratio wished for, then to the center wished for, then those
 * with the fewest parts narrower than two seam allowances, then those that take the least fabric.
 * Where nothing is wished, a center as large as what one round adds is best (our choice). Each fit
 * says what it was placed by, and how many there are in all; `findLogCabins` says more.
 *
 * @throws EighthsError as `findLogCabins`
 * @example
 * const strips = { wide: 2, narrow: '1 1/2' };
 * const [best] = fitLogCabin({ finished: 9, rounds: 4, strips, leastTrim: '1/4' });
 * [best.center, best.wide, best.narrow]; // ["2","1 1/4","1/2"]
 */
export const fitLogCabin = (request: LogCabinFitRequest): readonly LogCabinFit[] =>
  findLogCabins(request).fits;
