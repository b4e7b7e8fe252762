import { cuttingPlan, howManyFrom } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pieces } from './arbitrary.js';

const squares = (side: number) => [{ width: side, length: side, count: 1 }];

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
  ])('of %s inches: at least %i', (side, published) => {
    const { sets, proven } = howManyFrom({ width: 22, length: 18, pieces: squares(side) });
    expect(sets).toBeGreaterThanOrEqual(published);
    // Strips of squares make no more than a grid of them.
    const grid = Math.floor(22 / side) * Math.floor(18 / side);
    expect([sets, proven]).toEqual([grid, true]);
  });

  it('of 3 inches: 42 need all of it, a usable 17 1/2 by 20 1/2 gives 30', () => {
    const from = (width: string, length: string) =>
      howManyFrom({ width, length, pieces: squares(3) }).sets;
    expect([from('22', '18'), from('20 1/2', '17 1/2')]).toEqual([42, 30]);
  });
});

describe('fabric on hand', () => {
  it('gives whole sets only, with their plan', () => {
    const set = [
      { width: '2 1/2', length: 10, count: 3 },
      { width: '4 1/2', length: '4 1/2', count: 2 },
    ];
    const { sets, proven, plan } = howManyFrom({ width: 40, length: 18, pieces: set });
    expect([sets, proven, plan?.length.toString()]).toEqual([4, true, '12']);
    expect(plan?.pieces.map(({ count }) => count)).toEqual([12, 8]);
  });

  it('that is too short for one set gives none, and no plan', () => {
    const none = howManyFrom({ width: 40, length: 2, pieces: squares(3) });
    expect(none).toEqual({ sets: 0, proven: true });
  });

  it('stops at 100,000 of one piece, without a claim', () => {
    const much = howManyFrom({ width: 100, length: 1000, pieces: squares(0.5) });
    expect([much.sets, much.proven]).toEqual([100_000, false]);
  });

  it('gives as many sets as its plan is long for, and one more would not fit', () => {
    fc.assert(
      fc.property(pieces, fc.integer({ min: 2, max: 90 }), (list, long) => {
        const set = list.map((piece) => ({ ...piece, count: 1 + (piece.count % 3) }));
        const { sets, proven, plan } = howManyFrom({ width: 44, length: long, pieces: set });
        if (plan === undefined) expect(sets).toBe(0);
        else expect(plan.length.compareTo(long)).not.toBe(1);
        const more = set.map((piece) => ({ ...piece, count: piece.count * (sets + 1) }));
        expect(proven).toBe(true);
        expect(
          cuttingPlan({ method: 'plain', width: 44, pieces: more }).length.compareTo(long),
        ).toBe(1);
      }),
      { numRuns: 40, seed: 8 },
    );
  });
});
