import { findLogCabins, reachableSizes, resizeLogCabin } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { inches, refusal } from '../block/support.js';

describe('the block that is closest to a wish', () => {
  // By hand: 9 less three rounds of eighths is 1 7/8 or 2 1/4, and no center between.
  it('has the center nearest to the one that is wished for', () => {
    const { fits } = findLogCabins({
      rounds: 3,
      finished: 9,
      kind: 'curved',
      wide: { most: 2 },
      narrow: { most: 1 },
      wish: { center: 2 },
    });
    expect([...new Set(fits.map(({ center }) => inches(center)))][0]).toBe('1 7/8');
  });

  // Numbers beyond 2^26 are compared as whole numbers: 2 to 1 is as near as the grid comes.
  it.each(['2', '200000001/100000000', '199999999/100000000'])(
    'is twice as wide as narrow where %s is wished for',
    (ratio) => {
      const { fits } = findLogCabins({
        rounds: 3,
        kind: 'curved',
        finished: { least: 6, most: 12 },
        strips: { wide: 2, narrow: '1 1/2' },
        wish: { ratio },
      });
      const [first] = fits;
      expect(first?.kind === 'curved' && first.wide.equals(first.narrow.times(2))).toBe(true);
    },
  );
});

describe('a design at another size', () => {
  // By hand: three rounds of 1-inch logs round 2 finish 8; half as much again is 12.
  it('stays without wide and narrow sides where it has none', () => {
    const [fit] = resizeLogCabin({ rounds: 3, center: 2, log: 1 }, 12).fits;
    expect(fit?.kind === 'plain' && [fit.center, fit.log].map(inches)).toEqual(['3', '1 1/2']);
  });

  it('begins with the narrow logs where the design does', () => {
    const design = { rounds: 4, center: 2, wide: '1 1/4', narrow: '1/2', first: 'narrow' } as const;
    expect(resizeLogCabin(design, 9).fits[0]?.spec).toMatchObject({ first: 'narrow' });
  });

  it('needs a square center', () => {
    const oblong = { rounds: 3, center: { width: 2, height: 3 }, log: 1 };
    expect(refusal(() => resizeLogCabin(oblong, 12))).toMatchObject({
      code: 'not-square',
      field: 'center',
    });
  });
});

describe('sizes that can be reached', () => {
  it('are whole inches where only those are asked for', () => {
    const request = { rounds: 3, strips: { log: '1 1/2' }, log: 1, center: { most: 2 } };
    const all = reachableSizes(request).map(({ finished }) => inches(finished));
    const whole = reachableSizes({ ...request, step: 1 }).map(({ finished }) => inches(finished));
    expect(whole).toEqual(['7', '8']);
    expect(all.filter((size) => /^\d+$/.test(size))).toEqual(whole);
    expect(all.length).toBeGreaterThan(whole.length);
  });
});
