import {
  fabricCost,
  formatMoney,
  length,
  marginOf,
  money,
  priceForMargin,
  sumMoney,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';

describe('an amount of money is read exactly', () => {
  it.each<[string | number, string, number]>([
    ['12.50', 'USD', 1250],
    [12.5, 'USD', 1250],
    [0.1, 'USD', 10],
    ['0.10', 'USD', 10],
    ['12.500', 'USD', 1250],
    [0, 'USD', 0],
    [' 7 ', 'USD', 700],
    ['1250', 'JPY', 1250],
    ['1.234', 'KWD', 1234],
  ])('%j %s is %d of the smallest unit', (input, currency, cents) => {
    expect(money(input, currency)).toEqual({ cents, currency });
  });

  it.each<[string | number, string, string]>([
    ['-1', 'USD', 'not-money'],
    [-0.01, 'USD', 'not-money'],
    ['12.505', 'USD', 'not-money'],
    ['12.50', 'JPY', 'not-money'],
    ['12,50', 'USD', 'not-money'],
    ['$12', 'USD', 'not-money'],
    ['1e3', 'USD', 'not-money'],
    [1e21, 'USD', 'not-money'],
    [Number.NaN, 'USD', 'not-money'],
    [Number.POSITIVE_INFINITY, 'USD', 'not-money'],
    ['', 'USD', 'not-money'],
    ['99999999999', 'USD', 'too-much-money'],
    ['12', 'dollars', 'unknown-currency'],
    ['12', 'usd', 'unknown-currency'],
  ])('%j %s is refused', (input, currency, code) => {
    expect(refusal(() => money(input, currency)).code).toBe(code);
  });

  it('says what would be accepted, in the places that the currency has', () => {
    expect(refusal(() => money('12.505', 'USD', 'fabrics[0].price')).message).toContain('12.50');
    expect(refusal(() => money('12.5', 'JPY')).message).toContain('such as 12.');
  });
});

describe('fabric costs its price times its length, once to the nearest cent', () => {
  it.each<[string, 'yard' | 'meter', string, number]>([
    ['12.50', 'yard', '1 yd', 1250],
    ['12.50', 'yard', '1 3/8 yd', 1719],
    // Half a cent goes up: 0.01 × 1 1/2.
    ['0.01', 'yard', '1 1/2 yd', 2],
    ['0.01', 'yard', '1/2 yd', 1],
    ['0.01', 'yard', '1/4 yd', 0],
    // 1 yd = 0.9144 m exactly (Addendum to NBS Circular 572, A): 100.00 × 0.9144.
    ['100', 'meter', '1 yd', 9144],
    ['20', 'meter', '0.1 m', 200],
  ])('%s a %s, %s', (price, per, amount, cents) => {
    expect(fabricCost({ each: money(price, 'USD'), per }, length(amount)).cents).toBe(cents);
  });

  const cents = fc.integer({ min: 0, max: 100_000 });
  const eighths = fc.integer({ min: 0, max: 800 });

  it('within half a cent of what it is exactly', () => {
    fc.assert(
      fc.property(cents, eighths, (price, length8) => {
        const each = { cents: price, currency: 'USD' };
        const cost = fabricCost({ each, per: 'yard' }, length('1/8 yd').times(length8));
        const twice = 16n * BigInt(cost.cents) - 2n * BigInt(price) * BigInt(length8);
        expect(twice > -8n && twice <= 8n).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});

describe('a margin', () => {
  it('is what is left of a price, exactly', () => {
    const { gain, share } = marginOf(money(30, 'USD'), money(45, 'USD'));
    expect(gain.cents).toBe(1500);
    expect(share.toString()).toBe('1/3');
  });

  it('is below 0 where the cost is more than the price', () => {
    expect(marginOf(money(30, 'USD'), money(20, 'USD')).gain.cents).toBe(-1000);
  });

  it('makes a price of which at least that part is left, and not if it were a cent less', () => {
    const cost = fc.integer({ min: 1, max: 100_000 });
    const percent = fc.integer({ min: 0, max: 99 });
    fc.assert(
      fc.property(cost, percent, (cents, part) => {
        const paid = { cents, currency: 'USD' };
        const price = priceForMargin(paid, length(part).dividedBy(100));
        const left = (of: number): number => 100 * (of - cents) - part * of;
        expect(left(price.cents)).toBeGreaterThanOrEqual(0);
        expect(left(price.cents - 1)).toBeLessThan(0);
      }),
      { numRuns: 100 },
    );
  });

  it.each(['1', '-0.1', '1.5', '√2 - 1'])('of %s is refused', (share) => {
    expect(refusal(() => priceForMargin(money(1, 'USD'), share)).code).toBe('not-a-margin');
  });
});

describe('amounts', () => {
  it('add up exactly', () => {
    const dimes = Array.from({ length: 10 }, () => money(0.1, 'USD'));
    expect(sumMoney(dimes)?.cents).toBe(100);
  });

  it('of two currencies do not', () => {
    expect(refusal(() => sumMoney([money(1, 'USD'), money(1, 'EUR')])).code).toBe(
      'several-currencies',
    );
  });

  it.each([
    ['1234.5', 'USD', 'en-US', '$1,234.50'],
    ['0.05', 'USD', 'en-US', '$0.05'],
    ['1234', 'JPY', 'en-US', '¥1,234'],
    ['9999999999.99', 'USD', 'en-US', '$9,999,999,999.99'],
  ])('%s %s is written for %s as %s', (input, currency, locale, shown) => {
    expect(formatMoney(money(input, currency), locale)).toBe(shown);
  });

  it('are written in a language that exists', () => {
    expect(refusal(() => formatMoney(money(1, 'USD'), 'not a language')).code).toBe(
      'unknown-choice',
    );
  });
});
