import { cuttingPlan, cuttingRows, drawCuttingPlan, length, toSvg } from '@eighths/core';
import { describe, expect, test } from 'vitest';

const plan = cuttingPlan({
  width: 42,
  pieces: [
    { width: '6 1/2', length: 9, count: 7 },
    { width: '2 1/2', length: '8 1/2', count: 30 },
    { width: 2, length: 2, count: 40 },
  ],
});

const rows = Array.from({ length: cuttingRows(plan) }, (_, index) =>
  drawCuttingPlan(plan, { row: index + 1 }),
);

describe('fabric as it is cut', () => {
  test('every piece is drawn once, in its own size', () => {
    const sizes = rows.flatMap(({ shapes }) =>
      shapes.flatMap((shape) => {
        if (shape.kind !== 'area' || shape.role !== 'fabric') return [];
        const [topLeft, , bottomRight] = shape.points;
        if (topLeft === undefined || bottomRight === undefined) throw new Error('no rectangle');
        const across = bottomRight.x.minus(topLeft.x);
        return [`${shape.fabric}: ${across} by ${bottomRight.y.minus(topLeft.y)}`];
      }),
    );
    const counts = new Map<string, number>();
    for (const size of sizes) counts.set(size, (counts.get(size) ?? 0) + 1);
    expect(Object.fromEntries(counts)).toEqual({
      '1: 9 by 6 1/2': 7,
      '2: 8 1/2 by 2 1/2': 30,
      '3: 2 by 2': 40,
    });
  });

  test('no row is longer than a yard, and together they are the length of the plan', () => {
    const heights = rows.map(({ shapes }) => {
      const outline = shapes.find((shape) => shape.kind === 'area' && shape.role === 'outline');
      if (outline?.kind !== 'area') throw new Error('no outline');
      return outline.points[2]?.y ?? length(0);
    });
    for (const height of heights) expect(height.compareTo('1 yd')).toBeLessThanOrEqual(0);
    const sum = heights.reduce((total, height) => total.plus(height), length(0));
    expect(sum.equals(plan.length)).toBe(true);
  });

  test('each kind of strip carries the number of its step where it first comes in a row', () => {
    const numbers = rows.map(({ shapes }) =>
      shapes.flatMap((shape) =>
        shape.kind === 'label' && shape.role === 'cut' && 'count' in shape.text
          ? [shape.text.count]
          : [],
      ),
    );
    expect(new Set(numbers.flat())).toEqual(new Set(plan.strips.map((_, index) => index + 1)));
    for (const row of numbers) expect(new Set(row).size).toBe(row.length);
  });

  test('the selvages are marked on both sides, and the whole stands within the picture', () => {
    for (const drawing of rows) {
      const selvages = drawing.shapes.filter(
        (shape) => shape.kind === 'line' && shape.role === 'selvage',
      );
      expect(selvages).toHaveLength(2);
      expect(toSvg(drawing)).toContain('selvage to selvage');
    }
  });

  test('a row that is not there is refused', () => {
    expect(() => drawCuttingPlan(plan, { row: rows.length + 1 })).toThrow(/whole number from 1/);
  });
});
