import type { Length } from '../length/length.js';
import type { Candidate } from './fitCandidates.js';
import type { FitProblem } from './fitProblem.js';
import { stepsUp } from './fitUnits.js';
import type { LogKind } from './spec.js';

/** Whether strips are wider than they have to be, so that rounds are trimmed. */
export const isTrimmed = ({ strips, leastTrim }: FitProblem): boolean =>
  leastTrim.sign() > 0 || Object.keys(strips).length > 0;

/** What a strip has to be wider than its log where none is on hand: on the grid if it is trimmed. */
export function stripBeyondLog(problem: FitProblem): Length {
  const taken = problem.seam.times(2).plus(problem.leastTrim);
  return isTrimmed(problem) ? taken.toGrid(problem.grid, 'up') : taken;
}

/**
 * Reckons the fabric of candidates, in square units: the center and the logs as they are cut, each log
 * as long as the raw edge it is sewn to, all rounds trimmed.
 */
export function fabricReckoner(problem: FitProblem): (candidate: Candidate) => number {
  const { rounds, layout, first, unit, unitsInStep, strips } = problem;
  const allowances = stepsUp(problem.seam.times(2), unit);
  const beyond = stepsUp(stripBeyondLog(problem), unit);
  const given = (kind: LogKind): number => {
    const { [kind]: strip } = strips;
    return strip === undefined ? 0 : stepsUp(strip, unit);
  };
  const onHand = { log: given('log'), wide: given('wide'), narrow: given('narrow') };

  return ({ kind, wide, narrow, center: finishedCenter, finished }) => {
    const wideStrip = onHand[kind === 'plain' ? 'log' : 'wide'] || wide * unitsInStep + beyond;
    const narrowStrip =
      onHand[kind === 'plain' ? 'log' : 'narrow'] || narrow * unitsInStep + beyond;
    const [one, other] = first === 'wide' ? [wideStrip, narrowStrip] : [narrowStrip, wideStrip];
    const center = finishedCenter * unitsInStep + allowances;
    // The raw edges before each round, added up: a trim leaves what the finished logs add.
    const edges = rounds * center + ((finished - finishedCenter) * unitsInStep * (rounds - 1)) / 2;
    const addedByOne = rounds * (one - allowances);
    const addedByOther = rounds * (other - allowances);
    const ownPair = 2 * one * edges + one * addedByOne;
    if (layout === 'quarter') return center * center + ownPair;
    if (layout === 'courthouse') {
      // Start side and opposite, then the next two across both: one of each pair every time.
      const across = 2 * edges + addedByOne + addedByOther;
      return center * center + (one + other) * across;
    }
    // The third log lies along the second, the fourth along the first and the third.
    const otherPair = 2 * other * edges + other * (2 * addedByOne + addedByOther);
    return center * center + ownPair + otherPair;
  };
}
