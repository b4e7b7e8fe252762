import {
  type CuttingMethod,
  type CuttingPlan,
  cuttingPlanInParts,
  type FabricPlan,
  type FabricSpec,
  type FabricYardage,
  fabricYardage,
  length,
  type Yardage,
  type YardageAlternative,
  type YardageOptions,
  yardage,
  yardageInParts,
} from '@eighths/core';

/** How much to buy by the yard: a plan of strips, or one of everything where more is needed. */
export type Yards = Yardage | FabricYardage;

/** Whether a plan is one of everything: pieces along the length, strips that are joined. */
export const isWhole = (plan: CuttingPlan | FabricPlan): plan is FabricPlan => 'beside' in plan;

/** Work for what is cut across beside long and joined pieces: a page waits for that. */
const EFFORT = 1_000_000;

/** Whether strips alone will not do. */
const needsWhole = ({ width, pieces }: FabricSpec): boolean =>
  pieces.some(
    (piece) =>
      piece.count > 0 && (piece.joinable === true || length(piece.length).compareTo(width) > 0),
  );

function* paused<Result>(making: Generator<unknown, Result>): Generator<void, Result> {
  let state = making.next();
  for (; !state.done; state = making.next()) yield;
  return state.value;
}

/**
 * What to buy by the yard, by either method: both are looked at, so that what one saves and costs can
 * be told.
 *
 * @param method left out: whichever buys less, and the plain plan of equals
 * @throws EighthsError as `fabricYardage`
 */
export function* yardsFor(
  spec: Omit<FabricSpec, 'method'>,
  options: YardageOptions,
  method: CuttingMethod | undefined,
): Generator<void, Yards> {
  if (needsWhole(spec)) return yield* wholeYards(spec, options, method);
  const { join: _, seam: __, ...across } = spec;
  const best = yield* paused(yardageInParts(across, options));
  if (method === undefined || (method === 'thrifty' && best.plan.method === method)) return best;
  const plan = yield* paused(cuttingPlanInParts({ ...across, method }));
  return { ...yardage(plan, options), alternatives: best.alternatives };
}

function* wholeYards(
  spec: Omit<FabricSpec, 'method'>,
  options: YardageOptions,
  method: CuttingMethod | undefined,
): Generator<void, FabricYardage> {
  const by = (each: CuttingMethod): FabricYardage =>
    fabricYardage({ ...spec, method: each, effort: EFFORT }, options);
  const plain = by('plain');
  yield;
  const thrifty = by('thrifty');
  const alternatives = [told(plain, 'plain'), told(thrifty, 'thrifty')];
  if (method !== undefined) return { ...(method === 'plain' ? plain : thrifty), alternatives };
  if (thrifty.buy.compareTo(plain.buy) < 0) return { ...thrifty, alternatives };
  return { ...plain, alternatives, purchaseProven: thrifty.purchaseProven };
}

/** The block along the length is cut alike by both, so that its cuts are not counted. */
function told({ buy, bare, plan }: FabricYardage, method: CuttingMethod): YardageAlternative {
  const cuts = plan.across === undefined ? 0 : (yardage(plan.across).alternatives[0]?.cuts ?? 0);
  return { method, buy, bare, cuts };
}
