import { readFileSync } from 'node:fs';
import { checkCertificate, cuttingPlan } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { specOf } from '../../bench/instances.mjs';

interface Published {
  readonly name: string;
  readonly capacity: number;
  readonly items: readonly (readonly [number, number])[];
  readonly optimum: number;
}

// E. Falkenauer, "A hybrid grouping genetic algorithm for bin packing", Journal of Heuristics 2
// (1996): the uniform classes u120 and u250, distributed as binpack1 and binpack2 in the OR-Library
// of J. E. Beasley. The optimum is a proven value; where the distributed one is higher, the data says so.
const { instances }: { readonly instances: readonly Published[] } = JSON.parse(
  readFileSync(new URL('../../data/bin-packing-uniform.json', import.meta.url), 'utf8'),
);

describe('published bin-packing instances', () => {
  it('are forty', () => expect(instances).toHaveLength(40));

  it.each(instances)('$name takes $optimum strips, proven', (instance) => {
    const spec = specOf(instance);
    const plan = cuttingPlan(spec);
    const strips = plan.strips.reduce((sum, { count }) => sum + count, 0);
    expect([strips, plan.optimal]).toEqual([instance.optimum, true]);
    expect(checkCertificate(spec, plan).holds).toBe(true);
  });
});
