import { type LengthInput, squareRoot } from '../length/length.js';
import { choiceField } from '../plan/field.js';
import { assemble } from './assemble.js';
import { finishedLength, readBasics } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPlan } from './plan.js';
import { at } from './point.js';
import { stepsFrom, warningsFrom } from './say.js';
import { commonSentences } from './sentences/common.js';
import { squareSentences } from './sentences/squares.js';
import type { UnitBasics } from './spec.js';

/** Half of an equilateral triangle: it squares off the ends of their rows. */
export interface SixtyDegreeHalfSpec extends UnitBasics<'triangle'> {
  /** The finished height of the equilateral triangles. */
  readonly finished: LengthInput;
  /** Which end of a row; default `both`, as many of the one as of the other. */
  readonly direction?: 'both' | 'right' | 'left';
  readonly method?: 'cut-triangles';
  /** What rectangles are cut beyond the exact size each way, to be trimmed away; default 0. */
  readonly oversize?: LengthInput;
}

const DIRECTIONS = ['both', 'right', 'left'] as const;

/** What 60-degree half triangles take, and how they are made. */
export const sixtyDegreeHalfTrianglesUnit: UnitDefinition = {
  name: 'sixty-degree-half-triangles',
  finished: 'height',
  example: { finished: 4 },
  inputs: [
    { kind: 'length', name: 'finished', sign: 'positive' },
    { kind: 'choice', name: 'direction', choices: DIRECTIONS, default: 'both' },
    { kind: 'length', name: 'oversize', sign: 'zero or more', default: '0' },
  ],
  methods: [{ name: 'cut-triangles' }],
  fabrics: ['triangle'],
  plan: sixtyDegreeHalfTriangles,
};

/**
 * 60-degree half triangles from rectangles that are cut once from corner to corner.
 *
 * Exact rectangle, for the finished height h and the seam allowance s: h/√3 + s(1 + √3) by
 * h + s(3 + √3), each rounded up to the grid once. The two legs are on the straight grain. `trimTo` is
 * the unfinished triangle's legs.
 *
 * @throws EighthsError `missing-field`, `not-positive`, `seam-too-wide`, `unknown-choice` and others
 * @example
 * const [cut] = sixtyDegreeHalfTriangles({ finished: 4 }).cuts;
 * [cut.width, cut.height, cut.count]; // ['3','5 1/4',2]
 */
export function sixtyDegreeHalfTriangles(spec: SixtyDegreeHalfSpec): UnitPlan {
  const say = stepsFrom(squareSentences);
  const basics = readBasics(spec, sixtyDegreeHalfTrianglesUnit);
  const { seam, oversize } = basics;
  const height = finishedLength(spec, basics);
  const direction = choiceField(spec.direction ?? 'both', 'direction', DIRECTIONS);
  const rootOfThree = squareRoot(3);
  const base = height.times(rootOfThree).dividedBy(3);
  const trimTo = {
    width: base.plus(seam.times(rootOfThree.plus(1))),
    height: height.plus(seam.times(rootOfThree.plus(3))),
  };
  const both = direction === 'both';
  const count = both ? 2 : 1;
  const points =
    direction === 'left'
      ? [at(0, 0), at(base, height), at(0, height)]
      : [at(base, 0), at(base, height), at(0, height)];
  return assemble(basics, {
    finished: { width: base, height },
    cuts: [
      {
        label: 'rectangle',
        part: 'triangle',
        shape: 'rectangle',
        exact: { width: trimTo.width.plus(oversize), height: trimTo.height.plus(oversize) },
        count,
        diagonalCuts: 1,
      },
    ],
    yield: 2 * count,
    trimTo,
    outline: points,
    patches: [{ fabric: 'triangle', points, grain: 'straight' }],
    seams: 0,
    trims: 0,
    steps: [say(both ? 'cut-both-ways' : 'cut-one-way')],
    warnings: [warningsFrom(commonSentences)('mirror-pairs', 'direction')],
  });
}
