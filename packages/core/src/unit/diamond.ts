import type { LengthInput } from '../length/length.js';
import { angleInput, readAngle } from './angle.js';
import { finishedLength, readBasics, usableInput, usableOf } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPlan } from './plan.js';
import { stepsFrom } from './say.js';
import { squareSentences } from './sentences/squares.js';
import { angledSteps, angleWarnings, parallelCuts, slantedOutline } from './slantedShapes.js';
import type { UnitBasics } from './spec.js';
import { assembleFromStrips } from './stripUnit.js';

/** A shape of four equal sides. */
export interface DiamondSpec extends UnitBasics<'diamond'> {
  /** The finished side. */
  readonly finished: LengthInput;
  /** The acute angle in degrees, from 15 to 90; default 45. */
  readonly angle?: number;
  readonly method?: 'from-strips';
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

/** What diamonds take, and how they are made. */
export const diamondUnit: UnitDefinition = {
  name: 'diamond',
  finished: 'side',
  example: { finished: 3 },
  inputs: [{ kind: 'length', name: 'finished', sign: 'positive' }, angleInput(45), usableInput],
  methods: [{ name: 'from-strips' }],
  fabrics: ['diamond'],
  plan: diamond,
};

/**
 * Diamonds from strips.
 *
 * Exact, for a finished side a, an acute angle θ and the seam allowance s: strip a·sin θ + 2s, rounded
 * up to the grid; after a first cut at θ the ruler's line of the same width is laid on the cut edge for
 * every next one. Angles other than multiples of 15 are rounded outward and marked `approximate`.
 * `trimTo` is the unfinished diamond: its side along the strip, and the strip's exact width.
 *
 * @throws EighthsError `angle-out-of-range`, `strip-too-short`, `seam-too-wide` and others
 * @example
 * const plan = diamond({ finished: 3, angle: 45, count: 48 });
 * plan.strip.width.toString(); // '2 5/8'
 * [plan.yield, plan.sets]; // [10,5]
 */
export function diamond(spec: DiamondSpec): UnitPlan {
  const basics = readBasics(spec, diamondUnit);
  const { seam, grid } = basics;
  const angle = readAngle(spec.angle ?? 45);
  const side = finishedLength(spec, basics);
  const height = side.times(angle.sine.most);
  const lean = side.times(angle.cosine.most);
  const width = height.plus(seam.times(2));
  const strip = parallelCuts({ angle, width, rulerLine: width, usable: usableOf(spec), grid });
  const outline = slantedOutline(side, height, lean);
  return assembleFromStrips(basics, {
    finished: { width: side.plus(lean), height },
    outline,
    patches: [{ fabric: 'diamond', points: outline, grain: 'straight' }],
    trimTo: { width: width.times(angle.cosecant.most), height: width },
    narrowest: height,
    exact: width,
    strip,
    part: 'diamond',
    approximate: !angle.exact,
    steps: [...angledSteps(angle, strip), stepsFrom(squareSentences)('set-in-seams', { seam })],
    warnings: angleWarnings(angle),
  });
}
