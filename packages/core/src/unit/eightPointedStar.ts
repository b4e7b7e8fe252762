import { type Length, type LengthInput, length, squareRoot } from '../length/length.js';
import { stripPieces } from '../plan/stripShapes.js';
import { quarterSquareAllowance } from './allowances.js';
import { readAngle } from './angle.js';
import { assemble, squareCut } from './assemble.js';
import { checkSeam, finishedLength, readBasics, usableInput, usableOf } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPatch, UnitPlan } from './plan.js';
import { at, type UnitPoint } from './point.js';
import { stepsFrom } from './say.js';
import { squareSentences } from './sentences/squares.js';
import { angledSteps, parallelCuts } from './slantedShapes.js';
import type { UnitBasics } from './spec.js';
import { centerLines, markPoint, withSeams } from './trimMarks.js';

/** A star of eight diamonds with squares in the corners and triangles between. */
export interface EightPointedStarSpec extends UnitBasics<'diamond' | 'background'> {
  /** The block's finished side. */
  readonly finished: LengthInput;
  readonly method?: 'from-strips';
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

/** What an eight-pointed star takes, and how it is made. */
export const eightPointedStarUnit: UnitDefinition = {
  name: 'eight-pointed-star',
  finished: 'block',
  example: { finished: 12 },
  inputs: [{ kind: 'length', name: 'finished', sign: 'positive' }, usableInput],
  methods: [{ name: 'from-strips', yield: 1 }],
  fabrics: ['diamond', 'background'],
  plan: eightPointedStar,
};

/** A point turned by quarter turns about the middle of a square. */
function turned({ x, y }: UnitPoint, side: Length, quarters: number): UnitPoint {
  let point = at(x, y);
  for (let turn = 0; turn < quarters; turn += 1) point = at(side.minus(point.y), point.x);
  return point;
}

/** The patches of the upper left quarter, and of the other quarters by turning it. */
function patchesOf(side: Length, diamond: Length): readonly UnitPatch[] {
  const middle = side.dividedBy(2);
  const center = at(middle, middle);
  const across = diamond.times(squareRoot('1/2'));
  // The star's points on the upper side, at the two ends of the triangle between them.
  const [left, right] = [at(diamond, 0), at(side.minus(diamond), 0)];
  const dip = at(middle, across);
  const [upperLeft, upperRight] = [at(diamond, diamond), at(side.minus(diamond), diamond)];
  const quarter: readonly UnitPatch[] = [
    {
      fabric: 'background',
      points: [at(0, 0), left, upperLeft, at(0, diamond)],
      grain: 'straight',
    },
    { fabric: 'background', points: [left, right, dip], grain: 'straight' },
    { fabric: 'diamond', points: [left, dip, center, upperLeft], grain: 'straight' },
    { fabric: 'diamond', points: [right, upperRight, center, dip], grain: 'straight' },
  ];
  return [0, 1, 2, 3].flatMap((quarters) =>
    quarter.map((patch) => ({
      ...patch,
      points: patch.points.map((point) => turned(point, side, quarters)),
    })),
  );
}

/**
 * An eight-pointed star: eight 45-degree diamonds, a square in each corner, a triangle between.
 *
 * Exact, for a finished block B and the seam allowance s: the diamond's side is a = B / (2 + √2), its
 * strip a/√2 + 2s; corner squares a + 2s; the side triangles from one square a√2 + 2s(1 + √2) cut
 * twice. Each rounded up to the grid once.
 *
 * @throws EighthsError `seam-too-wide`, `strip-too-short`, `missing-field` and others
 * @example
 * const plan = eightPointedStar({ finished: 12 });
 * plan.cuts.map(({ height, count }) => `${count} of ${height}`); // ['8 of 3','4 of 4 1/8','1 of 6 1/4']
 */
export function eightPointedStar(spec: EightPointedStarSpec): UnitPlan {
  const basics = readBasics(spec, eightPointedStarUnit);
  const { seam, grid, count } = basics;
  const block = finishedLength(spec, basics);
  const finished = { width: block, height: block };
  // 1 / (2 + √2) = (2 − √2) / 2.
  const side = block.times(length(2).minus(squareRoot(2))).dividedBy(2);
  checkSeam(side, seam);
  const angle = readAngle(45);
  const exact = side.times(angle.sine.most).plus(seam.times(2));
  const strip = parallelCuts({
    angle,
    width: exact,
    rulerLine: exact,
    usable: usableOf(spec),
    grid,
  });
  const cuts = [
    {
      label: 'diamond',
      part: 'diamond',
      shape: 'template',
      exact: { width: exact.times(angle.cosecant.most), height: exact },
      count: 8,
    },
    squareCut('corner', 'background', side.plus(seam.times(2)), 4),
    squareCut(
      'side',
      'background',
      side.times(squareRoot(2)).plus(quarterSquareAllowance(seam)),
      1,
      2,
    ),
  ] as const;
  const trimTo = withSeams(finished, seam);
  const middle = trimTo.width.dividedBy(2);
  const squares = cuts.slice(1).map(({ label, part, exact: { width }, count: each }) => {
    const cut = width.toGrid(grid, 'up');
    return { label, fabric: basics.fabric(part), width: cut, length: cut, count: each * count };
  });
  return assemble(basics, {
    finished,
    cuts,
    yield: 1,
    trimTo,
    trim: [markPoint('crossing', at(middle, middle)), ...centerLines(trimTo)],
    patches: patchesOf(block, side),
    narrowest: side.times(angle.sine.most),
    seams: 8 + 4 + 8 + 4,
    trims: 1,
    strip,
    pieces: [
      ...stripPieces(
        { label: 'diamond', fabric: basics.fabric('diamond') },
        8 * count,
        strip,
        grid,
      ),
      ...squares,
    ],
    steps: [
      ...angledSteps(angle, strip),
      stepsFrom(squareSentences)('cut-twice'),
      stepsFrom(squareSentences)('set-in-seams', { seam }),
    ],
  });
}
