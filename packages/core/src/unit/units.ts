import type { UnitDefinition } from './definition.js';
import { diamondUnit } from './diamond.js';
import { drunkardsPathUnit } from './drunkardsPath.js';
import { eightPointedStarUnit } from './eightPointedStar.js';
import { equilateralTriangleUnit } from './equilateralTriangle.js';
import { flyingGeeseUnit } from './flyingGeese.js';
import { fourPatchUnit } from './fourPatch.js';
import { halfRectangleTrianglesUnit } from './halfRectangleTriangles.js';
import { halfSquareTrianglesUnit } from './halfSquareTriangles.js';
import { hexagonUnit } from './hexagon.js';
import { ninePatchUnit } from './ninePatch.js';
import { parallelogramUnit } from './parallelogram.js';
import { quarterSquareTrianglesUnit } from './quarterSquareTriangles.js';
import { railFenceUnit } from './railFence.js';
import { settingTrianglesUnit } from './settingTriangles.js';
import { sixtyDegreeHalfTrianglesUnit } from './sixtyDegreeHalfTriangles.js';
import { snowballUnit } from './snowball.js';
import { splitQuarterSquaresUnit } from './splitQuarterSquares.js';
import { squareInSquareUnit } from './squareInSquare.js';
import { stripSetUnit } from './stripSet.js';
import { trapezoidUnit } from './trapezoid.js';

/** The units by name. A new one is a file of its own and a line here. */
const registry = {
  'half-square-triangles': halfSquareTrianglesUnit,
  'quarter-square-triangles': quarterSquareTrianglesUnit,
  'split-quarter-squares': splitQuarterSquaresUnit,
  'flying-geese': flyingGeeseUnit,
  'square-in-square': squareInSquareUnit,
  snowball: snowballUnit,
  'half-rectangle-triangles': halfRectangleTrianglesUnit,
  'setting-triangles': settingTrianglesUnit,
  diamond: diamondUnit,
  'eight-pointed-star': eightPointedStarUnit,
  parallelogram: parallelogramUnit,
  trapezoid: trapezoidUnit,
  'equilateral-triangle': equilateralTriangleUnit,
  'sixty-degree-half-triangles': sixtyDegreeHalfTrianglesUnit,
  hexagon: hexagonUnit,
  'four-patch': fourPatchUnit,
  'nine-patch': ninePatchUnit,
  'rail-fence': railFenceUnit,
  'strip-set': stripSetUnit,
  'drunkards-path': drunkardsPathUnit,
} as const;

/** The name of a unit. */
export type UnitName = keyof typeof registry;

/**
 * Every unit by name, as data: what it takes, how it is made, and what plans it.
 *
 * @example
 * UNITS['flying-geese'].methods.map(({ name }) => name); // ['four-at-a-time','stitch-and-flip','cut-triangles']
 */
export const UNITS: Readonly<Record<UnitName, UnitDefinition>> = registry;
