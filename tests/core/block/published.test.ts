import { type LogCabin, type LogCabinSpec, logCabin } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, refusal } from './support.js';

/** The lengths of the logs that are cut from strips of one width, in sewing order. */
const lengthsFrom = (width: string, { logs }: LogCabin): readonly string[] =>
  logs.filter(({ cut }) => inches(cut.width) === width).map(({ cut }) => inches(cut.length));

describe('published log cabins', () => {
  // Brunswick Quilters guild, Habitat log cabin block; grade C (guild).
  it('a spiral of three rounds that finishes 10 has the logs of the Brunswick guild', () => {
    const block = logCabin({ rounds: 3, center: '2 1/2', log: '1 1/4' });
    expect(inches(block.center.cut.width)).toBe('3');
    expect(lengthsFrom('1 3/4', block)).toEqual(
      '3, 4 1/4, 4 1/4, 5 1/2, 5 1/2, 6 3/4, 6 3/4, 8, 8, 9 1/4, 9 1/4, 10 1/2'.split(', '),
    );
    expect([block.finished, block.unfinished].map(({ width }) => inches(width))).toEqual([
      '10',
      '10 1/2',
    ]);
    expect(block.warnings).toEqual([]);
  });

  // A modern quilt guild's call for blocks (Orlando, 2023); grade C (guild).
  it('a quarter log cabin of 2- and 1-inch logs that finishes 15 has the logs of the guild’s call', () => {
    const block = logCabin({
      rounds: 9,
      layout: 'quarter',
      finished: 15,
      log: [2, 1, 2, 1, 2, 1, 2, 1, 2],
    });
    expect(inches(block.center.cut.width)).toBe('1 1/2');
    expect(lengthsFrom('2 1/2', block)).toEqual(
      '1 1/2, 3 1/2, 4 1/2, 6 1/2, 7 1/2, 9 1/2, 10 1/2, 12 1/2, 13 1/2, 15 1/2'.split(', '),
    );
    expect(lengthsFrom('1 1/2', block)).toEqual(
      '3 1/2, 4 1/2, 6 1/2, 7 1/2, 9 1/2, 10 1/2, 12 1/2, 13 1/2'.split(', '),
    );
    expect(inches(block.unfinished.height)).toBe('15 1/2');
  });
});

describe('closed forms (derived)', () => {
  const design = fc.record({
    rounds: fc.integer({ min: 1, max: 12 }),
    center: fc.integer({ min: 1, max: 80 }),
    wide: fc.integer({ min: 1, max: 32 }),
    narrow: fc.integer({ min: 1, max: 32 }),
  });
  const eighths = (n: number): string => `${n}/8`;
  /** Finished eighths cut with two allowances of a quarter inch. */
  const cut = (n: number): number => n / 8 + 0.5;
  const cutLengths = (spec: LogCabinSpec): readonly number[] =>
    logCabin(spec).logs.map((log) => log.cut.length.toNumber());

  it('spiral logs are c + 1/2, then twice c + kw + 1/2 for each k below 2n, last c + 2nw + 1/2', () => {
    fc.assert(
      fc.property(design, ({ rounds, center: c, wide: w }) => {
        const middle = Array.from({ length: 2 * rounds - 1 }, (_, i) => cut(c + (i + 1) * w));
        expect(cutLengths({ rounds, center: eighths(c), log: eighths(w) })).toEqual([
          cut(c),
          ...middle.flatMap((each) => [each, each]),
          cut(c + 2 * rounds * w),
        ]);
      }),
    );
  });

  it('courthouse round k has two logs of c + 2(k − 1)w + 1/2 and two of c + 2kw + 1/2', () => {
    fc.assert(
      fc.property(design, ({ rounds, center: c, wide: w }) => {
        const expected = Array.from({ length: rounds }, (_, before) => [
          cut(c + 2 * before * w),
          cut(c + 2 * before * w),
          cut(c + 2 * (before + 1) * w),
          cut(c + 2 * (before + 1) * w),
        ]);
        const spec = { rounds, layout: 'courthouse', center: eighths(c), log: eighths(w) } as const;
        expect(cutLengths(spec)).toEqual(expected.flat());
      }),
    );
  });

  it('a curved block finishes c + n(wide + narrow)', () => {
    fc.assert(
      fc.property(design, ({ rounds, center, wide, narrow }) => {
        const { finished } = logCabin({
          rounds,
          center: eighths(center),
          wide: eighths(wide),
          narrow: eighths(narrow),
        });
        expect(finished.width.toNumber()).toBe((center + rounds * (wide + narrow)) / 8);
        expect(inches(finished.height)).toBe(inches(finished.width));
      }),
    );
  });

  it('a spiral shows 2 × wide × narrow a round more of the pair that is sewn last', () => {
    fc.assert(
      fc.property(design, ({ rounds, center, wide, narrow }) => {
        const shown = (first: 'wide' | 'narrow', kind: 'wide' | 'narrow'): number =>
          logCabin({
            rounds,
            center: eighths(center),
            wide: eighths(wide),
            narrow: eighths(narrow),
            first,
          })
            .logs.filter((log) => log.kind === kind)
            .reduce(
              (sum, { finished }) => sum + finished.width.times(finished.length).toNumber(),
              0,
            );
        const more = (2 * rounds * wide * narrow) / 64;
        expect(shown('narrow', 'wide') - shown('wide', 'wide')).toBe(more);
        expect(shown('wide', 'narrow') - shown('narrow', 'narrow')).toBe(more);
      }),
    );
  });
});

describe('a ten-inch curved block of five rounds from 2 and 1 1/2-inch strips (common practice, no source)', () => {
  const block = (wide: string, narrow: string): LogCabin =>
    logCabin({ rounds: 5, finished: 10, wide, narrow, strips: { wide: 2, narrow: '1 1/2' } });

  it.each([
    ['1 1/4', '1/2', '1 1/4'],
    ['1 1/2', '3/8', '5/8'],
    ['7/8', '7/8', '1 1/4'],
    ['15/16', '1', '5/16'],
  ])('with logs of %s and %s has a center of %s and trims to 10 1/2', (wide, narrow, center) => {
    const { center: own, unfinished, rounds } = block(wide, narrow);
    expect(inches(own.finished.width)).toBe(center);
    expect(inches(unfinished.width)).toBe('10 1/2');
    expect(inches(rounds.at(-1)?.trimTo.height)).toBe('10 1/2');
  });

  it.each([
    ['1 5/8', '1/4', 'strip-too-narrow'],
    ['3/4', '1 1/8', 'strip-too-narrow'],
    ['1 1/4', '3/4', 'center-not-positive'],
    ['1 1/2', '5/8', 'center-not-positive'],
  ])('cannot be sewn with logs of %s and %s: %s', (wide, narrow, code) => {
    expect(refusal(() => block(wide, narrow)).code).toBe(code);
  });
});
