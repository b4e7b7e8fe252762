import { fail } from '../errors/error.js';
import { type Length, type LengthInput, length, squareRoot } from '../length/length.js';
import { rationalField } from '../plan/field.js';
import type { Step, Warning } from '../plan/notice.js';
import type { Size, SizeInput } from '../plan/size.js';
import { halfSquareAllowance, quarterSquareAllowance } from './allowances.js';
import { assemble, type ExactCut, squareCut } from './assemble.js';
import { type Basics, checkSeam, finishedSize, readBasics } from './basics.js';
import { bonusOf } from './bonus.js';
import type { UnitDefinition } from './definition.js';
import type { TrimMark, UnitPatch, UnitPlan } from './plan.js';
import { at } from './point.js';
import { cutLegs } from './rightTriangle.js';
import { stepsFrom, warningsFrom } from './say.js';
import type { UnitSentence } from './sentences/all.js';
import { flipSentences } from './sentences/flips.js';
import { squareSentences } from './sentences/squares.js';
import type { UnitBasics } from './spec.js';
import { lineAcross, markPoint, withSeams } from './trimMarks.js';

/** How flying geese are made. */
export type FlyingGeeseMethod = 'four-at-a-time' | 'stitch-and-flip' | 'cut-triangles';

/** A large triangle (the goose) between two small ones (the sky). */
export interface FlyingGeeseSpec extends UnitBasics<'goose' | 'sky'> {
  /** The finished width and height; one length is the width, and the height half of it. */
  readonly finished: SizeInput;
  /** Default `four-at-a-time` where the width is twice the height, else `cut-triangles`. */
  readonly method?: FlyingGeeseMethod;
  /** By how much a sewn unit is wider than it is trimmed to, and half of that higher; default 0. */
  readonly oversize?: LengthInput;
}

/** What flying geese take, and how they are made. */
export const flyingGeeseUnit: UnitDefinition = {
  name: 'flying-geese',
  finished: 'size',
  example: { finished: 6 },
  inputs: [
    { kind: 'size', name: 'finished', sign: 'positive' },
    { kind: 'length', name: 'oversize', sign: 'zero or more', default: '0' },
  ],
  methods: [
    { name: 'four-at-a-time', yield: 4, limit: 'twice-as-wide' },
    { name: 'stitch-and-flip', yield: 1, limit: 'at-least-twice-as-wide' },
    { name: 'cut-triangles' },
  ],
  fabrics: ['goose', 'sky'],
  plan: flyingGeese,
};

const say = stepsFrom({ ...squareSentences, ...flipSentences });
const warn = warningsFrom({ ...squareSentences, ...flipSentences });

/** How the width compares with twice the height. */
const ratio = ({ width, height }: Size): -1 | 0 | 1 => width.compareTo(height.times(2));

/** @throws EighthsError `goose-ratio` */
function checkRatio(method: string, { width, height }: Size): void {
  const compared = ratio({ width, height });
  const possible = method === 'four-at-a-time' ? compared === 0 : compared >= 0;
  if (method === 'cut-triangles' || possible) return;
  fail(
    'goose-ratio',
    'finished',
    { method, width, height, wider: height.times(2), lower: width.dividedBy(2) },
    method === 'four-at-a-time'
      ? 'Four at a time makes geese twice as wide as high, not {width} by {height}. Make them {wider} by {height}, or {width} by {lower}, or cut triangles.'
      : 'Stitch and flip makes geese at least twice as wide as high, not {width} by {height}. Make them {wider} by {height}, or {width} by {lower}, or cut triangles.',
  );
}

/** The cuts of one set for a goose that is cut for this finished size. */
function cutsFor(method: string, { width, height }: Size, seam: Length): readonly ExactCut[] {
  const half = width.dividedBy(2);
  if (method === 'stitch-and-flip') {
    const exact = withSeams({ width, height }, seam);
    return [
      { label: 'rectangle', part: 'goose', shape: 'rectangle', exact, count: 1 },
      squareCut('corner', 'sky', exact.height, 2),
    ];
  }
  if (ratio({ width, height }) === 0) {
    return [
      squareCut('goose', 'goose', width.plus(quarterSquareAllowance(seam)), 1, 2),
      squareCut('sky', 'sky', half.plus(halfSquareAllowance(seam)), 4, 1),
    ];
  }
  return [
    {
      label: 'goose',
      part: 'goose',
      shape: 'triangle',
      exact: gooseCut(width, height, seam),
      count: 2,
    },
    {
      label: 'sky',
      part: 'sky',
      shape: 'rectangle',
      exact: cutLegs({ width: half, height }, seam),
      count: 2,
      diagonalCuts: 1,
    },
  ];
}

/**
 * The rectangle that a goose of any ratio is cut from. Its apex moves up by s·d / (w/2), its base down
 * by s, where d is the length of its finished short edges; the whole triangle grows by that share.
 */
function gooseCut(width: Length, height: Length, seam: Length): Size {
  const half = width.dividedBy(2);
  const edge = squareRoot(half.times(half).plus(height.times(height)));
  const cutHeight = height.plus(seam).plus(seam.times(edge).dividedBy(half));
  return { width: cutHeight.times(width).dividedBy(height), height: cutHeight };
}

function sewing({ method, seam }: Basics, size: Size, trimTo: Size): Step<UnitSentence>[] {
  const middle = trimTo.width.dividedBy(2);
  const last = say('trim-point', { trimTo, seam, middle });
  if (method === 'four-at-a-time') {
    const both = say('sew-both-sides', { seam });
    return [say('geese-first'), both, say('cut-on-line'), say('geese-second'), last];
  }
  if (method === 'stitch-and-flip') {
    const corners = [say('mark-small-squares'), say('flip-corner', { seam }), say('flip-other')];
    return ratio(size) === 0
      ? [...corners, last]
      : [...corners, say('trim-seam', { trimTo, seam })];
  }
  const cuts = ratio(size) === 0 ? [say('cut-twice'), say('cut-once')] : [];
  const slanted = [say('cut-isosceles'), say('cut-both-ways')];
  return [...(cuts.length > 0 ? cuts : slanted), say('geese-triangles'), last];
}

/** The sky's legs along the upper edge: half the width, or less where stitch and flip makes no point. */
const skyLeg = (method: string, { width, height }: Size): Length =>
  method === 'stitch-and-flip' ? height : width.dividedBy(2);

function patchesOf(size: Size, leg: Length): readonly UnitPatch[] {
  const { width, height } = size;
  const right = width.minus(leg);
  const top = leg.equals(right) ? [at(leg, 0)] : [at(leg, 0), at(right, 0)];
  return [
    { fabric: 'sky', points: [at(0, 0), at(leg, 0), at(0, height)], grain: 'straight' },
    { fabric: 'goose', points: [...top, at(width, height), at(0, height)], grain: 'straight' },
    { fabric: 'sky', points: [at(right, 0), at(width, 0), at(width, height)], grain: 'straight' },
  ];
}

function trimOf(size: Size, leg: Length, seam: Length, trimTo: Size): readonly TrimMark[] {
  const { height } = size;
  const left = at(leg.plus(seam), seam);
  const right = at(size.width.minus(leg).plus(seam), seam);
  const role = leg.equals(height) ? 'diagonal' : 'seam';
  const points = left.x.equals(right.x) ? [left] : [left, right];
  const middle = trimTo.width.dividedBy(2);
  return [
    ...points.map((place) => markPoint('point', place)),
    lineAcross(role, left, { across: leg, down: height.negated() }, trimTo),
    lineAcross(role, right, { across: leg, down: height }, trimTo),
    { kind: 'line', role: 'center', from: at(middle, 0), to: at(middle, trimTo.height) },
  ];
}

function warningsOf(method: string, size: Size, seam: Length): Warning<UnitSentence>[] {
  if (ratio(size) === 0) return [];
  if (method === 'stitch-and-flip') {
    const apart = size.width.minus(size.height.times(2));
    return [warn('no-point', 'finished', { ...size, apart })];
  }
  return [warn('seam-not-in-corner', 'finished', { seam })];
}

/** One length is the width: geese are twice as wide as high unless somebody says otherwise. */
function sizeOf(spec: FlyingGeeseSpec, basics: Basics): Size {
  const size = finishedSize(spec, basics);
  const { finished } = spec;
  if (typeof finished === 'object' && finished !== null && 'width' in finished) return size;
  const height = size.width.dividedBy(2);
  checkSeam(height, basics.seam);
  return { width: size.width, height };
}

/**
 * Flying geese: a large triangle between two small ones.
 *
 * Exact cuts for a goose w by h, with s the seam allowance. Four at a time, where w = 2h: one square
 * w + 2s(1 + √2) and four squares w/2 + s(2 + √2), without waste; single triangles come from the same
 * squares. Stitch and flip: a rectangle (w + 2s) by (h + 2s) and two squares h + 2s; where w is more
 * than 2h the corners do not meet in a point. Single triangles of any other ratio: the goose from a
 * rectangle, the sky from rectangles cut once. The point lies s inside the raw edge. Cut sizes are
 * rounded up to the grid once; the trim size is not rounded.
 *
 * @throws EighthsError `goose-ratio`, `missing-field`, `not-positive`, `seam-too-wide` and others
 * @example
 * const plan = flyingGeese({ finished: { width: 6, height: 3 }, count: 8 });
 * plan.cuts.map(({ width, count }) => `${count} of ${width}`); // ['1 of 7 1/4','4 of 3 7/8']
 * plan.sets; // 2
 */
export function flyingGeese(spec: FlyingGeeseSpec): UnitPlan {
  const read = readBasics(spec, flyingGeeseUnit);
  const size = sizeOf(spec, read);
  const usual = ratio(size) === 0 ? 'four-at-a-time' : 'cut-triangles';
  const basics = { ...read, method: spec.method ?? usual };
  const { method, seam, oversize, count } = basics;
  checkRatio(method, size);
  const isUsual = ratio(size) === 0;
  if (!isUsual) {
    rationalField(size.width, 'finished.width');
    rationalField(size.height, 'finished.height');
    rationalField(oversize, 'oversize', 'zero or more');
  }
  const trimTo = withSeams(size, seam);
  // Cut triangles of another ratio keep it; a rectangle to flip corners on need not.
  const grows = isUsual || method === 'stitch-and-flip';
  const share = grows ? length('1/2') : size.height.dividedBy(size.width);
  const cutFor = {
    width: size.width.plus(oversize),
    height: size.height.plus(oversize.times(share)),
  };
  const leg = skyLeg(method, size);
  const flips = method === 'stitch-and-flip';
  const made = flips ? 1 : isUsual ? 4 : 2;
  const bonus = flips ? bonusOf(size.height, seam, 2 * count) : undefined;
  return assemble(basics, {
    finished: size,
    cuts: cutsFor(method, cutFor, seam),
    yield: made,
    trimTo,
    trim: trimOf(size, leg, seam, trimTo),
    patches: patchesOf(size, leg),
    sewnFirst: method !== 'cut-triangles',
    seams: flips ? 2 : method === 'four-at-a-time' ? 6 : 2 * made,
    trims: made,
    ...(bonus && { bonus }),
    steps: sewing(basics, size, trimTo),
    warnings: warningsOf(method, size, seam),
  });
}
