import { type Candidate, countCandidates, eachCandidate } from './fitCandidates.js';
import { comparer, type Ranked, ranker } from './fitOrder.js';
import type { FitProblem, StepRange } from './fitProblem.js';

/** The best candidates, and how many there are. */
export interface Found {
  /** Best first. */
  readonly best: readonly Ranked[];
  readonly total: number;
  /** The finished sizes of which every block was looked at. */
  readonly searched: StepRange;
}

/**
 * How many blocks of a range are looked at one by one, so that an answer takes a fraction of a second; of
 * a single size there are at most some four million, and all are.
 */
const MOST_LOOKED_AT = 500_000;

/** Keeps the best of many, sorting now and then. */
function keeper(
  compare: (one: Ranked, other: Ranked) => number,
  most: number,
): { readonly add: (item: Ranked) => void; readonly best: () => Ranked[] } {
  let kept: Ranked[] = [];
  let worst: Ranked | undefined;
  const settle = (): void => {
    kept.sort(compare);
    if (kept.length < most) return;
    kept = kept.slice(0, most);
    worst = kept.at(-1);
  };
  return {
    add: (item) => {
      if (worst !== undefined && compare(item, worst) >= 0) return;
      kept.push(item);
      if (kept.length >= 2 * most + 1000) settle();
    },
    best: () => {
      settle();
      return kept;
    },
  };
}

/**
 * Looks at every block of the finished sizes asked for; where there are too many, at those of as many
 * sizes as can be, from the smallest. All are counted.
 */
export function searchFits(problem: FitProblem): Found {
  const { finished, most } = problem;
  const { add, best } = keeper(comparer(problem), most);
  const rank = ranker(problem);
  const visit = (candidate: Candidate): void => add(rank(candidate));
  let total = 0;
  let searchedTo = finished.most;
  for (let size = finished.least; size <= finished.most; size += 1) {
    const count = countCandidates(problem, size);
    const tooMany = size > finished.least && total + count > MOST_LOOKED_AT;
    if (tooMany && searchedTo >= size) searchedTo = size - 1;
    total += count;
    if (size <= searchedTo) eachCandidate(problem, size, visit);
  }
  return { best: best(), total, searched: { least: finished.least, most: searchedTo } };
}
