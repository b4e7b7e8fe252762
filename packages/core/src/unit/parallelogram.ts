import type { LengthInput } from '../length/length.js';
import { choiceField } from '../plan/field.js';
import type { SizeInput } from '../plan/size.js';
import { angleInput, readAngle } from './angle.js';
import { finishedSize, readBasics, usableInput, usableOf } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPlan } from './plan.js';
import { warningsFrom } from './say.js';
import { commonSentences } from './sentences/common.js';
import { angledSteps, angleWarnings, parallelCuts, slantedOutline } from './slantedShapes.js';
import type { UnitBasics } from './spec.js';
import { assembleFromStrips, offGrid } from './stripUnit.js';

/** A rectangle that leans over. */
export interface ParallelogramSpec extends UnitBasics<'parallelogram'> {
  /** The finished edge along the strip, and the finished height across it. */
  readonly finished: SizeInput;
  /** The acute angle in degrees, from 15 to 90; default 45. */
  readonly angle?: number;
  /** Which way it leans; default `right`. */
  readonly direction?: 'right' | 'left';
  readonly method?: 'from-strips';
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

const DIRECTIONS = ['right', 'left'] as const;

/** What parallelograms take, and how they are made. */
export const parallelogramUnit: UnitDefinition = {
  name: 'parallelogram',
  finished: 'size',
  example: { finished: { width: 4, height: 2 } },
  inputs: [
    { kind: 'size', name: 'finished', sign: 'positive' },
    angleInput(45),
    { kind: 'choice', name: 'direction', choices: DIRECTIONS, default: 'right' },
    usableInput,
  ],
  methods: [{ name: 'from-strips' }],
  fabrics: ['parallelogram'],
  plan: parallelogram,
};

/**
 * Parallelograms from strips.
 *
 * Exact, for a finished edge b along the strip, a height h, an acute angle θ and the seam allowance s:
 * strip h + 2s; ruler's line on the cut edge b·sin θ + 2s; both rounded up to the grid. Fabric that is
 * folded makes mirror images: a warning says so.
 *
 * @throws EighthsError `angle-out-of-range`, `strip-too-short`, `seam-too-wide` and others
 * @example
 * const plan = parallelogram({ finished: { width: 4, height: 2 } });
 * [plan.strip.width, plan.strip.rulerLine]; // ['2 1/2','3 3/8']
 */
export function parallelogram(spec: ParallelogramSpec): UnitPlan {
  const basics = readBasics(spec, parallelogramUnit);
  const { seam, grid } = basics;
  const angle = readAngle(spec.angle ?? 45);
  const direction = choiceField(spec.direction ?? 'right', 'direction', DIRECTIONS);
  const { width: base, height } = finishedSize(spec, basics);
  const lean = height.times(angle.cotangent.most);
  const width = height.plus(seam.times(2));
  const rulerLine = base.times(angle.sine.most).plus(seam.times(2));
  const strip = parallelCuts({ angle, width, rulerLine, usable: usableOf(spec), grid });
  const outline = slantedOutline(base, height, lean, direction);
  return assembleFromStrips(basics, {
    finished: { width: base.plus(lean), height },
    outline,
    patches: [{ fabric: 'parallelogram', points: outline, grain: 'straight' }],
    trimTo: { width: rulerLine.times(angle.cosecant.most), height: width },
    exact: width,
    strip,
    part: 'parallelogram',
    approximate: !angle.exact,
    steps: angledSteps(angle, strip),
    warnings: [
      ...angleWarnings(angle),
      ...offGrid('piece-off-grid', rulerLine, strip.rulerLine),
      warningsFrom(commonSentences)('mirror-pairs', 'direction'),
    ],
  });
}
