import { EighthsError, type Length, length, type Rounding, squareRoot } from '@eighths/core';
import { describe, expect, it } from 'vitest';

describe('what is no grid, divisor or radicand', () => {
  // What is refused, and of which operand, by what code, and how the sentence ends.
  const refusals: readonly (readonly [string, () => Length | boolean, string, string, string])[] = [
    ['a step of 0', () => length(1).toGrid(0, 'up'), 'step', 'length-step', 'not 0.'],
    ['a step below 0', () => length(1).toGrid('-1/8', 'up'), 'step', 'length-step', 'not -1/8.'],
    ['a step with a root', () => length(1).toGrid('√2', 'up'), 'step', 'length-step', 'not √2.'],
    ['a step of 0', () => length(1).isOnGrid(0), 'step', 'length-step', 'not 0.'],
    ['a divisor of 0', () => length(1).dividedBy(0), 'divisor', 'length-divisor', 'not 0.'],
    [
      '0 as a sum of roots',
      () => length(1).dividedBy('√2 - √2'),
      'divisor',
      'length-divisor',
      'not 0.',
    ],
    [
      'a root as divisor',
      () => length(1).dividedBy('1/2√2 + 1'),
      'divisor',
      'length-divisor',
      'not 1/2√2 + 1.',
    ],
    ['a root of less than 0', () => squareRoot('-1/4'), 'radicand', 'length-root', 'not -1/4.'],
    ['a root of a root', () => squareRoot('√2'), 'radicand', 'length-root', 'not √2.'],
    [
      'an unknown rounding',
      () => length(1).toGrid('1/8', 'sideways' as Rounding),
      'rounding',
      'unknown-choice',
      '“sideways” is not known here. Use one of: up, down, nearest.',
    ],
  ];
  it.each(refusals)('%s is refused', (_, act, field, code, ending) => {
    expect(act).toThrow(EighthsError);
    expect(act).toThrow(expect.objectContaining({ code, field }));
    expect(act).toThrow(ending);
  });

  it('a root of nothing is nothing, and no mistake', () => {
    expect(squareRoot(0).sign()).toBe(0);
  });
});
