import { type Length, length, squareRoot } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rationals, sums } from '../number/sums.js';

const lengths: fc.Arbitrary<Length> = fc.oneof(
  sums.map((sum) => sum.length),
  rationals,
);

describe('a length', () => {
  const cases: readonly (readonly [string, Length, string])[] = [
    ['10 1/2 + 1/4', length('10 1/2').plus('1/4'), '10 3/4'],
    ['10 1/2 − 26.5 cm', length('10 1/2').minus('26.5 cm'), '17/254'],
    ['10 1/2 · 4', length('10 1/2').times(4), '42'],
    ['10 1/2 ÷ 4', length('10 1/2').dividedBy(4), '2 5/8'],
    ['10 1/2 ÷ −1/2', length('10 1/2').dividedBy('-1/2'), '-21'],
    ['−(10 1/2)', length('10 1/2').negated(), '-10 1/2'],
    ['√2 · √2', squareRoot(2).times(squareRoot(2)), '2'],
    ['√2 · √6', squareRoot(2).times('√6'), '2√3'],
    ['(1 + √2)²', squareRoot(2).plus(1).times(squareRoot(2).plus(1)), '2√2 + 3'],
    ['5√2 + 1/2', squareRoot(2).times(5).plus('1/2'), '5√2 + 1/2'],
    ['√3 + √2 − √3', squareRoot(3).plus('√2').minus('√3'), '√2'],
    ['0.1 + 0.2', length(0.1).plus(0.2), '3/10'],
    ['1/3 · 3n', length('1/3').times(3n), '1'],
    ['1/2 + {1/3}', length('1/2').plus({ s: 1n, n: 1n, d: 3n }), '5/6'],
  ];
  it.each(cases)('reckons %s exactly', (_, result, text) => {
    expect(result.toString()).toBe(text);
  });

  it('is not changed by reckoning with it', () => {
    const half = length('1/2');
    half.plus(1);
    half.times('√2');
    half.toGrid(1, 'up');
    expect(half.toString()).toBe('1/2');
    expect(Object.keys(half)).toEqual([]);
  });

  const orders: readonly (readonly [string, string, number])[] = [
    ['1/2', '0.5', 0],
    ['1/3', '0.3333333333333333', 1],
    ['1 in', '2.54 cm', 0],
    ['1 yd', '1 m', -1],
    ['√2', '1.4142135623730950488', 1],
    ['√2 + √3', '√10', -1],
    ['-1', '0', -1],
  ];
  it.each(orders)('%s is to %s as %i to 0', (left, right, order) => {
    expect(length(left).compareTo(right)).toBe(order);
    expect(length(left).equals(right)).toBe(order === 0);
    expect(length(left).minus(right).sign()).toBe(order);
  });
});

describe('a length in writing', () => {
  it('reads back to an equal length, as text and as JSON', () => {
    fc.assert(
      fc.property(lengths, (value) => {
        expect(length(value.toString()).equals(value)).toBe(true);
        expect(length(JSON.parse(JSON.stringify(value)) as string).equals(value)).toBe(true);
        expect(length(value.toString()).toString()).toBe(value.toString());
      }),
    );
  });

  it('reads back with hundreds of digits', () => {
    const long = squareRoot(10n ** 150n + 1n)
      .dividedBy(7n ** 150n)
      .minus(length(1).dividedBy(3n ** 300n));
    expect(length(long.toString()).equals(long)).toBe(true);
  });

  const cases: readonly (readonly [Length, string])[] = [
    [length(0), '0'],
    [length(-3), '-3'],
    [length('-1/2'), '-1/2'],
    [length('-12 2/3'), '-12 2/3'],
    [squareRoot(2), '√2'],
    [squareRoot(2).negated(), '-√2'],
    [squareRoot(2).times('3/2').minus('12 2/3'), '3/2√2 - 12 2/3'],
    [squareRoot(2).negated().plus(1), '-√2 + 1'],
    [squareRoot(2).plus(squareRoot(3)).plus(1), '√3 + √2 + 1'],
    [squareRoot(3).minus(squareRoot(2)), '√3 - √2'],
  ];
  it.each(cases)('case %#: %s', (value, text) => {
    expect(value.toString()).toBe(text);
    expect(value.toJSON()).toBe(text);
    expect(`${value}`).toBe(text);
    expect(JSON.stringify({ value })).toBe(JSON.stringify({ value: text }));
  });

  it('stands in a sentence, and in no comparison of numbers', () => {
    const [short, long] = [length(9), length(10)] as unknown as [number, number];
    expect(`cut ${short}`).toBe('cut 9');
    expect(() => short < long).toThrow(TypeError);
    expect(() => +short).toThrow(
      'Compare lengths with compareTo() and convert them with toNumber().',
    );
    expect(() => short - long).toThrow(TypeError);
  });
});
