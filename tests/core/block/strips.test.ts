import { type LogCabinSpec, logCabin, type PlainLogCabinSpec } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { inches } from './support.js';

type Case = readonly [what: string, spec: LogCabinSpec, trimAfter: string, widths: string];

const plain = { rounds: 1, center: 2, log: '1 1/8' } as const;
const curved = { rounds: 1, center: 2, wide: '1 1/4', narrow: '1/2' } as const;

const cases: readonly Case[] = [
  ['nothing said: exact, never trimmed', plain, 'never', '1 5/8'],
  ['trimmed never: exact', { ...plain, trim: { after: 'never' } }, 'never', '1 5/8'],
  [
    'exact strips, never trimmed',
    { ...plain, strips: { log: '1 5/8' }, trim: { after: 'never' } },
    'never',
    '1 5/8',
  ],
  [
    'strips as given, trimmed after each round',
    { ...plain, strips: { log: '2 1/8' } },
    'round',
    '2 1/8',
  ],
  [
    'strips as given, trimmed after each log',
    { ...plain, strips: { log: 2 }, trim: { after: 'log' } },
    'log',
    '2',
  ],
  // 1 1/8 + 1/2 + 1/4 = 1 7/8, up to the quarter.
  [
    'finished, two seams and a quarter, up to the quarter',
    { ...plain, trim: { after: 'round' } },
    'round',
    '2',
  ],
  ['an empty trim: after each round', { ...plain, trim: {} }, 'round', '2'],
  [
    'an oversize of nothing, up to the quarter',
    { ...plain, trim: { oversize: 0 } },
    'round',
    '1 3/4',
  ],
  [
    'an oversize of half an inch',
    { ...plain, trim: { after: 'log', oversize: '1/2' } },
    'log',
    '2 1/4',
  ],
  // 1 1/8 + 3/4 + 1/4 = 2 1/8.
  ['seams of 3/8', { ...plain, seam: '3/8', trim: { after: 'round' } }, 'round', '2 1/4'],
  ['wide and narrow by themselves', { ...curved, trim: { after: 'round' } }, 'round', '2, 1 1/4'],
  [
    'one kind given, the other as usual',
    { ...curved, strips: { wide: '2 1/2' } },
    'round',
    '2 1/2, 1 1/4',
  ],
  // 25 + 12 + 5 = 42 mm, up to 45: 1 98/127 in.
  [
    'millimeters: an oversize of 5 mm, up to 5 mm',
    {
      rounds: 1,
      center: '50 mm',
      log: '25 mm',
      seam: '6 mm',
      grid: '1 mm',
      trim: { after: 'round' },
    },
    'round',
    '1 98/127',
  ],
];

describe('strips are cut', () => {
  it.each(cases)('%s', (_, spec, trimAfter, widths) => {
    const plan = logCabin(spec);
    expect(plan.trimAfter).toBe(trimAfter);
    expect(plan.strips.map(({ width }) => inches(width)).join(', ')).toBe(widths);
  });

  it('as wide in each round as its log or its list says', () => {
    const widths = (spec: PlainLogCabinSpec): string[] =>
      logCabin({ ...spec, layout: 'quarter' }).rounds.map(({ logs }) => inches(logs[0]?.cut.width));
    const logs = { rounds: 3, center: 2, log: [1, 2, '1/2'] };
    expect(widths(logs)).toEqual(['1 1/2', '2 1/2', '1']);
    expect(widths({ ...logs, strips: { log: ['1 3/4', 3, '1 1/8'] } })).toEqual([
      '1 3/4',
      '3',
      '1 1/8',
    ]);
    expect(widths({ ...logs, strips: { log: 3 } })).toEqual(['3', '3', '3']);
  });
});
