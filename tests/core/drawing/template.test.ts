import {
  type Drawing,
  drawTemplate,
  drunkardsPath,
  EighthsError,
  halfSquareTriangles,
  paint,
  planUnit,
  toSvg,
  UNITS,
  unitNames,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';

interface Dot {
  readonly x: number;
  readonly y: number;
}

/** The areas of a drawing in their order: the template, then the squares to measure. */
const areas = ({ shapes }: Drawing): (readonly Dot[])[] =>
  shapes.flatMap((shape) =>
    shape.kind === 'area'
      ? [shape.points.map(({ x, y }) => ({ x: x.toNumber(), y: y.toNumber() }))]
      : [],
  );

const sides = (dots: readonly Dot[]) => ({
  width: Math.max(...dots.map(({ x }) => x)) - Math.min(...dots.map(({ x }) => x)),
  height: Math.max(...dots.map(({ y }) => y)) - Math.min(...dots.map(({ y }) => y)),
});

const area = (dots: readonly Dot[]): number =>
  Math.abs(
    dots.reduce((sum, { x, y }, index) => {
      const next = dots[(index + 1) % dots.length] ?? { x, y };
      return sum + x * next.y - next.x * y;
    }, 0) / 2,
  );

const CASES = [
  { finished: 1, radius: '1/2', seam: '1/8' },
  { finished: 4, radius: 3, seam: '1/4' },
  { finished: 12, radius: '9 1/8', seam: '3/8' },
] as const;

describe.each(CASES)('the templates of $finished with radius $radius', (spec) => {
  const plan = drunkardsPath(spec);
  const [side, r, s] = [
    plan.finished.width.toNumber(),
    plan.radius.toNumber(),
    plan.seam.toNumber(),
  ];

  it('are as large as the pieces with their seam allowances', () => {
    const [inside = [], outside = []] = [1, 2].map(
      (template) => areas(drawTemplate(plan, { template }))[0],
    );
    expect(sides(inside).width).toBeCloseTo(r + 2 * s, 5);
    expect(sides(inside).height).toBeCloseTo(r + 2 * s, 5);
    expect(sides(outside).width).toBeCloseTo(side + 2 * s, 5);
    expect(sides(outside).height).toBeCloseTo(side + 2 * s, 5);
  });

  it('hold the quarter circles that the seam allowance moves in and out, and the straight ends', () => {
    const quarter = (radius: number) => (Math.PI * radius * radius) / 4;
    const [inside = [], outside = []] = [1, 2].map(
      (template) => areas(drawTemplate(plan, { template }))[0],
    );
    // About the curve's center: a strip s wide along both straight edges, and the quarter circle.
    const insideArea = quarter(r + s) + 2 * s * (r + s) + s * s;
    expect(area(inside)).toBeCloseTo(insideArea, 1);
    expect(Math.abs(area(inside) - insideArea)).toBeLessThan(insideArea / 1000);
    const whole = (side + 2 * s) ** 2;
    const outsideArea = whole - quarter(r - s) - 2 * s * (r - s) - s * s;
    expect(Math.abs(area(outside) - outsideArea)).toBeLessThan(whole / 1000);
  });

  it('follow their arcs within a thousandth of an inch', () => {
    for (const [template, radius] of [
      [1, r + s],
      [2, r - s],
    ] as const) {
      const [dots = []] = areas(drawTemplate(plan, { template }));
      const onArc = dots.filter(
        ({ x, y }) => Math.abs(Math.hypot(x - s, y - s) - radius) < 1e-5 && x > s && y > s,
      );
      expect(onArc.length).toBeGreaterThan(40);
      for (const [index, dot] of onArc.slice(1).entries()) {
        const before = onArc[index] ?? dot;
        const middle = { x: (dot.x + before.x) / 2, y: (dot.y + before.y) / 2 };
        expect(radius - Math.hypot(middle.x - s, middle.y - s)).toBeLessThan(0.001);
      }
    }
  });

  it('come as sheets with squares of 1 inch and 5 centimeters, or without', () => {
    for (const template of [1, 2]) {
      const [, inch = [], metric = []] = areas(drawTemplate(plan, { template }));
      expect(sides(inch)).toEqual({
        width: expect.closeTo(1, 5),
        height: expect.closeTo(1, 5),
      });
      expect(sides(metric).width).toBeCloseTo(5 / 2.54, 5);
      expect(areas(drawTemplate(plan, { template, sheet: false })).length).toBe(1);
    }
  });

  it('say on the sheet how to print and use it', () => {
    const svg = toSvg(drawTemplate(plan), { size: 'true' });
    for (const words of [
      '1 inch',
      '5 cm',
      'Print at 100 %.',
      'Measure both squares first.',
      'Never cut against paper.',
    ]) {
      expect(svg).toContain(`>${words}<`);
    }
  });

  it('have their words and marks within the sheet', () => {
    for (const template of [1, 2]) {
      const { x, y, width, height, marks } = paint(drawTemplate(plan, { template }));
      for (const mark of marks) {
        if (mark.kind !== 'text' || mark.upward) continue;
        // A letter is about half as wide as high.
        const half = (mark.text.length * mark.size * 0.52) / 2;
        expect(mark.x - half).toBeGreaterThan(x);
        expect(mark.x + half).toBeLessThan(x + width);
        expect(mark.y + mark.size / 2).toBeLessThan(y + height);
      }
    }
  });

  it('are written in real inches', () => {
    const drawing = drawTemplate(plan);
    const { width, height } = paint(drawing);
    const root = /width="([\d.]+)in" height="([\d.]+)in"/.exec(toSvg(drawing, { size: 'true' }));
    expect(Number(root?.[1])).toBeCloseTo(width, 3);
    expect(Number(root?.[2])).toBeCloseTo(height, 3);
  });
});

describe('templates', () => {
  it('are there for every cut that no ruler and no strip makes', () => {
    for (const name of unitNames()) {
      const { templates = [], cuts, strip } = planUnit(name, UNITS[name].example);
      const round = cuts.filter(({ shape }) => shape === 'template' && strip === undefined);
      expect(templates.map(({ piece }) => piece)).toEqual(round.map(({ label }) => label));
    }
  });

  it('are refused where the unit is cut with a ruler, and where there are not so many', () => {
    expect(() => drawTemplate(halfSquareTriangles({ finished: 3 }))).toThrow(EighthsError);
    expect(() => drawTemplate(drunkardsPath({ finished: 4 }), { template: 3 })).toThrow(
      EighthsError,
    );
  });
});

describe('a unit’s example', () => {
  it.each(unitNames())('of %s is made by its first method, and by every method it has', (name) => {
    const { example, methods } = UNITS[name];
    for (const { name: method } of methods) {
      expect(planUnit(name, { ...example, method }).cuts.length).toBeGreaterThan(0);
    }
    expect(planUnit(name, example).method).toBe(methods[0].name);
  });
});
