import { checkCertificate, checkPlan, cuttingPlan, length, placementsOf } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fabricWidth, pieces } from './arbitrary.js';

const runs = { numRuns: 150, seed: 8 };

describe('every plan', () => {
  it('lays each piece as often as asked, at its size, on the fabric, in strips, none over another', () => {
    fc.assert(
      fc.property(fabricWidth, pieces, (width, list) => {
        const plan = cuttingPlan({ method: 'plain', width, pieces: list });
        const bottom = new Map<string, string>();
        const counts = list.map(() => 0);
        let right = length(0);
        let row: string | undefined;
        for (const placed of plan.placements()) {
          const asked = list[placed.piece];
          counts[placed.piece] = (counts[placed.piece] ?? 0) + 1;
          expect(placed.width.equals(asked?.length ?? 0)).toBe(true);
          expect(placed.height.equals(asked?.width ?? 0)).toBe(true);
          // Across the strip, each piece begins where the one before it ends.
          if (row !== `${placed.y}`) right = length(0);
          row = `${placed.y}`;
          expect(placed.x.equals(right)).toBe(true);
          right = right.plus(placed.width);
          expect(right.compareTo(width)).not.toBe(1);
          // A strip is as wide from end to end.
          const end = `${placed.y.plus(placed.height)}`;
          expect(bottom.get(row) ?? end).toBe(end);
          bottom.set(row, end);
        }
        expect(counts).toEqual(list.map(({ count }) => count));
        // Strips follow one another down the fabric: each begins where the one before it ends.
        const begins = [...bottom.keys()];
        expect(['0', ...bottom.values()]).toEqual([...begins, `${plan.length}`]);
      }),
      { ...runs, numRuns: 60 },
    );
  });

  it('says what its strips leave over, and takes the length of its strips', () => {
    fc.assert(
      fc.property(fabricWidth, pieces, (width, list) => {
        const { strips, length: total } = cuttingPlan({ method: 'plain', width, pieces: list });
        let sum = length(0);
        for (const strip of strips) {
          let taken = strip.end;
          for (const cut of strip.cuts) taken = taken.plus(cut.length.times(cut.count));
          expect(taken.equals(width)).toBe(true);
          sum = sum.plus(strip.width.times(strip.count));
        }
        expect(sum.equals(total)).toBe(true);
      }),
      runs,
    );
  });

  it('passes the checker, before and after JSON', () => {
    fc.assert(
      fc.property(fabricWidth, pieces, (width, list) => {
        const spec = { method: 'plain' as const, width, pieces: list };
        const plan = cuttingPlan(spec);
        expect(checkPlan(spec, plan)).toEqual([]);
        expect(checkPlan(spec, JSON.parse(JSON.stringify(plan)))).toEqual([]);
      }),
      { ...runs, numRuns: 60 },
    );
  });

  it('restores its placements from JSON', () => {
    fc.assert(
      fc.property(fabricWidth, pieces, (width, list) => {
        const plan = cuttingPlan({ method: 'plain', width, pieces: list });
        const restored = placementsOf(JSON.parse(JSON.stringify(plan)));
        expect(JSON.stringify(restored)).toBe(JSON.stringify(plan.placements()));
      }),
      { ...runs, numRuns: 60 },
    );
  });
});

describe('a bound', () => {
  it('never exceeds the plan, however little effort is spent, and the checker agrees', () => {
    fc.assert(
      fc.property(
        fabricWidth,
        pieces,
        fc.integer({ min: 0, max: 60_000 }),
        (width, list, effort) => {
          const spec = { method: 'plain' as const, width, pieces: list };
          const plan = cuttingPlan({ ...spec, effort });
          expect(plan.lowerBound.compareTo(plan.length)).not.toBe(1);
          expect(plan.optimal).toBe(plan.lowerBound.equals(plan.length));
          expect(checkCertificate(spec, plan).holds).toBe(true);
        },
      ),
      runs,
    );
  });
});

describe('where both plans are proven', () => {
  it('a wider fabric never needs more', () => {
    fc.assert(
      fc.property(fabricWidth, pieces, fc.integer({ min: 1, max: 80 }), (width, list, more) => {
        const narrow = cuttingPlan({ method: 'plain', width, pieces: list });
        const wide = cuttingPlan({
          method: 'plain',
          width: length(width).plus(`${more}/8`),
          pieces: list,
        });
        fc.pre(narrow.optimal && wide.optimal);
        expect(wide.length.compareTo(narrow.length)).not.toBe(1);
      }),
      runs,
    );
  });

  it('fewer pieces never need more', () => {
    fc.assert(
      fc.property(fabricWidth, pieces, fc.nat(), (width, list, chosen) => {
        const fewer = list.map((piece, i) =>
          i === chosen % list.length ? { ...piece, count: piece.count - 1 } : piece,
        );
        fc.pre(fewer.some(({ count }) => count > 0));
        const all = cuttingPlan({ method: 'plain', width, pieces: list });
        const less = cuttingPlan({ method: 'plain', width, pieces: fewer });
        fc.pre(all.optimal && less.optimal);
        expect(less.length.compareTo(all.length)).not.toBe(1);
      }),
      runs,
    );
  });
});

describe('what does not matter', () => {
  it('the order of the pieces changes neither the length nor the strips', () => {
    const shuffled = pieces.chain((list) =>
      fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
    );
    fc.assert(
      fc.property(fabricWidth, shuffled, (width, [list, other]) => {
        const told = (these: typeof list) => {
          const plan = cuttingPlan({ method: 'plain', width, pieces: these });
          return [`${plan.length}`, ...plan.steps.map(({ text }) => text)];
        };
        expect(told(other)).toEqual(told(list));
      }),
      runs,
    );
  });

  it('a size listed twice is the size listed once with both counts', () => {
    fc.assert(
      fc.property(fabricWidth, pieces, (width, list) => {
        const twice = [...list, ...list];
        const doubled = list.map((piece) => ({ ...piece, count: 2 * piece.count }));
        const [a, b] = [twice, doubled].map((these) =>
          cuttingPlan({ method: 'plain', width, pieces: these }),
        );
        expect(a?.length.toString()).toBe(b?.length.toString());
      }),
      runs,
    );
  });

  it('the same sizes in millimeters take as many strips', () => {
    fc.assert(
      fc.property(fabricWidth, pieces, (width, list) => {
        const metric = list.map((piece) => ({
          ...piece,
          length: `${length(piece.length).times('25.4').toNumber()} mm`,
        }));
        const [a, b] = [list, metric].map((these) =>
          cuttingPlan({ method: 'plain', width, pieces: these }),
        );
        expect(a?.length.toString()).toBe(b?.length.toString());
      }),
      { ...runs, numRuns: 40 },
    );
  });
});
