import type { LengthInput } from '../length/length.js';
import { type Length, length } from '../length/length.js';
import type { BoundCertificate } from './certificate.js';
import { checkCertificate } from './checkCertificate.js';
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
  /** Pieces overlap, or could not be cut by cuts across the fabric and then across the strips. */
  | 'not-cuttable'
  /** The certificate does not prove the lower bound. */
  | 'bound'
  /** The plan is called optimal and its length is not the lower bound, or the other way round. */
  | 'optimal';

/** A cutting plan, or one that was JSON in between. */
export interface CheckablePlan extends PlacedPlan {
  readonly length: LengthInput;
  readonly lowerBound: LengthInput;
  readonly optimal: boolean;
  readonly certificate: readonly BoundCertificate[];
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
    if (piece === undefined || !piece.length.equals(across) || !piece.width.equals(height)) {
      faults.add('size');
    }
    counts[index] = (counts[index] ?? 0) + 1;
  }
  if (pieces.some(({ count }, index) => counts[index] !== count)) faults.add('count');

  const total = length(plan.length);
  if (placements.some((placed) => !liesOn(placed, width, total))) faults.add('off-fabric');
  if (!cuttable(placements)) faults.add('not-cuttable');
  if (!checkCertificate(spec, plan).holds) faults.add('bound');
  if (plan.optimal !== total.equals(plan.lowerBound)) faults.add('optimal');
  return [...faults];
}

const liesOn = ({ x, y, width, height }: Placement, fabric: Length, total: Length): boolean =>
  x.sign() >= 0 &&
  y.sign() >= 0 &&
  x.plus(width).compareTo(fabric) <= 0 &&
  y.plus(height).compareTo(total) <= 0;

/** Whether the pieces lie in strips, one below the other, and side by side in each. */
function cuttable(placements: readonly Placement[]): boolean {
  const inOrder = [...placements].sort((a, b) => a.y.compareTo(b.y) || a.x.compareTo(b.x));
  return inOrder.every((placed, i) => {
    const before = inOrder[i - 1];
    if (before === undefined) return true;
    return placed.y.equals(before.y)
      ? before.height.equals(placed.height) && before.x.plus(before.width).compareTo(placed.x) <= 0
      : before.y.plus(before.height).compareTo(placed.y) <= 0;
  });
}
