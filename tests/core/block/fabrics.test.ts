import { type LogCabin, logCabin } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { inches } from './support.js';

const fabricOn = (plan: LogCabin): string[] =>
  plan.logs.map(({ round, side, fabric }) => `${round} ${side} ${fabric}`);

const totals = ({ strips }: LogCabin): string[] =>
  strips.map(({ fabric, width, length }) => `${fabric} ${inches(width)}: ${inches(length)}`);

describe('fabrics', () => {
  it('are named after the kinds of logs where nobody says', () => {
    const plain = logCabin({ rounds: 1, center: 2, log: 1, cornerstones: true });
    const curved = logCabin({ rounds: 1, center: 2, wide: 1, narrow: '1/2' });
    expect([plain, curved].map(({ center }) => center.fabric)).toEqual(['center', 'center']);
    expect(new Set(plain.logs.map(({ fabric }) => fabric))).toEqual(new Set(['log']));
    expect(new Set(plain.cornerstones.map(({ fabric }) => fabric))).toEqual(
      new Set(['cornerstone']),
    );
    expect(fabricOn(curved)).toEqual([
      '1 right wide',
      '1 bottom wide',
      '1 left narrow',
      '1 top narrow',
    ]);
  });

  it('belong to a side before they belong to a kind, and to a round where a list says so', () => {
    const plan = logCabin({
      rounds: 2,
      center: 2,
      wide: 1,
      narrow: '1/2',
      fabrics: { center: 'rust', wide: 'fern', narrow: ['oat', 'sand'], left: ['slate', 'ink'] },
    });
    expect(plan.center.fabric).toBe('rust');
    expect(fabricOn(plan)).toEqual([
      '1 right fern',
      '1 bottom fern',
      '1 left slate',
      '1 top oat',
      '2 right fern',
      '2 bottom fern',
      '2 left ink',
      '2 top sand',
    ]);
  });

  // Two fabrics on opposite sides of a courthouse block: each is cut in both widths.
  // Right and left 2 1/2, bottom and top 2 1/2 + 1 + 1/2, with strips of 1 1/2 and 1.
  it('of a curved courthouse block are cut in both widths each', () => {
    const plan = logCabin({
      rounds: 1,
      layout: 'courthouse',
      center: 2,
      wide: 1,
      narrow: '1/2',
      fabrics: { left: 'fern', right: 'fern', top: 'slate', bottom: 'slate' },
    });
    expect(totals(plan)).toEqual([
      'fern 1 1/2: 2 1/2',
      'fern 1: 2 1/2',
      'slate 1 1/2: 4',
      'slate 1: 4',
    ]);
  });

  it('that share a width are counted apart', () => {
    const plan = logCabin({
      rounds: 1,
      center: 2,
      log: 1,
      fabrics: { right: 'fern', bottom: 'fern' },
    });
    expect(totals(plan)).toEqual(['fern 1 1/2: 6', 'log 1 1/2: 8']);
  });
});

describe('pieces', () => {
  it('are the center, logs that are cut alike together, and cornerstones', () => {
    const plan = logCabin({
      rounds: 1,
      center: { width: 3, height: 2 },
      log: 1,
      cornerstones: true,
      fabrics: { center: 'rust', cornerstone: 'ink' },
    });
    expect(
      plan.pieces.map(({ label, logs, fabric, width, length, count }) =>
        [label, logs.join('+'), fabric, inches(width), inches(length), count].join(' '),
      ),
    ).toEqual([
      'center  rust 2 1/2 3 1/2 1',
      'logs 1, 3 1+3 log 1 1/2 2 1/2 2',
      'logs 2, 4 2+4 log 1 1/2 3 1/2 2',
      'cornerstone 2+3+4+4 ink 1 1/2 1 1/2 4',
    ]);
    expect(plan.pieces.map(({ part }) => part)).toEqual(['center', 'log', 'log', 'cornerstone']);
  });

  it('are called by the numbers of their logs, one log by its own', () => {
    const { pieces } = logCabin({ rounds: 1, center: 2, log: 1 });
    expect(pieces.map(({ label }) => label)).toEqual(['center', 'log 1', 'logs 2, 3', 'log 4']);
  });
});
