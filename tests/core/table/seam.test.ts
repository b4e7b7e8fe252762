import { type LogCabin, logCabin, rescueBlocks, seamDrift, seamTest } from '@eighths/core';
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
    ['3 1/2', '1/4', 'seam-true'],
    ['3 3/8', '9/32', 'seam-deep'],
    ['3 9/16', '15/64', 'seam-scant'],
  ])(
    'three strips of 1 1/2 that measure %s were sewn with a seam of %s',
    (measured, seam, code) => {
      const test = seamTest({ measured });
      expect([inches(test.seam), test.verdict.code, inches(test.expected)]).toEqual([
        seam,
        code,
        '3 1/2',
      ]);
    },
  );

  it('works with other strips', () => {
    expect(inches(seamTest({ measured: 3, strip: '1 3/4', strips: 2 }).seam)).toBe('1/4');
  });

  it.each<[string, Parameters<typeof seamTest>[0]]>([
    ['out-of-range', { measured: 5 }],
    ['not-a-count', { measured: 3, strips: 1 }],
    ['not-positive', { measured: 0 }],
  ])('%s is refused', (code, input) => {
    expect(refusal(() => seamTest(input)).code).toBe(code);
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
        'Strips for wide logs cut 1 3/4 are trimmed by 0, and this seam takes 1/8: cut them 1 7/8.',
      ],
    ]);
    expect(seamDrift(block, '1/4').covered).toBe(true);
    expect(seamDrift(block, '15/64').short.untrimmed.sign()).toBe(-1);
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
    const [warning] = rescueBlocks(input).warnings;
    expect(warning?.code).toBe('coping-narrow');
    expect(inches(rescueBlocks({ ...input, finished: 10 }).cope.strips[0]?.finished)).toBe('1/2');
    expect(String(warning?.values.better)).toBe('10');
  });

  it.each<[string, Partial<typeof input>]>([
    ['list-length', { measured: [] }],
    ['seam-too-wide', { measured: ['1/2'] }],
    ['not-a-count', { across: 0 }],
  ])('%s is refused', (code, change) => {
    expect(refusal(() => rescueBlocks({ ...input, ...change })).code).toBe(code);
  });
});
