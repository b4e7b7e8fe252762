import {
  type Drawing,
  drawUnit,
  drawUnitCut,
  EighthsError,
  flyingGeese,
  halfSquareTriangles,
  type Point,
  planUnit,
  toSvg,
  UNITS,
  type UnitName,
  type UnitSpec,
  unitNames,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';

const SIZES: Readonly<Partial<Record<UnitName, UnitSpec>>> = {
  parallelogram: { finished: { width: 4, height: 2 } },
  trapezoid: { finished: { width: 6, height: 2 } },
  'strip-set': { finished: 2, strips: [1, 2, 3] },
};

const ALL = unitNames().flatMap((name) =>
  UNITS[name].methods.map(({ name: method }) => ({
    name,
    method,
    plan: planUnit(name, { finished: 4, ...SIZES[name], method }),
  })),
);

const fabricAreas = ({ shapes }: Drawing): (readonly Point[])[] =>
  shapes.flatMap((shape) =>
    shape.kind === 'area' && shape.role === 'fabric' ? [shape.points] : [],
  );

const areaOf = (points: readonly Point[]): number => {
  const dots = points.map(({ x, y }) => [x.toNumber(), y.toNumber()] as const);
  const doubled = dots.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = dots[(index + 1) % dots.length] ?? [x, y];
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(doubled / 2);
};

describe.each(ALL)('$name, $method', ({ plan }) => {
  it('is drawn with all its fabrics, out to the raw edges', () => {
    const drawing = drawUnit(plan);
    const svg = toSvg(drawing);
    expect(svg).toContain('<svg');
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    expect(drawing.title.text).not.toMatch(/\{|√/);
    const raw = drawing.shapes.find((shape) => shape.kind === 'area' && shape.role === 'outline');
    if (raw?.kind !== 'area') throw new Error('no outline');
    // The outside of a curve lies below the inside one, so areas add up only without arcs.
    if (!plan.approximate) {
      const total = fabricAreas(drawing).reduce((sum, points) => sum + areaOf(points), 0);
      // Beyond a point two patches lie on each other, as the fabrics do.
      expect(total).toBeGreaterThan(areaOf(raw.points) - 0.001);
      expect(total).toBeLessThan(areaOf(raw.points) + 0.3);
    }
  });

  it('has a picture of each of its cuts', () => {
    for (const cut of plan.cuts.keys()) {
      const svg = toSvg(drawUnitCut(plan, { cut: cut + 1 }));
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
    }
  });

  it('is the same for the left hand, but for the ruler and where it is held', () => {
    const own = (drawing: Drawing) =>
      drawing.shapes.filter(
        (shape) =>
          !(shape.kind === 'area' && shape.role === 'ruler') &&
          !(shape.kind === 'line' && shape.role === 'trim-line') &&
          shape.kind !== 'label',
      );
    const [left, right] = [drawUnit(plan, { hand: 'left' }), drawUnit(plan, { hand: 'right' })];
    expect(JSON.stringify(own(left))).toBe(JSON.stringify(own(right)));
  });
});

describe('a drawing', () => {
  it('of a goose shows how far its point lies below the edge', () => {
    const { shapes } = drawUnit(flyingGeese({ finished: 6 }));
    const measures = shapes.flatMap((shape) =>
      shape.kind === 'dimension' ? [`${shape.away} ${shape.measure}`] : [],
    );
    expect(measures).toContain('left 1/4');
  });

  it('of a square shows two seams beside each diagonal that is sewn', () => {
    const seams = (method: 'two-at-a-time' | 'eight-at-a-time' | 'cut-triangles') =>
      drawUnitCut(halfSquareTriangles({ finished: 3, method })).shapes.filter(
        (shape) => shape.kind === 'line' && shape.role === 'seam',
      ).length;
    expect([seams('two-at-a-time'), seams('eight-at-a-time'), seams('cut-triangles')]).toEqual([
      2, 4, 0,
    ]);
  });

  it('refuses a cut that there is not', () => {
    const plan = halfSquareTriangles({ finished: 3 });
    expect(() => drawUnitCut(plan, { cut: 3 })).toThrow(EighthsError);
  });
});
