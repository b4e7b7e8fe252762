import { type Length, type LengthInput, length } from '../length/length.js';
import type { CertifiedPlan } from './certificate.js';
import { checkCertificate } from './checkCertificate.js';
import { isCuttable } from './isCuttable.js';
import { type PlacedPlan, type Placement, placementsOf } from './placements.js';
import { readCutting } from './readCutting.js';
import type { CuttingSpec } from './spec.js';

/** What can be wrong with a plan. */
export type PlanFault =
  /** A piece is not cut as often as it is asked for. */
  | 'count'
  /** A piece is cut to another size than it is asked for. */
  | 'size'
  /** A piece reaches over an edge of the fabric. */
  | 'off-fabric'
  /**
   * Pieces overlap, or could not be cut by cuts across the fabric and then across the strips; in a
   * thrifty plan by two cuts more, along a strip's ends into rows and across those.
   */
  | 'not-cuttable'
  /** The certificate does not prove the lower bound. */
  | 'bound'
  /** The plan is called optimal and its length is not the lower bound, or the other way round. */
  | 'optimal';

/** A cutting plan, or one that was JSON in between. */
export interface CheckablePlan extends PlacedPlan, CertifiedPlan {
  readonly length: LengthInput;
  readonly optimal: boolean;
}

/**
 * What is wrong with a plan for a spec: nothing, for the plans that this package makes. Looks at
 * every piece where it lies and proves the bound again, without the solver.
 *
 * @throws EighthsError where the spec itself is refused.
 * @example
 * const spec = { width: 42, pieces: [{ width: 5, length: 5, count: 12 }] };
 * checkPlan(spec, cuttingPlan(spec)); // []
 */
export function checkPlan(spec: CuttingSpec, plan: CheckablePlan): readonly PlanFault[] {
  const { width, pieces } = readCutting(spec);
  const placements = placementsOf(plan);
  const faults = new Set<PlanFault>();

  const counts = pieces.map(() => 0);
  for (const { piece: index, width: across, height } of placements) {
    const piece = pieces[index];
    const lies = piece?.length.equals(across) === true && piece.width.equals(height);
    const turned = piece?.length.equals(height) === true && piece.width.equals(across);
    if (!lies && !(turned && plan.method === 'thrifty' && piece.turnable === true)) {
      faults.add('size');
    }
    counts[index] = (counts[index] ?? 0) + 1;
  }
  if (pieces.some(({ count }, index) => counts[index] !== count)) faults.add('count');

  const total = length(plan.length);
  if (placements.some((placed) => !liesOn(placed, width, total))) faults.add('off-fabric');
  if (!isCuttable(placements, plan.method === 'thrifty' ? 4 : 2)) faults.add('not-cuttable');
  if (!checkCertificate(spec, plan).holds) faults.add('bound');
  if (plan.optimal !== total.equals(plan.lowerBound)) faults.add('optimal');
  return [...faults];
}

const liesOn = ({ x, y, width, height }: Placement, fabric: Length, total: Length): boolean =>
  x.sign() >= 0 &&
  y.sign() >= 0 &&
  x.plus(width).compareTo(fabric) <= 0 &&
  y.plus(height).compareTo(total) <= 0;
