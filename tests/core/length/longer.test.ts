import { length, squareRoot } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { absolute, longerOf, shorterOf } from '../../../packages/core/src/length/longer.js';

describe('of two lengths', () => {
  it.each([
    ['1/2', '5/8', '5/8', '1/2'],
    ['5/8', '1/2', '5/8', '1/2'],
    ['-1', '0', '0', '-1'],
    // 12 3/4 is a little more than the diagonal of 9.
    ['9√2', '12 3/4', '12 3/4', '9√2'],
  ])('%s and %s, %s is the longer one, and %s the shorter one', (one, other, longer, shorter) => {
    expect(longerOf(length(one), length(other)).toString()).toBe(longer);
    expect(shorterOf(length(one), length(other)).toString()).toBe(shorter);
  });
});

describe('without its sign', () => {
  it.each([
    [length('1/8'), '1/8'],
    [length('-1/8'), '1/8'],
    [length(0), '0'],
    [squareRoot(2).negated().plus(1), '√2 - 1'],
  ])('%s is %s', (value, size) => {
    expect(absolute(value).toString()).toBe(size);
  });
});
