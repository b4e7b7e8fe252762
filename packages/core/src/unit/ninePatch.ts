import type { LengthInput } from '../length/length.js';
import { finishedLength, readBasics, usableInput, usableOf } from './basics.js';
import { checkered } from './checkered.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPlan } from './plan.js';
import type { UnitBasics } from './spec.js';

/** Nine equal squares of two fabrics by turns. */
export interface NinePatchSpec extends UnitBasics<'dark' | 'light'> {
  /** The finished side of the unit. */
  readonly finished: LengthInput;
  /** Default `strip-set`. */
  readonly method?: 'strip-set' | 'cut-squares';
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

/** What a nine-patch takes, and how it is made. */
export const ninePatchUnit: UnitDefinition = {
  name: 'nine-patch',
  finished: 'side',
  example: { finished: 6 },
  inputs: [{ kind: 'length', name: 'finished', sign: 'positive' }, usableInput],
  methods: [{ name: 'strip-set' }, { name: 'cut-squares', yield: 1 }],
  fabrics: ['dark', 'light'],
  plan: ninePatch,
};

/**
 * A nine-patch from strip sets or from single squares.
 *
 * Exact: a patch finishes a third of the unit, f/3, and is cut 2s larger; strips, squares and cuts
 * across the set are rounded up to the grid. `pieces` holds whole strips and last ones that are only
 * as long as needed.
 *
 * @throws EighthsError `strip-too-short`, `seam-too-wide`, `missing-field`, `unknown-choice` and others
 * @example
 * const plan = ninePatch({ finished: 6, count: 10 });
 * [plan.yield, plan.strip.step]; // [16,'2 1/2']
 */
export function ninePatch(spec: NinePatchSpec): UnitPlan {
  const basics = readBasics(spec, ninePatchUnit);
  return checkered(basics, finishedLength(spec, basics), 3, usableOf(spec));
}
