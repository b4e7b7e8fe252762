import { type CutRectangle, length, precuts } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactPacking } from '../../../packages/core/src/fabric/pack/exact.js';
import { pack } from '../../../packages/core/src/fabric/pack/pack.js';
import {
  countInto,
  cutInto,
  grid,
  type Parts,
} from '../../../packages/core/src/fabric/pack/rectangles.js';
import { table } from '../../../packages/core/src/fabric/pack/table.js';
import { Effort } from '../../../packages/core/src/fabric/stock/effort.js';
import { canCut, fewestByHand } from './support/bruteForce.js';
import { type Box, faultOf } from './support/guillotine.js';

const plenty = () => new Effort(50_000_000);

const item = fc.record({
  width: fc.integer({ min: 8, max: 80 }),
  height: fc.integer({ min: 8, max: 60 }),
  count: fc.integer({ min: 0, max: 12 }),
  turnable: fc.boolean(),
});
const sheet = fc.record({
  width: fc.integer({ min: 30, max: 170 }),
  height: fc.integer({ min: 30, max: 150 }),
  count: fc.integer({ min: 1, max: 4 }),
});
const tile = fc.record({
  width: fc.integer({ min: 1, max: 5 }),
  height: fc.integer({ min: 1, max: 5 }),
  turnable: fc.boolean(),
});

/** Every piece of a cutting, where it lies. */
function boxesOf(part: Parts, x = 0, y = 0): (Box & { item: number; turned: boolean })[] {
  if (part.kind === 'left') return [];
  if (part.kind === 'pieces') {
    const [width, height] = [part.width / part.columns, part.height / part.rows];
    return Array.from({ length: part.columns * part.rows }, (_, i) => ({
      item: part.item,
      turned: part.turned,
      x: x + (i % part.columns) * width,
      y: y + Math.floor(i / part.columns) * height,
      width,
      height,
    }));
  }
  let at = 0;
  return part.parts.flatMap((each) => {
    const [across, down] = part.along === 'across' ? [at, 0] : [0, at];
    at += part.along === 'across' ? each.width : each.height;
    return boxesOf(each, x + across, y + down);
  });
}

describe('the checker of cuts from edge to edge', () => {
  const five: readonly Box[] = [
    { x: 0, y: 0, width: 2, height: 1 },
    { x: 2, y: 0, width: 1, height: 2 },
    { x: 1, y: 2, width: 2, height: 1 },
    { x: 0, y: 1, width: 1, height: 2 },
    { x: 1, y: 1, width: 1, height: 1 },
  ];
  const whole = { x: 0, y: 0, width: 3, height: 3 };

  it('refuses a pinwheel, which no such cut begins', () => {
    expect(faultOf(whole, five)).toBe('not cuttable');
    expect(faultOf(whole, five.slice(0, 3))).toBeUndefined();
  });

  it('refuses pieces that overlap or lie off the fabric', () => {
    const one = { x: 0, y: 0, width: 2, height: 2 };
    expect(faultOf(whole, [one, { ...one, x: 1 }])).toBe('not cuttable');
    expect(faultOf(whole, [{ ...one, x: 2 }])).toBe('off the fabric');
  });
});

describe('every packing', () => {
  it('lies on its sheets, is cut from edge to edge, at the sizes and as often as asked', () => {
    fc.assert(
      fc.property(
        fc.array(sheet, { minLength: 1, maxLength: 3 }),
        fc.array(item, { minLength: 1, maxLength: 5 }),
        fc.constantFrom(0, 30_000, 300_000),
        (sheets, items, steps) => {
          const { layouts, left, fewest } = pack(sheets, items, steps);
          const cut = items.map(() => 0);
          const used = sheets.map(() => 0);
          for (const { sheet: at, count, parts } of layouts) {
            const { width = 0, height = 0 } = sheets[at] ?? {};
            const boxes = boxesOf(parts);
            expect(faultOf({ x: 0, y: 0, width, height }, boxes)).toBeUndefined();
            used[at] = (used[at] ?? 0) + count;
            for (const box of boxes) {
              const asked = items[box.item];
              const size = [asked?.width, asked?.height];
              expect(box.turned ? asked?.turnable : true).toBe(true);
              expect([box.width, box.height]).toEqual(box.turned ? size.reverse() : size);
              cut[box.item] = (cut[box.item] ?? 0) + count;
            }
          }
          expect(items.map(({ count }, i) => count - (cut[i] ?? 0))).toEqual(left);
          expect(left.every((count) => count >= 0)).toBe(true);
          expect(used.every((count, i) => count <= (sheets[i]?.count ?? 0))).toBe(true);
          const total = used.reduce((sum, count) => sum + count, 0);
          if (left.every((count) => count === 0)) expect(fewest).toBeLessThanOrEqual(total);
        },
      ),
      { numRuns: 30, seed: 8 },
    );
  });

  it('is the same each time', () => {
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 4 }), (items) => {
        const sheets = [{ width: 164, height: 140, count: 9 }];
        expect(pack(sheets, items, 50_000)).toEqual(pack(sheets, items, 50_000));
      }),
      { numRuns: 5, seed: 8 },
    );
  });
});

describe('small packings, against every way to cut by hand', () => {
  it('say rightly whether all pieces can be cut from one sheet', () => {
    fc.assert(
      fc.property(
        fc.array(tile, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 4, max: 8 }),
        fc.integer({ min: 4, max: 8 }),
        (tiles, width, height) => {
          const items = tiles.map((each) => ({ ...each, count: 1 }));
          const { left, leastLeft } = pack([{ width, height, count: 1 }], items, 1_000_000);
          const all = left.every((count) => count === 0);
          expect([all, leastLeft]).toEqual([canCut(width, height, tiles), true]);
        },
      ),
      { numRuns: 80, seed: 8 },
    );
  });

  it('take the fewest sheets, and say that it is proven', () => {
    fc.assert(
      fc.property(fc.array(tile, { minLength: 3, maxLength: 5 }), (tiles) => {
        const items = tiles.map((each) => ({ ...each, count: 1 }));
        const { layouts, fewest } = pack([{ width: 6, height: 5, count: 9 }], items, 1_000_000);
        const used = layouts.reduce((sum, { count }) => sum + count, 0);
        expect([used, fewest]).toEqual([used, fewestByHand(6, 5, tiles)]);
        expect(used).toBe(fewest);
      }),
      { numRuns: 40, seed: 8 },
    );
  });

  it('the complete search gives up where it would not end', () => {
    const items = [{ width: 3, height: 2, count: 5_000, turnable: true }];
    expect(exactPacking([{ width: 9, height: 9, count: 1 }], items, plenty())).toBeUndefined();
    const few = [{ width: 3, height: 2, count: 20, turnable: true }];
    expect(exactPacking([{ width: 9, height: 9, count: 1 }], few, new Effort(5))).toBeUndefined();
  });
});

describe('the table of rectangles', () => {
  it('is worth at least any cutting, and its own cuttings are worth what it says', () => {
    fc.assert(
      fc.property(
        fc.array(item, { minLength: 1, maxLength: 3 }),
        sheet,
        (items, { width, height }) => {
          const areas = items.map((each) => each.width * each.height);
          const found = table({ width, height }, items, areas, plenty());
          const { parts, counts } = found?.best(width, height) ?? { counts: [] };
          const worth = found?.worth(width, height);
          const cut = counts.reduce((sum, count, i) => sum + count * (areas[i] ?? 0), 0);
          expect([cut, parts?.width, parts?.height]).toEqual([worth, width, height]);
          const { layouts } = pack([{ width, height, count: 1 }], items, 20_000);
          for (const { parts: packed } of layouts) {
            const given = countInto(
              items.map(() => 0),
              packed,
            );
            const area = given.reduce((sum, count, i) => sum + count * (areas[i] ?? 0), 0);
            expect(area).toBeLessThanOrEqual(worth ?? 0);
          }
        },
      ),
      { numRuns: 40, seed: 8 },
    );
  });

  // Pieces 3 by 2 in a rectangle 5 by 5 leave at least one square: 4 of them, and not in a grid.
  it('finds four pieces 3 by 2 in a square of 5 only by turning some: a pinwheel has no such cut', () => {
    const turnable = [{ width: 3, height: 2, count: 9, turnable: true }];
    const count = (items: typeof turnable) =>
      table({ width: 5, height: 5 }, items, [1], plenty())?.worth(5, 5);
    expect(count(turnable)).toBe(3);
    expect(count([{ width: 3, height: 2, count: 9, turnable: false }])).toBe(2);
  });

  it('is left out where it would take more effort than there is', () => {
    const items = [{ width: 3, height: 2, count: 9, turnable: true }];
    expect(table({ width: 90, height: 90 }, items, [6], new Effort(1_000))).toBeUndefined();
  });
});

describe('cuts', () => {
  it('of one direction become one, equal pieces one grid, and what is left over comes last', () => {
    const piece = grid({ width: 2, height: 3, count: 9, turnable: false }, 0, false);
    const inner = cutInto('across', { width: 5, height: 3 }, [piece]);
    const outer = cutInto('across', { width: 9, height: 3 }, [inner, piece, piece]);
    expect(outer).toEqual({
      kind: 'cut',
      along: 'across',
      width: 9,
      height: 3,
      parts: [
        { kind: 'pieces', item: 0, turned: false, columns: 3, rows: 1, width: 6, height: 3 },
        { kind: 'left', width: 3, height: 3 },
      ],
    });
  });

  it('are told in order, a rectangle before its parts', () => {
    const { rectangles } = precuts({
      kind: { width: 20, length: 17 },
      pieces: [
        { width: 5, length: 20, count: 3 },
        { width: 2, length: 5, count: 4 },
      ],
    });
    expect(rectangles.flatMap(({ steps }: CutRectangle) => steps.map(({ text }) => text))).toEqual([
      'Take a rectangle of fabric 20 by 17.',
      'Cut the rectangle 20 by 17 across, from the top: 15, 2.',
      'Cut the rectangle 20 by 15 into 3 pieces 20 by 5.',
      'Cut the rectangle 20 by 2 into 4 pieces 5 by 2.',
    ]);
  });

  it('leave over what the pieces do not take, exactly', () => {
    const [rectangle] = precuts({
      kind: { width: '20 1/3', length: '17 1/5' },
      pieces: [{ width: 5, length: 5, count: 12 }],
    }).rectangles;
    const area = (boxes: CutRectangle['leftOver'] = []) =>
      boxes.reduce((sum, { width, height }) => sum.plus(width.times(height)), length(0));
    expect(
      area(rectangle?.leftOver)
        .plus(12 * 25)
        .equals(length('20 1/3').times('17 1/5')),
    ).toBe(true);
  });
});
