import type { Length, LengthInput } from '../length/length.js';
import type { Step } from '../plan/notice.js';
import { assemble, squareCut } from './assemble.js';
import { finishedLength, readBasics } from './basics.js';
import type { UnitDefinition } from './definition.js';
import { type HalfSquareMethod, squareFor } from './halfSquareMethod.js';
import type { UnitPatch, UnitPlan } from './plan.js';
import { at } from './point.js';
import { stepsFrom } from './say.js';
import type { UnitSentence } from './sentences/all.js';
import { squareSentences } from './sentences/squares.js';
import type { UnitBasics } from './spec.js';
import { centerLines, lineAcross, RISING, withSeams } from './trimMarks.js';

/** A square of two triangles. */
export interface HalfSquareSpec extends UnitBasics<'dark' | 'light'> {
  /** The finished side. */
  readonly finished: LengthInput;
  /** Default `two-at-a-time`. */
  readonly method?: HalfSquareMethod;
  /** By how much a sewn unit is larger than it is trimmed to; default 0. */
  readonly oversize?: LengthInput;
}

/** What half-square triangles take, and how they are made. */
export const halfSquareTrianglesUnit: UnitDefinition = {
  name: 'half-square-triangles',
  finished: 'side',
  example: { finished: 3 },
  inputs: [
    { kind: 'length', name: 'finished', sign: 'positive' },
    { kind: 'length', name: 'oversize', sign: 'zero or more', default: '0' },
  ],
  methods: [
    { name: 'two-at-a-time', yield: 2 },
    { name: 'four-at-a-time', yield: 4 },
    { name: 'eight-at-a-time', yield: 8 },
    { name: 'cut-triangles', yield: 2 },
  ],
  fabrics: ['dark', 'light'],
  plan: halfSquareTriangles,
};

const say = stepsFrom(squareSentences);

function sewing(method: string, seam: Length): Step<UnitSentence>[] {
  switch (method) {
    case 'four-at-a-time':
      return [say('sew-round', { seam }), say('cut-diagonals')];
    case 'eight-at-a-time':
      return [say('mark-diagonals'), say('sew-both-lines', { seam }), say('cut-quarters')];
    case 'cut-triangles':
      return [say('cut-once'), say('sew-triangles', { seam })];
    default:
      return [say('mark-diagonal'), say('sew-both-sides', { seam }), say('cut-on-line')];
  }
}

/** The two triangles, the seam from the lower left corner to the upper right one. */
function patchesOf(side: Length, grain: UnitPatch['grain']): readonly UnitPatch[] {
  return [
    { fabric: 'dark', points: [at(0, 0), at(side, 0), at(0, side)], grain },
    { fabric: 'light', points: [at(side, 0), at(side, side), at(0, side)], grain },
  ];
}

/**
 * Half-square triangles: squares of two triangles, sewn two, four or eight at a time or from single
 * triangles.
 *
 * Exact squares, with s the seam allowance: two at a time and single triangles f + s(2 + √2), eight
 * at a time twice that, four at a time (sewn round the edge) √2(f + 2s) + 2s. With an oversize o they
 * are those of f + o. Cut sizes are rounded up to the grid once; the trim size f + 2s is not rounded.
 *
 * @throws EighthsError `missing-field`, `not-positive`, `seam-too-wide`, `unknown-choice` and others
 * @example
 * const plan = halfSquareTriangles({ finished: 3, count: 10 });
 * plan.cuts[0].width.toString(); // '3 7/8'
 * plan.trimTo.width.toString(); // '3 1/2'
 * [plan.yield, plan.sets, plan.leftOver]; // [2,5,0]
 */
export function halfSquareTriangles(spec: HalfSquareSpec): UnitPlan {
  const basics = readBasics(spec, halfSquareTrianglesUnit);
  const { method, seam, oversize } = basics;
  const side = finishedLength(spec, basics);
  const finished = { width: side, height: side };
  const trimTo = withSeams(finished, seam);
  const cut = squareFor(method, side.plus(oversize), seam);
  const twice = method === 'four-at-a-time' || method === 'eight-at-a-time';
  const made = { 'four-at-a-time': 4, 'eight-at-a-time': 8 }[method] ?? 2;
  return assemble(basics, {
    finished,
    cuts: ['dark', 'light'].map((part) => squareCut('square', part, cut, 1, twice ? 2 : 1)),
    yield: made,
    trimTo,
    trim: [lineAcross('diagonal', at(0, trimTo.height), RISING, trimTo), ...centerLines(trimTo)],
    patches: patchesOf(side, method === 'four-at-a-time' ? 'diagonal' : 'straight'),
    sewnFirst: method !== 'cut-triangles',
    seams: made === 2 ? 2 : 4,
    trims: made,
    steps: [...sewing(method, seam), say('trim-diagonal', { trimTo })],
  });
}
