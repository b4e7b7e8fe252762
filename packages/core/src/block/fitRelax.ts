import { type Length, length } from '../length/length.js';
import { type Notice, warningsFrom } from '../plan/notice.js';
import { type Candidate, countCandidates, eachCandidate } from './fitCandidates.js';
import {
  type FitPart,
  type FitProblem,
  LOG_KINDS,
  MOST_ROUNDS,
  MOST_STEPS,
  readEnds,
  readFitProblem,
} from './fitProblem.js';
import type { LogCabinFitRequest } from './fitRequest.js';
import { type FitNoteCode, fitSentences } from './fitSentences.js';
import { stepsDown } from './fitUnits.js';

/** A limit that stands alone in the way. */
export interface FitRelaxation extends Notice<FitNoteCode> {
  /** The path of the input that would have to change. */
  readonly field: string;
}

/** The most sizes that are looked through for a limit to relax. */
const MOST_SIZES = 512;

const sizesOf = ({ finished }: FitProblem): readonly number[] => {
  const count = Math.min(MOST_SIZES, finished.most - finished.least + 1);
  return Array.from({ length: Math.max(0, count) }, (_, index) => finished.least + index);
};

const works = (problem: FitProblem): boolean =>
  sizesOf(problem).some((size) => countCandidates(problem, size) > 0);

/** The least of something over all that works, or undefined where nothing does. */
function leastOf(
  problem: FitProblem,
  measure: (candidate: Candidate) => number,
): number | undefined {
  let least: number | undefined;
  for (const size of sizesOf(problem)) {
    eachCandidate(problem, size, (candidate) => {
      const value = measure(candidate);
      if (least === undefined || value < least) least = value;
    });
  }
  return least;
}

const measured = (part: FitPart, candidate: Candidate): number =>
  part === 'log' ? candidate.wide : candidate[part];

const relaxation = warningsFrom(fitSentences);

function relaxLimits(problem: FitProblem): FitRelaxation[] {
  const { limits, grid } = problem;
  const parts: readonly FitPart[] = ['center', ...LOG_KINDS];
  return parts.flatMap((part) => {
    const { least, most } = limits[part];
    const relaxed: FitRelaxation[] = [];
    const without = (range: FitProblem['limits'][FitPart]): FitProblem => ({
      ...problem,
      limits: { ...limits, [part]: range },
    });
    if (least > 1) {
      const nearest = leastOf(without({ least: 1, most }), (one) => -measured(part, one));
      if (nearest !== undefined) {
        const values = { part, value: grid.times(-nearest), limit: grid.times(least) };
        relaxed.push(relaxation('relax-least', part, values));
      }
    }
    if (most < MOST_STEPS) {
      const nearest = leastOf(without({ least, most: MOST_STEPS }), (one) => measured(part, one));
      if (nearest !== undefined) {
        const values = { part, value: grid.times(nearest), limit: grid.times(most) };
        relaxed.push(relaxation('relax-most', part, values));
      }
    }
    return relaxed;
  });
}

/** The ratio that comes nearest once one of its ends is open. */
function relaxRatio(problem: FitProblem): FitRelaxation[] {
  const { ratio } = problem;
  return (['least', 'most'] as const).flatMap((end) => {
    const limit = ratio[end];
    if (limit === undefined) return [];
    const { [end]: _, ...rest } = ratio;
    const sign = end === 'least' ? -1 : 1;
    let nearest: Candidate | undefined;
    for (const size of sizesOf(problem)) {
      eachCandidate({ ...problem, ratio: rest }, size, (one) => {
        if (one.kind !== 'curved') return;
        const closer = nearest && one.wide * nearest.narrow - nearest.wide * one.narrow;
        if (closer === undefined || closer * sign < 0) nearest = one;
      });
    }
    if (nearest === undefined) return [];
    const { grid } = problem;
    const values = {
      part: 'ratio',
      value: grid.times(nearest.wide).dividedBy(grid.times(nearest.narrow)),
      limit: grid.times(0).plus({ s: 1n, ...limit }),
    };
    return [relaxation(end === 'least' ? 'relax-least' : 'relax-most', 'ratio', values)];
  });
}

function relaxStrips(problem: FitProblem): FitRelaxation[] {
  const { shown, strips, grid, seam, leastTrim } = problem;
  const needed = (log: number): Length => grid.times(log).plus(seam.times(2)).plus(leastTrim);
  return LOG_KINDS.flatMap((kind) => {
    const { [kind]: limit } = strips;
    if (limit === undefined) return [];
    const wider = { ...problem, shown: { ...shown, [kind]: MOST_STEPS } };
    const nearest = leastOf(wider, (one) => measured(kind, one));
    if (nearest === undefined) return [];
    const values = { part: kind, value: needed(nearest).toGrid(grid, 'up'), limit };
    return [relaxation('relax-strip', `strips.${kind}`, values)];
  });
}

/** With all of the strips to show, the most that trimming could take off. */
function relaxLeastTrim(problem: FitProblem): FitRelaxation[] {
  const { leastTrim, strips, seam, grid } = problem;
  if (leastTrim.sign() === 0 || Object.keys(strips).length === 0) return [];
  const shown = { log: MOST_STEPS, wide: MOST_STEPS, narrow: MOST_STEPS };
  for (let trim = leastTrim; ; trim = trim.minus(grid)) {
    const tried = trim.sign() < 0 ? grid.times(0) : trim;
    for (const kind of LOG_KINDS) {
      const { [kind]: strip } = strips;
      if (strip === undefined) continue;
      shown[kind] = stepsDown(strip.minus(seam.times(2)).minus(tried), grid);
    }
    if (works({ ...problem, shown })) {
      return [relaxation('relax-least-trim', 'leastTrim', { value: tried, limit: leastTrim })];
    }
    if (tried.sign() === 0) return [];
  }
}

function relaxRounds(problem: FitProblem): FitRelaxation[] {
  const { rounds: limit } = problem;
  for (let by = 1; by < Math.max(limit, 12); by += 1) {
    const value = [limit - by, limit + by].find(
      (rounds) => rounds > 0 && rounds <= MOST_ROUNDS && works({ ...problem, rounds }),
    );
    if (value !== undefined) return [relaxation('relax-rounds', 'rounds', { value, limit })];
  }
  return [];
}

/** A grid half or a quarter as coarse. */
export function relaxGrid(
  request: LogCabinFitRequest,
  { grid: limit }: FitProblem,
): FitRelaxation[] {
  for (const value of [limit.dividedBy(2), limit.dividedBy(4)]) {
    const finest = length('1/64');
    if (value.compareTo(finest) < 0) return [];
    const { finished } = request;
    const { most } = readEnds(finished, 'finished');
    if (most !== undefined && most.compareTo(value.times(MOST_STEPS)) > 0) return [];
    if (works(readFitProblem({ ...request, grid: value }))) {
      return [relaxation('relax-grid', 'grid', { value, limit })];
    }
  }
  return [];
}

/** Each limit that, if it alone were relaxed, would let a block come out, and how far. */
export const relaxations = (problem: FitProblem): readonly FitRelaxation[] => [
  ...relaxLimits(problem),
  ...relaxRatio(problem),
  ...relaxStrips(problem),
  ...relaxLeastTrim(problem),
  ...relaxRounds(problem),
];
