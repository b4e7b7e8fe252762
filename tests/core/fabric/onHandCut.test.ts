import { cutFromHand, howManyBlocks, length, yardage } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inEighths } from './support/eighths.js';
import { faultOf } from './support/guillotine.js';
import { refusal } from './support/refusal.js';

const square = (side: number, count: number) => ({ width: side, length: side, count });

describe('fabric on hand', () => {
  it('gives what fits, and the rest is bought as a plain list would be', () => {
    const { cut, missing, complete, proven, buy } = cutFromHand({
      onHand: [
        { width: 20, length: 15 },
        { width: 10, length: 5, count: 2 },
      ],
      pieces: [{ label: 'center', ...square(5, 20) }],
      fabricWidth: 42,
    });
    expect([cut, complete, proven]).toEqual([[16], false, true]);
    expect(missing.map(({ piece, label, count }) => [piece, label, count])).toEqual([
      [0, 'center', 4],
    ]);
    const same = yardage({ width: 42, pieces: [square(5, 4)] });
    expect([buy?.yards, `${buy?.bare}`]).toEqual([same.yards, `${same.bare}`]);
  });

  it('leaves the rest to be bought by the method that is asked for', () => {
    const rest = { onHand: [{ width: 1, length: 1 }], fabricWidth: 42 };
    const pieces = [square(5, 6), { width: '2 1/2', length: 6, count: 4 }];
    const bare = (method: 'plain' | 'thrifty') =>
      `${cutFromHand({ ...rest, pieces, method }).buy?.bare}`;
    expect([bare('plain'), bare('thrifty')]).toEqual(['7 1/2', '5']);
  });

  it('that is enough leaves nothing to buy', () => {
    const all = cutFromHand({ onHand: [{ width: 10, length: 10 }], pieces: [square(5, 4)] });
    expect([all.complete, all.proven, all.buy, all.warnings]).toEqual([true, true, undefined, []]);
  });

  it('with a missing corner is cut apart the way that gives more', () => {
    const corner = { width: 8, length: 8 };
    const from = (pieces: Parameters<typeof cutFromHand>[0]['pieces']) => {
      const { complete, steps } = cutFromHand({
        onHand: [{ width: 20, length: 20, missingCorner: corner }],
        pieces,
      });
      return [complete, steps[0]?.text];
    };
    const wide = { width: 12, length: 20, count: 1 };
    expect(from([wide])).toEqual([
      true,
      'Fabric 1 lacks a corner: cut it apart into a rectangle of 20 by 12 and one of 12 by 8.',
    ]);
    expect(from([{ width: 20, length: 12, count: 1 }])).toEqual([
      true,
      'Fabric 1 lacks a corner: cut it apart into a rectangle of 12 by 20 and one of 8 by 12.',
    ]);
    expect(from([wide, { width: 9, length: 9, count: 1 }])[0]).toBe(false);
  });

  it('is bought for missing pieces of any length', () => {
    const { buy } = cutFromHand({
      onHand: [{ width: 10, length: 10 }],
      pieces: [square(5, 4), { label: 'border', width: 6, length: 60, count: 2 }],
    });
    expect(`${buy?.bare}`).toBe('60');
  });

  it('gives pieces that lie on it, not in the missing corner, from edge to edge', () => {
    const eighths = (min: number, max: number) => fc.integer({ min, max });
    const fabric = fc
      .record({
        width: eighths(60, 200),
        length: eighths(60, 200),
        count: fc.integer({ min: 1, max: 2 }),
        corner: fc.boolean(),
      })
      .map(({ width, length: long, count, corner }) => ({
        width: `${width}/8`,
        length: `${long}/8`,
        count,
        ...(corner && { missingCorner: { width: `${width - 30}/8`, length: '20/8' } }),
      }));
    const piece = fc.record({
      width: eighths(12, 60).map((n) => `${n}/8`),
      length: eighths(12, 60).map((n) => `${n}/8`),
      count: fc.integer({ min: 1, max: 9 }),
      turnable: fc.boolean(),
    });
    fc.assert(
      fc.property(
        fc.array(fabric, { minLength: 1, maxLength: 3 }),
        fc.array(piece, { minLength: 1, maxLength: 3 }),
        (onHand, pieces) => {
          const result = cutFromHand({ onHand, pieces, effort: 150_000 });
          const counts = pieces.map(() => 0);
          for (const {
            from,
            x,
            y,
            width,
            length: long,
            count,
            placements,
            leftOver,
          } of result.rectangles) {
            const own = inEighths({ x, y, width, height: long });
            expect(faultOf(own, [...placements, ...leftOver].map(inEighths))).toBeUndefined();
            const { missingCorner, ...fabric } = onHand[from] ?? { width: 0, length: 0 };
            const right = (own.x + own.width) / 8;
            const bottom = (own.y + own.height) / 8;
            expect(length(fabric.width).compareTo(right)).not.toBe(-1);
            expect(length(fabric.length).compareTo(bottom)).not.toBe(-1);
            if (missingCorner !== undefined) {
              const clear =
                length(fabric.width).minus(missingCorner.width).compareTo(right) >= 0 ||
                length(fabric.length).minus(missingCorner.length).compareTo(bottom) >= 0;
              expect(clear).toBe(true);
            }
            for (const placed of placements) {
              counts[placed.piece] = (counts[placed.piece] ?? 0) + count;
            }
          }
          expect(result.cut).toEqual(counts);
          const left = pieces.map(({ count }, i) => count - (counts[i] ?? 0));
          expect(result.missing.map(({ piece: at, count }) => [at, count])).toEqual(
            left.flatMap((count, i) => (count > 0 ? [[i, count]] : [])),
          );
        },
      ),
      { numRuns: 20, seed: 8 },
    );
  });

  it('a hundred yards of it end, and give 10,000 eighths of an inch', () => {
    const pieces = [{ width: '1/8', length: '1/8', count: 10_000 }];
    for (const width of ['1/8', '100 yd']) {
      const { complete } = cutFromHand({ onHand: [{ width, length: '100 yd' }], pieces });
      expect(complete).toBe(true);
    }
  });

  it('many pieces with missing corners end', () => {
    const onHand = Array.from({ length: 50 }, (_, i) => ({
      width: 9 + i,
      length: 12 + i,
      missingCorner: { width: 3, length: 4 },
    }));
    const { cut } = cutFromHand({ onHand, pieces: [square(3, 900)], effort: 100_000 });
    expect(cut).toEqual([900]);
  });

  const good = { onHand: [{ width: 20, length: 20 }], pieces: [square(5, 4)] };
  it.each([
    [
      'fabric of no size',
      { onHand: [{ width: 0, length: 20 }] },
      'not-positive',
      'onHand[0].width',
    ],
    [
      'fabric longer than a hundred yards',
      { onHand: [{ width: 20, length: '101 yd' }] },
      'out-of-range',
      'onHand[0].length',
    ],
    [
      'a corner as wide as the fabric',
      { onHand: [{ width: 20, length: 20, missingCorner: { width: 20, length: 2 } }] },
      'out-of-range',
      'onHand[0].missingCorner.width',
    ],
    ['no fabric', { onHand: [] }, 'list-length', 'onHand'],
    ['a list that is none', { onHand: 'two yards' }, 'wrong-kind', 'onHand'],
    [
      'none of a fabric',
      { onHand: [{ width: 9, length: 9, count: 0 }] },
      'not-a-count',
      'onHand[0].count',
    ],
    [
      'a missing piece that is wider than what would be bought',
      { pieces: [square(41, 1)] },
      'piece-too-long',
      'pieces[0].width',
    ],
    [
      'an increment of nothing',
      { increment: 0, pieces: [square(5, 99)] },
      'not-positive',
      'increment',
    ],
  ])('refuses %s', (_, change, code, field) => {
    const spec = JSON.parse(JSON.stringify({ ...good, ...change }));
    expect(refusal(() => cutFromHand(spec))).toEqual([code, field]);
  });
});

describe('how many blocks', () => {
  const ninePatch = [{ label: 'patch', ...square(2.5, 5) }];

  it('fabric on hand gives, and that it is proven', () => {
    // 8 by 7 squares of 2 1/2 from each.
    const { blocks, bound, proven, rectangles } = howManyBlocks({
      onHand: [{ width: '20 1/2', length: '17 1/2', count: 3 }],
      block: ninePatch,
    });
    expect([blocks, bound, proven]).toEqual([33, 33, true]);
    const given = rectangles.reduce((sum, each) => sum + each.placements.length * each.count, 0);
    expect(given).toBe(33 * 5);
  });

  it('are none where a piece fits nowhere', () => {
    const none = howManyBlocks({
      onHand: [{ width: 20, length: 20 }],
      block: [...ninePatch, square(21, 1)],
    });
    expect([none.blocks, none.proven, none.rectangles]).toEqual([0, true, []]);
  });

  it('are as many as 10,000 pieces make at most, without a claim beyond', () => {
    const { blocks, proven, warnings } = howManyBlocks({
      onHand: [{ width: 100, length: 1000 }],
      block: [square(1, 1)],
    });
    expect([blocks, proven, warnings.map(({ code }) => code)]).toEqual([
      10_000,
      false,
      ['blocks-not-proven'],
    ]);
  });

  it('more fabric never gives fewer than what is proven, nor more than the bound', () => {
    const block = fc.array(
      fc.record({
        width: fc.integer({ min: 2, max: 7 }),
        length: fc.integer({ min: 2, max: 9 }),
        count: fc.integer({ min: 1, max: 3 }),
        turnable: fc.boolean(),
      }),
      { minLength: 1, maxLength: 3 },
    );
    const side = fc.integer({ min: 8, max: 22 });
    fc.assert(
      fc.property(block, side, side, side, (pieces, width, long, more) => {
        const from = (onHand: Parameters<typeof howManyBlocks>[0]['onHand']) =>
          howManyBlocks({ onHand, block: pieces, effort: 150_000 });
        const few = from([{ width, length: long }]);
        const many = from([
          { width, length: long },
          { width: more, length: more },
        ]);
        expect(few.blocks).toBeLessThanOrEqual(few.bound);
        expect(few.proven).toBe(few.blocks === few.bound);
        if (few.proven && many.proven) expect(many.blocks).toBeGreaterThanOrEqual(few.blocks);
        expect(many.bound).toBeGreaterThanOrEqual(few.blocks);
      }),
      { numRuns: 20, seed: 8 },
    );
  });
});
