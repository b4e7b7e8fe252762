import { checkPlan, cuttingPlan } from '@eighths/core';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { quiltPieces } from '../../bench/instances.mjs';
import { oneCut } from './thriftyModel.js';

// An independent model of the whole problem, solved by an independent, general solver.
const highs = await loadHighs();

/** Small plans on whole inches, from the same numbers on every machine. */
const small = [false, true].flatMap((turnable) =>
  quiltPieces(turnable ? 12 : 11, 4, { most: 3, count: 7, turnable }).map(({ pieces }) => ({
    fabric: 10,
    pieces: pieces.map(({ width, length, count }) => ({
      width: Math.ceil(Number(String(width).split('/')[0]) / 20),
      length: Math.ceil(Number(String(length).split('/')[0]) / 16),
      count,
      turnable,
    })),
  })),
);

describe('small thrifty plans', () => {
  let least = 0;
  let proven = 0;

  it.each(small)('are valid, and their bound is no more than what HiGHS finds: %j', (task) => {
    const spec = { width: task.fabric, pieces: task.pieces };
    const plan = cuttingPlan({ ...spec, effort: 1_000_000 });
    expect(checkPlan(spec, plan)).toEqual([]);
    const solution = highs.solve(oneCut(task.fabric, task.pieces), { time_limit: 20 });
    expect(solution.Status).toBe('Optimal');
    const optimum = Math.round(solution.ObjectiveValue);
    expect(plan.lowerBound.toNumber()).toBeLessThanOrEqual(optimum);
    expect(plan.length.toNumber()).toBeGreaterThanOrEqual(optimum);
    if (plan.optimal) expect(plan.length.toNumber()).toBe(optimum);
    if (plan.length.equals(optimum)) least += 1;
    if (plan.optimal) proven += 1;
  });

  it('are the least in nearly all cases, and proven so in most', () => {
    console.log(`thrifty: ${least} of ${small.length} are the least, ${proven} proven`);
    expect(least).toBeGreaterThanOrEqual(7);
    expect(proven).toBeGreaterThanOrEqual(6);
  });
});
