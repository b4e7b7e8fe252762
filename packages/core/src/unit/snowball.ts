import type { Length, LengthInput } from '../length/length.js';
import { shorterOf } from '../length/longer.js';
import { countField, lengthBetween } from '../plan/field.js';
import type { Size, SizeInput } from '../plan/size.js';
import { assemble, squareCut } from './assemble.js';
import { finishedSize, readBasics } from './basics.js';
import { bonusOf } from './bonus.js';
import type { UnitDefinition } from './definition.js';
import type { TrimMark, UnitPatch, UnitPlan } from './plan.js';
import { at, moved, type UnitPoint } from './point.js';
import { stepsFrom } from './say.js';
import { commonSentences } from './sentences/common.js';
import { flipSentences } from './sentences/flips.js';
import type { UnitBasics } from './spec.js';
import { centerLines, FALLING, lineAcross, RISING, withSeams } from './trimMarks.js';

/** A square or rectangle with corners of another fabric. */
export interface SnowballSpec extends UnitBasics<'center' | 'corner'> {
  /** The finished side, or width and height. */
  readonly finished: SizeInput;
  /** The finished leg of a corner; default a third of the shorter side. */
  readonly corner?: LengthInput;
  /** How many corners, clockwise from the top left one, from 1 to 4; default 4. */
  readonly corners?: number;
  readonly method?: 'stitch-and-flip';
}

/** What a snowball takes, and how it is made. */
export const snowballUnit: UnitDefinition = {
  name: 'snowball',
  finished: 'size',
  example: { finished: { width: 6, height: 6 } },
  inputs: [
    { kind: 'size', name: 'finished', sign: 'positive' },
    { kind: 'length', name: 'corner', sign: 'positive' },
    { kind: 'count', name: 'corners', least: 1, most: 4, default: 4 },
  ],
  methods: [{ name: 'stitch-and-flip', yield: 1 }],
  fabrics: ['center', 'corner'],
  plan: snowball,
};

/** A corner, and the two ends of its seam, clockwise. */
type Corner = readonly [before: UnitPoint, corner: UnitPoint, after: UnitPoint];

function cornersOf({ width, height }: Size, leg: Length): readonly Corner[] {
  const right = width.minus(leg);
  const below = height.minus(leg);
  return [
    [at(0, leg), at(0, 0), at(leg, 0)],
    [at(right, 0), at(width, 0), at(width, leg)],
    [at(width, below), at(width, height), at(right, height)],
    [at(leg, height), at(0, height), at(0, below)],
  ];
}

/** The points in order without those that repeat the one before: legs that meet share a point. */
const distinct = (points: readonly UnitPoint[]): readonly UnitPoint[] =>
  points.filter(({ x, y }, index) => {
    const before = points[(index + points.length - 1) % points.length];
    return before === undefined || !(before.x.equals(x) && before.y.equals(y));
  });

function patchesOf(corners: readonly Corner[], count: number): readonly UnitPatch[] {
  const center = corners.flatMap(([before, corner, after], index) =>
    index < count ? [before, after] : [corner],
  );
  return [
    { fabric: 'center', points: distinct(center), grain: 'straight' },
    ...corners
      .slice(0, count)
      .map((points): UnitPatch => ({ fabric: 'corner', points, grain: 'straight' })),
  ];
}

const trimOf = (
  corners: readonly Corner[],
  count: number,
  seam: Length,
  trimTo: Size,
): readonly TrimMark[] => [
  ...corners
    .slice(0, count)
    .map(([end], index) =>
      lineAcross('diagonal', moved(end, seam), index % 2 === 0 ? RISING : FALLING, trimTo),
    ),
  ...centerLines(trimTo),
];

/**
 * A snowball: a square or rectangle with corners that are sewn on as squares and flipped.
 *
 * Exact cuts, with s the seam allowance: the base is finished + 2s, a corner that finishes a leg k is
 * a square k + 2s; sizes are rounded up to the grid once.
 *
 * @throws EighthsError `out-of-range` where two corners do not fit beside each other, and others
 * @example
 * const plan = snowball({ finished: 6, corner: 2 });
 * plan.cuts.map(({ width, count }) => `${count} of ${width}`); // ['1 of 6 1/2','4 of 2 1/2']
 */
export function snowball(spec: SnowballSpec): UnitPlan {
  const say = stepsFrom({ ...flipSentences, ...commonSentences });
  const basics = readBasics(spec, snowballUnit);
  const { seam } = basics;
  const finished = finishedSize(spec, basics);
  const { width, height } = finished;
  const count = countField(spec.corners ?? 4, 'corners', 1, 4);
  const shorter = shorterOf(width, height);
  const halfAcross = shorterOf(width.dividedBy(2), height);
  // The first two corners share the upper side, three and more share both sides.
  const room = count === 1 ? shorter : count === 2 ? halfAcross : shorter.dividedBy(2);
  const corner = lengthBetween(spec.corner ?? shorter.dividedBy(3), 'corner', 0, room);
  const trimTo = withSeams(finished, seam);
  const corners = cornersOf(finished, corner);
  const bonus = bonusOf(corner, seam, count * basics.count);
  return assemble(basics, {
    finished,
    cuts: [
      { label: 'base', part: 'center', shape: 'rectangle', exact: trimTo, count: 1 },
      squareCut('corner', 'corner', corner.plus(seam.times(2)), count),
    ],
    yield: 1,
    trimTo,
    trim: trimOf(corners, count, seam, trimTo),
    patches: patchesOf(corners, count),
    narrowest: corner,
    sewnFirst: true,
    seams: count,
    trims: 1,
    ...(bonus && { bonus }),
    steps: [
      say('mark-small-squares'),
      say('flip-corner', { seam }),
      ...(count > 1 ? [say('flip-each', { corners: count })] : []),
      say('trim', { trimTo }),
      ...(bonus ? [say('bonus', { finished: bonus.finished.toGrid(basics.grid, 'down') })] : []),
    ],
  });
}
