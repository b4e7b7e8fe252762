import { kits, kitsInParts, length, precutsFor, quilt } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';
import { classOf, everything, pattern, plain } from './recipes.js';

const yards = (count: string): ReturnType<typeof length> => length(`${count} yd`);

describe('the demo class for twelve, and one kit to spare', () => {
  const plan = kits({ recipe: pattern, ...classOf });

  it('takes thirteen kits of a crib quilt', () => {
    expect([plan.people, plan.spares, plan.kits, plan.size]).toEqual([12, 1, 13, 'Crib']);
    expect(plan.makes).toEqual([{ name: 'Thaw at Fernhollow, Crib', count: 1 }]);
  });

  // By hand: eight 2-inch strips make the wide logs of sixteen blocks; with one to spare and an inch to
  // straighten, 19 inches: five eighths of a yard is 22 1/2. Thirteen of them are 8 1/8 yards.
  it('cuts five eighths of a yard of Night for each kit, 8 1/8 yards in all', () => {
    const night = plan.fabrics.find(({ id }) => id === 'night');
    expect(night?.kit?.plan.length.toString()).toBe('16');
    expect(night?.perKit).toEqual(yards('5/8'));
    expect(night?.separate).toEqual(yards('8 1/8'));
    // Fifteen yards hold twenty-four of them, and thirteen leave 6 7/8.
    expect(night?.bolts.kitsPerBolt).toBe(24);
    expect(night?.bolts.lastRemnant).toEqual(yards('6 7/8'));
  });

  it('costs what its parts cost, and is sold so that four tenths are left', () => {
    const { price, fabrics, extras } = plan;
    const parts = [...fabrics, ...extras].map(({ cost }) => cost?.cents ?? 0);
    expect(price?.cost.cents).toBe(parts.reduce((all, cents) => all + cents, 0));
    expect(price?.total.cents).toBe(13 * (price?.cost.cents ?? 0));
    expect(price?.margin?.share.compareTo('2/5')).toBeGreaterThanOrEqual(0);
    expect(price?.gain?.cents).toBe(12 * (price?.price?.cents ?? 0) - (price?.total.cents ?? 0));
  });

  it('holds no backing, since it was not asked for', () => {
    expect(plan.fabrics.map(({ id }) => id)).not.toContain('plaid');
    const backed = kits({ recipe: pattern, ...classOf, backing: true });
    expect(backed.fabrics.find(({ id }) => id === 'plaid')?.kit).toBeUndefined();
    expect(backed.fabrics.find(({ id }) => id === 'plaid')?.perKit).toEqual(yards('2 3/4'));
  });

  it('is the same by parts', () => {
    const making = kitsInParts({ recipe: pattern, ...classOf });
    let state = making.next();
    while (!state.done) state = making.next();
    expect(JSON.stringify(state.value)).toBe(JSON.stringify(plan));
  });
});

describe('a kit', () => {
  it('of a whole quilt is what that quilt takes', () => {
    const { fabrics } = kits({ recipe: everything, size: 'Small', people: 1, backing: true });
    const whole = quilt(everything, 'Small').fabrics;
    expect(fabrics.map(({ id, perKit }) => `${id} ${perKit}`)).toEqual(
      whole.map(({ id, buy }) => `${id} ${buy}`),
    );
    for (const { pooled, perKit } of fabrics) expect(pooled).toEqual(perKit);
  });

  it('of blocks holds nothing but their fabrics', () => {
    const each = [{ block: 'geese', count: 3 }];
    const plan = kits({ recipe: everything, people: 4, each });
    expect(plan.makes).toEqual([{ name: 'Flight', count: 3 }]);
    expect(plan.fabrics.map(({ id }) => id)).toEqual(['sky', 'sand', 'moss']);
    // By hand: one set makes four geese at a time, and three are wanted.
    const geese = plan.fabrics[2]?.cuts.find(({ label }) => label === 'goose');
    expect([geese?.count, `${geese?.width}`]).toEqual([1, '7 1/4']);
  });

  it('without prices has no cost, and says which fabric it is for', () => {
    const fabrics = [
      { id: 'linen', name: 'Linen', price: 12 },
      { id: 'night', name: 'Night' },
    ];
    const recipe = { ...plain, fabrics, binding: { fabric: 'night' } };
    const plan = kits({ recipe, people: 2 });
    expect(plan.price).toBeUndefined();
    expect(plan.warnings.map(({ text }) => text)).toEqual([
      'Night has no price, so that it is not known what a kit costs.',
    ]);
  });

  it('that costs more than its price is said to', () => {
    const plan = kits({ recipe: pattern, ...withoutMargin, price: 1 });
    expect(plan.warnings.map(({ code }) => code)).toEqual(['sold-below-cost']);
    expect(plan.price?.margin?.gain.cents).toBeLessThan(0);
  });
});

const { margin, ...withoutMargin } = classOf;

describe('all kits cut from one length', () => {
  const sizes = fc.integer({ min: 1, max: 4 });
  const people = fc.integer({ min: 1, max: 15 });

  it('never need more than kits cut one by one, nor less than their area', () => {
    fc.assert(
      fc.property(sizes, sizes, people, (half, down, count) => {
        const size = { name: 'Class', across: 2 * half, down: 2 * down, borders: [] };
        const plan = kits({ recipe: pattern, size, people: count, binding: false });
        for (const { pooled, separate, saves, cuts, bolts } of plan.fabrics) {
          expect(pooled.compareTo(separate)).toBeLessThanOrEqual(0);
          expect(pooled.plus(saves)).toEqual(separate);
          const area = cuts.reduce(
            (all, { width, length: long, count: pieces }) =>
              all.plus(width.times(long).times(pieces)),
            length(0),
          );
          expect(pooled.times(40).compareTo(area.times(count))).toBeGreaterThan(0);
          expect(bolts.pooledBolts).toBeLessThanOrEqual(bolts.bolts);
        }
      }),
      { numRuns: 12 },
    );
  });

  it('leave of each bolt less than a kit, and waste no bolt', () => {
    fc.assert(
      fc.property(people, fc.integer({ min: 3, max: 30 }), (count, bolt) => {
        const plan = kits({ recipe: pattern, size: 'Crib', people: count, bolt: `${bolt} yd` });
        for (const { perKit, bolts } of plan.fabrics) {
          const { kitsPerBolt, bolts: number, remnant, lastRemnant } = bolts;
          expect(remnant.compareTo(perKit)).toBeLessThan(0);
          expect(kitsPerBolt * number).toBeGreaterThanOrEqual(count);
          expect(kitsPerBolt * (number - 1)).toBeLessThan(count);
          // What is on the bolts is what the kits take, and what is left over.
          const onBolts = bolts.bolt.times(number);
          const left = remnant.times(number - 1).plus(lastRemnant);
          expect(perKit.times(count).plus(left)).toEqual(onBolts);
        }
      }),
      { numRuns: 12 },
    );
  });
});

describe('what is wrong with a class is said with its path', () => {
  it.each<[string, object, string, string]>([
    ['no people', { people: 0 }, 'people', 'not-a-count'],
    ['half a person', { people: 1.5 }, 'people', 'not-a-count'],
    ['fewer kits than people', { spares: -1 }, 'spares', 'not-a-count'],
    ['an unknown field', { seats: 12 }, 'seats', 'unknown-field'],
    ['a size that is not there', { size: 'Huge' }, 'size', 'unknown-choice'],
    ['nothing to make', { each: [] }, 'each', 'wrong-kind'],
    [
      'a block that is not there',
      { each: [{ block: 'wave', count: 1 }] },
      'each[0].block',
      'unknown-choice',
    ],
    ['no block', { each: [{ block: 'cabin', count: 0 }] }, 'each[0].count', 'not-a-count'],
    ['a bolt that is too short', { bolt: 9 }, 'bolt', 'bolt-too-short'],
    ['a price below 0', { margin: undefined, price: -5 }, 'price', 'not-money'],
    ['all of the price for a margin', { margin: 1 }, 'margin', 'not-a-margin'],
    ['a price and a margin', { price: 50 }, 'margin', 'conflicting-fields'],
    ['an extra of nothing', { extras: [{ name: '' }] }, 'extras[0].name', 'not-a-text'],
    ['an extra that pays', { extras: [{ name: 'Box', cost: -1 }] }, 'extras[0].cost', 'not-money'],
    ['a recipe of nothing', { recipe: { ...plain, fabrics: [] } }, 'recipe.fabrics', 'not-a-list'],
    [
      'a backing that the recipe has not',
      { recipe: plain, size: 'Cushion', backing: true },
      'recipe.backing',
      'missing-field',
    ],
  ])('%s', (_, change, field, code) => {
    const error = refusal(() => kits({ recipe: pattern, ...classOf, ...change }));
    expect([error.code, error.field]).toEqual([code, field]);
  });
});

describe('precuts for a recipe', () => {
  it('make the demo pattern where every piece fits, those that make it first', () => {
    const choices = precutsFor({ recipe: pattern, packOf: { 'strip-2-1/2': 40 } });
    expect(choices.map(({ kind, possible }) => `${kind} ${possible}`)).toEqual([
      'fat-quarter true',
      'fat-eighth true',
      'strip-2-1/2 true',
      'square-5 false',
      'square-10 false',
    ]);
    const strips = choices[2];
    // Centers of 2 1/2: sixteen come from a strip of 40.
    expect(strips?.fabrics[0]?.precuts.needed).toBe(1);
    expect(strips?.packs).toBe(Math.ceil((strips?.needed ?? 0) / 40));
    // The longest log is 10 1/4: no 10-inch square holds it.
    const oat = choices[4]?.fabrics.find(({ id }) => id === 'oat');
    expect(oat?.precuts.unfit.map(({ count }) => count)).toEqual([16]);
  });

  it('are asked for by their kinds', () => {
    const choices = precutsFor({ recipe: plain, kinds: ['square-10'] });
    expect(choices.map(({ kind, needed }) => `${kind} ${needed}`)).toEqual(['square-10 9']);
  });

  it.each<[string, object, string]>([
    ['of an unknown kind', { kinds: ['bundle'] }, 'kinds[0]'],
    ['in packs of none', { packOf: { 'square-5': 0 } }, 'packOf.square-5'],
    ['of a wrong recipe', { recipe: { ...plain, name: '' } }, 'recipe.name'],
  ])('%s are refused', (_, change, field) => {
    expect(refusal(() => precutsFor({ recipe: plain, ...change })).field).toBe(field);
  });
});
