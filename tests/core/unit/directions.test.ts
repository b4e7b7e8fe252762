import {
  type Drawing,
  diamond,
  drawUnitCut,
  halfRectangleTriangles,
  sixtyDegreeHalfTriangles,
  snowball,
  trapezoid,
  type UnitPlan,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';

const corners = ({ outline }: UnitPlan) => (outline ?? []).map(({ x, y }) => `${x},${y}`);

describe('halves that are cut both ways', () => {
  // One rectangle of a fabric gives two triangles that lean alike; the mirror images need another.
  it.each<[string, UnitPlan, UnitPlan]>([
    [
      'half-rectangle triangles',
      halfRectangleTriangles({ finished: { width: 3, height: 6 }, direction: 'both' }),
      halfRectangleTriangles({ finished: { width: 3, height: 6 }, direction: 'falling' }),
    ],
    [
      '60-degree half triangles',
      sixtyDegreeHalfTriangles({ finished: 6, direction: 'both' }),
      sixtyDegreeHalfTriangles({ finished: 6, direction: 'right' }),
    ],
  ])('%s take twice the rectangles and give twice the pieces', (_, both, one) => {
    expect(both.yield).toBe(2 * one.yield);
    expect(both.cuts.map(({ count }) => count)).toEqual(one.cuts.map(({ count }) => 2 * count));
    expect(both.steps.map(({ code }) => code)).toContain('cut-both-ways');
    expect(one.steps.map(({ code }) => code)).toContain('cut-one-way');
  });

  it('lean to the left and to the right as mirror images', () => {
    const wide = '2√3';
    expect(corners(sixtyDegreeHalfTriangles({ finished: 6, direction: 'right' }))).toEqual([
      `${wide},0`,
      `${wide},6`,
      '0,6',
    ]);
    expect(corners(sixtyDegreeHalfTriangles({ finished: 6, direction: 'left' }))).toEqual([
      '0,0',
      `${wide},6`,
      '0,6',
    ]);
  });
});

describe('a trapezoid with one end slanted', () => {
  it.each([
    ['left', ['2,0', '8,0', '8,2', '0,2']],
    ['right', ['0,0', '6,0', '8,2', '0,2']],
  ] as const)('on the %s is square at the other', (slants, outline) => {
    expect(corners(trapezoid({ finished: { width: 8, height: 2 }, slants }))).toEqual(outline);
  });
});

describe('the corners of a snowball', () => {
  // One corner may be as long as the shorter side. Two share the upper side, and three both sides.
  it.each([
    [1, 6, 4, 4],
    [2, 6, 2, 2],
    [2, 4, 6, 2],
    [3, 6, 4, 2],
    [4, 4, 6, 2],
  ])('%i of them on %i by %i may finish up to %i', (count, width, height, most) => {
    const unit = (corner: string | number) =>
      snowball({ finished: { width, height }, corners: count, corner });
    expect(unit(most).patches).toHaveLength(count + 1);
    expect(refusal(() => unit(`${most} 1/8`))).toMatchObject({
      code: 'out-of-range',
      field: 'corner',
    });
  });

  it('are flipped one after the other, where there is more than one', () => {
    const codes = (count: number) =>
      snowball({ finished: 6, corners: count }).steps.map(({ code }) => code);
    expect(codes(1)).not.toContain('flip-each');
    expect(codes(2)).toContain('flip-each');
  });
});

describe('a cut, as it is drawn', () => {
  const lines = ({ shapes }: Drawing) =>
    shapes.flatMap((shape) =>
      shape.kind === 'line' && shape.role === 'trim-line'
        ? [shape.points.map(({ x, y }) => `${x},${y}`).join(' to ')]
        : [],
    );

  it('goes down to the right where the seam of a half rectangle does', () => {
    const cut = (direction: 'falling' | 'rising') =>
      lines(drawUnitCut(halfRectangleTriangles({ finished: { width: 3, height: 6 }, direction })));
    expect(cut('falling')).toEqual(['0,0 to 3 3/4,7 3/8']);
    expect(cut('rising')).toEqual(['0,7 3/8 to 3 3/4,0']);
  });

  // Diamonds of 45 degrees from a strip 2 5/8 wide: its cuts lean by as much.
  it('begins at the other end of a strip for the left hand', () => {
    const first = (hand: 'left' | 'right') =>
      lines(drawUnitCut(diamond({ finished: 3 }), { hand }));
    expect(first('right')[0]).toBe('2 5/8,0 to 0,2 5/8');
    expect(first('left')[0]).toBe('189/16√2,0 to 189/16√2 + 2 5/8,2 5/8');
    expect(first('left')).toHaveLength(first('right').length);
  });
});
