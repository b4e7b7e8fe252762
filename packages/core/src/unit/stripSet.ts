import { fail } from '../errors/error.js';
import type { Length, LengthInput } from '../length/length.js';
import { shorterOf } from '../length/longer.js';
import { lengthField, missing } from '../plan/field.js';
import { assemble } from './assemble.js';
import { checkSeam, finishedLength, readBasics, usableInput, usableOf } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPatch, UnitPlan } from './plan.js';
import { at } from './point.js';
import type { UnitBasics } from './spec.js';
import { stripSetCuts } from './stripSets.js';
import { sayOfStrips } from './stripUnit.js';
import { offGridStrips } from './stripWarnings.js';
import { withSeams } from './trimMarks.js';

/** A row of strips sewn together and cut across. */
export interface StripSetSpec extends UnitBasics {
  /** The finished width of a cut across the strips. */
  readonly finished: LengthInput;
  /** The strips' finished widths, from left to right. */
  readonly strips: readonly LengthInput[];
  readonly method?: 'strip-set';
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

const MOST_STRIPS = 24;

const partOf = (index: number): string => `strip ${index + 1}`;

/** What a strip set takes, and how it is made. */
export const stripSetUnit: UnitDefinition = {
  name: 'strip-set',
  finished: 'subcut',
  example: { finished: 2, strips: [1, 2, 1] },
  inputs: [
    { kind: 'length', name: 'finished', sign: 'positive' },
    { kind: 'lengths', name: 'strips', most: MOST_STRIPS },
    usableInput,
  ],
  methods: [{ name: 'strip-set' }],
  fabrics: Array.from({ length: MOST_STRIPS }, (_, index) => partOf(index)),
  plan: stripSet,
};

function widthsOf(strips: readonly LengthInput[] | undefined, seam: Length): readonly Length[] {
  if (strips === undefined) missing('strips');
  if (!Array.isArray(strips) || strips.length === 0 || strips.length > MOST_STRIPS) {
    const entries = Array.isArray(strips) ? strips.length : 0;
    fail(
      'list-length',
      'strips',
      { entries, needed: entries === 0 ? 1 : MOST_STRIPS },
      'A list of the strips’ finished widths is needed here, not {entries} of them where {needed} would do.',
    );
  }
  // A list with gaps, which `map` would pass over, has an entry there that is no length.
  return Array.from(strips, (strip: LengthInput, index) => {
    const width = lengthField(strip, `strips[${index}]`);
    checkSeam(width, seam);
    return width;
  });
}

/**
 * Any row of strips sewn together on their long edges and cut across.
 *
 * A strip that finishes f is cut f + 2s, the set is cut across every subcut + 2s, both rounded up to
 * the grid; `yield` is the number of cuts across one set of the usable width. `strip.width` is how wide
 * the sewn set measures.
 *
 * @throws EighthsError `list-length`, `missing-field`, `strip-too-short`, `seam-too-wide` and others
 * @example
 * const plan = stripSet({ strips: [2, 1, 2], finished: 2, count: 20 });
 * [plan.strip.width, plan.strip.step, plan.yield, plan.sets]; // ['5 1/2','2 1/2',16,2]
 */
export function stripSet(spec: StripSetSpec): UnitPlan {
  const basics = readBasics(spec, stripSetUnit);
  const { seam, count } = basics;
  const subcut = finishedLength(spec, basics);
  const widths = widthsOf(spec.strips, seam);
  const strips = widths.map((finished, index) => ({ part: partOf(index), finished }));
  const set = stripSetCuts({ label: 'strip', strips, subcut }, usableOf(spec), basics);
  const patches: UnitPatch[] = [];
  let left = at(0, 0).x;
  for (const { part, finished } of strips) {
    const right = left.plus(finished);
    const points = [at(left, 0), at(right, 0), at(right, subcut), at(left, subcut)];
    patches.push({ fabric: part, points, grain: 'straight' });
    left = right;
  }
  const finished = { width: left, height: subcut };
  const narrowest = [...widths, subcut].reduce(shorterOf);
  return assemble(basics, {
    finished,
    cuts: set.cuts,
    yield: set.subcut.perStrip,
    trimTo: withSeams(finished, seam),
    patches,
    narrowest,
    sewnFirst: true,
    seams: widths.length - 1,
    trims: 0,
    strip: set.subcut,
    pieces: set.pieces(count),
    steps: [
      sayOfStrips('sew-strip-set', { seam, set: set.subcut.width }),
      sayOfStrips('subcut', { subcut: set.subcut.step, perSet: set.subcut.perStrip }),
    ],
    warnings: offGridStrips([...widths, subcut], basics),
  });
}
