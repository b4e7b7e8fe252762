import { type BackingSpec, type BackingWay, backing, type Length, length } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';

const size = (width: number, height: number) => ({ width, height });

const wayOf = (ways: readonly BackingWay[], runs: BackingWay['runs']): BackingWay => {
  const found = ways.find((way) => way.runs === runs && !way.wide);
  if (found === undefined) throw new Error(`No way runs ${runs}.`);
  return found;
};

describe('published backings', () => {
  // Derived exactly (X): overhang 4, usable 40, seams of 1/2. Up has vertical seams, across horizontal ones.
  it.each<[number, number, string, string]>([
    [60, 80, '176', '204'],
    [63, 87, '190', '213'],
    [72, 90, '294', '240'],
    [40, 50, '116', '96'],
    [90, 95, '309', '294'],
  ])('%i by %i takes %s up and %s across', (width, height, up, across) => {
    const { ways, best } = backing({ quilt: size(width, height) });
    const lengths = [wayOf(ways, 'down'), wayOf(ways, 'across')].map((way) =>
      way.length.toString(),
    );
    expect(lengths).toEqual([up, across]);
    expect(best.length.toString()).toBe(Number(up) < Number(across) ? up : across);
  });

  it('an area rule, 5 1/2 yd for 72 by 90, is short at 40 usable (X)', () => {
    const { best } = backing({ quilt: size(72, 90) });
    expect(best.length.compareTo('5 1/2 yd')).toBe(1);
  });

  // Quilts of Valor Foundation FAQ, 2020 (C): 8 in longer and wider.
  it('is 8 in longer and wider than the top', () => {
    const { target } = backing({ quilt: size(60, 72) });
    expect([target.width.toString(), target.height.toString()]).toEqual(['68', '80']);
  });

  // St. Croix quilters (C): 40 × 45, 2 to 3 in a side, from 44/45 wide, 1 1/2 yd.
  it('of 40 by 45 from 45 wide is bought as 1 1/2 yd', () => {
    const { best } = backing({ quilt: size(40, 45), width: 45, overhang: '2 1/2' });
    expect(best.buy).toEqual(length('1 1/2 yd'));
  });
});

describe('near misses', () => {
  it('72 by 90: 3 1/2 over in place of 4 takes 194 in, not 240, and saves 1 1/4 yd (X)', () => {
    const { nearMisses } = backing({ quilt: size(72, 90) });
    expect(
      nearMisses.map(({ overhang, less, way, saves, savesToBuy }) =>
        [overhang, less, way.length, saves, savesToBuy].map(String),
      ),
    ).toEqual([['3 1/2', '1/2', '194', '46', '45']]);
    expect(length('1 1/4 yd').toString()).toBe('45');
  });

  it('are not named beyond the distance asked for', () => {
    expect(backing({ quilt: size(72, 90), near: '3/8' }).nearMisses).toEqual([]);
    expect(backing({ quilt: size(72, 90), near: '1/2' }).nearMisses).toHaveLength(1);
  });

  it('of wide fabric are named as well', () => {
    const { nearMisses, ways } = backing({ quilt: size(101, 120), wide: [108] });
    expect(ways.filter(({ wide }) => wide).map(({ panels }) => panels)).toEqual([2, 2]);
    // 101 + 2 · 3 1/2 = 108: one panel of 127, where two of 109 would be needed.
    const wide = nearMisses.find(({ way }) => way.wide);
    expect([wide?.way.panels, wide?.overhang.toString(), wide?.way.length.toString()]).toEqual([
      1,
      '3 1/2',
      '127',
    ]);
  });

  const side = fc.integer({ min: 20 * 8, max: 110 * 8 }).map((count) => length(count).dividedBy(8));
  it('name the greatest overhang that does, and what the same quilt then really takes', () => {
    fc.assert(
      fc.property(side, side, (width, height) => {
        const quilt = { width, height };
        const { nearMisses, best } = backing({ quilt, wide: [] });
        for (const { overhang, less, way, saves } of nearMisses) {
          expect(overhang.plus(less)).toEqual(length(4));
          const then = backing({ quilt, wide: [], overhang });
          expect(wayOf(then.ways, way.runs)).toEqual(way);
          expect(saves).toEqual(best.length.minus(way.length));
          const more = backing({ quilt, wide: [], overhang: overhang.plus('1/8') });
          expect(wayOf(more.ways, way.runs).panels).toBe(way.panels + 1);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('leave none out: what saves a panel and something to buy within the distance is named', () => {
    fc.assert(
      fc.property(side, side, fc.integer({ min: 1, max: 8 }), (width, height, eighths) => {
        const quilt = { width, height };
        const { nearMisses, best, ways } = backing({ quilt, wide: [] });
        const overhang = length(4).minus(length(eighths).dividedBy(8));
        const smaller = backing({ quilt, wide: [], overhang }).ways;
        // The greatest overhang that saves the panel; a smaller one buys less still.
        const greatest = backing({ quilt, wide: [], overhang: overhang.plus('1/8') }).ways;
        for (const runs of ['down', 'across'] as const) {
          const [full, then] = [wayOf(ways, runs), wayOf(smaller, runs)];
          if (wayOf(greatest, runs).panels !== full.panels || then.panels === full.panels) continue;
          const saves = then.buy.compareTo(best.buy) < 0;
          expect(nearMisses.some(({ way }) => way.runs === runs)).toBe(saves);
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe('a backing', () => {
  const eighths = (min: number, max: number) =>
    fc.integer({ min: min * 8, max: max * 8 }).map((count) => length(count).dividedBy(8));
  const spec = fc.record({
    quilt: fc.record({ width: eighths(5, 130), height: eighths(5, 130) }),
    overhang: eighths(0, 8),
    width: eighths(20, 60),
    seam: fc.constantFrom('1/4', '1/2'),
  });

  /** The fewest panels by sewing one to the next. */
  const panelsByHand = (side: Length, width: Length, seam: string): number => {
    let [panels, made] = [1, width];
    while (made.compareTo(side) < 0) {
      panels += 1;
      made = made.plus(width).minus(seam).minus(seam);
    }
    return panels;
  };

  it('has panels enough, and one less would not be', () => {
    fc.assert(
      fc.property(spec, (each) => {
        const { ways, target, best } = backing({ ...each, wide: [] });
        const [down, across] = [wayOf(ways, 'down'), wayOf(ways, 'across')];
        expect(down.panels).toBe(panelsByHand(target.width, each.width, each.seam));
        expect(across.panels).toBe(panelsByHand(target.height, each.width, each.seam));
        expect(down.length).toEqual(target.height.times(down.panels));
        expect(across.length).toEqual(target.width.times(across.panels));
        for (const way of ways) {
          expect(way.made.width.compareTo(target.width)).toBeGreaterThanOrEqual(0);
          expect(way.made.height.compareTo(target.height)).toBeGreaterThanOrEqual(0);
          expect(best.length.compareTo(way.length)).toBeLessThanOrEqual(0);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('never needs less for more overhang', () => {
    fc.assert(
      fc.property(spec, eighths(0, 4), (each, more) => {
        const small = backing({ ...each, wide: [] });
        const large = backing({ ...each, overhang: each.overhang.plus(more), wide: [] });
        for (const runs of ['down', 'across'] as const) {
          const [one, other] = [wayOf(small.ways, runs), wayOf(large.ways, runs)];
          expect(other.length.compareTo(one.length)).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('of wide fabric is one panel, and the better of both ways', () => {
    const { bestWide, best } = backing({ quilt: size(72, 90) });
    expect([bestWide?.panels, bestWide?.seams, bestWide?.length.toString()]).toEqual([
      1,
      'none',
      '80',
    ]);
    expect(best.wide).toBe(false);
    expect(backing({ quilt: size(72, 90), wide: [] }).bestWide).toBeUndefined();
  });
});

describe('refused', () => {
  const quilt = size(60, 72);
  it.each<[string, string, BackingSpec]>([
    ['missing-field', 'quilt', JSON.parse('{}')],
    ['not-positive', 'quilt.width', { quilt: size(-60, 72) }],
    ['not-positive', 'overhang', { quilt, overhang: -1 }],
    ['seam-too-wide', 'seam', { quilt, width: 4, seam: 2 }],
    ['seam-too-wide', 'seam', { quilt, seam: 54 }],
    ['out-of-range', 'width', { quilt, width: '1/100' }],
    ['out-of-range', 'wide[1]', { quilt, wide: [108, 2000] }],
    ['wrong-kind', 'wide', { quilt, wide: JSON.parse('108') }],
    ['not-positive', 'increment', { quilt, increment: 0 }],
  ])('%s of %s', (code, field, spec) => {
    const error = refusal(() => backing(spec));
    expect([error.code, error.field]).toEqual([code, field]);
  });
});
