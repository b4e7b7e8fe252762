import {
  type LogCabin,
  length,
  logCabin,
  type RescueInput,
  rescueBlocks,
  seamDrift,
  seamTest,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, refusal } from '../block/support.js';

/** A block sewn log by log with a seam of `real`, in inches; how it is trimmed decides where edges lie. */
function sewnWidth(plan: LogCabin, real: number, trim: 'never' | 'last-seam' | 'center'): number {
  const wanted = plan.seam.toNumber();
  const center = plan.center.cut.width.toNumber();
  // Distances of the raw edge and of the last seam from the left and right sides of the center patch.
  const edges = { left: 0, right: 0 };
  for (const { logs, centerSeamToEdge } of plan.rounds) {
    for (const { side, cut, finished } of logs) {
      if (side !== 'left' && side !== 'right') continue;
      const seam = edges[side] - real;
      const raw = seam + cut.width.toNumber() - real;
      if (trim === 'never') edges[side] = raw;
      else if (trim === 'last-seam') edges[side] = seam + finished.width.toNumber() + wanted;
      else {
        const wide = centerSeamToEdge[side].toNumber() - wanted;
        if (raw < wide - 1e-9) throw new Error('The strip does not reach.');
        edges[side] = wide;
      }
    }
  }
  return center + edges.left + edges.right;
}

describe('a seam test', () => {
  it.each([
    ['3 1/2', '1/4', 'The seam is 1/4, as it should be.'],
    ['3 3/8', '9/32', 'The seam is 9/32, which is 1/32 deeper than 1/4: every strip shows less.'],
    ['3 9/16', '15/64', 'The seam is 15/64, which is 1/64 less than 1/4: every strip shows more.'],
    ['4 1/2', '0', 'The seam is 0, which is 1/4 less than 1/4: every strip shows more.'],
  ])(
    'three strips of 1 1/2 that measure %s were sewn with a seam of %s',
    (measured, seam, verdict) => {
      const test = seamTest({ measured });
      expect([inches(test.seam), test.verdict.text, inches(test.expected)]).toEqual([
        seam,
        verdict,
        '3 1/2',
      ]);
    },
  );

  it('works with other strips', () => {
    expect(inches(seamTest({ measured: 3, strip: '1 3/4', strips: 2 }).seam)).toBe('1/4');
  });

  it('is held against the seam that is wanted', () => {
    const { deeperBy, expected } = seamTest({ measured: '3 1/2', wanted: '3/8' });
    expect([deeperBy, expected].map(inches)).toEqual(['-1/8', '3']);
    expect(inches(seamTest({ measured: '4 1/2', wanted: 0 }).expected)).toBe('4 1/2');
  });

  it.each<[string, string, Parameters<typeof seamTest>[0]]>([
    ['out-of-range', 'measured', { measured: 5 }],
    ['not-a-count', 'strips', { measured: 3, strips: 1 }],
    ['not-positive', 'measured', { measured: 0 }],
    ['not-positive', 'strip', { measured: 3, strip: 0 }],
    ['not-positive', 'wanted', { measured: 3, wanted: '-1/4' }],
  ])('%s of %s is refused', (code, field, input) => {
    const error = refusal(() => seamTest(input));
    expect([error.code, error.field]).toEqual([code, field]);
  });

  it('of strips that grew was measured wrongly', () => {
    expect(refusal(() => seamTest({ measured: 5 })).message).toBe(
      'Strips that were cut 4 1/2 in all cannot measure 5 when they are sewn. Measure across all of them, pressed flat.',
    );
  });
});

describe('what another seam does', () => {
  it('is what sewing with it gives', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 8 }),
        fc.integer({ min: 0, max: 4 }),
        fc.constantFrom('spiral' as const, 'courthouse' as const, 'quarter' as const),
        (rounds, deeper, layout) => {
          const real = 0.25 + deeper / 64;
          const exact = logCabin({ rounds, layout, center: 2, log: 1 });
          const trimmed = logCabin({ rounds, layout, center: 2, log: 1, strips: { log: 2 } });
          const { short, covered } = seamDrift(trimmed, real);
          const width = exact.unfinished.width.toNumber();
          expect(width - sewnWidth(exact, real, 'never')).toBeCloseTo(
            short.untrimmed.toNumber(),
            9,
          );
          expect(width - sewnWidth(trimmed, real, 'last-seam')).toBeCloseTo(
            short.fromLastSeam.toNumber(),
            9,
          );
          expect(width - sewnWidth(trimmed, real, 'center')).toBeCloseTo(0, 9);
          expect(covered).toBe(true);
        },
      ),
    );
  });

  it('says which strips are too narrow for it, and how wide would do', () => {
    const block = logCabin({
      rounds: 4,
      center: 2,
      wide: '1 1/4',
      narrow: '1/2',
      strips: { wide: '1 3/4', narrow: '1 1/2' },
    });
    const { covered, oversize, warnings } = seamDrift(block, '5/16');
    expect([covered, inches(oversize)]).toEqual([false, '1/8']);
    expect(warnings.map(({ field, text }) => [field, text])).toEqual([
      [
        'strips.wide',
        'The wide strips, cut 1 3/4, are trimmed by 0, and this seam takes 1/8: cut them 1 7/8.',
      ],
    ]);
    expect(seamDrift(block, '1/4').covered).toBe(true);
  });

  it('of a scant one is a block that comes out larger, of strips wide enough', () => {
    const block = logCabin({ rounds: 4, center: 2, log: 1 });
    const { deeperBy, short, oversize, covered } = seamDrift(block, '15/64');
    expect([deeperBy, short.untrimmed, short.fromLastSeam].map(inches)).toEqual([
      '-1/64',
      '-1/4',
      '-1/8',
    ]);
    expect([inches(oversize), covered]).toEqual(['0', true]);
    expect(inches(seamDrift(block, 0).deeperBy)).toBe('-1/4');
  });

  it.each([[[1, '7/8']], [['7/8', 1]]])(
    'is asked of the widest logs that one strip is cut for, as of %j',
    (log) => {
      const block = logCabin({ rounds: 2, center: 2, log, strips: { log: '1 3/4' } });
      expect(seamDrift(block, '3/8').covered).toBe(true);
      const [warning, ...others] = seamDrift(block, '13/32').warnings;
      expect(others).toEqual([]);
      const { oversize, needed, better } = warning?.values ?? {};
      expect([oversize, needed, better].map(String)).toEqual(['1/4', '5/16', '1 7/8']);
    },
  );

  it('is refused where the seam is less than nothing', () => {
    const error = refusal(() => seamDrift(logCabin({ rounds: 1, center: 2, log: 1 }), '-1/8'));
    expect([error.code, error.field]).toEqual(['not-positive', 'seam']);
  });
});

describe('blocks that came out otherwise', () => {
  const input = { measured: ['9 1/2', '9 1/4', '9 3/8'], finished: 9, across: 4, down: 5 };

  it('are trimmed to the smallest, and the quilt is smaller by that', () => {
    const { trim } = rescueBlocks(input);
    expect([trim.trimTo, trim.finished].map(inches)).toEqual(['9 1/4', '8 3/4']);
    expect([trim.quilt.width, trim.quilt.height].map(inches)).toEqual(['35', '43 3/4']);
    expect([trim.change.width, trim.change.height].map(inches)).toEqual(['-1', '-1 1/4']);
  });

  it('or get coping strips that bring each to the target', () => {
    const { cope, warnings } = rescueBlocks({ ...input, finished: 10 });
    for (const { measured, finished } of cope.strips) {
      expect(measured.minus('1/2').plus(finished.times(2)).equals(10)).toBe(true);
    }
    expect([cope.trimTo, cope.cut].map(inches)).toEqual(['10 1/2', '1 5/8']);
    expect(inches(cope.change.width)).toBe('0');
    expect(warnings).toEqual([]);
  });

  it('are warned of strips too narrow to sew', () => {
    expect(rescueBlocks(input).warnings.map(({ field, text }) => [field, text])).toEqual([
      [
        'finished',
        'Coping strips that finish 0 are narrower than 1/2. Let the blocks finish 10 and they are 1/2.',
      ],
    ]);
    expect(inches(rescueBlocks({ ...input, finished: 10 }).cope.strips[0]?.finished)).toBe('1/2');
  });

  it('are reckoned with the seam and the strips that are asked for', () => {
    const { trim, cope, warnings } = rescueBlocks({
      measured: ['12 1/2'],
      finished: 12,
      across: 4,
      down: 5,
      seam: '3/8',
      oversize: '1/4',
      leastStrip: '1/8',
    });
    expect([trim.finished, cope.trimTo].map(inches)).toEqual(['11 3/4', '12 3/4']);
    // A strip finishes (12 3/4 − 12 1/2) / 2, and is cut two seams of 3/8 and 1/4 wider.
    expect([cope.strips[0]?.finished, cope.cut].map(inches)).toEqual(['1/8', '1 1/8']);
    expect(warnings).toEqual([]);
  });

  it('need no strips where none is too small', () => {
    const { trim, cope, warnings } = rescueBlocks({ ...input, measured: ['9 3/4', '9 1/2'] });
    expect([trim.trimTo, cope.cut].map(inches)).toEqual(['9 1/2', '0']);
    expect(warnings).toEqual([]);
  });

  it('may be sewn without seam allowance and oversize, as on paper', () => {
    const none = { ...input, seam: 0, oversize: 0, leastStrip: 0 };
    expect(inches(rescueBlocks({ ...none, measured: [8] }).cope.cut)).toBe('1/2');
  });

  it.each<[string, string, Partial<RescueInput>]>([
    ['list-length', 'measured', { measured: [] }],
    ['seam-too-wide', 'measured[1]', { measured: [9, '1/2'] }],
    ['not-positive', 'measured[0]', { measured: [0] }],
    ['not-positive', 'finished', { finished: 0 }],
    ['not-positive', 'seam', { seam: '-1/8' }],
    ['not-positive', 'oversize', { oversize: '-1/8' }],
    ['not-positive', 'leastStrip', { leastStrip: '-1/8' }],
    ['not-a-count', 'across', { across: 0 }],
    ['not-a-count', 'down', { down: 1001 }],
  ])('%s of %s is refused', (code, field, change) => {
    const error = refusal(() => rescueBlocks({ ...input, ...change }));
    expect([error.code, error.field]).toEqual([code, field]);
  });

  it('that are smaller than their seams were measured otherwise', () => {
    expect(refusal(() => rescueBlocks({ ...input, measured: ['3/8'] })).values).toEqual({
      seam: length('1/4'),
      finished: length('-1/8'),
    });
  });
});
