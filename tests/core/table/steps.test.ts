import { layeredCuts, logCabin, logCabinSteps, trimTools } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { inches, refusal } from '../block/support.js';

const nine = {
  rounds: 4,
  center: 2,
  wide: '1 1/4',
  narrow: '1/2',
  strips: { wide: 2, narrow: '1 1/2' },
} as const;
const block = logCabin(nine);
const texts = (...args: Parameters<typeof logCabinSteps>): string[] =>
  logCabinSteps(...args)
    .filter(({ round }) => round <= 1)
    .map(({ text }) => text);

describe('the work in words', () => {
  it('logs cut beforehand, right hand, fixed mat', () => {
    expect(texts(block)).toEqual([
      'Cut the center 2 1/2 from center.',
      'Sew log 1, 2 by 2 1/2 of wide, to the right side.',
      'Sew log 2, 2 by 4 of wide, to the bottom side.',
      'Sew log 3, 1 1/2 by 4 of narrow, to the left side.',
      'Sew log 4, 1 1/2 by 5 of narrow, to the top side.',
      'Press each seam allowance away from the center before the next log is sewn.',
      'Lay the block before you with its top side at the top.',
      'Trim the right side along the ruler’s right edge: the 1 1/2 line on the center’s seam, the 1 1/2 line on the last seam.',
      'Trim the top side along the ruler’s top edge: the 3/4 line on the center’s seam, the 3/4 line on the last seam.',
      'Turn the block half round.',
      'Trim the left side along the ruler’s right edge: the 4 1/4 line on the edge that is trimmed already, the 3/4 line on the center’s seam, the 3/4 line on the last seam.',
      'Trim the bottom side along the ruler’s top edge: the 4 1/4 line on the edge that is trimmed already, the 1 1/2 line on the center’s seam, the 1 1/2 line on the last seam.',
      'Round 1 measures 4 1/4.',
    ]);
  });

  it('the left hand begins on its own side, and no number changes', () => {
    const [right, left] = (['right', 'left'] as const).map((hand) =>
      logCabinSteps(block, { hand }),
    );
    const sides = (steps: typeof left): unknown[] =>
      (steps ?? []).filter(({ code }) => code.startsWith('trim')).map(({ values }) => values.side);
    expect(sides(left).slice(0, 4)).toEqual(['left', 'top', 'right', 'bottom']);
    expect(sides(right).slice(0, 4)).toEqual(['right', 'top', 'left', 'bottom']);
    const sewing = (steps: typeof left): string[] =>
      (steps ?? []).filter(({ code }) => code === 'sew-log').map(({ text }) => text);
    expect(sewing(left)).toEqual(sewing(right));
  });

  it('a turning mat turns once a round, and the block is never lifted for it', () => {
    const codes = logCabinSteps(block, { mat: 'turning' }).map(({ code }) => code);
    expect(codes.filter((code) => code === 'turn-mat-half')).toHaveLength(4);
    expect(codes.some((code) => code.startsWith('turn-block'))).toBe(false);
  });

  it('each log trimmed by itself, the block goes round with the logs', () => {
    const plan = logCabin({ ...nine, trim: { after: 'log' } });
    const turns = (hand: 'left' | 'right'): string[] =>
      texts(plan, { hand }).filter((text) => /^(?:Sew|Press|Lay|Turn)/.test(text));
    const sewn = [
      'Sew log 1, 2 by 2 1/2 of wide, to the right side.',
      'Sew log 2, 2 by 3 3/4 of wide, to the bottom side.',
      'Sew log 3, 1 1/2 by 3 3/4 of narrow, to the left side.',
      'Sew log 4, 1 1/2 by 4 1/4 of narrow, to the top side.',
    ];
    const press = 'Press each seam allowance away from the center before the next log is sewn.';
    const quarter = (side: string): string =>
      `Turn the block by a quarter, so that its ${side} side lies at the top.`;
    // The side that is trimmed lies at the hand: the one sewn before it is away from the right-handed.
    expect(turns('right')).toEqual([
      sewn[0],
      press,
      'Lay the block before you with its top side at the top.',
      sewn[1],
      quarter('right'),
      sewn[2],
      quarter('bottom'),
      sewn[3],
      quarter('left'),
    ]);
    expect(turns('left')).toEqual([
      sewn[0],
      press,
      'Lay the block before you with its bottom side at the top.',
      sewn[1],
      quarter('left'),
      sewn[2],
      quarter('top'),
      sewn[3],
      quarter('right'),
    ]);
  });

  it('the 45-degree line is asked for where both sides lie alike', () => {
    const plain = logCabin({ rounds: 1, center: 2, log: 1, strips: { log: 2 } });
    const asked = texts(plain).filter((text) => text.includes('45-degree'));
    const line =
      'The ruler’s 45-degree line runs through the corner of the center, 1 1/4 from both edges.';
    expect(asked).toEqual([line, line]);
    expect(texts(block).filter((text) => text.includes('45-degree'))).toEqual([]);
  });

  it('sewing to the strip leaves the lengths to the block', () => {
    expect(texts(block, { method: 'to-strip', extra: '3/8' })[1]).toBe(
      'Sew the right side of the block to a strip 2 wide of wide, and cut the strip off 3/8 beyond the block: log 1.',
    );
  });

  it('a strip set is the first seam of all blocks', () => {
    expect(texts(block, { method: 'strip-set' }).slice(0, 3)).toEqual([
      'Sew a strip 2 1/2 wide of center to a strip 2 wide of wide along their length, and press toward wide.',
      'Subcut the strip set every 2 1/2: each piece is a center with log 1 on its right side.',
      'Sew the bottom side of the block to a strip 2 wide of wide, and cut the strip off 1/2 beyond the block: log 2.',
    ]);
  });

  it('every round of every layout is sewn, trimmed and measured', () => {
    for (const layout of ['spiral', 'courthouse', 'quarter'] as const) {
      for (const after of ['round', 'log', 'never'] as const) {
        for (const method of ['cut-first', 'to-strip', 'strip-set'] as const) {
          const plan = logCabin({
            rounds: 3,
            layout,
            center: 2,
            log: 1,
            cornerstones: method === 'to-strip',
            trim: { after },
          });
          const steps = logCabinSteps(plan, { method });
          const count = (start: string): number =>
            steps.filter(({ code }) => code.startsWith(start)).length;
          const logs = plan.logs.length;
          expect(count('sew-log') + count('sew-to-strip')).toBe(
            method === 'strip-set' ? logs - 1 : logs,
          );
          expect(count('trim')).toBe(after === 'never' ? 0 : logs);
          expect(count('sew-cornerstone')).toBe(plan.cornerstones.length);
          expect(
            steps.filter(({ code }) => code === 'check-size').map(({ round }) => round),
          ).toEqual([1, 2, 3]);
          expect(steps.every(({ text }) => !text.includes('{'))).toBe(true);
        }
      }
    }
  });

  it('an unknown way of working is refused', () => {
    const ways: readonly (readonly [string, string, object])[] = [
      ['unknown-choice', 'mat', { mat: 'round' }],
      ['unknown-choice', 'method', { method: 'glue' }],
      ['unknown-choice', 'hand', { hand: 'both' }],
      ['not-positive', 'extra', { extra: '-1/8' }],
      ['unknown-field', 'options.ruler', { ruler: 6 }],
    ];
    for (const [code, field, way] of ways) {
      const error = refusal(() => logCabinSteps(block, way));
      expect([error.code, error.field]).toEqual([code, field]);
    }
  });
});

describe('ruler and mat', () => {
  it('outreach the largest untrimmed round', () => {
    const { ruler, mat, warnings } = trimTools(block);
    expect([ruler, mat].map(inches)).toEqual(['10 1/4', '11 1/4']);
    expect(warnings).toEqual([]);
  });

  it('say from which round on they are too small', () => {
    const { warnings } = trimTools(block, { ruler: 8, mat: '9 1/2', runOff: 1 });
    expect(warnings.map(({ code, field, values }) => [code, field, values.round])).toEqual([
      ['ruler-too-short', 'ruler', 3],
      ['mat-too-small', 'mat', 4],
    ]);
  });

  it('say nothing where they are just large enough', () => {
    const { warnings } = trimTools(block, { ruler: '10 1/4', mat: '11 1/4' });
    expect(warnings).toEqual([]);
  });

  it('may be asked for without the blade running on', () => {
    expect(inches(trimTools(block, { runOff: 0 }).mat)).toBe('10 1/4');
  });

  it('reach along the longer side of a block that is no square', () => {
    for (const center of [
      { width: 3, height: 2 },
      { width: 2, height: 3 },
    ]) {
      const oblong = logCabin({ rounds: 1, center, log: 1, strips: { log: 2 } });
      // 3 1/2 of the center, and 1 1/2 more of each strip of 2.
      expect(inches(trimTools(oblong).ruler)).toBe('6 1/2');
    }
  });

  it.each<[string, string, object]>([
    ['not-positive', 'ruler', { ruler: 0 }],
    ['not-positive', 'mat', { mat: 0 }],
    ['not-positive', 'runOff', { runOff: -1 }],
    ['unknown-field', 'options.hand', { hand: 'left' }],
  ])('%s of %s is refused', (code, field, options) => {
    const error = refusal(() => trimTools(block, options));
    expect([error.code, error.field]).toEqual([code, field]);
  });

  it('are not needed where nothing is trimmed', () => {
    const { ruler, mat } = trimTools(logCabin({ rounds: 2, center: 2, log: 1 }));
    expect([ruler.sign(), mat.sign()]).toEqual([0, 0]);
  });
});

describe('layers', () => {
  it('cuts are pieces ÷ layers, never too few', () => {
    for (const { piece, count, cuts } of layeredCuts(block, 12, 4)) {
      expect(count).toBe(piece.count * 12);
      expect(cuts * 4).toBeGreaterThanOrEqual(count);
      expect((cuts - 1) * 4).toBeLessThan(count);
    }
  });

  it.each<[string, number, number]>([
    ['blocks', 0, 4],
    ['layers', 12, 13],
  ])('a number of %s that is none is refused', (field, blocks, layers) => {
    const error = refusal(() => layeredCuts(block, blocks, layers));
    expect([error.code, error.field]).toEqual(['not-a-count', field]);
  });
});
