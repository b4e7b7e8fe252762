import { describe, expect, test } from 'vitest';
import { bytesIn } from '../../tools/soak/held.mjs';
import { leastGrowth } from '../../tools/soak/soak.mjs';

describe('what `npm run soak` takes for a leak', () => {
  test.each([
    ['what grows in every stretch, by its least growth', [100, 130, 150, 190], 20],
    ['not a table that doubles once', [100, 100, 164, 164], 0],
    ['nothing that is given back in between', [100, 140, 120, 160], -20],
  ])('is %s', (_what, measured, growth) => {
    expect(leastGrowth(measured)).toBe(growth);
  });

  test('is weighed in what scripts make, apart from compiled code and from the browser’s own', () => {
    const types = ['hidden', 'object', 'code', 'closure', 'native', 'object shape', 'string'];
    const nodes = types.flatMap((_, type) => [type, 10 ** type]);
    const snapshot = { meta: { node_fields: ['type', 'self_size'], node_types: [types] } };
    expect(bytesIn(JSON.stringify({ snapshot, nodes }))).toEqual({
      values: 1_001_010,
      code: 100_100,
    });
  });
});
