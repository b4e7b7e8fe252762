import { type Length, type LengthInput, squareRoot } from '../length/length.js';
import { entryAt } from '../plan/entryAt.js';
import { readAngle } from './angle.js';
import { type Basics, finishedLength, readBasics, usableInput, usableOf } from './basics.js';
import type { UnitDefinition } from './definition.js';
import type { UnitPatch, UnitPlan } from './plan.js';
import { at, type UnitPoint } from './point.js';
import { stepsFrom } from './say.js';
import { squareSentences } from './sentences/squares.js';
import { angledSteps, parallelCuts } from './slantedShapes.js';
import type { UnitBasics } from './spec.js';
import { assembleFromStrips, offGrid, sayOfStrips } from './stripUnit.js';
import { trapezoidCuts } from './trapezoidCuts.js';

/** How a hexagon is cut: whole from a strip, or as two halves with a seam between them. */
export type HexagonMethod = 'from-strips' | 'half-hexagons';

/** A shape of six equal sides. */
export interface HexagonSpec extends UnitBasics<'hexagon'> {
  /** The finished side. */
  readonly finished: LengthInput;
  /** Default `from-strips`; half-hexagons are sewn in rows, without set-in seams. */
  readonly method?: HexagonMethod;
  /** The usable width of the fabric; default 40. */
  readonly usable?: LengthInput;
}

/** What hexagons take, and how they are made. */
export const hexagonUnit: UnitDefinition = {
  name: 'hexagon',
  finished: 'side',
  example: { finished: 2 },
  inputs: [{ kind: 'length', name: 'finished', sign: 'positive' }, usableInput],
  methods: [{ name: 'from-strips' }, { name: 'half-hexagons' }],
  fabrics: ['hexagon'],
  plan: hexagon,
};

/** The corners of the finished hexagon, its flat sides above and below, clockwise from the left. */
function cornersOf(side: Length, across: Length): readonly UnitPoint[] {
  const half = side.dividedBy(2);
  const middle = across.dividedBy(2);
  return [
    at(0, middle),
    at(half, 0),
    at(half.plus(side), 0),
    at(side.times(2), middle),
    at(half.plus(side), across),
    at(half, across),
  ];
}

function whole(side: Length, across: Length, spec: HexagonSpec, basics: Basics): UnitPlan {
  const { seam, grid } = basics;
  const angle = readAngle(60);
  const exact = across.plus(seam.times(2));
  const strip = parallelCuts({
    angle,
    width: exact,
    rulerLine: exact,
    usable: usableOf(spec),
    grid,
  });
  const outline = cornersOf(side, across);
  return assembleFromStrips(basics, {
    finished: { width: side.times(2), height: across },
    outline,
    patches: [{ fabric: 'hexagon', points: outline, grain: 'straight' }],
    trimTo: { width: exact.times(angle.cosecant.most), height: exact },
    narrowest: side,
    exact,
    strip,
    part: 'hexagon',
    steps: [
      ...angledSteps(angle, strip),
      sayOfStrips('hexagon-points', { half: strip.width.dividedBy(2) }),
      stepsFrom(squareSentences)('set-in-seams', { seam }),
    ],
  });
}

function halves(side: Length, across: Length, spec: HexagonSpec, basics: Basics): UnitPlan {
  const { seam, grid } = basics;
  const height = across.dividedBy(2);
  const { exact, edge, strip } = trapezoidCuts({
    angle: readAngle(60),
    long: side.times(2),
    height,
    slanted: 2,
    seam,
    grid,
    usable: usableOf(spec),
  });
  const outline = cornersOf(side, across);
  const upper = outline.slice(0, 4);
  const lower = [entryAt(outline, 0), ...outline.slice(3)];
  const patches = [upper, lower].map(
    (points): UnitPatch => ({ fabric: 'hexagon', points, grain: 'straight' }),
  );
  const cut = strip.rulerLine;
  return assembleFromStrips(basics, {
    finished: { width: side.times(2), height: across },
    outline,
    patches,
    trimTo: { width: edge, height: across.plus(seam.times(2)) },
    narrowest: height,
    exact,
    strip,
    part: 'hexagon',
    shapes: 2,
    seams: 1,
    steps: [
      sayOfStrips('first-angle', { angle: 60 }),
      sayOfStrips('alternate-angles', { angle: 60, edge: cut, perStrip: strip.perStrip }),
      sayOfStrips('sew-halves'),
    ],
    warnings: offGrid('piece-off-grid', edge, cut),
  });
}

/**
 * Hexagons from strips, whole or in halves.
 *
 * Exact, for a finished side a and the seam allowance s. Whole: strip across the flats a√3 + 2s, cut
 * into 60-degree diamonds of the same width, whose two sharp points are cut off half that width from
 * the middle. Halves: strip a√3/2 + 2s, long edge 2a + 2s√3, cut by turns. Both rounded up to the
 * grid. `trimTo` is the unfinished hexagon from point to point (for halves, the half's long edge) and
 * across the flats.
 *
 * @throws EighthsError `strip-too-short`, `seam-too-wide`, `missing-field` and others
 * @example
 * const plan = hexagon({ finished: 2, count: 20 });
 * [plan.strip.width, plan.yield, plan.sets]; // ['4',8,3]
 */
export function hexagon(spec: HexagonSpec): UnitPlan {
  const basics = readBasics(spec, hexagonUnit);
  const side = finishedLength(spec, basics);
  const across = side.times(squareRoot(3));
  return basics.method === 'half-hexagons'
    ? halves(side, across, spec, basics)
    : whole(side, across, spec, basics);
}
