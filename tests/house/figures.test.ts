import { describe, expect, test } from 'vitest';
import { figuresTable, mutationTable } from '../../docs/guides/figures.mjs';
import type { Row } from '../bench/report.mjs';

const machine = {
  cores: 2,
  processor: 'some processor',
  node: 'v20.19.0',
  browser: 'Chromium 140',
};

/** The lines of a table with these rows. */
const shown = (...rows: readonly Row[]): readonly string[] =>
  figuresTable({
    date: '2026-01-31',
    machine,
    benchmarks: [{ title: 'Log cabins', command: 'node some.mjs', rows }],
  }).split('\n');

const plan = { what: 'Plan of ten rounds', unit: 'ms', wish: { under: 1 } };

describe('the figures of the guide', () => {
  test('say when and on what they were measured, and how to measure them again', () => {
    const text = shown({ ...plan, figure: 0.5 }).join('\n');
    expect(text).toContain(
      'Measured on 2026-01-31, on 2 cores of some processor, with Node v20.19.0 and Chromium 140.',
    );
    expect(text).toContain('### Log cabins\n\n`node some.mjs`\n');
  });

  test.each<[string, Row, string]>([
    ['is met', { ...plan, figure: 0.4242 }, '0.42 ms | under 1'],
    ['of less is not met by as much', { ...plan, figure: 1 }, '1 ms, **not as wished** | under 1'],
    [
      'of at most is met by as much',
      { ...plan, figure: 50, wish: { atMost: 50 } },
      '50 ms | at most 50',
    ],
    [
      'of at least is not met by less',
      { what: 'Plan of ten rounds', figure: 39, unit: 'of 40', wish: { atLeast: 40 } },
      '39 of 40, **not as wished** | at least 40',
    ],
  ])('show whether a wish %s', (_, row, cells) => {
    expect(shown(row).at(-1)).toBe(`| Plan of ten rounds | ${cells} |`);
  });

  test.each([
    [25, '25 kB | at most 30 | 60'],
    [40.04, '40.0 kB, **not as wished** | at most 30 | 60'],
    [60.04, '60.0 kB, **over its limit** | at most 30 | 60'],
  ])('show a limit beside a wish: %d', (figure, cells) => {
    const row = shown({ what: 'A file', figure, unit: 'kB', wish: { atMost: 30 }, limit: 60 }).at(
      -1,
    );
    expect(row).toBe(`| A file | ${cells} |`);
  });

  test('leave out what no row has', () => {
    expect(shown({ what: 'Kits', figure: 12.34, unit: 'ms' }).slice(-3)).toEqual([
      '| what | figure |',
      '| --- | --- |',
      '| Kits | 12.3 ms |',
    ]);
  });
});

describe('the changes that tests notice', () => {
  test('are counted for each room', () => {
    const room = { room: 'length', killed: 90, survived: 6, timeout: 3, noCoverage: 1, score: 93 };
    expect(mutationTable([room]).split('\n').at(-1)).toBe(
      '| `length` | 100 | 93 | 6 | 1 | 93.0 % |',
    );
  });

  test('are said to be unknown until they are', () => {
    expect(mutationTable([])).toBe('No figures are recorded yet.');
  });
});
