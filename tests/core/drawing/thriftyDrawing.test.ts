import { cuttingPlan, cuttingRows, drawCuttingPlan } from '@eighths/core';
import { describe, expect, test } from 'vitest';

// Squares beside an end that is cut into lower rows, and pieces that lie turned.
const plan = cuttingPlan({
  width: 41,
  pieces: [
    { width: 5, length: 5, count: 6 },
    { width: '2 1/2', length: 5, count: 4 },
    { width: 9, length: 4, count: 4, turnable: true },
  ],
});

describe('fabric as a thrifty plan cuts it', () => {
  test('what is drawn is every piece that is placed, turned and in ends of strips too', () => {
    expect(plan.strips.some(({ ends }) => ends !== undefined)).toBe(true);
    expect(JSON.stringify(plan.strips)).toContain('"turned":true');
    const drawn = Array.from({ length: cuttingRows(plan) }, (_, index) =>
      drawCuttingPlan(plan, { row: index + 1 }),
    ).flatMap(({ shapes }) =>
      shapes.flatMap((shape) => {
        if (shape.kind !== 'area' || shape.role !== 'fabric') return [];
        const [topLeft, , bottomRight] = shape.points;
        if (topLeft === undefined || bottomRight === undefined) throw new Error('no rectangle');
        const across = bottomRight.x.minus(topLeft.x);
        return [`${across} by ${bottomRight.y.minus(topLeft.y)} at ${topLeft.x}`];
      }),
    );
    const placed = plan.placements().map(({ x, width, height }) => `${width} by ${height} at ${x}`);
    expect(drawn.sort()).toEqual(placed.sort());
  });
});
