import type { Length, LengthInput } from '../length/length.js';
import { choiceField, rationalField } from '../plan/field.js';
import type { Size, SizeInput } from '../plan/size.js';
import { assemble } from './assemble.js';
import { finishedSize, readBasics } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { TrimMark, UnitPatch, UnitPlan } from './plan.js';
import { at, moved, type UnitPoint } from './point.js';
import { cutLegs } from './rightTriangle.js';
import { stepsFrom, warningsFrom } from './say.js';
import { commonSentences } from './sentences/common.js';
import { squareSentences } from './sentences/squares.js';
import type { UnitBasics } from './spec.js';
import { centerLines, lineAcross, markPoint, withSeams } from './trimMarks.js';

/** Which way the seam runs, from left to right. */
export type SeamDirection = 'falling' | 'rising' | 'both';

/** A rectangle of two right triangles. */
export interface HalfRectangleSpec extends UnitBasics<'dark' | 'light'> {
  /** The finished width and height. */
  readonly finished: SizeInput;
  /** Default `falling`; `both` makes as many of the one as of the other. */
  readonly direction?: SeamDirection;
  readonly method?: 'cut-triangles';
  /** What rectangles are cut beyond the exact size each way, to be trimmed away; default 0. */
  readonly oversize?: LengthInput;
}

const DIRECTIONS: readonly SeamDirection[] = ['falling', 'rising', 'both'];

/** What half-rectangle triangles take, and how they are made. */
export const halfRectangleTrianglesUnit: UnitDefinition = {
  name: 'half-rectangle-triangles',
  finished: 'size',
  example: { finished: { width: 3, height: 6 } },
  inputs: [
    { kind: 'size', name: 'finished', sign: 'positive' },
    { kind: 'choice', name: 'direction', choices: DIRECTIONS, default: 'falling' },
    { kind: 'length', name: 'oversize', sign: 'zero or more', default: '0' },
  ],
  methods: [{ name: 'cut-triangles' }],
  fabrics: ['dark', 'light'],
  plan: halfRectangleTriangles,
};

/** The ends of the finished seam, from left to right. */
function seamEnds({ width, height }: Size, rises: boolean): readonly [UnitPoint, UnitPoint] {
  return rises ? [at(0, height), at(width, 0)] : [at(0, 0), at(width, height)];
}

function patchesOf(size: Size, rises: boolean): readonly UnitPatch[] {
  const [start, end] = seamEnds(size, rises);
  return [
    { fabric: 'dark', points: [start, end, at(start.x, end.y)], grain: 'straight' },
    { fabric: 'light', points: [start, at(end.x, start.y), end], grain: 'straight' },
  ];
}

function trimOf(size: Size, rises: boolean, seam: Length, trimTo: Size): readonly TrimMark[] {
  const [from, to] = seamEnds(size, rises);
  const [start, end] = [moved(from, seam), moved(to, seam)];
  const slant = { across: size.width, down: rises ? size.height.negated() : size.height };
  return [
    lineAcross('seam', start, slant, trimTo),
    markPoint('crossing', start),
    markPoint('crossing', end),
    ...centerLines(trimTo),
  ];
}

/**
 * Half-rectangle triangles: rectangles of two right triangles, in either direction or both.
 *
 * Exact rectangles, with s the seam allowance and d = √(w² + h²): w + s(1 + w/h + d/h) by
 * h + s(1 + h/w + d/w), cut once from corner to corner. The seam does not run into the corners of the
 * unfinished unit but through the points s inside them: the trim marks say where. Cut sizes are
 * rounded up to the grid once.
 *
 * @throws EighthsError `length-with-root`, `missing-field`, `not-positive`, `seam-too-wide` and others
 * @example
 * const plan = halfRectangleTriangles({ finished: { width: 3, height: 6 } });
 * plan.cuts[0].exact; // {"width":"1/8√5 + 3 3/8","height":"1/4√5 + 6 3/4"}
 */
export function halfRectangleTriangles(spec: HalfRectangleSpec): UnitPlan {
  const say = stepsFrom(squareSentences);
  const basics = readBasics(spec, halfRectangleTrianglesUnit);
  const { seam, oversize } = basics;
  const finished = finishedSize(spec, basics);
  rationalField(finished.width, 'finished.width');
  rationalField(finished.height, 'finished.height');
  const direction = choiceField(spec.direction ?? 'falling', 'direction', DIRECTIONS);
  const trimTo = withSeams(finished, seam);
  const legs = cutLegs(finished, seam);
  const exact = { width: legs.width.plus(oversize), height: legs.height.plus(oversize) };
  const both = direction === 'both';
  const rises = direction === 'rising';
  const count = both ? 2 : 1;
  const isSquare = finished.width.equals(finished.height);
  return assemble(basics, {
    finished,
    cuts: ['dark', 'light'].map((part) => ({
      label: 'rectangle',
      part,
      shape: 'rectangle',
      exact,
      count,
      diagonalCuts: 1,
    })),
    yield: 2 * count,
    trimTo,
    trim: trimOf(finished, rises, seam, trimTo),
    patches: patchesOf(finished, rises),
    seams: 2 * count,
    trims: 2 * count,
    steps: [
      say(both ? 'cut-both-ways' : 'cut-one-way'),
      say('sew-triangles', { seam }),
      say('trim-seam', { trimTo, seam }),
    ],
    warnings: [
      warningsFrom(commonSentences)('mirror-pairs', 'direction'),
      ...(isSquare
        ? []
        : [warningsFrom(squareSentences)('seam-not-in-corner', 'finished', { seam })]),
    ],
  });
}
