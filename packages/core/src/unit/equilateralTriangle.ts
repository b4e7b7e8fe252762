import { type LengthInput, squareRoot } from '../length/length.js';
import { finishedLength, readBasics, usableInput, usableOf } from './basics.js';
import type { UnitDefinition } from './definition.js';
import { cutStrip } from './fromStrips.js';
import type { UnitPlan } from './plan.js';
import { at } from './point.js';
import type { UnitBasics } from './spec.js';
import { assembleFromStrips, sayOfStrips } from './stripUnit.js';

/** A triangle of three equal sides. */
export interface EquilateralTriangleSpec extends UnitBasics<'triangle'> {
  /** The finished height. */
  readonly finished: LengthInput;
  readonly method?: 'from-strips';
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

/** What equilateral triangles take, and how they are made. */
export const equilateralTriangleUnit: UnitDefinition = {
  name: 'equilateral-triangle',
  finished: 'height',
  example: { finished: 4 },
  inputs: [{ kind: 'length', name: 'finished', sign: 'positive' }, usableInput],
  methods: [{ name: 'from-strips' }],
  fabrics: ['triangle'],
  plan: equilateralTriangle,
};

/**
 * Equilateral triangles from strips, their points kept, cut by turns with the base on the one side and
 * the other.
 *
 * Exact, for a finished height h and the seam allowance s: strip h + 3s, rounded up to the grid (the
 * base moves out by s, the point by 2s); base along the strip 2(h + 3s)/√3. The first cut at 60
 * degrees takes half a base off the strip's end. The base is on the straight grain, the other two
 * edges are on the bias. `trimTo` is the unfinished triangle's base and height.
 *
 * @throws EighthsError `strip-too-short`, `seam-too-wide`, `missing-field` and others
 * @example
 * const plan = equilateralTriangle({ finished: 4, count: 30 });
 * [plan.strip.width, plan.yield, plan.sets]; // ['4 3/4',13,3]
 */
export function equilateralTriangle(spec: EquilateralTriangleSpec): UnitPlan {
  const basics = readBasics(spec, equilateralTriangleUnit);
  const { seam, grid } = basics;
  const height = finishedLength(spec, basics);
  const rootOfThree = squareRoot(3);
  const exact = height.plus(seam.times(3));
  const width = exact.toGrid(grid, 'up');
  const half = width.times(rootOfThree).dividedBy(3);
  const edge = half.times(2);
  const strip = cutStrip(
    {
      width,
      usable: usableOf(spec),
      first: half,
      step: half,
      // The line that is laid on the cut edge lies as far in as the triangle is high.
      rulerLine: width,
    },
    grid,
  );
  const side = height.times(rootOfThree).times('2/3');
  const outline = [at(side.dividedBy(2), 0), at(side, height), at(0, height)];
  return assembleFromStrips(basics, {
    finished: { width: side, height },
    outline,
    patches: [{ fabric: 'triangle', points: outline, grain: 'straight' }],
    trimTo: { width: exact.times(rootOfThree).times('2/3'), height: exact },
    exact,
    strip,
    part: 'triangle',
    steps: [
      sayOfStrips('first-angle', { angle: 60 }),
      sayOfStrips('alternate-angles', { angle: 60, edge, perStrip: strip.perStrip }),
    ],
  });
}
