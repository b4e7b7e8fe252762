import { PRECUT_NAMES, precutKind, precuts } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf, inEighths } from './support/eighths.js';
import { faultOf } from './support/guillotine.js';
import { refusal } from './support/refusal.js';

const square = (side: number, count: number) => ({ width: side, length: side, count });

describe('squares from a piece of 18 by 22', () => {
  // "Number of Squares from a Fat Quarter": class handout, issuer not shown (H). It counts a grid of
  // whole squares; a cutting plan may not do worse.
  it.each([
    [2, 99],
    [2.5, 56],
    [3, 42],
    [3.5, 30],
    [4, 20],
    [4.5, 16],
    [5, 12],
    [5.5, 12],
    [6, 9],
    [6.5, 6],
  ])('of %s inches: %i from one, and one more takes another', (side, published) => {
    const from = (count: number) => {
      const kind = { width: 22, length: 18 };
      const { needed, optimal } = precuts({ kind, pieces: [square(side, count)] });
      return [needed, optimal];
    };
    expect([from(published), from(published + 1)]).toEqual([
      [1, true],
      [2, true],
    ]);
  });
});

describe('the sizes of precuts', () => {
  // 18 by half the width, and half an inch less each way: common practice, no source.
  it.each([
    ['fat-quarter', 42, '21 by 18', '20 1/2 by 17 1/2'],
    ['fat-quarter', 44, '22 by 18', '21 1/2 by 17 1/2'],
    ['fat-eighth', 42, '21 by 9', '20 1/2 by 8 1/2'],
    ['strip-2-1/2', 42, '42 by 2 1/2', '40 by 2 1/2'],
    ['square-5', 42, '5 by 5', '5 by 5'],
    ['square-10', 42, '10 by 10', '10 by 10'],
  ] as const)('%s from fabric %i wide: %s, usable %s', (name, width, nominal, usable) => {
    const kind = precutKind(name, width);
    const said = (size: typeof kind.usable) => `${size.width} by ${size.length}`;
    expect([said(kind.nominal), said(kind.usable)]).toEqual([nominal, usable]);
  });

  it('are all planned with', () => {
    for (const kind of PRECUT_NAMES) {
      expect(precuts({ kind, pieces: [square(2, 7)] }).possible).toBe(true);
    }
  });
});

describe('precuts', () => {
  // Common practice, no source: of 3-inch squares a usable 17 1/2 by 20 1/2 gives 30.
  it('are usable half an inch less each way: 30 squares of 3 inches take one fat quarter, 31 two', () => {
    const from = (count: number) => precuts({ kind: 'fat-quarter', pieces: [square(3, count)] });
    expect([from(30).needed, from(31).needed]).toEqual([1, 2]);
    const all = { width: 21, length: 18 };
    const whole = precuts({ kind: 'fat-quarter', pieces: [square(3, 42)], usable: all });
    expect([whole.needed, `${whole.nominal.length}`]).toEqual([1, '18']);
  });

  it('come in packs', () => {
    const { needed, packs, spare } = precuts({
      kind: 'square-5',
      pieces: [square(2.5, 165)],
      packOf: 40,
    });
    expect([needed, packs, spare]).toEqual([42, 2, 38]);
  });

  it('name the pieces that do not fit, and are planned for the others', () => {
    const plan = precuts({
      kind: 'strip-2-1/2',
      pieces: [
        { label: 'log', width: '2 1/2', length: '10 1/2', count: 9 },
        { label: 'border', width: 3, length: 30, count: 2 },
      ],
    });
    expect([plan.possible, plan.needed]).toEqual([false, 3]);
    expect(plan.unfit.map(({ piece, label, count }) => [piece, label, count])).toEqual([
      [1, 'border', 2],
    ]);
    expect(plan.warnings.map(({ field, text }) => [field, text])).toEqual([
      [
        'pieces[1]',
        'No piece border, 3 by 30 can be cut from a precut of which 40 by 2 1/2 is usable. 2 of them are left out.',
      ],
    ]);
  });

  it('turn pieces only where that is allowed', () => {
    const upright = { width: 20, length: 3, count: 4 };
    expect(precuts({ kind: 'fat-quarter', pieces: [upright] }).possible).toBe(false);
    const turned = precuts({ kind: 'fat-quarter', pieces: [{ ...upright, turnable: true }] });
    expect([turned.possible, turned.needed]).toEqual([true, 1]);
  });

  it('say where to measure pinked edges before they are cut', () => {
    const codes = (kind: 'square-10' | 'fat-quarter') =>
      precuts({ kind, pieces: [square(5, 4)] }).steps.map(({ code }) => code);
    expect(codes('square-10')).toEqual(['find-edge', 'take-one', 'cut-pieces']);
    expect(codes('fat-quarter')).not.toContain('find-edge');
  });

  it('give every piece, on the fabric, from edge to edge, and are no fewer than the bound', () => {
    const list = fc.array(
      fc.record({
        width: fc.integer({ min: 12, max: 68 }).map((n) => `${n}/8`),
        length: fc.integer({ min: 12, max: 120 }).map((n) => `${n}/8`),
        count: fc.integer({ min: 0, max: 15 }),
        turnable: fc.boolean(),
      }),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(list, (asked) => {
        fc.pre(asked.some(({ count }) => count > 0));
        const plan = precuts({ kind: 'fat-quarter', pieces: asked, effort: 100_000 });
        const counts = asked.map(() => 0);
        for (const { placements, leftOver, count } of plan.rectangles) {
          const boxes = [...placements, ...leftOver].map(inEighths);
          expect(faultOf({ x: 0, y: 0, width: 164, height: 140 }, boxes)).toBeUndefined();
          expect(areaOf(boxes)).toBe(164 * 140);
          for (const { piece } of placements) counts[piece] = (counts[piece] ?? 0) + count;
        }
        expect(counts).toEqual(asked.map(({ count }) => count));
        expect(plan.fewest).toBeLessThanOrEqual(plan.needed);
        expect(plan.optimal).toBe(plan.fewest === plan.needed);
        expect(plan.warnings.length).toBe(plan.optimal ? 0 : 1);
      }),
      { numRuns: 15, seed: 8 },
    );
  });

  it.each([
    ['a kind that is not known', { kind: 'fat-third' }, 'unknown-choice', 'kind'],
    ['a size of zero', { kind: { width: 0, length: 9 } }, 'not-positive', 'kind.width'],
    ['fabric too narrow', { fabricWidth: 1 }, 'out-of-range', 'fabricWidth'],
    [
      'a usable size without end',
      { usable: { width: 9e9, length: 5 } },
      'out-of-range',
      'usable.width',
    ],
    ['no pack', { packOf: 0 }, 'not-a-count', 'packOf'],
    ['no pieces', { pieces: [] }, 'no-pieces', 'pieces'],
    [
      'over 10,000 pieces',
      { pieces: [square(1, 9e3), square(2, 2e3)] },
      'too-many-pieces',
      'pieces',
    ],
    ['a misspelled field', { pack: 3 }, 'unknown-field', 'pack'],
  ])('refuse %s', (_, change, code, field) => {
    const spec = JSON.parse(
      JSON.stringify({ kind: 'fat-quarter', pieces: [square(2, 4)], ...change }),
    );
    expect(refusal(() => precuts(spec))).toEqual([code, field]);
  });
});
