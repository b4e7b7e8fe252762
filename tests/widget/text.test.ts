import { length } from '@eighths/core';
import { describe, expect, test } from 'vitest';
import { attributeName, propertyName } from '../../packages/widget/src/base/names.js';
import { readList, readSides, textOf } from '../../packages/widget/src/base/text.js';
import { logCabinFields } from '../../packages/widget/src/log-cabin/fields.js';

describe('the text of what a page sets', () => {
  test.each([
    ['9', '9'],
    ['', ''],
    [9, '9'],
    [0, '0'],
    [10.5, '10.5'],
    [16n, '16'],
    [true, 'true'],
    [false, 'false'],
    [null, ''],
    [undefined, ''],
    [[1, '3/4'], '1; 3/4'],
    [[length('1/2'), length(2)], '1/2 in; 2 in'],
    [length('10 1/2'), '10 1/2 in'],
    [{ width: 6, height: '9 1/2' }, '6 by 9 1/2'],
    [{ width: length(6), height: length(9) }, '6 in by 9 in'],
    [{}, ''],
  ] as const)('of %s is %j', (value, text) => {
    expect(textOf(value)).toBe(text);
  });
});

describe('a list', () => {
  const read = (text: string) => text;

  test.each([
    ['1 1/4', '1 1/4'],
    ['1; 3/4', ['1', '3/4']],
    ['1 ;3/4;  1/2', ['1', '3/4', '1/2']],
    ['1, 3/4', ['1', '3/4']],
    // A decimal comma separates nothing.
    ['1,5', '1,5'],
    ['linen, night sky', ['linen', 'night sky']],
    ['1;', ['1', '']],
  ] as const)('%j is read as %j', (text, entries) => {
    expect(readList(text, read)).toEqual(entries);
  });
});

describe('a size', () => {
  const read = (text: string) => text.trim();

  test.each([
    ['6', '6'],
    ['6 by 9', { width: '6', height: '9' }],
    ['6 x 9', { width: '6', height: '9' }],
    ['6×9', { width: '6', height: '9' }],
    ['6 1/2 BY 9', { width: '6 1/2', height: '9' }],
    ['6 by 9 by 12', '6 by 9 by 12'],
  ] as const)('%j is read as %j', (text, sides) => {
    expect(readSides(text, read)).toEqual(sides);
  });
});

describe('names', () => {
  test.each([
    ['finished', 'finished'],
    ['finished.width', 'finished-width'],
    ['strips.wide', 'strips-wide'],
    ['strips.wide[2]', 'strips-wide'],
    ['wideSides', 'wide-sides'],
    ['trim.after', 'trim-after'],
  ])('the field %s is the attribute %s', (path, attribute) => {
    expect(attributeName(path)).toBe(attribute);
  });

  test.each(logCabinFields)('the attribute %s and its property lead to each other', (attribute) => {
    expect(attributeName(propertyName(attribute))).toBe(attribute);
    expect(propertyName(attribute)).toMatch(/^[a-zA-Z]+$/);
  });
});
