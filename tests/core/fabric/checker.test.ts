import { checkCertificate, checkPlan, cuttingPlan } from '@eighths/core';
import { describe, expect, it } from 'vitest';

const spec = {
  method: 'plain' as const,
  width: 42,
  pieces: [
    { width: '2 1/2', length: '8 1/2', count: 28 },
    { width: '2 1/2', length: '6 1/2', count: 20 },
    { width: '4 1/2', length: '4 1/2', count: 31 },
  ],
};
const plan = cuttingPlan(spec);
const [first, ...others] = plan.certificate;
const [strip, ...strips] = plan.strips;
if (first === undefined || strip === undefined) throw new Error('The plan has no strips.');

describe('the checker of bounds', () => {
  it('proves the bound of a plan again', () => {
    const { holds, proven, searched } = checkCertificate(spec, plan);
    expect([holds, proven.toString(), searched]).toEqual([true, plan.lowerBound.toString(), 0]);
  });

  it.each([
    ['a bound that is too high', { lowerBound: plan.lowerBound.plus(1) }],
    ['a width that is left out', { certificate: others }],
    ['a width that is counted twice', { certificate: [first, first, ...others] }],
    ['a price too few', { certificate: [{ ...first, prices: [] }, ...others] }],
    ['a negative price', { certificate: [{ ...first, prices: [-1] }, ...others] }],
    [
      'pieces of two widths under one',
      { certificate: [{ ...first, pieces: [0, 2], prices: [1, 1] }, ...others] },
    ],
    ['a piece that does not exist', { certificate: [{ ...first, pieces: [7] }, ...others] }],
  ])('refuses %s', (_, change) => {
    expect(checkCertificate(spec, { ...plan, ...change }).holds).toBe(false);
  });

  it('takes no word for the greatest price of a strip', () => {
    const boast = { ...first, most: 1, strips: 1000 };
    const check = checkCertificate(spec, { ...plan, certificate: [boast, ...others] });
    expect(check.proven.equals(plan.lowerBound)).toBe(true);
  });

  it('tells what rests on a complete search, which it does not repeat', () => {
    const entry = { ...first, strips: first.strips + 1, searched: true };
    const check = checkCertificate(spec, {
      lowerBound: plan.lowerBound.plus('4 1/2'),
      certificate: [entry, ...others],
    });
    expect([check.holds, check.searched, check.proven.equals(plan.lowerBound)]).toEqual([
      true,
      1,
      true,
    ]);
  });
});

describe('the checker of plans', () => {
  it.each([
    ['a strip is missing', { strips }, ['count']],
    [
      'a strip is cut once too often',
      { strips: [{ ...strip, count: strip.count + 1 }, ...strips] },
      ['size', 'off-fabric'],
    ],
    ['a strip is too narrow', { strips: [{ ...strip, width: '4 3/8' }, ...strips] }, ['size']],
    [
      'the fabric is called shorter than it is',
      { length: plan.length.minus(1) },
      ['off-fabric', 'optimal'],
    ],
    ['a plan is not called optimal and is', { optimal: false }, ['optimal']],
    ['the bound is not proven', { certificate: [] }, ['bound']],
  ])('notices where %s', (_, change, faults) => {
    expect(checkPlan(spec, { ...plan, ...change })).toEqual(faults);
  });

  it('notices a plan for other fabric', () => {
    expect(checkPlan({ ...spec, width: 40 }, plan)).toContain('off-fabric');
  });
});
