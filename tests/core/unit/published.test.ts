import {
  flyingGeese,
  halfSquareFromSquare,
  halfSquareTriangles,
  length,
  quarterSquareTriangles,
  settingTriangles,
  squareInSquare,
  squareRoot,
  type UnitPlan,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';

/**
 * Figures read in published documents. The grade beside each: B an extension service or school, C a
 * guild or non-profit, H a class handout whose issuer the copy does not show, X derived exactly.
 */

const widths = (plan: UnitPlan): string[] => plan.cuts.map(({ width }) => width.toString());

describe('published cuts', () => {
  it.each<[string, string, UnitPlan, readonly string[]]>([
    [
      'half-square 3',
      'North Hampshire Quilters, leaflet 402b (C)',
      halfSquareTriangles({ finished: 3 }),
      ['3 7/8', '3 7/8'],
    ],
    [
      'half-square 3, generous',
      'North Hampshire Quilters, leaflet 402b (C)',
      halfSquareTriangles({ finished: 3, oversize: '1/4' }),
      ['4 1/8', '4 1/8'],
    ],
    [
      'quarter-square 3',
      'North Hampshire Quilters, leaflet 402b (C)',
      quarterSquareTriangles({ finished: 3 }),
      ['4 1/4', '4 1/4'],
    ],
    [
      'flying geese 6 by 3, four at a time',
      'a University of the Third Age class, block 5b, 2014 (C)',
      flyingGeese({ finished: { width: 6, height: 3 }, method: 'four-at-a-time' }),
      ['7 1/4', '3 7/8'],
    ],
    [
      'flying geese 3 1/2 by 1 3/4, stitch and flip',
      'a modern quilt guild’s page (C)',
      flyingGeese({ finished: { width: '3 1/2', height: '1 3/4' }, method: 'stitch-and-flip' }),
      ['4', '2 1/4'],
    ],
    [
      'side setting triangles for block 6',
      'Moonlight Quilters guild (C)',
      settingTriangles({ finished: 6, oversize: 0 }),
      ['9 3/4'],
    ],
    [
      'corner setting triangles for block 6',
      'Moonlight Quilters guild (C)',
      settingTriangles({ finished: 6, oversize: 0, triangle: 'corner' }),
      ['5 1/8'],
    ],
    [
      'square in a square finished 12: the center',
      'lesson 5 of a course “The Math of Quilting” (H)',
      squareInSquare({ finished: 12 }),
      ['9', '6 7/8'],
    ],
    [
      'square in a square of center 3 1/2: the corners',
      'lesson 5 of a course “The Math of Quilting” (H)',
      squareInSquare({ center: '3 1/2' }),
      ['4', '3 3/8'],
    ],
  ])('%s: %s', (_, _source, plan, expected) => {
    expect(widths(plan)).toEqual(expected);
  });

  it('half-square 3 is trimmed to 3 1/2: North Hampshire Quilters, leaflet 402b (C)', () => {
    expect(halfSquareTriangles({ finished: 3 }).trimTo.width.toString()).toBe('3 1/2');
  });

  it('flying geese stitch and flip: the rectangle is 4 by 2 1/4: a modern quilt guild’s page (C)', () => {
    const finished = { width: '3 1/2', height: '1 3/4' };
    const [rectangle] = flyingGeese({ finished, method: 'stitch-and-flip' }).cuts;
    expect(`${rectangle?.width} by ${rectangle?.height}`).toBe('4 by 2 1/4');
  });

  it('the center for a finished 12 is exactly 8.9853: “The Math of Quilting”, lesson 5 (H)', () => {
    const [center] = squareInSquare({ finished: 12 }).cuts;
    expect(center?.exact.width.toNumber()).toBeCloseTo(8.9853, 4);
  });
});

describe('derived exactly (X)', () => {
  it.each([
    ['half a square', halfSquareTriangles({ finished: 1 }), 0.853553],
    ['a quarter square', quarterSquareTriangles({ finished: 1 }), 1.207107],
    ['eight at a time', halfSquareTriangles({ finished: 1, method: 'eight-at-a-time' }), 1.707107],
  ])('the allowance of %s', (_, plan, allowance) => {
    const finished = plan.yield === 8 ? 2 : 1;
    expect((plan.cuts[0]?.exact.width.toNumber() ?? 0) - finished).toBeCloseTo(allowance, 6);
  });

  it('four at a time from a square C gives (C − 1/2)/√2, with its seams', () => {
    for (const square of [4, 5, '8 1/2', 10]) {
      const { exact } = halfSquareFromSquare({ square, method: 'four-at-a-time' });
      const unfinished = length(square).minus('1/2').times(squareRoot('1/2'));
      expect(exact.plus('1/2').equals(unfinished)).toBe(true);
    }
  });
});

/**
 * Published tables of setting triangles multiply, round, and add a rounded allowance. Ours rounds the
 * exact total once, so at these blocks it is an eighth less, and nowhere more.
 */
describe('setting triangles against tables that round twice', () => {
  const BLOCKS = Array.from({ length: 17 }, (_, index) => index + 4);
  const exactly = (finished: number, triangle: 'side' | 'corner') => {
    const [cut] = settingTriangles({ finished, triangle, oversize: 0 }).cuts;
    if (cut === undefined) throw new RangeError('no cut');
    return cut;
  };
  const tables = [
    ['side', squareRoot(2), '1 1/4', [4, 7, 10, 13, 16, 17, 20]],
    ['corner', squareRoot('1/2'), '7/8', [17, 20]],
  ] as const;

  it.each(tables)('%s: exact ≤ table ≤ exact + 1/4', (triangle, factor, allowance) => {
    for (const block of BLOCKS) {
      const table = factor.times(block).toGrid('1/8', 'up').plus(allowance);
      const { exact } = exactly(block, triangle);
      expect(table.compareTo(exact.width)).toBeGreaterThanOrEqual(0);
      expect(table.compareTo(exact.width.plus('1/4'))).toBeLessThanOrEqual(0);
    }
  });

  it.each(tables)(
    '%s: an eighth less at the blocks listed',
    (triangle, factor, allowance, less) => {
      const differing = BLOCKS.filter((block) => {
        const table = factor.times(block).toGrid('1/8', 'up').plus(allowance);
        const by = table.minus(exactly(block, triangle).width);
        expect(['0', '1/8']).toContain(by.toString());
        return by.sign() > 0;
      });
      expect(differing).toEqual(less);
    },
  );

  it('side, block 16: 1.414 gives 23 7/8, √2 with 1 1/4 gives 24, exact needs 23 7/8', () => {
    const table = (factor: string) =>
      length(factor).times(16).toGrid('1/8', 'up').plus('1 1/4').toString();
    expect(table('1.414')).toBe('23 7/8');
    expect(table('√2')).toBe('24');
    expect(exactly(16, 'side').width.toString()).toBe('23 7/8');
  });

  it.each([
    ['side', [11, 14]],
    ['corner', [5, 8, 11, 14]],
  ] as const)('%s: the nearest eighth would be too small', (triangle, blocks) => {
    for (const block of blocks) {
      const { exact, width } = exactly(block, triangle);
      expect(exact.width.toGrid('1/8', 'nearest').compareTo(exact.width)).toBe(-1);
      expect(width.compareTo(exact.width)).toBe(1);
    }
  });

  it('an eighth is enough for B√2 exactly when n² ≥ 128·B²', () => {
    for (const block of BLOCKS) {
      const n = BigInt(squareRoot(2).times(block).toGrid('1/8', 'up').times(8).toString());
      const needed = 128n * BigInt(block) ** 2n;
      expect(n ** 2n >= needed && (n - 1n) ** 2n < needed).toBe(true);
    }
  });
});

describe('the rules that people quote', () => {
  it('f + 7/8 and f + 1 1/4 and 2f + 1 3/4 for every eighth', () => {
    for (let eighths = 4; eighths <= 96; eighths += 1) {
      const finished = length(eighths).dividedBy(8);
      const rule = (more: string, times = 1) => finished.times(times).plus(more).toString();
      expect(widths(halfSquareTriangles({ finished }))[0]).toBe(rule('7/8'));
      expect(widths(quarterSquareTriangles({ finished }))[0]).toBe(rule('1 1/4'));
      const eight = halfSquareTriangles({ finished, method: 'eight-at-a-time' });
      expect(widths(eight)[0]).toBe(rule('1 3/4', 2));
    }
  });

  it('f + 1 where the unit is cut generously', () => {
    expect(widths(halfSquareTriangles({ finished: 3, oversize: '1/8' }))[0]).toBe('4');
  });
});
