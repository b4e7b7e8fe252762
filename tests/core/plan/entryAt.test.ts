import { describe, expect, it } from 'vitest';
import { valueAt } from '../../../packages/core/src/fabric/stock/values.js';
import { entryAt } from '../../../packages/core/src/plan/entryAt.js';

describe('an entry that has to be there', () => {
  it('is what stands at its place', () => {
    expect(entryAt(['top', 'right'], 1)).toBe('right');
    expect(valueAt(Float64Array.of(0, 0.5), 1)).toBe(0.5);
  });

  it.each([-1, 2, 0.5])('is not made up where there is none, as at %s of two', (place) => {
    expect(() => entryAt(['top', 'right'], place)).toThrow(
      new RangeError(`There is no entry ${place}.`),
    );
    expect(() => valueAt(new Float64Array(2), place)).toThrow(
      new RangeError(`There is no value ${place}.`),
    );
  });
});
