import { type Notice, notice } from '../plan/notice.js';
import { type Candidate, logsAcross } from './fitCandidates.js';
import { fabricReckoner } from './fitFabric.js';
import type { FitProblem } from './fitProblem.js';
import { type FitCriterion, fitSentences } from './fitSentences.js';
import { type Fraction, stepsUp } from './fitUnits.js';

/** A candidate with what its place depends on; less is better in each. */
export interface Ranked extends Candidate {
  /** How many kinds of parts finish narrower than two seam allowances. */
  readonly thinParts: number;
  /** How far the center is from the one wished for, or from what one round adds. */
  readonly centerOff: number;
  /** In square units. */
  readonly fabric: number;
}

type Compare = (one: Ranked, other: Ranked) => number;

/** |wide/narrow − n/d| of two candidates; exactly, where numbers would be too large for doubles too. */
function ratioComparer({ n, d }: Fraction): Compare {
  const small = n < 1n << 26n && d < 1n << 26n;
  if (small) {
    const [over, under] = [Number(n), Number(d)];
    const off = ({ wide, narrow }: Candidate): number => Math.abs(wide * under - narrow * over);
    return (one, other) => off(one) * other.narrow - off(other) * one.narrow;
  }
  const off = ({ wide, narrow }: Candidate): bigint => {
    const difference = BigInt(wide) * d - BigInt(narrow) * n;
    return difference < 0n ? -difference : difference;
  };
  return (one, other) => {
    const [left, right] = [off(one) * BigInt(other.narrow), off(other) * BigInt(one.narrow)];
    return left < right ? -1 : left > right ? 1 : 0;
  };
}

/** The criteria that decide, in their order. */
function criteriaOf({ wish }: FitProblem): readonly FitCriterion[] {
  const nothingWished = wish.ratio === undefined && wish.center === undefined;
  return nothingWished
    ? ['thin-parts', 'center-like-round', 'fabric', 'size']
    : [
        ...(wish.ratio ? (['ratio'] as const) : []),
        ...(wish.center ? (['center'] as const) : []),
        'thin-parts',
        'fabric',
        'size',
      ];
}

/** The order of fits, as sentences. */
export const orderOf = (problem: FitProblem): readonly Notice<FitCriterion>[] =>
  criteriaOf(problem).map((criterion) => notice(fitSentences, criterion, {}));

/** What each candidate's place depends on. */
export function ranker(problem: FitProblem): (candidate: Candidate) => Ranked {
  const { wish, unit, unitsInStep } = problem;
  const allowances = stepsUp(problem.seam.times(2), unit);
  const fabricOf = fabricReckoner(problem);
  const isThin = (steps: number): number => (steps * unitsInStep < allowances ? 1 : 0);
  const wished = wish.center && { n: Number(wish.center.n), d: Number(wish.center.d) };
  return (candidate) => {
    const { kind, center, wide, narrow } = candidate;
    const round = logsAcross(problem) === 1 ? wide : wide + narrow;
    return {
      kind,
      finished: candidate.finished,
      center,
      wide,
      narrow,
      thinParts: isThin(center) + isThin(wide) + (kind === 'plain' ? 0 : isThin(narrow)),
      centerOff: Math.abs(wished ? center * wished.d - wished.n : center - round),
      fabric: fabricOf(candidate),
    };
  };
}

/** Compares by the criteria in their order, so that no two candidates are equal. */
export function comparer(problem: FitProblem): Compare {
  const { ratio } = problem.wish;
  const byCenter: Compare = (one, other) => one.centerOff - other.centerOff;
  const by: Readonly<Record<FitCriterion, Compare>> = {
    ratio: ratio === undefined ? () => 0 : ratioComparer(ratio),
    center: byCenter,
    'thin-parts': (one, other) => one.thinParts - other.thinParts,
    'center-like-round': byCenter,
    fabric: (one, other) => one.fabric - other.fabric,
    size: (one, other) =>
      one.finished - other.finished ||
      one.center - other.center ||
      one.narrow - other.narrow ||
      (one.kind === other.kind ? 0 : one.kind === 'plain' ? -1 : 1),
  };
  const compares = criteriaOf(problem).map((criterion) => by[criterion]);
  return (one, other) => {
    for (const compare of compares) {
      const difference = compare(one, other);
      if (difference !== 0) return difference;
    }
    return 0;
  };
}
