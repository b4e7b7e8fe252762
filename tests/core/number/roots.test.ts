import { length, squareRoot } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { floorDivide } from '../../../packages/core/src/number/rational.js';
import {
  perfectSquareRoot,
  squareRootFloor,
} from '../../../packages/core/src/number/squareRootFloor.js';

describe('a root', () => {
  // Factors up to 31 come out of it, and the root of a square does however large it is.
  it.each([
    ['0', '0'],
    ['1', '1'],
    ['49', '7'],
    ['1369', '37'],
    ['8', '2√2'],
    ['64/9', '2 2/3'],
    ['1/2', '1/2√2'],
    ['2/3', '1/3√6'],
    ['48', '4√3'],
    ['1922', '31√2'],
    ['2738', '√2738'],
  ])('of %s is written %s', (radicand, root) => {
    expect(squareRoot(radicand).toString()).toBe(root);
  });

  it('of nothing is nothing, and so is a root taken no times', () => {
    for (const nothing of [squareRoot(0), squareRoot(2).times(0), squareRoot(0).times(3)]) {
      expect(nothing.sign()).toBe(0);
      expect(nothing.toFraction()).toEqual({ s: 1n, n: 0n, d: 1n });
    }
  });

  it('is like another one that holds a factor too large to come out', () => {
    expect(squareRoot(2738).minus(squareRoot(2).times(37)).sign()).toBe(0);
  });
});

describe('whole parts', () => {
  it.each([
    [0n, 0n],
    [1n, 1n],
    [2n, 1n],
    [3n, 1n],
    [4n, 2n],
    [8n, 2n],
    [9n, 3n],
    [10n ** 40n - 1n, 10n ** 20n - 1n],
    [10n ** 40n, 10n ** 20n],
  ])('the root of %d is between %d and the next', (n, root) => {
    expect(squareRootFloor(n)).toBe(root);
    expect(perfectSquareRoot(n)).toBe(root * root === n ? root : undefined);
  });

  it.each([
    [7n, 2n, 3n],
    [6n, 2n, 3n],
    [-7n, 2n, -4n],
    [-6n, 2n, -3n],
    [-1n, 3n, -1n],
    [0n, 3n, 0n],
  ])('%d divided by %d is rounded down to %d', (a, b, quotient) => {
    expect(floorDivide(a, b)).toBe(quotient);
  });
});

describe('as a double, for a drawing', () => {
  const most = Number.MAX_SAFE_INTEGER;
  it.each([
    ['0', 0],
    ['3/8', 0.375],
    ['-1/3', -1 / 3],
    ['√2', Math.SQRT2],
    ['-√2', -Math.SQRT2],
    // Doubles that are subtracted from one another would lose digits.
    ['√2 - 3/2', -0.08578643762690495],
    [`${most}`, most],
    [`1/${most}`, 1 / most],
    // Neither part is a double, and the value is one all the same.
    [`${10n ** 400n}/${10n ** 399n * 4n}`, 2.5],
    [`${10n ** 399n * 4n}/${10n ** 400n}`, 0.4],
    [`1/${10n ** 30n}`, 1e-30],
    [`${10n ** 30n}`, 1e30],
  ])('%s is near enough', (text, value) => {
    const made = length(text).toNumber();
    expect(Math.abs(made - value)).toBeLessThanOrEqual(Math.abs(value) * 2 ** -50);
  });
});
