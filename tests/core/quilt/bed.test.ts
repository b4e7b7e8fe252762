import { type BedCandidate, type BedQuiltSpec, bedQuilt, length, MATTRESSES } from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';

const size = (width: number, height: number) => ({ width, height });

describe('published bed quilts', () => {
  // The school lesson “Can You Figure the Amount of Yardage to Buy?”, slide 3 (H): the mattress and a
  // 12-inch drop on both sides and at the foot.
  it.each<[number, number, number, number]>([
    [39, 75, 63, 87],
    [54, 75, 78, 87],
    [60, 80, 84, 92],
    [76, 80, 100, 92],
  ])('a mattress %i by %i with a 12-inch drop takes %i by %i', (width, height, across, down) => {
    const { wanted } = bedQuilt({ mattress: size(width, height), drop: 12, block: 9 });
    expect(wanted).toEqual({ width: length(across), height: length(down) });
  });

  // A sleep industry council's size table (B): the crib; the others from the lesson above (H).
  it('mattresses have the sizes that were published', () => {
    expect(MATTRESSES).toEqual({
      crib: size(27, 52),
      twin: size(39, 75),
      full: size(54, 75),
      queen: size(60, 80),
      king: size(76, 80),
    });
    const named = bedQuilt({ mattress: 'queen', block: 9 });
    expect(named).toEqual(bedQuilt({ mattress: size(60, 80), block: 9 }));
  });
});

describe('a bed quilt', () => {
  it('takes the tuck and the foot’s own drop into its length', () => {
    const drop = { sides: 14, foot: 10 };
    const { wanted } = bedQuilt({ mattress: 'queen', drop, tuck: 8, block: 9 });
    expect(wanted).toEqual({ width: length(88), height: length(98) });
  });

  it('is made larger by what washing takes: wanted / (1 − p)', () => {
    const { target, candidates } = bedQuilt({
      mattress: size(40, 60),
      drop: 10,
      block: 10,
      shrinkage: '1/21',
    });
    expect(target).toEqual({ width: length(63), height: length('73 1/2') });
    for (const { washed, finished, drop } of candidates) {
      expect(washed.width.times('21/20')).toEqual(finished.width);
      expect(drop.sides.times(2).plus(40)).toEqual(washed.width);
      expect(drop.foot.plus(60)).toEqual(washed.height);
    }
  });

  it('is exact where the blocks make exactly what the bed asks for', () => {
    const [best] = bedQuilt({ mattress: size(36, 60), drop: 12, block: 12 }).candidates;
    expect([best?.across, best?.down, best?.border.toString(), best?.distance.sign()]).toEqual([
      3,
      4,
      '12',
      0,
    ]);
  });

  it('may ask for even or odd numbers of blocks only', () => {
    for (const counts of ['even', 'odd'] as const) {
      const { candidates } = bedQuilt({ mattress: 'queen', block: 8, counts, within: 12 });
      expect(candidates.length).toBeGreaterThan(0);
      for (const { across, down } of candidates) {
        expect([across % 2, down % 2]).toEqual(counts === 'even' ? [0, 0] : [1, 1]);
      }
    }
  });

  it('on point counts the blocks between the rows', () => {
    const { candidates } = bedQuilt({
      mattress: 'twin',
      block: 9,
      setting: 'on-point',
      within: 6,
    });
    expect(candidates.length).toBeGreaterThan(0);
    for (const { across, down, blocks, center } of candidates) {
      expect(blocks).toBe(across * down + (across - 1) * (down - 1));
      // (9n√2)² = 162n²
      expect(center.width.times(center.width)).toEqual(length(162 * across * across));
    }
  });

  it('without borders has none', () => {
    const border = { least: 0, most: 0 };
    const { candidates } = bedQuilt({ mattress: 'twin', block: 9, border });
    expect(candidates.map(({ across, down, border: b }) => [across, down, b.sign()])).toEqual([
      [7, 10, 0],
    ]);
  });
});

describe('the candidates', () => {
  const spec = fc.record({
    mattress: fc.record({
      width: fc.integer({ min: 10, max: 30 }),
      height: fc.integer({ min: 10, max: 40 }),
    }),
    drop: fc.integer({ min: 0, max: 6 }),
    block: fc.record({
      width: fc.integer({ min: 4, max: 9 }),
      height: fc.integer({ min: 4, max: 9 }),
    }),
    border: fc
      .tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 5 }))
      .map(([least, more]) => ({ least, most: least + more })),
    sashing: fc.option(fc.record({ width: fc.integer({ min: 1, max: 2 }), outer: fc.boolean() }), {
      nil: undefined,
    }),
    within: fc.integer({ min: 0, max: 6 }),
  });

  interface ByHand {
    readonly name: string;
    readonly distance: number;
    readonly sum: number;
  }

  /** Every number of blocks with every border on half inches, the best border of each. */
  function byHand({ mattress, drop, block, border, sashing, within }: BedByHand): ByHand[] {
    const sash = sashing?.width ?? 0;
    const extent = (side: number, count: number): number =>
      side * count + sash * (sashing?.outer ? count + 1 : count - 1);
    const list: ByHand[] = [];
    for (let across = 1; across <= 20; across += 1) {
      for (let down = 1; down <= 20; down += 1) {
        let best: ByHand | undefined;
        for (let b = border.least; b <= border.most; b += 0.5) {
          const wide = Math.abs(extent(block.width, across) + 2 * b - mattress.width - 2 * drop);
          const high = Math.abs(extent(block.height, down) + 2 * b - mattress.height - drop);
          const one = {
            name: `${across} by ${down}, ${b}`,
            distance: Math.max(wide, high),
            sum: wide + high,
          };
          const better =
            best === undefined ||
            one.distance < best.distance ||
            (one.distance === best.distance && one.sum < best.sum);
          if (better) best = one;
        }
        if (best !== undefined && best.distance <= within) list.push(best);
      }
    }
    return list;
  }

  interface BedByHand {
    readonly mattress: { readonly width: number; readonly height: number };
    readonly drop: number;
    readonly block: { readonly width: number; readonly height: number };
    readonly border: { readonly least: number; readonly most: number };
    readonly sashing: { readonly width: number; readonly outer: boolean } | undefined;
    readonly within: number;
  }

  const nameOf = ({ across, down, border }: BedCandidate): string =>
    `${across} by ${down}, ${border.toNumber()}`;

  it('are all there are within the distance, each with its best border, the nearest first', () => {
    fc.assert(
      fc.property(spec, ({ sashing, ...each }) => {
        const plan = bedQuilt({ ...each, ...(sashing && { sashing }), most: 1000 });
        const hand = byHand({ ...each, sashing });
        expect(plan.found).toBe(hand.length);
        expect(plan.candidates.map(nameOf).sort()).toEqual(hand.map(({ name }) => name).sort());
        const distances = plan.candidates.map(({ distance }) => distance.toNumber());
        expect(distances).toEqual(hand.map(({ distance }) => distance).sort((a, b) => a - b));
      }),
      { numRuns: 40 },
    );
  });

  it('are the first of all that were found, in the same order every time', () => {
    const bed: BedQuiltSpec = { mattress: 'king', block: 6, within: 8, most: 1000 };
    const all = bedQuilt(bed);
    expect(all.found).toBeGreaterThan(5);
    expect(bedQuilt({ ...bed, most: 5 }).candidates).toEqual(all.candidates.slice(0, 5));
  });
});

describe('refused', () => {
  const good = { mattress: 'queen', block: 9 } as const;
  it.each<[string, string, BedQuiltSpec]>([
    ['missing-field', 'mattress', JSON.parse('{"block":9}')],
    ['missing-field', 'block', JSON.parse('{"mattress":"queen"}')],
    ['unknown-choice', 'mattress', { ...good, mattress: JSON.parse('"waterbed"') }],
    ['not-positive', 'mattress.height', { ...good, mattress: size(60, 0) }],
    ['not-positive', 'block', { ...good, block: -9 }],
    ['not-positive', 'drop', { ...good, drop: -1 }],
    ['missing-field', 'drop.foot', { ...good, drop: JSON.parse('{"sides":12}') }],
    ['not-a-shrinkage', 'shrinkage', { ...good, shrinkage: 1 }],
    ['not-a-shrinkage', 'shrinkage', { ...good, shrinkage: -0.1 }],
    ['limits-cross', 'border', { ...good, border: { least: 4, most: 3 } }],
    ['not-square', 'block', { ...good, block: size(6, 9), setting: 'on-point' }],
    ['out-of-range', 'within', { ...good, within: 1000 }],
    ['not-a-count', 'most', { ...good, most: 0 }],
    ['unknown-choice', 'counts', { ...good, counts: JSON.parse('"prime"') }],
  ])('%s of %s', (code, field, spec) => {
    const error = refusal(() => bedQuilt(spec));
    expect([error.code, error.field]).toEqual([code, field]);
  });

  it('nothing where nothing comes near: there are no candidates', () => {
    const far = bedQuilt({ mattress: size(20, 20), drop: 0, block: 30 });
    expect([far.found, far.candidates]).toEqual([0, []]);
  });
});
