import { byFabric, cuttingPlan, length, yardage } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fabricWidth, pieces } from './arbitrary.js';

const bare = { spare: 0, straightening: 0, method: 'plain' as const };
/** Strips that take so much fabric. */
const taking = (total: string) => ({ width: 42, pieces: [{ width: total, length: 42, count: 1 }] });

describe('yardage', () => {
  it('shows the bare need, straightening and one spare strip, the widest, apart', () => {
    const bought = yardage({
      width: 42,
      pieces: [
        { width: '2 1/2', length: '8 1/2', count: 28 },
        { width: '4 1/2', length: '4 1/2', count: 31 },
      ],
    });
    expect(JSON.parse(JSON.stringify(bought))).toMatchObject({
      bare: '35 1/2',
      straightening: '1',
      spare: '4 1/2',
      shrinkage: '0',
      need: '41',
      increment: '4 1/2',
      buy: '45',
      leftOver: { width: '42', height: '8 1/2' },
      purchaseProven: true,
    });
    expect([bought.yards, bought.meters]).toEqual(['1¼\u00a0yd', '≈ 1.15\u00a0m']);
  });

  // Derived exactly (X): washing leaves 1 − p of what is bought, so L / (1 − p) must be bought.
  it('divides by what washing leaves: 36 inches at a tenth need 40 exactly', () => {
    const bought = yardage(taking('36'), { ...bare, shrinkage: 0.1, increment: '1/8' });
    expect([`${bought.need}`, `${bought.shrinkage}`, `${bought.buy}`]).toEqual(['40', '4', '40']);
  });

  // A yard is 36 inches; shops cut in eighths: common practice, no source.
  it.each([
    ['4 1/2', '1/8 yd', '4 1/2'],
    ['4 5/8', '1/8 yd', '9'],
    ['12', '1/3 yd', '12'],
    ['12 1/8', '1/3 yd', '24'],
    ['35 1/2', '1/4 yd', '36'],
    ['10', '0.1 m', '11 103/127'],
  ])('of %s in steps of %s buys %s', (total, increment, buy) => {
    expect(yardage(taking(total), { ...bare, increment }).buy.toString()).toBe(buy);
  });

  it('takes whichever of several increments buys least', () => {
    const increment = ['1/8 yd', '1/3 yd'];
    const buys = (total: string) => {
      const bought = yardage(taking(total), { ...bare, increment });
      return [`${bought.buy}`, `${bought.increment}`];
    };
    expect(buys('11')).toEqual(['12', '12']);
    expect(buys('13')).toEqual(['13 1/2', '4 1/2']);
    expect(buys('36')).toEqual(['36', '4 1/2']);
  });

  it('is exact in meters where fabric is sold so', () => {
    const bought = yardage(taking('30 cm'), { ...bare, increment: '0.1 m' });
    expect(bought.meters).toBe('0.3\u00a0m');
    expect(bought.buy.equals('30 cm')).toBe(true);
  });

  it('uses a finished plan as it is', () => {
    const plan = cuttingPlan({ ...taking('7'), method: 'plain' });
    expect(yardage(plan).plan).toBe(plan);
    expect(JSON.stringify(yardage(plan))).toBe(
      JSON.stringify(yardage(taking('7'), { method: 'plain' })),
    );
  });

  it('can prove the purchase where the inches are not proven', () => {
    const plan = cuttingPlan({ ...taking('8'), effort: 0 });
    const doubtful = { ...plan, optimal: false, lowerBound: length('7 1/2') };
    expect(yardage(doubtful, bare).purchaseProven).toBe(true);
    expect(yardage({ ...doubtful, lowerBound: length(4) }, bare).purchaseProven).toBe(false);
  });

  it('always buys enough, in whole increments, and never one increment too many', () => {
    const options = fc.record({
      shrinkage: fc.integer({ min: 0, max: 20 }).map((percent) => percent / 100),
      increment: fc.constantFrom('1/8 yd', '1/3 yd', '0.1 m'),
      straightening: fc.constantFrom('0', '1', '2 1/2'),
    });
    fc.assert(
      fc.property(fabricWidth, pieces, options, (width, list, given) => {
        const bought = yardage({ width, pieces: list }, { ...given, method: 'plain' });
        const kept = bought.buy.times(length(1).minus(given.shrinkage));
        const used = bought.bare.plus(bought.spare).plus(bought.straightening);
        expect(kept.compareTo(used)).not.toBe(-1);
        expect(bought.buy.isOnGrid(given.increment)).toBe(true);
        expect(bought.buy.minus(given.increment).compareTo(bought.need)).toBe(-1);
        // What is left is the spare strip, untouched, and what rounding up added.
        expect(bought.leftOver.height.compareTo(bought.spare)).not.toBe(-1);
        expect(
          bought.leftOver.height.plus(bought.bare).plus(bought.straightening).equals(kept),
        ).toBe(true);
      }),
      { numRuns: 80, seed: 8 },
    );
  });
});

describe('pieces by fabric', () => {
  it('come in the order in which the fabrics first come up, each in its own order', () => {
    const list = [
      { fabric: 'blue', width: 2, length: 2, count: 4 },
      { width: 2, length: 3, count: 1 },
      { fabric: 'white', width: 2, length: 3, count: 8 },
      { fabric: 'blue', width: 2, length: 5, count: 4 },
    ];
    expect(byFabric(list)).toEqual([
      { fabric: 'blue', pieces: [list[0], list[3]] },
      { fabric: undefined, pieces: [list[1]] },
      { fabric: 'white', pieces: [list[2]] },
    ]);
  });

  it('each make a plan', () => {
    const list = [
      { fabric: 'blue', width: 2, length: 2, count: 4 },
      { fabric: 'white', width: 3, length: 3, count: 8 },
    ];
    const buys = byFabric(list).map(
      ({ pieces: own }) => `${yardage({ width: 42, pieces: own }).buy}`,
    );
    expect(buys).toEqual(['9', '9']);
  });
});
