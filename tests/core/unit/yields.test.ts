import {
  compareMethods,
  diamond,
  eightPointedStar,
  equilateralTriangle,
  flyingGeese,
  fourPatch,
  halfSquareTriangles,
  hexagon,
  length,
  ninePatch,
  parallelogram,
  railFence,
  stripSet,
  trapezoid,
  type UnitPlan,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fixed, fixedOf } from './fixed.js';
import { extent, type Polygon } from './polygon.js';
import * as shape from './shapes.js';

/** How many shapes fit, one after another, each moved along the strip until it touches the one before. */
function laid(first: Polygon, step: bigint, usable: bigint): number {
  let count = 0;
  while (extent(first).width + BigInt(count) * step <= usable) count += 1;
  return count;
}

const sizes = fc.tuple(fc.integer({ min: 6, max: 60 }), fc.integer({ min: 160, max: 480 }));

const perStrip = ({ strip }: UnitPlan): number => strip?.perStrip ?? 0;
const stripWidth = ({ strip }: UnitPlan): bigint => fixedOf(strip?.width ?? '0');
const lineOf = ({ strip }: UnitPlan): bigint => fixedOf(strip?.rulerLine ?? '0');

describe('a strip of the usable width yields as many as lie side by side on it', () => {
  it.each([30, 45, 60])('diamonds of %i degrees, the first angled cut included', (angle) => {
    fc.assert(
      fc.property(sizes, ([f, u]) => {
        const plan = diamond({ finished: `${f}/8`, usable: `${u}/8`, angle });
        const { y } = shape.direction(angle);
        const side = (stripWidth(plan) * fixed(1)) / y;
        expect(perStrip(plan)).toBe(laid(shape.rhombus(side, angle), side, fixed(u, 8)));
      }),
      { numRuns: 40 },
    );
  });

  it('parallelograms', () => {
    fc.assert(
      fc.property(sizes, ([f, u]) => {
        const finished = { width: `${f}/8`, height: `${f + 3}/16` };
        const plan = parallelogram({ finished, usable: `${u}/8`, angle: 60 });
        const base = (lineOf(plan) * fixed(1)) / shape.direction(60).y;
        const one = shape.parallelogram(base, stripWidth(plan), 60);
        expect(perStrip(plan)).toBe(laid(one, base, fixed(u, 8)));
      }),
      { numRuns: 40 },
    );
  });

  it('equilateral triangles, by turns', () => {
    fc.assert(
      fc.property(sizes, ([f, u]) => {
        const plan = equilateralTriangle({ finished: `${f}/8`, usable: `${u}/8` });
        const one = shape.equilateral(stripWidth(plan));
        expect(perStrip(plan)).toBe(laid(one, extent(one).width / 2n, fixed(u, 8)));
      }),
      { numRuns: 40 },
    );
  });

  it('hexagons, as diamonds', () => {
    fc.assert(
      fc.property(sizes, ([f, u]) => {
        fc.pre(u > 4 * f);
        const plan = hexagon({ finished: `${f}/8`, usable: `${u}/8` });
        const side = (stripWidth(plan) * fixed(1)) / shape.direction(60).y;
        expect(perStrip(plan)).toBe(laid(shape.rhombus(side, 60), side, fixed(u, 8)));
      }),
      { numRuns: 40 },
    );
  });

  it('trapezoids, by turns', () => {
    fc.assert(
      fc.property(sizes, ([f, u]) => {
        const finished = { width: `${f}/8`, height: `${f}/24` };
        fc.pre(length(finished.height).compareTo('1/4') > 0);
        const plan = trapezoid({ finished, usable: `${u}/8` });
        const one = shape.trapezoid(lineOf(plan), stripWidth(plan), 45);
        // Turned round, the next one's slant lies on this one's: it moves by the mean of its edges.
        const mean = lineOf(plan) - stripWidth(plan);
        expect(perStrip(plan)).toBe(laid(one, mean, fixed(u, 8)));
      }),
      { numRuns: 40 },
    );
  });
});

describe('trapezoids with one slanted end', () => {
  it('are reckoned in pairs that share a slant: never too many, and at most one too few', () => {
    fc.assert(
      fc.property(sizes, ([f, u]) => {
        const height = length(f).dividedBy(24);
        fc.pre(height.compareTo('1/4') > 0);
        const finished = { width: `${f}/8`, height };
        const plan = trapezoid({ finished, usable: `${u}/8`, slants: 'left' });
        const [long, lean] = [lineOf(plan), stripWidth(plan)];
        // Pairs take two long edges less one slant; an odd one its long edge.
        const pairs = fixed(u, 8) / (2n * long - lean);
        const rest = fixed(u, 8) - pairs * (2n * long - lean);
        const most = Number(2n * pairs + (rest >= long ? 1n : 0n));
        expect(perStrip(plan)).toBeLessThanOrEqual(most);
        expect(perStrip(plan)).toBeGreaterThanOrEqual(most - 1);
      }),
      { numRuns: 40 },
    );
  });
});

describe('sets', () => {
  it('make at least the units asked for, and one set less would not', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), (count) => {
        const plans = [
          halfSquareTriangles({ finished: 3, count, method: 'eight-at-a-time' }),
          flyingGeese({ finished: 6, count }),
          diamond({ finished: 3, count }),
          ninePatch({ finished: 6, count }),
          railFence({ finished: 6, count }),
          stripSet({ finished: 2, strips: [1, 2], count }),
        ];
        for (const plan of plans) {
          expect(plan.sets * plan.yield - plan.leftOver).toBe(count);
          expect(plan.leftOver).toBeGreaterThanOrEqual(0);
          expect(plan.leftOver).toBeLessThan(plan.yield);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('are the pieces, where pieces are not cut from strips', () => {
    const plan = flyingGeese({ finished: 6, count: 10 });
    expect(plan.pieces.map(({ count, width }) => `${count} of ${width}`)).toEqual([
      '3 of 7 1/4',
      '12 of 3 7/8',
    ]);
  });
});

describe('strips in pieces', () => {
  it.each([
    ['diamonds', (count: number) => diamond({ finished: 3, count }), 1],
    [
      'hexagons in halves',
      (count: number) => hexagon({ finished: 2, count, method: 'half-hexagons' }),
      2,
    ],
    ['stars', (count: number) => eightPointedStar({ finished: 12, count }), 8],
  ] as const)('%s: whole strips and a last one as long as needed', (_, plan, shapes) => {
    for (const count of [1, 5, 12, 40]) {
      const { strip, pieces } = plan(count);
      if (strip === undefined) throw new RangeError('no strip');
      const strips = pieces.filter(({ width }) => width.equals(strip.width)).slice(0, 2);
      let left = count * shapes;
      for (const piece of strips) {
        const room = piece.length.minus(strip.first);
        const yields = Math.floor(room.toNumber() / strip.step.toNumber() + 1e-9);
        expect(piece.length.compareTo(strip.usable)).toBeLessThanOrEqual(0);
        left -= Math.min(yields, strip.perStrip) * piece.count;
      }
      expect(left).toBeLessThanOrEqual(0);
    }
  });

  it('nine-patches: two cuts of the first set to one of the second', () => {
    const { pieces } = ninePatch({ finished: 6, count: 8 });
    expect(
      pieces.map(({ label, fabric, count, length: long }) => [label, fabric, count, `${long}`]),
    ).toEqual([
      ['first strip set', 'dark', 2, '40'],
      ['first strip set', 'light', 1, '40'],
      ['second strip set', 'light', 2, '20'],
      ['second strip set', 'dark', 1, '20'],
    ]);
  });

  it('four-patches take two cuts each', () => {
    const { pieces, yield: made } = fourPatch({ finished: 4, count: 8 });
    expect(made).toBe(8);
    expect(pieces.map(({ count, length: long }) => [count, `${long}`])).toEqual([
      [1, '40'],
      [1, '40'],
    ]);
  });
});

describe('methods side by side', () => {
  it('show the same area for the same units, and waste is the rest of the fabric', () => {
    for (const unit of ['half-square-triangles', 'flying-geese', 'square-in-square'] as const) {
      const finished = unit === 'flying-geese' ? { width: 6, height: 3 } : 6;
      const { methods, refused } = compareMethods(unit, finished, 24);
      expect(refused).toEqual([]);
      const [first] = methods;
      expect(methods.length).toBeGreaterThan(1);
      for (const { shows, fabric, waste } of methods) {
        expect(shows.toString()).toBe(first?.shows.toString());
        expect(shows.plus(waste).equals(fabric)).toBe(true);
        expect(waste.sign()).toBe(1);
      }
    }
  });

  it('16 half-square triangles that finish 3', () => {
    const { methods } = compareMethods('half-square-triangles', 3, 16);
    expect(
      methods.map((one) => [
        one.method,
        one.sets,
        `${one.fabric}`,
        one.biasEdges,
        one.seams,
        one.trims,
      ]),
    ).toEqual([
      ['two-at-a-time', 8, '240 1/4', 0, 16, 16],
      ['four-at-a-time', 4, '242', 64, 16, 16],
      ['eight-at-a-time', 2, '240 1/4', 0, 8, 16],
      ['cut-triangles', 8, '240 1/4', 32, 16, 16],
    ]);
  });

  it('a method that cannot make the size is refused with its error', () => {
    const { methods, refused } = compareMethods('flying-geese', { width: 5, height: 2 }, 4);
    expect(methods.map(({ method }) => method)).toEqual(['stitch-and-flip', 'cut-triangles']);
    expect(refused.map(({ method, error }) => [method, error.code])).toEqual([
      ['four-at-a-time', 'goose-ratio'],
    ]);
  });

  it('parts of a unit are left out', () => {
    const { methods } = compareMethods('quarter-square-triangles', 3, 4);
    expect(methods.map(({ method }) => method)).toEqual(['two-at-a-time', 'cut-triangles']);
  });
});
