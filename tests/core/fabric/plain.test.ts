import {
  cuttingPlan,
  cuttingPlanInParts,
  cuttingSentences,
  cuttingStepText,
  formatLength,
} from '@eighths/core';
import { describe, expect, it } from 'vitest';

const stripsIn = (plan: { readonly strips: readonly { readonly count: number }[] }) =>
  plan.strips.reduce((sum, { count }) => sum + count, 0);

describe('published worked examples', () => {
  // "The Math of Quilting", lesson 4 (2016): class lesson, issuer not shown (H).
  it('eight 5-inch squares fit one strip of 42, and twelve take 10 inches', () => {
    const squares = (count: number) => [{ width: 5, length: 5, count }];
    expect(cuttingPlan({ width: 42, pieces: squares(8) }).length.toString()).toBe('5');
    expect(cuttingPlan({ width: 42, pieces: squares(12) }).length.toString()).toBe('10');
  });

  it('five strips of 6 take 30 inches', () => {
    const plan = cuttingPlan({ width: 42, pieces: [{ width: 6, length: 42, count: 5 }] });
    expect(plan.length.toString()).toBe('30');
    expect(plan.used).toBe(1);
  });
});

describe('a plain plan', () => {
  const plan = cuttingPlan({
    method: 'plain',
    width: 42,
    pieces: [
      { width: '2 1/2', length: '8 1/2', count: 28 },
      { width: '2 1/2', length: '6 1/2', count: 20 },
      { width: '4 1/2', length: '4 1/2', count: 31 },
      { width: '2 1/2', length: '2 1/2', count: 9 },
    ],
  });

  it('says what to do in the words of the trade, widest strips first', () => {
    expect(plan.steps.map(({ text }) => text)).toEqual([
      'Square up the end of the fabric.',
      'Cut 3 strips 4 1/2 by the width of fabric; from each subcut 9 pieces 4 1/2.',
      'Cut 1 strip 4 1/2 by the width of fabric; from it subcut 4 pieces 4 1/2.',
      'Cut 9 strips 2 1/2 by the width of fabric; from each subcut 3 pieces 8 1/2, 2 pieces 6 1/2, 1 piece 2 1/2.',
      'Cut 1 strip 2 1/2 by the width of fabric; from it subcut 1 piece 8 1/2, 2 pieces 6 1/2.',
    ]);
  });

  it('takes the fabric that its strips take, and is proven the least', () => {
    expect(plan.length.toString()).toBe('43');
    expect(plan.lowerBound.toString()).toBe('43');
    expect(plan.optimal).toBe(true);
    expect(plan.warnings).toEqual([]);
  });

  it('leaves what is left over as one long end, not as several short ones', () => {
    expect(plan.strips.map(({ end }) => end.toString())).toEqual(['1 1/2', '24', '1', '20 1/2']);
  });

  it('reads well as JSON', () => {
    const json = JSON.parse(JSON.stringify(plan));
    expect(json.strips[0]).toEqual({
      width: '4 1/2',
      count: 3,
      cuts: [{ length: '4 1/2', count: 9, pieces: [2] }],
      end: '1 1/2',
    });
    expect(json.certificate[1]).toEqual({
      pieces: [0, 1, 3],
      prices: [17, 13, 5],
      most: 84,
      strips: 10,
      searched: false,
    });
  });

  it('cuts as few different strips as it can: six alike, not several kinds', () => {
    const pieces = [9, 7, 5].map((length) => ({ width: 2, length, count: 12 }));
    const { strips } = cuttingPlan({ width: 42, pieces });
    expect(strips.map(({ count, cuts }) => [count, cuts.map((cut) => cut.count)])).toEqual([
      [6, [2, 2, 2]],
    ]);
  });

  it('tells how many layers are subcut at once, no more than there are strips', () => {
    const pieces = [{ width: 3, length: 5, count: 40 }];
    const steps = (layers: number) => cuttingPlan({ width: 40, pieces, layers }).steps[1]?.text;
    expect(steps(4)).toBe(
      'Cut 5 strips 3 by the width of fabric; stack up to 4 of them, and from each subcut 8 pieces 5.',
    );
    expect(steps(8)).toContain('stack up to 5 of them');
  });

  it('can be told in another language and other units, from the codes and the values', () => {
    const german = {
      ...cuttingSentences,
      'cut-strips': '{strips} Streifen von {width} schneiden, aus jedem {subcuts}.',
      'subcut-several': '{count} mal {length}',
    };
    const step = plan.steps[1];
    if (step === undefined) throw new Error('There is no first cut.');
    const text = cuttingStepText(step.code, step.values, german, (value) =>
      typeof value === 'object' && 'toJSON' in value
        ? formatLength(value.toJSON(), { unit: 'cm' })
        : String(value),
    );
    expect(text.replaceAll('\u00a0', ' ')).toBe(
      '3 Streifen von 11.43 cm schneiden, aus jedem 9 mal 11.43 cm.',
    );
  });

  it('keeps pieces of one size apart by their place in the spec', () => {
    const { strips, placements } = cuttingPlan({
      width: 10,
      pieces: [
        { label: 'log 1', width: 2, length: 5, count: 1 },
        { label: 'log 2', width: 2, length: 5, count: 2 },
      ],
    });
    expect(strips.flatMap(({ cuts }) => cuts.map(({ pieces }) => pieces))).toEqual([
      [0, 1],
      [0, 1],
    ]);
    expect(placements().map(({ piece }) => piece)).toEqual([0, 1, 1]);
  });

  it('cuts exact sizes that no ruler shows: thirds, and strips as wide as a diagonal', () => {
    const pieces = [
      { width: '1/3', length: '13 1/3', count: 3 },
      { width: '√2', length: 20, count: 2 },
    ];
    expect(cuttingPlan({ width: 40, pieces }).length.toString()).toBe('√2 + 1/3');
  });

  it('mixes inches and millimeters', () => {
    const pieces = [
      { width: '5 cm', length: '127 mm', count: 6 },
      { width: '5 cm', length: '5 1/8', count: 2 },
    ];
    const plan = cuttingPlan({ width: '40 1/4', pieces });
    expect([stripsIn(plan), plan.optimal]).toEqual([1, true]);
  });
});

// A tight problem: the greedy cuttings miss the least by several strips.
const tight = {
  method: 'plain' as const,
  width: 41,
  pieces: [
    [96, 151],
    [86, 145],
    [82, 232],
    [79, 207],
    [70, 234],
    [61, 257],
    [56, 226],
    [39, 55],
    [30, 18],
    [28, 178],
  ].map(([eighths, count = 0]) => ({ width: 2, length: `${eighths}/8`, count })),
};

describe('effort', () => {
  it('that is too small gives a plan, a bound and no claim', () => {
    const plan = cuttingPlan({ ...tight, effort: 1000 });
    expect(plan.optimal).toBe(false);
    expect(plan.lowerBound.compareTo(plan.length)).toBe(-1);
    expect(plan.warnings.map(({ code, field }) => [code, field])).toEqual([
      ['not-proven', 'effort'],
    ]);
    expect(plan.warnings[0]?.text).toContain(`At least ${plan.lowerBound} is needed`);
  });

  it('that is enough closes the gap', () => {
    const plan = cuttingPlan(tight);
    expect([stripsIn(plan), plan.optimal]).toEqual([350, true]);
  });

  it('is counted in steps: the same plan each time', () => {
    const again = () => JSON.stringify(cuttingPlan({ ...tight, effort: 100_000 }));
    expect(again()).toBe(again());
  });
});

describe('a plan in parts', () => {
  it('pauses, tells how far it is, and ends with the plan that cuttingPlan returns', () => {
    const making = cuttingPlanInParts(tight);
    const efforts: number[] = [];
    let state = making.next();
    for (; !state.done; state = making.next()) {
      expect(state.value.planned).toBeLessThan(state.value.widths);
      efforts.push(state.value.effort);
    }
    expect(efforts.length).toBeGreaterThan(0);
    expect(efforts).toEqual([...efforts].sort((a, b) => a - b));
    expect(JSON.stringify(state.value)).toBe(JSON.stringify(cuttingPlan(tight)));
  });

  it('is given up by asking for no more', () => {
    const making = cuttingPlanInParts(tight);
    for (const { planned } of making) {
      expect(planned).toBe(0);
      break;
    }
    expect(making.next().done).toBe(true);
  });
});
