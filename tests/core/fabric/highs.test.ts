import { cuttingPlan } from '@eighths/core';
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { arcFlow } from '../../bench/arcFlow.mjs';
import { realistic, specOf } from '../../bench/instances.mjs';

// An independent model of the problem, solved by an independent, general solver.
const highs = await loadHighs();

describe('forty realistic plans', () => {
  it.each(realistic(815, 40, { most: 7 }))(
    'take what HiGHS proves to be the least: %j',
    (instance) => {
      const plan = cuttingPlan(specOf(instance));
      const strips = plan.strips.reduce((sum, { count }) => sum + count, 0);
      const solution = highs.solve(arcFlow(instance));
      expect(solution.Status).toBe('Optimal');
      expect([strips, plan.optimal]).toEqual([Math.round(solution.ObjectiveValue), true]);
    },
  );
});
