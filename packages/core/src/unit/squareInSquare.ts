import { fail } from '../errors/error.js';
import { type Length, type LengthInput, length, squareRoot } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import { countField, lengthField, missing } from '../plan/field.js';
import { halfSquareAllowance } from './allowances.js';
import { assemble, type ExactCut, squareCut } from './assemble.js';
import { type Basics, checkSeam, finishedLength, readBasics } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { TrimMark, UnitPatch, UnitPlan } from './plan.js';
import { midpoint, moved, rectangle, type UnitPoint } from './point.js';
import { stepsFrom } from './say.js';
import { flipSentences } from './sentences/flips.js';
import { squareSentences } from './sentences/squares.js';
import type { UnitBasics } from './spec.js';
import { centerLines, FALLING, lineAcross, markPoint, RISING, withSeams } from './trimMarks.js';

/** How the corners of a square in a square are made. */
export type SquareInSquareMethod = 'cut-triangles' | 'stitch-and-flip';

/** A square with a triangle on each side, and as many rounds of triangles as wished. */
export interface SquareInSquareSpec extends UnitBasics<'center' | 'corner' | 'second corner'> {
  /** The center's finished side; either this or `finished`. */
  readonly center?: LengthInput;
  /** The unit's finished side; either this or `center`. */
  readonly finished?: LengthInput;
  /** From 1 to 12; default 1. */
  readonly rounds?: number;
  /** Default `cut-triangles`. Stitch and flip makes one round. */
  readonly method?: SquareInSquareMethod;
  /** What the corners' squares are cut beyond the exact size, to be trimmed away; default 0. */
  readonly oversize?: LengthInput;
}

/** A round of triangles. */
export interface SquareInSquareRound {
  /** From 1. */
  readonly number: number;
  /** The finished side after it. */
  readonly finished: Length;
  /** What it is trimmed to, the points a seam allowance inside. */
  readonly trimTo: Length;
}

/** A square in a square, with the trim of each round. */
export interface SquareInSquare extends UnitPlan {
  readonly rounds: readonly SquareInSquareRound[];
}

const MOST_ROUNDS = 12;

/** What a square in a square takes, and how it is made. */
export const squareInSquareUnit: UnitDefinition = {
  name: 'square-in-square',
  finished: 'side',
  example: { finished: 6 },
  inputs: [
    { kind: 'length', name: 'finished', sign: 'positive' },
    { kind: 'length', name: 'center', sign: 'positive' },
    { kind: 'count', name: 'rounds', least: 1, most: MOST_ROUNDS, default: 1 },
    { kind: 'length', name: 'oversize', sign: 'zero or more', default: '0' },
  ],
  methods: [
    { name: 'cut-triangles', yield: 1 },
    { name: 'stitch-and-flip', yield: 1, limit: 'one-round' },
  ],
  fabrics: ['center', 'corner', 'second corner'],
  plan: squareInSquare,
};

/** Fabrics change from round to round. */
const partOf = (round: number): string => (round % 2 === 1 ? 'corner' : 'second corner');

/** The finished sides from the center out: each is √2 times the one before. */
function sidesOf(spec: SquareInSquareSpec, basics: Basics, rounds: number): readonly Length[] {
  if (spec.center !== undefined && spec.finished !== undefined) {
    fail(
      'conflicting-fields',
      'finished',
      { one: 'center', other: 'finished' },
      'The one follows from the other. Leave “{one}” or “{other}” out.',
    );
  }
  if (spec.center === undefined && spec.finished === undefined) missing('finished');
  const growth = (count: number): Length =>
    (count % 2 === 0 ? length(1) : squareRoot(2)).times(2n ** BigInt(Math.floor(count / 2)));
  const shrink = growth(rounds).times(growth(rounds));
  const center =
    spec.center === undefined
      ? finishedLength(spec, basics).times(growth(rounds)).dividedBy(shrink)
      : lengthField(spec.center, 'center');
  checkSeam(center, basics.seam);
  return Array.from({ length: rounds + 1 }, (_, round) => center.times(growth(round)));
}

/** Rounds from the outermost in: each inner square stands on the middles of the sides. */
function patchesOf(
  outer: Length,
  rounds: number,
  method: string,
): { readonly patches: readonly UnitPatch[]; readonly points: readonly UnitPoint[] } {
  const patches: UnitPatch[] = [];
  let corners = rectangle(outer, outer);
  let points = corners;
  for (let round = rounds; round > 0; round -= 1) {
    const middles = corners.map((corner, index) =>
      midpoint(corner, entryAt(corners, (index + 1) % 4)),
    );
    if (round === rounds) points = middles;
    const grain = (rounds - round) % 2 === 0 ? 'straight' : 'diagonal';
    for (const [index, corner] of corners.entries()) {
      const ends = [entryAt(middles, index), entryAt(middles, (index + 3) % 4)];
      patches.unshift({ fabric: partOf(round), points: [corner, ...ends], grain });
    }
    corners = middles;
  }
  // Stitch and flip cuts the center as a square that is as large as the unit.
  const turned = rounds % 2 === 1 && method === 'cut-triangles';
  patches.unshift({ fabric: 'center', points: corners, grain: turned ? 'diagonal' : 'straight' });
  return { patches, points };
}

function cutsOf(sides: readonly Length[], { method, seam, oversize }: Basics): readonly ExactCut[] {
  const [center = length(0), ...outer] = sides;
  if (method === 'stitch-and-flip') {
    const [side = center] = outer;
    return [
      squareCut('base', 'center', side.plus(seam.times(2)), 1),
      squareCut('corner', 'corner', side.dividedBy(2).plus(seam.times(2)).plus(oversize), 4),
    ];
  }
  const allowance = halfSquareAllowance(seam).plus(oversize);
  return [
    squareCut('center', 'center', center.plus(seam.times(2)), 1),
    // Two squares cut once make four corners; their legs are half of the side they make.
    ...outer.map((side, index) =>
      squareCut('corner', partOf(index + 1), side.dividedBy(2).plus(allowance), 2, 1),
    ),
  ];
}

function trimOf(points: readonly UnitPoint[], seam: Length, side: Length): readonly TrimMark[] {
  const size = { width: side, height: side };
  const placed = points.map((place) => moved(place, seam));
  return [
    ...placed.map((place) => markPoint('point', place)),
    ...placed.map((place, index) =>
      lineAcross('diagonal', place, index % 2 === 0 ? FALLING : RISING, size),
    ),
    ...centerLines(size),
  ];
}

/**
 * A square in a square, with any number of nested rounds, from the center out or from the finished
 * size in.
 *
 * Each round makes the side √2 times as large. Exact cuts, with s the seam allowance: center c + 2s;
 * the corners of the round that finishes f from two squares f/2 + s(2 + √2) cut once, which is
 * c/√2 + s(2 + √2) for the first. The points lie s inside the raw edge after each trim. Cut sizes are
 * rounded up to the grid once; trim sizes are exact, and a warning says where one is off the grid.
 *
 * @throws EighthsError `conflicting-fields`, `missing-field`, `not-a-count`, `seam-too-wide` and others
 * @example
 * const [center, corners] = squareInSquare({ center: '3 1/2' }).cuts;
 * [center.width, corners.width]; // ['4','3 3/8']
 * squareInSquare({ finished: 12 }).cuts[0].width.toString(); // '9'
 */
export function squareInSquare(spec: SquareInSquareSpec): SquareInSquare {
  const say = stepsFrom({ ...squareSentences, ...flipSentences });
  const basics = readBasics(spec, squareInSquareUnit);
  const { method, seam } = basics;
  const flips = method === 'stitch-and-flip';
  const count = countField(spec.rounds ?? 1, 'rounds', 1, flips ? 1 : MOST_ROUNDS);
  const sides = sidesOf(spec, basics, count);
  const side = entryAt(sides, count);
  const finished = { width: side, height: side };
  const trimTo = withSeams(finished, seam);
  const rounds = sides.slice(1).map((after, index) => ({
    number: index + 1,
    finished: after,
    trimTo: after.plus(seam.times(2)),
  }));
  const { patches, points } = patchesOf(side, count, method);
  const plan = assemble(basics, {
    finished,
    cuts: cutsOf(sides, basics),
    yield: 1,
    trimTo,
    trim: trimOf(points, seam, trimTo.width),
    patches,
    narrowest: entryAt(sides, 0),
    sewnFirst: flips,
    seams: 4 * count,
    trims: count,
    steps: flips
      ? [
          say('mark-small-squares'),
          say('flip-corner', { seam }),
          say('flip-each', { corners: 4 }),
          say('trim-rounds', { seam, trimTo }),
        ]
      : [say('cut-once'), say('round-triangles'), say('trim-rounds', { seam, trimTo })],
  });
  return { ...plan, rounds };
}
