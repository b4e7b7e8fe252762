import { fail } from '../errors/error.js';
import { type Length, type LengthInput, length } from '../length/length.js';
import { choiceField } from '../plan/field.js';
import type { SizeInput } from '../plan/size.js';
import { angleInput, readAngle } from './angle.js';
import { finishedSize, readBasics, usableInput, usableOf } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPlan } from './plan.js';
import { at } from './point.js';
import { warningsFrom } from './say.js';
import { commonSentences } from './sentences/common.js';
import { angleWarnings } from './slantedShapes.js';
import type { UnitBasics } from './spec.js';
import { assembleFromStrips, offGrid, sayOfStrips } from './stripUnit.js';
import { trapezoidCuts } from './trapezoidCuts.js';

/** A rectangle with one end or both cut off at an angle. */
export interface TrapezoidSpec extends UnitBasics<'trapezoid'> {
  /** The finished long edge and the finished height. */
  readonly finished: SizeInput;
  /** The acute angle in degrees, from 15 to 90; default 45. */
  readonly angle?: number;
  /** Which ends are slanted; default `both`. */
  readonly slants?: 'both' | 'right' | 'left';
  readonly method?: 'from-strips';
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

const SLANTS = ['both', 'right', 'left'] as const;

/** What trapezoids take, and how they are made. */
export const trapezoidUnit: UnitDefinition = {
  name: 'trapezoid',
  finished: 'size',
  example: { finished: { width: 6, height: 2 } },
  inputs: [
    { kind: 'size', name: 'finished', sign: 'positive' },
    angleInput(45),
    { kind: 'choice', name: 'slants', choices: SLANTS, default: 'both' },
    usableInput,
  ],
  methods: [{ name: 'from-strips' }],
  fabrics: ['trapezoid'],
  plan: trapezoid,
};

/** @throws EighthsError `out-of-range` where the slants would meet before the top */
function checkLong(long: Length, lean: Length, slanted: number): void {
  const least = lean.times(slanted);
  if (long.compareTo(least) > 0) return;
  fail(
    'out-of-range',
    'finished.width',
    { value: long, least, most: length(1000) },
    'The long edge must be more than {least} for this height and angle, not {value}.',
  );
}

/**
 * Trapezoids from strips, cut by turns with the long edge on the one side and the other.
 *
 * Exact, for a finished long edge b, a height h, an acute angle θ and the seam allowance s: strip
 * h + 2s, long edge b + 2s(1/sin θ + cot θ), or with one slanted end b + s(1 + 1/sin θ + cot θ); both
 * rounded up to the grid.
 *
 * @throws EighthsError `out-of-range`, `angle-out-of-range`, `strip-too-short` and others
 * @example
 * const plan = trapezoid({ finished: { width: 6, height: 2 } });
 * [plan.strip.width, plan.strip.rulerLine, plan.yield]; // ['2 1/2','7 1/4',7]
 */
export function trapezoid(spec: TrapezoidSpec): UnitPlan {
  const basics = readBasics(spec, trapezoidUnit);
  const { seam, grid } = basics;
  const angle = readAngle(spec.angle ?? 45);
  const slants = choiceField(spec.slants ?? 'both', 'slants', SLANTS);
  const { width: long, height } = finishedSize(spec, basics);
  const lean = height.times(angle.cotangent.most);
  const slanted = slants === 'both' ? 2 : 1;
  checkLong(long, lean, slanted);
  const { exact, edge, strip } = trapezoidCuts({
    angle,
    long,
    height,
    slanted,
    seam,
    grid,
    usable: usableOf(spec),
  });
  const zero = length(0);
  const left = slants === 'right' ? zero : lean;
  const right = slants === 'left' ? long : long.minus(lean);
  const outline = [at(left, 0), at(right, 0), at(long, height), at(0, height)];
  const cut = strip.rulerLine;
  const { degrees } = angle;
  return assembleFromStrips(basics, {
    finished: { width: long, height },
    outline,
    patches: [{ fabric: 'trapezoid', points: outline, grain: 'straight' }],
    trimTo: { width: edge, height: exact },
    exact,
    strip,
    part: 'trapezoid',
    approximate: !angle.exact,
    steps: [
      ...(slanted === 2 ? [sayOfStrips('first-angle', { angle: degrees })] : []),
      sayOfStrips('alternate-angles', { angle: degrees, edge: cut, perStrip: strip.perStrip }),
    ],
    warnings: [
      ...angleWarnings(angle),
      ...offGrid('piece-off-grid', edge, cut),
      ...(slanted === 1 ? [warningsFrom(commonSentences)('mirror-pairs', 'slants')] : []),
    ],
  });
}
