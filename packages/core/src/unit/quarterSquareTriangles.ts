import type { Length, LengthInput } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import type { Step } from '../plan/notice.js';
import type { Size } from '../plan/size.js';
import { quarterSquareAllowance } from './allowances.js';
import { assemble, squareCut, type UnitParts } from './assemble.js';
import { finishedLength, readBasics } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPatch, UnitPlan } from './plan.js';
import { at } from './point.js';
import { stepsFrom } from './say.js';
import type { UnitSentence } from './sentences/all.js';
import { squareSentences } from './sentences/squares.js';
import type { UnitBasics } from './spec.js';
import { centerLines, FALLING, lineAcross, markPoint, RISING, withSeams } from './trimMarks.js';

/** How quarter-square triangles are made; `single-triangles` leaves them unsewn. */
export type QuarterSquareMethod = 'two-at-a-time' | 'cut-triangles' | 'single-triangles';

/** A square of four triangles (an hourglass), or the single triangle. */
export interface QuarterSquareSpec extends UnitBasics<'dark' | 'light'> {
  /** The finished side of the square, which is the long edge of its triangles. */
  readonly finished: LengthInput;
  /** Default `two-at-a-time`: from pairs of half-square triangles. */
  readonly method?: QuarterSquareMethod;
  /** By how much a sewn unit is larger than it is trimmed to; default 0. */
  readonly oversize?: LengthInput;
}

/** What quarter-square triangles take, and how they are made. */
export const quarterSquareTrianglesUnit: UnitDefinition = {
  name: 'quarter-square-triangles',
  finished: 'long edge',
  example: { finished: 4 },
  inputs: [
    { kind: 'length', name: 'finished', sign: 'positive' },
    { kind: 'length', name: 'oversize', sign: 'zero or more', default: '0' },
  ],
  methods: [
    { name: 'two-at-a-time', yield: 2 },
    { name: 'cut-triangles', yield: 2 },
    { name: 'single-triangles', yield: 4, part: true },
  ],
  fabrics: ['dark', 'light'],
  plan: quarterSquareTriangles,
};

const say = stepsFrom(squareSentences);

function sewing(method: string, seam: Length, trimTo: Size): Step<UnitSentence>[] {
  const last = say('trim-crossing', { trimTo, middle: trimTo.width.dividedBy(2) });
  if (method === 'cut-triangles') return [say('cut-twice'), say('sew-short-edges'), last];
  const pairs = [say('mark-diagonal'), say('sew-both-sides', { seam }), say('cut-on-line')];
  const across = [say('cross-pairs'), say('mark-across'), say('sew-both-sides', { seam })];
  return [...pairs, ...across, say('cut-on-line'), last];
}

/** Light above and below, dark at the sides. */
function hourglass(side: Length): readonly UnitPatch[] {
  const middle = at(side.dividedBy(2), side.dividedBy(2));
  const corners = [at(0, 0), at(side, 0), at(side, side), at(0, side)];
  return corners.map((corner, index) => ({
    fabric: index % 2 === 0 ? 'light' : 'dark',
    points: [corner, entryAt(corners, (index + 1) % 4), middle],
    grain: 'straight',
  }));
}

function singleTriangle(long: Length, cut: Length): UnitParts {
  const height = long.dividedBy(2);
  const points = [at(0, height), at(height, 0), at(long, height)];
  return {
    finished: { width: long, height },
    cuts: [squareCut('square', 'dark', cut, 1, 2)],
    yield: 4,
    trimTo: { width: cut, height: cut.dividedBy(2) },
    outline: points,
    patches: [{ fabric: 'dark', points, grain: 'straight' }],
    seams: 0,
    trims: 0,
    steps: [say('cut-twice')],
  };
}

function square(method: string, side: Length, cut: Length, seam: Length): UnitParts {
  const finished = { width: side, height: side };
  const trimTo = withSeams(finished, seam);
  return {
    finished,
    cuts: ['dark', 'light'].map((part) => squareCut('square', part, cut, 1, 2)),
    yield: 2,
    trimTo,
    trim: [
      lineAcross('diagonal', at(0, 0), FALLING, trimTo),
      lineAcross('diagonal', at(0, trimTo.height), RISING, trimTo),
      markPoint('crossing', at(trimTo.width.dividedBy(2), trimTo.height.dividedBy(2))),
      ...centerLines(trimTo),
    ],
    patches: hourglass(side),
    narrowest: side.dividedBy(2),
    sewnFirst: method === 'two-at-a-time',
    seams: method === 'two-at-a-time' ? 4 : 6,
    trims: 2,
    steps: sewing(method, seam, trimTo),
  };
}

/**
 * Quarter-square triangles: squares of four triangles (hourglass units) from pairs of half-square
 * triangles or from single triangles, or the single triangles.
 *
 * Exact square, with s the seam allowance: f + 2s(1 + √2), cut twice on the diagonal, so that the
 * long edge is on the straight grain. Two at a time is exact too: the half-square triangles of that
 * square measure f + s(2 + √2), which is the square that makes them into hourglass units. Cut sizes
 * are rounded up to the grid once.
 *
 * @throws EighthsError `missing-field`, `not-positive`, `seam-too-wide`, `unknown-choice` and others
 * @example
 * quarterSquareTriangles({ finished: 3 }).cuts[0].width.toString(); // '4 1/4'
 */
export function quarterSquareTriangles(spec: QuarterSquareSpec): UnitPlan {
  const basics = readBasics(spec, quarterSquareTrianglesUnit);
  const { method, seam, oversize } = basics;
  const side = finishedLength(spec, basics);
  const cut = side.plus(oversize).plus(quarterSquareAllowance(seam));
  const parts =
    method === 'single-triangles' ? singleTriangle(side, cut) : square(method, side, cut, seam);
  return assemble(basics, parts);
}
