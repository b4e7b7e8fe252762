import {
  commonInputs,
  EighthsError,
  flyingGeese,
  halfRectangleTriangles,
  halfSquareFromSquare,
  halfSquareTriangles,
  type Length,
  length,
  planUnit,
  quarterSquareTriangles,
  settingTriangles,
  squareInSquare,
  UNITS,
  type UnitName,
  type UnitPlan,
  type UnitPoint,
  type UnitSpec,
  unitNames,
  unitSentences,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fixedOf, isClose, NEGLIGIBLE } from './fixed.js';
import { areaOf, type Dot, type Edge, leftOf, offset, type Polygon, within } from './polygon.js';

/** A spec that each unit makes, with a method if it is not the usual one. */
const SPECS: Readonly<Record<UnitName, UnitSpec>> = {
  'half-square-triangles': { finished: 3 },
  'quarter-square-triangles': { finished: 3 },
  'split-quarter-squares': { finished: 3 },
  'flying-geese': { finished: { width: 6, height: 3 } },
  'square-in-square': { center: 3 },
  snowball: { finished: 6 },
  'half-rectangle-triangles': { finished: { width: 3, height: 6 } },
  'setting-triangles': { finished: 9 },
  diamond: { finished: 3 },
  'eight-pointed-star': { finished: 12 },
  parallelogram: { finished: { width: 4, height: 2 } },
  trapezoid: { finished: { width: 6, height: 2 } },
  'equilateral-triangle': { finished: 4 },
  'sixty-degree-half-triangles': { finished: 4 },
  hexagon: { finished: 2 },
  'four-patch': { finished: 4 },
  'nine-patch': { finished: 6 },
  'rail-fence': { finished: 6 },
  'strip-set': { finished: 2, strips: [1, 2, '1 1/2'] },
  'drunkards-path': { finished: 4 },
};

const ALL = unitNames().flatMap((name) =>
  UNITS[name].methods.map(({ name: method }) => ({
    name,
    method,
    plan: planUnit(name, { ...SPECS[name], method }),
  })),
);

const dotOf = ({ x, y }: UnitPoint): Dot => ({ x: fixedOf(x), y: fixedOf(y) });
const dots = (points: readonly UnitPoint[]): Polygon => points.map(dotOf);

describe.each(ALL)('$name, $method', ({ name, method, plan }) => {
  it('has patches that fill the finished unit and do not overlap', () => {
    const outline = dots(plan.outline);
    const patches = plan.patches.map(({ points }) => dots(points));
    const total = patches.reduce((sum, patch) => sum + areaOf(patch), 0n);
    expect(isClose(total, areaOf(outline))).toBe(true);
    // The outside of a curve is not convex, and clipping is for convex polygons.
    for (const patch of plan.approximate ? [] : patches) {
      expect(isClose(areaOf(within(patch, outline)), areaOf(patch))).toBe(true);
    }
  });

  it('has trim lines from edge to edge of the trimmed unit, and points inside it', () => {
    for (const mark of plan.trim) {
      const points = mark.kind === 'point' ? [mark.at] : [mark.from, mark.to];
      for (const { x, y } of points) {
        expect(x.sign()).toBeGreaterThanOrEqual(0);
        expect(y.sign()).toBeGreaterThanOrEqual(0);
        expect(x.compareTo(plan.trimTo.width)).toBeLessThanOrEqual(0);
        expect(y.compareTo(plan.trimTo.height)).toBeLessThanOrEqual(0);
      }
    }
  });

  it('has its seam lines on the seams between its patches', () => {
    const seam = fixedOf(plan.seam);
    const corners = plan.patches.flatMap(({ points }) => dots(points));
    for (const mark of plan.trim) {
      if (mark.kind === 'point' || mark.role === 'center') continue;
      const line: Edge = [dotOf(mark.from), dotOf(mark.to)];
      const moved = line.map(({ x, y }) => ({ x: x - seam, y: y - seam }));
      const [start, end] = moved;
      if (start === undefined || end === undefined) throw new RangeError('no line');
      const on = corners.filter((corner) => isClose(leftOf([start, end], corner), 0n));
      expect(on.length).toBeGreaterThanOrEqual(2);
    }
  });

  it('speaks in sentences that are filled, from the tables', () => {
    for (const { code, text } of [...plan.steps, ...plan.warnings]) {
      expect(unitSentences[code]).toBeDefined();
      expect(text).not.toMatch(/\{\w+\}|√|undefined|\[object/);
    }
    expect(plan.steps.length).toBeGreaterThan(0);
  });

  it('turns into JSON that reads well and loses nothing', () => {
    const json = JSON.parse(JSON.stringify(plan));
    expect(json.trimTo.width).toBe(plan.trimTo.width.toString());
    expect(length(json.trimTo.width).equals(plan.trimTo.width)).toBe(true);
    expect(JSON.stringify(json)).toBe(JSON.stringify(plan));
  });

  it('has cuts on the grid, less than a step more than exact', () => {
    for (const { width, height, exact, shape } of plan.cuts) {
      const sides: readonly (readonly [Length, Length])[] = [
        [width, exact.width],
        [height, exact.height],
      ];
      for (const [cut, from] of shape === 'strip' ? sides.slice(1) : sides) {
        expect(cut.isOnGrid(plan.grid)).toBe(true);
        expect(cut.minus(from).sign()).toBeGreaterThanOrEqual(0);
        expect(cut.minus(from).compareTo(plan.grid)).toBe(-1);
      }
    }
  });

  it('names its fabrics after its parts, or as they are called', () => {
    const definition = UNITS[name];
    for (const { fabric } of [...plan.cuts, ...plan.patches]) {
      expect(definition.fabrics).toContain(fabric);
    }
    const [part = ''] = definition.fabrics;
    const spec = { ...SPECS[name], fabrics: { [part]: 'indigo' } };
    expect(definition.plan(spec).pieces.map(({ fabric }) => fabric)).toContain('indigo');
  });

  it('is the same plan whenever it is made', () => {
    const again = planUnit(name, { ...SPECS[name], method });
    expect(JSON.stringify(again)).toBe(JSON.stringify(plan));
  });
});

describe('a unit as data', () => {
  it.each(unitNames())('%s takes what it says, by default what it says', (name) => {
    const { inputs, methods } = UNITS[name];
    const spec = SPECS[name];
    const usual = JSON.stringify(UNITS[name].plan({ ...spec, method: methods[0].name }));
    for (const input of [...inputs, ...commonInputs]) {
      if (!('default' in input) || input.default === undefined || input.name in spec) continue;
      const said = { ...spec, method: methods[0].name, [input.name]: input.default };
      expect(JSON.stringify(UNITS[name].plan(said)), input.name).toBe(usual);
    }
    for (const field of Object.keys(spec)) {
      expect(inputs.map((input) => input.name)).toContain(field);
    }
  });

  it.each(unitNames())('%s keeps to the limits that it names', (name) => {
    for (const input of UNITS[name].inputs) {
      const beyond =
        input.kind === 'count' || input.kind === 'degrees'
          ? [input.least - 1, input.most + 1]
          : input.kind === 'choice'
            ? ['somewhere']
            : input.kind === 'length'
              ? [input.sign === 'positive' ? 0 : -1]
              : [];
      for (const value of beyond) {
        const spec = { ...SPECS[name], [input.name]: value };
        expect(() => UNITS[name].plan(spec), `${input.name} ${value}`).toThrow(EighthsError);
      }
    }
  });

  it.each(unitNames())('%s has methods that yield what they say', (name) => {
    for (const { name: method, yield: said } of UNITS[name].methods) {
      if (said === undefined) continue;
      expect(planUnit(name, { ...SPECS[name], method }).yield).toBe(said);
    }
  });

  it('bears its own name', () => {
    for (const name of unitNames()) expect(UNITS[name].name).toBe(name);
  });
});

describe('bias edges', () => {
  const bias = (plan: UnitPlan) => [plan.bias.outside, plan.bias.seams, plan.bias.sewnFirst];
  it.each<[string, UnitPlan, readonly [number, number, boolean]]>([
    ['half-square, two at a time', halfSquareTriangles({ finished: 3 }), [0, 2, true]],
    [
      'half-square, four at a time: all four outer edges',
      halfSquareTriangles({ finished: 3, method: 'four-at-a-time' }),
      [4, 0, true],
    ],
    [
      'half-square, single',
      halfSquareTriangles({ finished: 3, method: 'cut-triangles' }),
      [0, 2, false],
    ],
    ['quarter-square: none outside', quarterSquareTriangles({ finished: 3 }), [0, 8, true]],
    ['geese', flyingGeese({ finished: 6, method: 'cut-triangles' }), [0, 4, false]],
    ['square in a square: the corners’ long edges', squareInSquare({ center: 3 }), [0, 4, false]],
    [
      'side setting triangles: the two sewn to blocks',
      settingTriangles({ finished: 9 }),
      [2, 0, false],
    ],
    [
      'half rectangles: the slant',
      halfRectangleTriangles({ finished: { width: 2, height: 4 } }),
      [0, 2, false],
    ],
  ])('%s', (_, plan, expected) => {
    expect(bias(plan)).toEqual(expected);
  });
});

describe('trim marks', () => {
  const text = ({ x, y }: UnitPoint): string => `${x}, ${y}`;
  const marks = ({ trim }: UnitPlan): string[] =>
    trim.map((mark) =>
      mark.kind === 'point'
        ? `${mark.role} ${text(mark.at)}`
        : `${mark.role} ${text(mark.from)} to ${text(mark.to)}`,
    );

  it('half-square: the diagonal from corner to corner', () => {
    expect(marks(halfSquareTriangles({ finished: 3 }))[0]).toBe('diagonal 0, 3 1/2 to 3 1/2, 0');
  });

  it('geese: the point a quarter inch below the edge, the seams into the lower corners', () => {
    expect(marks(flyingGeese({ finished: 6 })).slice(0, 3)).toEqual([
      'point 3 1/4, 1/4',
      'diagonal 0, 3 1/2 to 3 1/2, 0',
      'diagonal 3, 0 to 6 1/2, 3 1/2',
    ]);
  });

  it('half rectangles: the seam beside the corners, through the points inside them', () => {
    const finished = { width: 2, height: 4 };
    expect(marks(halfRectangleTriangles({ finished })).slice(0, 3)).toEqual([
      'seam 1/8, 0 to 2 3/8, 4 1/2',
      'crossing 1/4, 1/4',
      'crossing 2 1/4, 4 1/4',
    ]);
    expect(marks(halfRectangleTriangles({ finished, direction: 'rising' }))[0]).toBe(
      'seam 1/8, 4 1/2 to 2 3/8, 0',
    );
  });

  it('square in a square: a point in the middle of each side, a seam allowance inside', () => {
    const plan = squareInSquare({ finished: 6 });
    expect(marks(plan).filter((mark) => mark.startsWith('point'))).toEqual([
      'point 3 1/4, 1/4',
      'point 6 1/4, 3 1/4',
      'point 3 1/4, 6 1/4',
      'point 1/4, 3 1/4',
    ]);
  });
});

describe('warnings', () => {
  const codes = (name: UnitName, spec: UnitSpec): string[] =>
    planUnit(name, spec).warnings.map(({ code }) => code);

  it.each<[string, UnitName, UnitSpec, string]>([
    ['a trim size off the grid', 'half-square-triangles', { finished: '3 1/3' }, 'trim-off-grid'],
    ['allowances on each other', 'half-square-triangles', { finished: '3/8' }, 'narrow-unit'],
    [
      'outer edges on the bias',
      'half-square-triangles',
      { finished: 3, method: 'four-at-a-time' },
      'bias-outside',
    ],
    [
      'geese without a point',
      'flying-geese',
      { finished: { width: 5, height: 2 }, method: 'stitch-and-flip' },
      'no-point',
    ],
    [
      'a seam that misses the corners',
      'half-rectangle-triangles',
      { finished: { width: 2, height: 3 } },
      'seam-not-in-corner',
    ],
    ['mirror images', 'parallelogram', { finished: { width: 2, height: 3 } }, 'mirror-pairs'],
    ['a strip off the grid', 'diamond', { finished: 3 }, 'strip-off-grid'],
    ['an angle that is not exact', 'diamond', { finished: 3, angle: 50 }, 'angle-approximate'],
    ['pi', 'drunkards-path', { finished: 4 }, 'pi-approximate'],
  ])('%s', (_, name, spec, code) => {
    expect(codes(name, spec)).toContain(code);
  });

  it('none where all is usual', () => {
    expect(codes('half-square-triangles', { finished: 3 })).toEqual([]);
    expect(codes('flying-geese', { finished: 6 })).toEqual([]);
  });

  it('setting triangles say the least in words', () => {
    const { steps, cuts } = settingTriangles({ finished: 6 });
    const texts = steps.map(({ text }) => text).join(' ');
    expect(texts).toContain('Exactly, a square of 9 3/4 would do.');
    expect(cuts[0]?.width.toString()).toBe('10 1/4');
  });
});

describe('half-square triangles from squares that are cut already', () => {
  it('are the reverse of cutting them', () => {
    const methods = ['two-at-a-time', 'four-at-a-time', 'eight-at-a-time'] as const;
    fc.assert(
      fc.property(
        fc.integer({ min: 24, max: 100 }),
        fc.constantFrom(...methods),
        (eighths, method) => {
          const square = length(eighths).dividedBy(8);
          const { finished, exact, oversize } = halfSquareFromSquare({ square, method });
          const [cut] = halfSquareTriangles({ finished, method, oversize }).cuts;
          expect(cut?.exact.width.equals(square)).toBe(true);
          expect(finished.compareTo(exact)).toBeLessThanOrEqual(0);
          // The next line of the grid would need a larger square.
          const [next] = halfSquareTriangles({ finished: finished.plus('1/8'), method }).cuts;
          expect(next?.exact.width.compareTo(square)).toBe(1);
        },
      ),
    );
  });
});

describe('the unfinished shape', () => {
  it.each(ALL.filter(({ plan: { strip, trims } }) => strip !== undefined && trims === 0))(
    '$name has the height of its strip',
    ({ plan }) => {
      if (plan.method === 'half-hexagons') return;
      const raw = offset(dots(plan.outline), fixedOf(plan.seam));
      const heights = raw.map(({ y }) => y).sort((a, b) => (a < b ? -1 : 1));
      const height = (heights.at(-1) ?? 0n) - (heights[0] ?? 0n);
      expect(height - fixedOf(plan.trimTo.height) < NEGLIGIBLE).toBe(true);
    },
  );
});
