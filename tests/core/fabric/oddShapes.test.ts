import {
  cuttingPlan,
  diamond,
  equilateralTriangle,
  halfSquareTriangles,
  hexagon,
  length,
  parallelogram,
  precuts,
  shapesFromFabric,
  shapesFromStrips,
  trapezoid,
  type UnitPlan,
  yardage,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from './support/refusal.js';

const stripOf = ({ strip }: UnitPlan) => {
  if (strip === undefined) throw new Error('The unit is not cut from strips.');
  return strip;
};

const units: readonly (readonly [string, (count: number) => UnitPlan])[] = [
  ['diamonds', (count) => diamond({ finished: 3, count })],
  ['60-degree diamonds', (count) => diamond({ finished: '2 1/2', angle: 60, count })],
  ['60-degree triangles', (count) => equilateralTriangle({ finished: 4, count })],
  ['hexagons', (count) => hexagon({ finished: 2, count })],
];

describe.each(units)('%s from strips', (_, unit) => {
  it('are as many a strip, and take the same pieces, as the unit says', () => {
    for (const count of [1, 7, 30, 100]) {
      const plan = unit(count);
      const shapes = shapesFromStrips({ strip: stripOf(plan), count });
      expect(shapes.perStrip).toBe(plan.strip?.perStrip);
      expect(shapes.strips).toBe(plan.sets);
      const told = (list: readonly { width: unknown; length: unknown; count: number }[]) =>
        list.map((piece) => [`${piece.width}`, `${piece.length}`, piece.count]);
      expect(told(shapes.pieces)).toEqual(told(plan.pieces));
    }
  });

  it('fill each strip: one step more would not fit', () => {
    const strip = stripOf(unit(1));
    fc.assert(
      fc.property(fc.integer({ min: 15 * 8, max: 60 * 8 }), (eighths) => {
        const width = length(eighths).dividedBy(8);
        const { perStrip } = shapesFromStrips({ strip, count: 1, width });
        const takes = (shapes: number) => strip.first.plus(strip.step.times(shapes));
        expect(takes(perStrip).compareTo(width)).not.toBe(1);
        expect(takes(perStrip + 1).compareTo(width)).toBe(1);
      }),
      { numRuns: 30, seed: 8 },
    );
  });

  it('are bought as strips, exactly, and share fabric with others', () => {
    const {
      pieces,
      strips,
      length: total,
    } = shapesFromStrips({
      strip: stripOf(unit(50)),
      count: 50,
      width: 42,
    });
    expect(yardage({ width: 42, pieces, method: 'plain' }).bare.equals(total)).toBe(true);
    const both = [...pieces, { width: '1 1/2', length: 42, count: 2 }];
    const plan = cuttingPlan({ width: 42, pieces: both, method: 'plain' });
    expect(plan.length.equals(total.plus(3))).toBe(true);
    expect(plan.strips.reduce((sum, { count }) => sum + count, 0)).toBe(strips + 2);
  });
});

describe('shapes from strips', () => {
  // Equilateral triangles of height 4: strips h + 3/4, half a base 2(h + 3/4)/√3 a step: derived (X).
  it('on fabric of another width than the unit was planned for', () => {
    const strip = stripOf(equilateralTriangle({ finished: 4 }));
    const perStrip = (width: number) => shapesFromStrips({ strip, count: 1, width }).perStrip;
    expect([perStrip(40), perStrip(42), perStrip(22)]).toEqual([13, 14, 7]);
  });

  it('other units of the house are cut the same way', () => {
    for (const plan of [
      parallelogram({ finished: { width: 4, height: 2 }, count: 9 }),
      trapezoid({ finished: { width: 6, height: 2 }, count: 9 }),
    ]) {
      const shapes = shapesFromStrips({ strip: stripOf(plan), count: 9 });
      expect([shapes.perStrip, shapes.strips]).toEqual([plan.strip?.perStrip, plan.sets]);
    }
  });

  it('from a fat quarter: whole strips across it', () => {
    const strip = stripOf(diamond({ finished: 3 }));
    const quarter = { width: '20 1/2', length: '17 1/2' };
    const { perStrip } = shapesFromStrips({ strip, count: 1, width: quarter.width });
    const strips = Math.floor(17.5 / strip.width.toNumber());
    expect(shapesFromFabric(strip, quarter)).toBe(strips * perStrip);
    expect(shapesFromFabric(strip, { width: 2, length: 40 })).toBe(0);
  });

  it('triangles from squares are squares to a cutting plan, and to precuts', () => {
    const { pieces } = halfSquareTriangles({ finished: 3, count: 40, method: 'cut-triangles' });
    const first = pieces.slice(0, 1);
    // 20 squares of 3 7/8; a usable 20 1/2 by 17 1/2 gives five by four.
    expect(first.map(({ width, count }) => [`${width}`, count])).toEqual([['3 7/8', 20]]);
    expect(precuts({ kind: 'fat-quarter', pieces: first }).needed).toBe(1);
  });

  const good = { strip: { width: 3, first: 3, step: 4, usable: 40 }, count: 5 };
  it.each([
    ['a strip that is too short', { width: 6 }, 'strip-too-short', 'width'],
    ['no length of strips', { strip: { width: 3, first: 3, step: 4 } }, 'missing-field', 'width'],
    ['no step', { strip: { width: 3, first: 3, step: 0 } }, 'not-positive', 'strip.step'],
    ['no shapes', { count: 0 }, 'not-a-count', 'count'],
    ['a misspelled field', { strips: 3 }, 'unknown-field', 'strips'],
  ])('refuse %s', (_, change, code, field) => {
    const spec = JSON.parse(JSON.stringify({ ...good, ...change }));
    expect(refusal(() => shapesFromStrips(spec))).toEqual([code, field]);
  });
});
