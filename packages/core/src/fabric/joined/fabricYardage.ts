import { length } from '../../length/length.js';
import { cutsIn } from '../cutsIn.js';
import { cuttingPlan } from '../cuttingPlan.js';
import { type Yardage, type YardageOptions, yardage } from '../yardage.js';
import { type FabricPlan, type FabricSpec, fabricPlan } from './fabricPlan.js';

/** How much to buy of one fabric for everything that is cut from it. */
export interface FabricYardage extends Omit<Yardage, 'plan'> {
  readonly plan: FabricPlan;
}

/**
 * How much fabric to buy for a plan of everything: as `yardage` does, by default with one strip to
 * spare, as wide as the widest that is cut across.
 *
 * @param specOrPlan what to cut, or a finished plan of it.
 * @throws EighthsError as `fabricPlan` and `yardage`
 * @example
 * const binding = { width: '2 1/2', length: 312, count: 1, joinable: true };
 * const { bare, spare, buy, yards } = fabricYardage({ width: 40, pieces: [binding] });
 * [bare, spare, buy]; // ['22 1/2','2 1/2','27']
 * yards; // '¾ yd'
 */
export function fabricYardage(
  specOrPlan: FabricSpec | FabricPlan,
  options: YardageOptions = {},
): FabricYardage {
  const { method } = options;
  const plan =
    'steps' in specOrPlan
      ? specOrPlan
      : fabricPlan({ ...specOrPlan, ...(method !== undefined && { method }) });
  const { width, length: total, lowerBound, across } = plan;
  // To be bought it is one strip, as wide as the plan is long.
  const whole = cuttingPlan({
    width,
    method: 'plain',
    pieces: [{ width: total, length: width, count: 1 }],
  });
  const widest = across?.strips[0]?.width ?? length(0);
  const bought = yardage(
    { ...whole, length: total, lowerBound },
    { ...options, spare: options.spare ?? widest },
  );
  // The block along the length is cut alike by either method: its cuts are not counted.
  const { buy, bare } = bought;
  const alternatives = across && [{ method: across.method, buy, bare, cuts: cutsIn(across) }];
  return { ...bought, alternatives: alternatives ?? [], plan };
}
