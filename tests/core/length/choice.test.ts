import { type EighthsError, formatLength, type WrittenUnit } from '@eighths/core';
import { describe, expect, it } from 'vitest';

/** What a refusal says was given for a unit. */
function told(unit: unknown): string {
  try {
    formatLength('10 1/2', { unit: unit as WrittenUnit });
  } catch (error) {
    return String((error as EighthsError).values.value);
  }
  throw new Error('Nothing was refused.');
}

describe('what is given for a word of a list, and is none, is told', () => {
  const long = 'x'.repeat(60);
  const cases: readonly (readonly [string, unknown, string])[] = [
    ['a word as it is', 'furlong', 'furlong'],
    ['a word in capitals, which is another one', 'CM', 'CM'],
    ['sixty characters as they are', long, long],
    ['more by their beginning', `${long}y`, `${long}…`],
    ['a list by its kind, whatever is in it', ['cm'], 'a list'],
    ['an object by its kind', { unit: 'cm' }, 'an object'],
    ['an object that has no text', Object.create(null), 'an object'],
    ['a number by its figures', 7, '7'],
  ];
  it.each(cases)('%s', (_, given, text) => {
    expect(told(given)).toBe(text);
  });
});
