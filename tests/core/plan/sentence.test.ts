import { fillSentence, length } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import type { SentenceValue } from '../../../packages/core/src/errors/sentence.js';

describe('in a sentence', () => {
  const size = (width: string, height: string): SentenceValue => ({
    width: length(width),
    height: length(height),
  });

  it.each<[string, SentenceValue, string]>([
    ['a count', 4, 'Cut 4.'],
    ['a word', 'squares', 'Cut squares.'],
    ['a length', length('2 1/2'), 'Cut 2 1/2.'],
    ['a square by its one side', size('2 1/2', '2.5'), 'Cut 2 1/2.'],
    ['an oblong by both', size('2 1/2', '4'), 'Cut 2 1/2 by 4.'],
  ])('%s is told', (_, what, told) => {
    expect(fillSentence('Cut {what}.', { what })).toBe(told);
  });
});
