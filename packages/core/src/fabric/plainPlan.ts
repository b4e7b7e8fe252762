import { type Length, length } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import { warningsFrom } from '../plan/notice.js';
import { areaOf } from '../plan/piece.js';
import { type BoundCertificate, certificateOf } from './certificate.js';
import { placementsOf } from './placements.js';
import type { CuttingPlan, Strip } from './plan.js';
import type { CuttingTask } from './readCutting.js';
import { cuttingSentences } from './sentences.js';
import type { CuttingMethod } from './spec.js';
import { cuttingSteps } from './steps.js';
import type { Cutting } from './stock/cuttingStock.js';
import type { StripGroup } from './stripGroups.js';

const warning = warningsFrom(cuttingSentences);

/** How the strips of one width are cut, in units. */
export interface PlannedStrips {
  readonly group: StripGroup;
  readonly cutting: Cutting;
}

/** The plan that the cuttings of all widths make up, in lengths and in words. */
export function plainPlan(task: CuttingTask, planned: readonly PlannedStrips[]): CuttingPlan {
  const strips = planned.flatMap((part) => stripsOf(task.width, part));
  const certificate = planned.map(({ group, cutting }) =>
    certificateOf(group, cutting.bound, cutting.searched),
  );
  const lowerBound = sum(
    planned.map(({ group }, i) => group.width.times(entryAt(certificate, i).strips)),
  );
  return planOf(task, 'plain', strips, lowerBound, certificate);
}

/** A plan of strips: what it takes, what is proven of that, and the steps. */
export function planOf(
  { width, pieces, layers }: CuttingTask,
  method: CuttingMethod,
  strips: readonly Strip[],
  lowerBound: Length,
  certificate: readonly BoundCertificate[],
): CuttingPlan {
  const total = sum(strips.map((strip) => strip.width.times(strip.count)));
  const optimal = total.equals(lowerBound);
  const doubt = warning('not-proven', 'effort', { length: total, lowerBound });
  const placed = { pieces, strips };
  return {
    method,
    width,
    pieces,
    strips,
    length: total,
    lowerBound,
    optimal,
    certificate,
    used: areaOf(pieces).toNumber() / total.times(width).toNumber(),
    steps: cuttingSteps(strips, layers),
    warnings: optimal ? [] : [doubt],
    placements: () => placementsOf(placed),
  };
}

const sum = (lengths: readonly Length[]): Length =>
  lengths.reduce((total, each) => total.plus(each), length(0));

const stripsOf = (fabric: Length, { group, cutting }: PlannedStrips): Strip[] =>
  cutting.runs.map(({ pattern, times }) => {
    const cuts = group.lengths.flatMap((same, i) => {
      const count = entryAt(pattern, i);
      return count === 0 ? [] : [{ length: same.length, count, pieces: same.pieces }];
    });
    const end = fabric.minus(sum(cuts.map((cut) => cut.length.times(cut.count))));
    return { width: group.width, count: times, cuts, end };
  });
