import type { Length, LengthInput } from '../length/length.js';
import { halfSquareAllowance, quarterSquareAllowance } from './allowances.js';
import { assemble, squareCut } from './assemble.js';
import { finishedLength, readBasics } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPatch, UnitPlan } from './plan.js';
import { at } from './point.js';
import { stepsFrom } from './say.js';
import { squareSentences } from './sentences/squares.js';
import type { UnitBasics } from './spec.js';
import { centerLines, lineAcross, markPoint, RISING, withSeams } from './trimMarks.js';

/** How split quarter-square triangles are made. */
export type SplitQuarterMethod = 'two-at-a-time' | 'cut-triangles';

/** A square of one large triangle and two small ones. */
export interface SplitQuarterSpec extends UnitBasics<'dark' | 'light' | 'large triangle'> {
  /** The finished side. */
  readonly finished: LengthInput;
  /** Default `two-at-a-time`. */
  readonly method?: SplitQuarterMethod;
  /** By how much a sewn unit is larger than it is trimmed to; default 0. */
  readonly oversize?: LengthInput;
}

/** What split quarter squares take, and how they are made. */
export const splitQuarterSquaresUnit: UnitDefinition = {
  name: 'split-quarter-squares',
  finished: 'side',
  example: { finished: 4 },
  inputs: [
    { kind: 'length', name: 'finished', sign: 'positive' },
    { kind: 'length', name: 'oversize', sign: 'zero or more', default: '0' },
  ],
  methods: [
    { name: 'two-at-a-time', yield: 4 },
    { name: 'cut-triangles', yield: 4 },
  ],
  fabrics: ['dark', 'light', 'large triangle'],
  plan: splitQuarterSquares,
};

function patchesOf(side: Length): readonly UnitPatch[] {
  const middle = at(side.dividedBy(2), side.dividedBy(2));
  const [topRight, bottomLeft] = [at(side, 0), at(0, side)];
  return [
    { fabric: 'dark', points: [at(0, 0), topRight, middle], grain: 'straight' },
    { fabric: 'light', points: [at(0, 0), middle, bottomLeft], grain: 'straight' },
    {
      fabric: 'large triangle',
      points: [topRight, at(side, side), bottomLeft],
      grain: 'straight',
    },
  ];
}

/**
 * Split quarter squares: a large triangle beside two small ones.
 *
 * Exact squares, with s the seam allowance: f + 2s(1 + √2) for the small triangles and f + s(2 + √2)
 * for the large one, each rounded up to the grid once. Cut triangles come out alike where the small
 * ones are sewn in the same order; two at a time makes mirror pairs.
 *
 * @throws EighthsError `missing-field`, `not-positive`, `seam-too-wide`, `unknown-choice` and others
 * @example
 * splitQuarterSquares({ finished: 3 }).cuts.map(({ width }) => width); // ['4 1/4','4 1/4','3 7/8']
 */
export function splitQuarterSquares(spec: SplitQuarterSpec): UnitPlan {
  const say = stepsFrom(squareSentences);
  const basics = readBasics(spec, splitQuarterSquaresUnit);
  const { method, seam, oversize } = basics;
  const side = finishedLength(spec, basics);
  const finished = { width: side, height: side };
  const trimTo = withSeams(finished, seam);
  const small = side.plus(oversize).plus(quarterSquareAllowance(seam));
  const large = side.plus(oversize).plus(halfSquareAllowance(seam));
  const middle = trimTo.width.dividedBy(2);
  const paired = method === 'two-at-a-time';
  const steps = paired
    ? [
        say('mark-diagonal'),
        say('sew-both-sides', { seam }),
        say('cut-on-line'),
        say('lay-plain-square'),
        say('mark-across'),
        say('sew-both-sides', { seam }),
        say('cut-on-line'),
        say('mirror-half'),
      ]
    : [say('cut-twice'), say('sew-to-half')];
  return assemble(basics, {
    finished,
    // Single triangles: a square cut twice has four, so it takes one of each for four units.
    cuts: [
      squareCut('square', 'dark', small, 1, 2),
      squareCut('square', 'light', small, 1, 2),
      squareCut('large triangle', 'large triangle', large, 2, 1),
    ],
    yield: 4,
    trimTo,
    trim: [
      lineAcross('diagonal', at(0, trimTo.height), RISING, trimTo),
      { kind: 'line', role: 'diagonal', from: at(0, 0), to: at(middle, middle) },
      markPoint('crossing', at(middle, middle)),
      ...centerLines(trimTo),
    ],
    patches: patchesOf(side),
    narrowest: side.dividedBy(2),
    sewnFirst: paired,
    seams: paired ? 6 : 8,
    trims: 4,
    steps: [...steps, say('trim-crossing', { trimTo, middle })],
  });
}
