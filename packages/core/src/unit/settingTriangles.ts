import { type LengthInput, squareRoot } from '../length/length.js';
import { choiceField } from '../plan/field.js';
import { halfSquareAllowance, quarterSquareAllowance } from './allowances.js';
import { assemble, squareCut } from './assemble.js';
import { finishedLength, readBasics } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPlan } from './plan.js';
import { at } from './point.js';
import { stepsFrom } from './say.js';
import { squareSentences } from './sentences/squares.js';
import type { UnitBasics } from './spec.js';

/** Triangles that fill the edge of a quilt whose blocks stand on point. */
export interface SettingTrianglesSpec extends UnitBasics<'setting'> {
  /** The block's finished side. */
  readonly finished: LengthInput;
  /** Default `side`. */
  readonly triangle?: 'side' | 'corner';
  readonly method?: 'cut-triangles';
  /** What squares are cut beyond the exact size, to be trimmed away; default 1/2. */
  readonly oversize?: LengthInput;
}

const TRIANGLES = ['side', 'corner'] as const;

/** What setting triangles take, and how they are made. */
export const settingTrianglesUnit: UnitDefinition = {
  name: 'setting-triangles',
  finished: 'block',
  example: { finished: 9 },
  inputs: [
    { kind: 'length', name: 'finished', sign: 'positive' },
    { kind: 'choice', name: 'triangle', choices: TRIANGLES, default: 'side' },
    { kind: 'length', name: 'oversize', sign: 'zero or more', default: '1/2' },
  ],
  methods: [{ name: 'cut-triangles' }],
  fabrics: ['setting'],
  plan: settingTriangles,
};

/**
 * Side or corner setting triangles for blocks on point, their outer edges on the straight grain.
 *
 * Exact squares, with s the seam allowance: for four side triangles f√2 + 2s(1 + √2), cut twice; for
 * two corner triangles f/√2 + s(2 + √2), cut once. Cut generously by default (`oversize`, common
 * practice, no source) and trimmed s beyond the blocks' corners after sewing. Cut sizes are rounded
 * up to the grid once. `trimTo` is the exact triangle with its seams: its long edge and its height.
 *
 * @throws EighthsError `missing-field`, `not-positive`, `seam-too-wide`, `unknown-choice` and others
 * @example
 * const exact = { finished: 6, oversize: 0 };
 * settingTriangles(exact).cuts[0].width.toString(); // '9 3/4'
 * settingTriangles({ ...exact, triangle: 'corner' }).cuts[0].width.toString(); // '5 1/8'
 */
export function settingTriangles(spec: SettingTrianglesSpec): UnitPlan {
  const say = stepsFrom(squareSentences);
  const basics = readBasics(spec, settingTrianglesUnit);
  const { seam, grid, oversize } = basics;
  const block = finishedLength(spec, basics);
  const isSide = choiceField(spec.triangle ?? 'side', 'triangle', TRIANGLES) === 'side';
  const half = block.times(squareRoot('1/2'));
  const long = half.times(2);
  const exact = isSide
    ? long.plus(quarterSquareAllowance(seam))
    : half.plus(halfSquareAllowance(seam));
  const points = isSide
    ? [at(0, 0), at(long, 0), at(half, half)]
    : [at(0, 0), at(half, 0), at(0, half)];
  const finished = isSide ? { width: long, height: half } : { width: half, height: half };
  const least = exact.toGrid(grid, 'up');
  return assemble(basics, {
    finished,
    cuts: [
      squareCut(isSide ? 'side' : 'corner', 'setting', exact.plus(oversize), 1, isSide ? 2 : 1),
    ],
    yield: isSide ? 4 : 2,
    trimTo: isSide ? { width: exact, height: exact.dividedBy(2) } : { width: exact, height: exact },
    outline: points,
    patches: [{ fabric: 'setting', points, grain: 'straight' }],
    seams: 0,
    trims: 0,
    steps: [say(isSide ? 'cut-twice' : 'cut-once'), say('setting-trim', { seam, least })],
  });
}
