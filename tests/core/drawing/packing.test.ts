import { drawPacking, length, precuts, toSvg } from '@eighths/core';
import { describe, expect, test } from 'vitest';

const plan = precuts({
  kind: 'fat-quarter',
  pieces: [
    { width: 5, length: 5, count: 6 },
    { width: 2, length: '6 1/2', count: 4, turnable: true },
  ],
});
const [first] = plan.rectangles;
const placements = first?.placements ?? [];
const drawing = drawPacking({ ...plan.usable, placements }, { numbers: [3, 7] });

describe('fabric that pieces are packed into', () => {
  test('shows every piece once, by its number in the list', () => {
    const numbers = drawing.shapes.flatMap((shape) =>
      shape.kind === 'label' && 'count' in shape.text ? [shape.text.count] : [],
    );
    expect(numbers.filter((number) => number === 3)).toHaveLength(6);
    expect(numbers.filter((number) => number === 7)).toHaveLength(4);
    expect(drawing.description.values).toEqual({ pieces: 10 });
  });

  test('is measured both ways', () => {
    const measures = drawing.shapes.flatMap((shape) =>
      shape.kind === 'dimension' ? [`${shape.measure}`] : [],
    );
    expect(measures).toEqual(['17 1/2', '20 1/2']);
  });

  test.each([
    ['wide', 6, 4],
    ['tall', 3, 12],
  ])('ends at a missing corner that is %s, and hatches it within its bounds', (_, width, down) => {
    const missingCorner = { width: length(width), length: length(down) };
    const whole = { width: length(18), length: length(21), placements: [] };
    const { shapes, title, description } = drawPacking({ ...whole, missingCorner });
    const outline = shapes.find((shape) => shape.kind === 'area' && shape.role === 'outline');
    expect(outline?.kind === 'area' ? outline.points.map(({ x, y }) => `${x},${y}`) : []).toEqual([
      '0,0',
      '18,0',
      `18,${21 - down}`,
      `${18 - width},${21 - down}`,
      `${18 - width},21`,
      '0,21',
    ]);
    const hatched = shapes.flatMap((shape) => (shape.kind === 'line' ? shape.points : []));
    expect(hatched).toHaveLength(14);
    for (const { x, y } of hatched) {
      expect(x.compareTo(18 - width) >= 0 && x.compareTo(18) <= 0).toBe(true);
      expect(y.compareTo(21 - down) >= 0 && y.compareTo(21) <= 0).toBe(true);
    }
    expect(title.text).toBe('Fabric 18 by 21');
    expect(description.text).toContain(`A corner of ${width} by ${down} is missing.`);
  });

  test('is drawn as SVG with its title', () => {
    expect(toSvg(drawing)).toContain('Fabric 20 1/2 by 17 1/2');
  });
});
