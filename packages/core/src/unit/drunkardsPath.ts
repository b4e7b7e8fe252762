import type { Length, LengthInput } from '../length/length.js';
import { lengthBetween, rationalField } from '../plan/field.js';
import { assemble, squareCut } from './assemble.js';
import { finishedLength, readBasics } from './basics.js';
import type { UnitDefinition } from './definition.js';
import { pi } from './enclosure.js';
import type { CurveTemplate, Enclosure, UnitPlan } from './plan.js';
import { at } from './point.js';
import { stepsFrom, warningsFrom } from './say.js';
import { commonSentences } from './sentences/common.js';
import { curveSentences } from './sentences/curves.js';
import type { UnitBasics } from './spec.js';
import { markPoint, withSeams } from './trimMarks.js';

/** A square with a quarter circle in one corner. */
export interface DrunkardsPathSpec extends UnitBasics<'inside curve' | 'outside curve'> {
  /** The finished side. */
  readonly finished: LengthInput;
  /** The finished radius; default three quarters of the side. */
  readonly radius?: LengthInput;
  readonly method?: 'templates';
  /** What both pieces are cut beyond the exact size, on their straight outer edges; default 0. */
  readonly oversize?: LengthInput;
}

/** A quarter circle in a square, with its two templates and the measure of its seam. */
export interface DrunkardsPath extends UnitPlan {
  readonly radius: Length;
  /** What the curved seam measures: π r / 2. */
  readonly seamLine: Enclosure;
  readonly templates: readonly CurveTemplate[];
}

/** What a quarter circle in a square takes, and how it is made. */
export const drunkardsPathUnit: UnitDefinition = {
  name: 'drunkards-path',
  finished: 'side',
  example: { finished: 4 },
  inputs: [
    { kind: 'length', name: 'finished', sign: 'positive' },
    { kind: 'length', name: 'radius', sign: 'positive' },
    { kind: 'length', name: 'oversize', sign: 'zero or more', default: '0' },
  ],
  methods: [{ name: 'templates', yield: 1 }],
  fabrics: ['inside curve', 'outside curve'],
  plan: drunkardsPath,
};

function templatesOf(side: Length, radius: Length, seam: Length): readonly CurveTemplate[] {
  const raw = side.plus(seam.times(2));
  const center = at(seam, seam);
  // Where the arcs end, measured from the raw edge; from there both sides go straight out to it.
  const inside = radius.plus(seam.times(2));
  const outside = radius;
  return [
    {
      piece: 'inside curve',
      points: [at(0, 0), at(inside, 0), at(inside, seam), at(seam, inside), at(0, inside)],
      center,
      radius: radius.plus(seam),
      arcFrom: 2,
    },
    {
      piece: 'outside curve',
      points: [
        at(outside, 0),
        at(raw, 0),
        at(raw, raw),
        at(0, raw),
        at(0, outside),
        at(seam, outside),
        at(outside, seam),
      ],
      center,
      radius: radius.minus(seam),
      arcFrom: 5,
    },
  ];
}

/**
 * A quarter circle in a square (drunkard's path), cut round two templates.
 *
 * With r the finished radius and s the seam allowance: the inside curve's template has the radius
 * r + s and fits a square r + 2s, the outside curve's has r − s in a square f + 2s; both arcs are drawn
 * about the same point, s inside the corner. Squares are rounded up to the grid once. The seam measures
 * π r / 2, which is not exact by nature: `seamLine` encloses it and the plan is `approximate`.
 *
 * @throws EighthsError `out-of-range` where the radius leaves nothing outside the curve or is not more
 *   than the seam allowance, and others
 * @example
 * const plan = drunkardsPath({ finished: 4, radius: 3 });
 * plan.cuts.map(({ width }) => width); // ['3 1/2','4 1/2']
 * plan.seamLine.most.toNumber().toFixed(4); // '4.7124'
 */
export function drunkardsPath(spec: DrunkardsPathSpec): DrunkardsPath {
  const say = stepsFrom({ ...curveSentences, ...commonSentences });
  const basics = readBasics(spec, drunkardsPathUnit);
  const { seam, grid, oversize } = basics;
  const side = finishedLength(spec, basics);
  // At least a step of the grid is left on both sides of the curve.
  const most = side.minus(grid).toGrid(grid, 'down');
  const least = seam.plus(grid).toGrid(grid, 'down');
  const usual = side.times('3/4');
  const radius = rationalField(
    lengthBetween(spec.radius ?? usual, 'radius', least, most),
    'radius',
  );
  const finished = { width: side, height: side };
  const trimTo = withSeams(finished, seam);
  const half = radius.dividedBy(2);
  const seamLine = { least: half.times(pi.least), most: half.times(pi.most) };
  const origin = at(0, 0);
  const arc = { center: origin, radius };
  const plan = assemble(basics, {
    finished,
    cuts: [
      {
        ...squareCut('inside curve', 'inside curve', radius.plus(seam.times(2)).plus(oversize), 1),
        shape: 'template',
      },
      {
        ...squareCut('outside curve', 'outside curve', trimTo.width.plus(oversize), 1),
        shape: 'template',
      },
    ],
    yield: 1,
    trimTo,
    trim: [
      markPoint('crossing', at(radius.plus(seam), seam)),
      markPoint('crossing', at(seam, radius.plus(seam))),
    ],
    patches: [
      {
        fabric: 'inside curve',
        points: [origin, at(radius, 0), at(0, radius)],
        grain: 'straight',
        arc: { ...arc, from: 1 },
      },
      {
        fabric: 'outside curve',
        points: [at(radius, 0), at(side, 0), at(side, side), at(0, side), at(0, radius)],
        grain: 'straight',
        arc: { ...arc, from: 4 },
      },
    ],
    seams: 1,
    trims: 1,
    approximate: true,
    steps: [
      say('cut-round-template'),
      say('mark-middles'),
      say('sew-curve', { seam }),
      say('curve-measure', { ...seamLine }),
      say('trim', { trimTo }),
    ],
    warnings: [warningsFrom(curveSentences)('pi-approximate', 'radius')],
  });
  return { ...plan, radius, seamLine, templates: templatesOf(side, radius, seam) };
}
