import {
  diamond,
  drunkardsPath,
  eightPointedStar,
  equilateralTriangle,
  flyingGeese,
  fourPatch,
  halfRectangleTriangles,
  halfSquareTriangles,
  hexagon,
  type Length,
  length,
  ninePatch,
  parallelogram,
  quarterSquareTriangles,
  railFence,
  settingTriangles,
  sixtyDegreeHalfTriangles,
  snowball,
  splitQuarterSquares,
  squareInSquare,
  stripSet,
  trapezoid,
  type UnitPlan,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { eighthsUp, fixed, fixedOf, isClose, over, times } from './fixed.js';
import { areaOf, clip, extent, offset, type Polygon, sideOf, turnedRound } from './polygon.js';
import * as shape from './shapes.js';

/**
 * The cuts against geometry done another way: the finished patch is laid out, every side is moved out
 * by the seam allowance, the sides are met again and the result is measured, in whole numbers of 10^−60.
 * No formula of the units is used here.
 */

/** Finished sizes from 1/2 to 12 by eighths. */
const SIZES = Array.from({ length: 93 }, (_, index) => index + 4);
const SEAMS = [1, 2, 3];
const USABLE = 60;

/** A cut: the exact length and the rounded one, and what the geometry measures. */
type Measured = readonly [exact: Length, cut: Length, measured: bigint];

/** The height of a polygon over its longest lower side. */
const heightOf = (polygon: Polygon): bigint => extent(polygon).height;
const widthOf = (polygon: Polygon): bigint => extent(polygon).width;

/** The distance between two parallel sides of a quadrilateral, from its area. */
const acrossSides = (polygon: Polygon, index: number): bigint =>
  over(areaOf(polygon), sideOf(polygon, index));

function cut(plan: UnitPlan, index: number, side: 'width' | 'height', measured: bigint): Measured {
  const one = plan.cuts[index];
  if (one === undefined) throw new RangeError(`${plan.unit} has no cut ${index}`);
  return [one.exact[side], one[side], measured];
}

const both = (plan: UnitPlan, index: number, raw: Polygon): Measured[] => [
  cut(plan, index, 'width', widthOf(raw)),
  cut(plan, index, 'height', heightOf(raw)),
];

/** The corner that a flipped square must cover: what the seam cuts off the unfinished unit. */
function flippedCorner(width: bigint, height: bigint, leg: bigint, s: bigint): bigint {
  const raw = offset(shape.rectangle(width, height), s);
  const seam = [
    { x: 0n, y: leg },
    { x: leg, y: 0n },
  ] as const;
  return widthOf(clip(raw, turnedRound(seam)));
}

/** Every unit: f and s as texts for the plan, and as fixed numbers for the geometry. */
interface Case {
  readonly name: string;
  /** Sizes that the unit refuses are left out, in eighths. */
  readonly from?: (seam: number) => number;
  readonly cuts: (f: string, s: string, finished: bigint, seam: bigint) => readonly Measured[];
}

const usable = USABLE;

const CASES: readonly Case[] = [
  ...(['two-at-a-time', 'cut-triangles'] as const).map(
    (method): Case => ({
      name: `half-square triangles, ${method}`,
      cuts: (finished, seam, f, s) => {
        const plan = halfSquareTriangles({ finished, seam, method });
        const raw = offset(shape.cornerOf(f), s);
        return [...both(plan, 0, raw), ...both(plan, 1, raw)];
      },
    }),
  ),
  {
    name: 'half-square triangles, eight at a time: four squares of two at a time',
    cuts: (finished, seam, f, s) => {
      const plan = halfSquareTriangles({ finished, seam, method: 'eight-at-a-time' });
      return [cut(plan, 0, 'width', 2n * widthOf(offset(shape.cornerOf(f), s)))];
    },
  },
  {
    name: 'half-square triangles, four at a time: the long edge is the side of the square',
    cuts: (finished, seam, f, s) => {
      const plan = halfSquareTriangles({ finished, seam, method: 'four-at-a-time' });
      return [cut(plan, 0, 'width', sideOf(offset(shape.cornerOf(f), s), 1))];
    },
  },
  ...(['two-at-a-time', 'cut-triangles', 'single-triangles'] as const).map(
    (method): Case => ({
      name: `quarter-square triangles, ${method}`,
      cuts: (finished, seam, f, s) => {
        const plan = quarterSquareTriangles({ finished, seam, method });
        return [cut(plan, 0, 'width', widthOf(offset(shape.quarterSquare(f), s)))];
      },
    }),
  ),
  {
    name: 'split quarter squares',
    cuts: (finished, seam, f, s) => {
      const plan = splitQuarterSquares({ finished, seam });
      return [
        cut(plan, 0, 'width', widthOf(offset(shape.quarterSquare(f), s))),
        cut(plan, 2, 'width', widthOf(offset(shape.cornerOf(f), s))),
      ];
    },
  },
  ...(['four-at-a-time', 'cut-triangles'] as const).map(
    (method): Case => ({
      name: `flying geese, ${method}`,
      from: (seam) => 2 * seam + 1,
      cuts: (finished, seam, w, s) => {
        const plan = flyingGeese({ finished, seam, method });
        return [
          cut(plan, 0, 'width', widthOf(offset(shape.goose(w, w / 2n), s))),
          cut(plan, 1, 'width', widthOf(offset(shape.cornerOf(w / 2n), s))),
        ];
      },
    }),
  ),
  {
    name: 'flying geese, stitch and flip',
    from: (seam) => 2 * seam + 1,
    cuts: (finished, seam, w, s) => {
      const plan = flyingGeese({ finished, seam, method: 'stitch-and-flip' });
      return [
        ...both(plan, 0, offset(shape.rectangle(w, w / 2n), s)),
        cut(plan, 1, 'width', flippedCorner(w, w / 2n, w / 2n, s)),
      ];
    },
  },
  ...(
    [
      [1, 1],
      [3, 2],
      [2, 3],
      [5, 2],
    ] as const
  ).map(
    ([n, d]): Case => ({
      name: `flying geese of ratio ${n} to ${d}, cut triangles`,
      from: (seam) => Math.floor((seam * d) / n) + 1,
      cuts: (width, seam, w, s) => {
        const height = length(width).times(d).dividedBy(n);
        if (height.compareTo(seam) <= 0) return [];
        const plan = flyingGeese({ finished: { width, height }, seam });
        const h = (w * BigInt(d)) / BigInt(n);
        return [
          ...both(plan, 0, offset(shape.goose(w, h), s)),
          ...both(plan, 1, offset(shape.rightTriangle(w / 2n, h), s)),
        ];
      },
    }),
  ),
  {
    name: 'square in a square from the center, two rounds',
    cuts: (center, seam, c, s) => {
      const plan = squareInSquare({ center, seam, rounds: 2 });
      // The corners stand on the center's sides; those of the second round on the first one's.
      const leg = over(c, shape.root(2));
      return [
        cut(plan, 0, 'width', widthOf(offset(shape.rectangle(c, c), s))),
        cut(plan, 1, 'width', widthOf(offset(shape.cornerOf(leg), s))),
        cut(plan, 2, 'width', widthOf(offset(shape.cornerOf(c), s))),
      ];
    },
  },
  {
    name: 'square in a square from the finished size',
    from: (seam) => Math.ceil(seam * Math.SQRT2),
    cuts: (finished, seam, f, s) => {
      const plan = squareInSquare({ finished, seam });
      const center = over(f, shape.root(2));
      return [
        cut(plan, 0, 'width', widthOf(offset(shape.rectangle(center, center), s))),
        cut(plan, 1, 'width', widthOf(offset(shape.cornerOf(f / 2n), s))),
      ];
    },
  },
  {
    name: 'square in a square, stitch and flip',
    from: (seam) => Math.ceil(seam * Math.SQRT2),
    cuts: (finished, seam, f, s) => {
      const plan = squareInSquare({ finished, seam, method: 'stitch-and-flip' });
      return [
        cut(plan, 0, 'width', widthOf(offset(shape.rectangle(f, f), s))),
        cut(plan, 1, 'width', flippedCorner(f, f, f / 2n, s)),
      ];
    },
  },
  {
    name: 'snowball',
    cuts: (finished, seam, f, s) => {
      const plan = snowball({ finished, seam, corner: length(finished).dividedBy(4) });
      return [
        ...both(plan, 0, offset(shape.rectangle(f, f), s)),
        cut(plan, 1, 'width', flippedCorner(f, f, f / 4n, s)),
      ];
    },
  },
  ...(
    [
      [2, 1],
      [3, 4],
      [5, 3],
    ] as const
  ).map(
    ([n, d]): Case => ({
      name: `half-rectangle triangles of ratio ${n} to ${d}`,
      cuts: (width, seam, w, s) => {
        const height = length(width).times(d).dividedBy(n);
        if (height.compareTo(seam) <= 0) return [];
        const plan = halfRectangleTriangles({ finished: { width, height }, seam });
        return both(plan, 0, offset(shape.rightTriangle(w, (w * BigInt(d)) / BigInt(n)), s));
      },
    }),
  ),
  {
    name: 'setting triangles',
    cuts: (finished, seam, f, s) => {
      const side = settingTriangles({ finished, seam, oversize: 0 });
      const corner = settingTriangles({ finished, seam, oversize: 0, triangle: 'corner' });
      const diagonal = times(f, shape.root(2));
      return [
        cut(side, 0, 'width', widthOf(offset(shape.quarterSquare(diagonal), s))),
        // The block's whole side is the long edge of the corner.
        cut(corner, 0, 'width', widthOf(offset(shape.cornerOf(diagonal / 2n), s))),
      ];
    },
  },
  ...[30, 45, 60, 90].map(
    (angle): Case => ({
      name: `diamonds of ${angle} degrees`,
      cuts: (finished, seam, f, s) => {
        const plan = diamond({ finished, seam, angle, usable });
        const raw = offset(shape.rhombus(f, angle), s);
        // All four sides lie the same distance apart: the strip's width is the ruler's line.
        expect(isClose(acrossSides(raw, 0), acrossSides(raw, 1))).toBe(true);
        expect(isClose(sideOf(raw, 0), fixedOf(plan.trimTo.width))).toBe(true);
        return [
          cut(plan, 0, 'height', acrossSides(raw, 0)),
          [plan.trimTo.height, plan.strip?.rulerLine ?? length(0), acrossSides(raw, 1)],
        ];
      },
    }),
  ),
  ...[30, 45, 60].map(
    (angle): Case => ({
      name: `parallelograms of ${angle} degrees`,
      cuts: (height, seam, f, s) => {
        const width = length(height).times(2);
        const plan = parallelogram({ finished: { width, height }, seam, angle, usable });
        const raw = offset(shape.parallelogram(2n * f, f, angle), s);
        const { strip, trimTo } = plan;
        expect(isClose(sideOf(raw, 0), fixedOf(trimTo.width))).toBe(true);
        expect(eighthsUp(acrossSides(raw, 1))).toBe(eighthsUp(fixedOf(strip?.rulerLine ?? '0')));
        return [cut(plan, 0, 'height', acrossSides(raw, 0))];
      },
    }),
  ),
  ...[30, 45, 60].map(
    (angle): Case => ({
      name: `trapezoids of ${angle} degrees, with both ends slanted and with one`,
      cuts: (height, seam, f, s) => {
        const width = length(height).times(4);
        const finished = { width, height };
        const wide = { usable: 80, seam, angle };
        const plan = trapezoid({ finished, ...wide });
        const single = trapezoid({ finished, ...wide, slants: 'left' });
        const raw = offset(shape.trapezoid(4n * f, f, angle), s);
        const rawSingle = offset(shape.rightTrapezoid(4n * f, f, angle), s);
        return [
          cut(plan, 0, 'height', heightOf(raw)),
          [plan.trimTo.width, plan.strip?.rulerLine ?? length(0), widthOf(raw)],
          cut(single, 0, 'height', heightOf(rawSingle)),
          [single.trimTo.width, single.strip?.rulerLine ?? length(0), widthOf(rawSingle)],
        ];
      },
    }),
  ),
  {
    name: 'equilateral triangles',
    cuts: (finished, seam, f, s) => {
      const plan = equilateralTriangle({ finished, seam, usable });
      const raw = offset(shape.equilateral(f), s);
      expect(isClose(widthOf(raw), fixedOf(plan.trimTo.width))).toBe(true);
      return [cut(plan, 0, 'height', heightOf(raw))];
    },
  },
  {
    name: '60-degree half triangles',
    cuts: (finished, seam, f, s) => {
      const plan = sixtyDegreeHalfTriangles({ finished, seam });
      const base = widthOf(shape.equilateral(f)) / 2n;
      return both(plan, 0, offset(shape.rightTriangle(base, f), s));
    },
  },
  {
    name: 'hexagons, whole and in halves',
    cuts: (finished, seam, f, s) => {
      const whole = hexagon({ finished, seam, usable });
      const halves = hexagon({ finished, seam, usable, method: 'half-hexagons' });
      const raw = offset(shape.hexagon(f), s);
      const half = shape.hexagon(f).filter(({ y }) => y <= heightOf(shape.hexagon(f)) / 2n);
      const rawHalf = offset(half, s);
      expect(isClose(widthOf(raw), fixedOf(whole.trimTo.width))).toBe(true);
      return [
        cut(whole, 0, 'height', heightOf(raw)),
        cut(halves, 0, 'height', heightOf(rawHalf)),
        [halves.trimTo.width, halves.strip?.rulerLine ?? length(0), widthOf(rawHalf)],
      ];
    },
  },
  {
    name: 'eight-pointed stars',
    // The diamond's side, a little over a quarter of the block, must be more than the allowance.
    from: (seam) => Math.ceil(seam * (2 + Math.SQRT2)),
    cuts: (finished, seam, f, s) => {
      const plan = eightPointedStar({ finished, seam });
      const patch = shape.starDiamond(f);
      const side = sideOf(patch, 0);
      const raw = offset(patch, s);
      return [
        cut(plan, 0, 'height', acrossSides(raw, 0)),
        cut(plan, 0, 'width', sideOf(raw, 0)),
        cut(plan, 1, 'width', widthOf(offset(shape.rectangle(side, side), s))),
        cut(plan, 2, 'width', widthOf(offset(shape.quarterSquare(f - 2n * side), s))),
      ];
    },
  },
  {
    name: 'strips and squares of patches',
    cuts: (finished, seam, f, s) => {
      const raw = (n: bigint, d: bigint) => offset(shape.rectangle((f * n) / d, f), s);
      const row = stripSet({ strips: [finished, 1], finished, seam, usable });
      const four = fourPatch({ finished, seam });
      const nine = ninePatch({ finished, seam });
      const squares = ninePatch({ finished, seam, method: 'cut-squares' });
      const rails = railFence({ finished, seam, rails: 4 });
      return [
        cut(row, 0, 'height', widthOf(raw(1n, 1n))),
        cut(four, 0, 'height', widthOf(raw(1n, 2n))),
        cut(nine, 0, 'height', widthOf(raw(1n, 3n))),
        cut(squares, 0, 'width', widthOf(raw(1n, 3n))),
        cut(rails, 0, 'height', widthOf(raw(1n, 4n))),
        [row.trimTo.height, row.strip?.step ?? length(0), heightOf(raw(1n, 1n))],
      ];
    },
  },
  {
    name: 'quarter circles: the squares of their templates',
    from: (seam) => Math.floor(((seam + 1) * 4) / 3) + 1,
    cuts: (finished, seam, f, s) => {
      const plan = drunkardsPath({ finished, seam });
      const radius = (f * 3n) / 4n;
      return [
        ...both(plan, 0, offset(shape.rectangle(radius, radius), s)),
        ...both(plan, 1, offset(shape.rectangle(f, f), s)),
      ];
    },
  },
];

const eighths = (count: number): string => `${count}/8`;

describe.each(SEAMS)('with a seam allowance of %i/8', (seam) => {
  it.each(CASES)('$name: the cut is the geometry rounded up', ({ cuts, from }) => {
    let checked = 0;
    // One list of what is wrong: a hundred thousand assertions would take longer than the geometry.
    const wrong: string[] = [];
    for (const size of SIZES) {
      if (size < Math.max(from?.(seam) ?? 0, seam + 1)) continue;
      for (const [exact, rounded, measured] of cuts(
        eighths(size),
        eighths(seam),
        fixed(size, 8),
        fixed(seam, 8),
      )) {
        checked += 1;
        const where = `finished ${eighths(size)}: ${exact} cut ${rounded}`;
        if (!isClose(fixedOf(exact), measured)) wrong.push(`${where}, not as measured`);
        if (fixedOf(rounded) !== fixed(eighthsUp(measured), 8))
          wrong.push(`${where}, not rounded up`);
        const over = rounded.minus(exact);
        if (over.sign() < 0) wrong.push(`${where}, short`);
        if (over.compareTo('1/8') >= 0) wrong.push(`${where}, a whole step over`);
      }
    }
    expect(wrong).toEqual([]);
    expect(checked).toBeGreaterThan(80);
  });
});
