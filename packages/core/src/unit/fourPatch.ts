import type { LengthInput } from '../length/length.js';
import { finishedLength, readBasics, usableInput, usableOf } from './basics.js';
import { checkered } from './checkered.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPlan } from './plan.js';
import type { UnitBasics } from './spec.js';

/** Four equal squares of two fabrics by turns. */
export interface FourPatchSpec extends UnitBasics<'dark' | 'light'> {
  /** The finished side of the unit. */
  readonly finished: LengthInput;
  /** Default `strip-set`. */
  readonly method?: 'strip-set' | 'cut-squares';
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

/** What a four-patch takes, and how it is made. */
export const fourPatchUnit: UnitDefinition = {
  name: 'four-patch',
  finished: 'side',
  example: { finished: 4 },
  inputs: [{ kind: 'length', name: 'finished', sign: 'positive' }, usableInput],
  methods: [{ name: 'strip-set' }, { name: 'cut-squares', yield: 1 }],
  fabrics: ['dark', 'light'],
  plan: fourPatch,
};

/**
 * A four-patch from strip sets or from single squares.
 *
 * Exact: a patch finishes half the unit, f/2, and is cut 2s larger; strips, squares and cuts
 * across the set are rounded up to the grid. `pieces` holds whole strips and last ones that are only
 * as long as needed.
 *
 * @throws EighthsError `strip-too-short`, `seam-too-wide`, `missing-field`, `unknown-choice` and others
 * @example
 * const plan = fourPatch({ finished: 4, count: 20 });
 * plan.pieces.map(({ width, length, count }) => `${count} of ${width} by ${length}`); // ['2 of 2 1/2 by 40','1 of 2 1/2 by 20','2 of 2 1/2 by 40','1 of 2 1/2 by 20']
 */
export function fourPatch(spec: FourPatchSpec): UnitPlan {
  const basics = readBasics(spec, fourPatchUnit);
  return checkered(basics, finishedLength(spec, basics), 2, usableOf(spec));
}
