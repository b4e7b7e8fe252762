import type { LengthInput } from '../length/length.js';
import { countField } from '../plan/field.js';
import { assemble } from './assemble.js';
import { finishedLength, readBasics, usableInput, usableOf } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPatch, UnitPlan } from './plan.js';
import { at } from './point.js';
import { stepsFrom } from './say.js';
import { commonSentences } from './sentences/common.js';
import type { UnitBasics } from './spec.js';
import { stripSetCuts } from './stripSets.js';
import { sayOfStrips } from './stripUnit.js';
import { offGridStrips } from './stripWarnings.js';
import { withSeams } from './trimMarks.js';

/** A square of equal strips (rails). */
export interface RailFenceSpec extends UnitBasics {
  /** The finished side. */
  readonly finished: LengthInput;
  /** How many rails, from 2 to 8; default 3. */
  readonly rails?: number;
  readonly method?: 'strip-set';
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

const MOST_RAILS = 8;
const partOf = (index: number): string => `rail ${index + 1}`;

/** What a rail fence takes, and how it is made. */
export const railFenceUnit: UnitDefinition = {
  name: 'rail-fence',
  finished: 'side',
  example: { finished: 6 },
  inputs: [
    { kind: 'length', name: 'finished', sign: 'positive' },
    { kind: 'count', name: 'rails', least: 2, most: MOST_RAILS, default: 3 },
    usableInput,
  ],
  methods: [{ name: 'strip-set' }],
  fabrics: Array.from({ length: MOST_RAILS }, (_, index) => partOf(index)),
  plan: railFence,
};

/**
 * A rail fence: a strip set of equal strips, cut across into squares.
 *
 * Exact: n rails finish f/n each and are cut 2s wider, and the set is cut across every f + 2s; both
 * rounded up to the grid.
 *
 * @throws EighthsError `not-a-count`, `strip-too-short`, `seam-too-wide`, `missing-field` and others
 * @example
 * const plan = railFence({ finished: 6, rails: 3, count: 12 });
 * [plan.cuts[0].height, plan.strip.step, plan.yield, plan.sets]; // ['2 1/2','6 1/2',6,2]
 */
export function railFence(spec: RailFenceSpec): UnitPlan {
  const basics = readBasics(spec, railFenceUnit);
  const { seam, count } = basics;
  const side = finishedLength(spec, basics);
  const rails = countField(spec.rails ?? 3, 'rails', 2, MOST_RAILS);
  const rail = side.dividedBy(rails);
  const strips = Array.from({ length: rails }, (_, index) => ({
    part: partOf(index),
    finished: rail,
  }));
  const set = stripSetCuts({ label: 'strip', strips, subcut: side }, usableOf(spec), basics);
  const { perStrip, step, width } = set.subcut;
  const finished = { width: side, height: side };
  const trimTo = withSeams(finished, seam);
  return assemble(basics, {
    finished,
    cuts: set.cuts,
    yield: perStrip,
    trimTo,
    patches: strips.map(({ part }, index): UnitPatch => {
      const [top, bottom] = [rail.times(index), rail.times(index + 1)];
      const points = [at(0, top), at(side, top), at(side, bottom), at(0, bottom)];
      return { fabric: part, points, grain: 'straight' };
    }),
    narrowest: rail,
    sewnFirst: true,
    seams: rails - 1,
    trims: perStrip,
    strip: set.subcut,
    pieces: set.pieces(count),
    steps: [
      sayOfStrips('sew-strip-set', { seam, set: width }),
      sayOfStrips('subcut', { subcut: step, perSet: perStrip }),
      stepsFrom(commonSentences)('trim', { trimTo }),
    ],
    warnings: offGridStrips([rail], basics),
  });
}
