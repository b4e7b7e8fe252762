import {
  checkPlan,
  type Length,
  length,
  type QuiltPlan,
  type QuiltRecipe,
  quilt,
  quiltInParts,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everything, onPoint, pattern, plain } from './recipes.js';

const shown = ({ finished }: QuiltPlan): string => `${finished.width} by ${finished.height}`;
const sum = (lengths: readonly Length[]): Length =>
  lengths.reduce((total, each) => total.plus(each), length(0));
const areaOf = ({ width, height }: QuiltPlan['finished']): Length => width.times(height);
const cutsOf = ({ fabrics }: QuiltPlan) => fabrics.flatMap(({ cuts }) => cuts);

const all: readonly (readonly [string, QuiltRecipe, string])[] = [
  ...pattern.sizes.map(({ name }) => [pattern.name, pattern, name] as const),
  ...everything.sizes.map(({ name }) => [everything.name, everything, name] as const),
  ['On point', onPoint, 'Lap'],
  [plain.name, plain, 'Cushion'],
];

describe('the demo pattern, block 9 by 9, in its sizes', () => {
  // By hand: blocks times nine, and twice each border.
  it.each([
    ['Crib', 16, '40 by 40'],
    ['Throw', 36, '65 by 65'],
    ['Twin', 48, '67 by 85'],
    ['Queen', 80, '85 by 103'],
    ['King', 100, '103 by 103'],
  ])('%s has %i blocks and finishes %s', (name, blocks, finished) => {
    const plan = quilt(pattern, name);
    expect([plan.blocks[0]?.count, shown(plan)]).toEqual([blocks, finished]);
  });

  it('is made in its first size where none is named', () => {
    expect(quilt(pattern).size).toBe('Crib');
  });

  it('is made in a size of the reader’s own', () => {
    const mine = quilt(pattern, { name: 'Mine', across: 2, down: 4, borders: [] });
    expect(shown(mine)).toBe('18 by 36');
  });

  // By hand: 2 1/2-inch strips of 40 hold 16 centers, so 48 take three: 7 1/2; with a strip to spare and
  // an inch to straighten, 11, which is three eighths of a yard (13 1/2) at $11.80: 4.425, so $4.43.
  it('takes three eighths of a yard of centers for a twin, at $4.43', () => {
    const centers = quilt(pattern, 'Twin').fabrics[0];
    expect([centers?.id, centers?.yards, centers?.cost?.cents]).toEqual([
      'ember',
      '⅜\u00a0yd',
      443,
    ]);
  });

  it('costs what its fabrics cost', () => {
    const { fabrics, cost } = quilt(pattern, 'Queen');
    expect(cost?.cents).toBe(fabrics.reduce((total, each) => total + (each.cost?.cents ?? 0), 0));
  });

  it('has no cost where a fabric has no price', () => {
    expect(quilt(plain).cost).toBeUndefined();
  });

  it('says of a print with an up and a down where it will not stand upright', () => {
    const codes = (recipe: QuiltRecipe) => quilt(recipe, 'Twin').warnings.map(({ code }) => code);
    expect(codes(pattern)).toEqual(['directional-borders']);
    const fabrics = pattern.fabrics.map((fabric) => ({
      ...fabric,
      directional: fabric.id === 'night',
    }));
    expect(codes({ ...pattern, fabrics })).toEqual(['directional-turned', 'directional-sides']);
  });

  it('says which fabric a size does not use', () => {
    const [warning] = quilt(pattern, 'Crib').warnings;
    expect([warning?.code, warning?.field]).toEqual(['fabric-unused', 'fabrics[7]']);
  });
});

describe('a border of blocks', () => {
  it('takes as many as fit round the quilt', () => {
    // By hand: 31 1/2 and twice 3 3/4 is 39: thirteen of 3 inches on each side, corners apart.
    const saw = quilt(everything, 'Small').blocks.find(({ block }) => block.id === 'saw');
    expect([saw?.count, saw?.inBorders]).toEqual([52, 52]);
    // Eight at a time: seven sets.
    expect(saw?.block.kind === 'unit' && saw.block.plan.sets).toBe(7);
  });
});

describe('between the rows on point', () => {
  it('stands the block that is named for there', () => {
    const { blocks, layout } = quilt(onPoint);
    expect(blocks.map(({ block, count }) => [block.id, count])).toEqual([
      ['cabin', 20],
      ['rest', 12],
    ]);
    expect(layout.counts.sideTriangles).toBe(14);
  });

  it('the pattern goes on from row to row without it', () => {
    const setting = { ...onPoint.setting, pattern: [['cabin'], ['geese']] };
    const { blocks } = quilt({ ...onPoint, setting }, { name: 'Runner', across: 2, down: 3 });
    expect(blocks.map(({ block, count }) => `${block.id} ${count}`)).toEqual([
      'cabin 4',
      'geese 2',
      'rest 2',
    ]);
  });
});

describe.each(all)('%s', (_, recipe, size) => {
  const plan = quilt(recipe, size);
  const { fabrics, finished, binding } = plan;

  it(`${size}: is the same by parts`, () => {
    const making = quiltInParts(recipe, size);
    let state = making.next();
    let planned = -1;
    for (; !state.done; state = making.next()) {
      expect(state.value.planned).toBeGreaterThanOrEqual(planned);
      planned = state.value.planned;
    }
    expect(JSON.stringify(state.value)).toBe(JSON.stringify(plan));
  });

  it(`${size}: has pieces of at least the area of the top`, () => {
    const top = cutsOf(plan).filter(({ part }) => part !== 'binding');
    const pieces = sum(top.map(({ width, length: long, count }) => width.times(long).times(count)));
    expect(pieces.compareTo(areaOf(finished))).toBeGreaterThanOrEqual(0);
  });

  it(`${size}: every fabric’s plan cuts that fabric’s pieces, and cuts them as it says`, () => {
    for (const { cuts, yardage, width } of fabrics) {
      if (yardage === undefined) continue;
      const { plan: cutting } = yardage;
      expect(cutting.pieces.map(({ count }) => count)).toEqual(cuts.map(({ count }) => count));
      cutting.pieces.forEach((piece, index) => {
        const sides = [piece.width, piece.length].map(String).sort();
        expect(sides).toEqual([cuts[index]?.width, cuts[index]?.length].map(String).sort());
      });
      expect(checkPlan({ width, pieces: cutting.pieces }, cutting)).toEqual([]);
    }
  });

  it(`${size}: buys what its plans take, and no fabric twice`, () => {
    expect(new Set(fabrics.map(({ id }) => id)).size).toBe(fabrics.length);
    for (const { buy, yardage, backing } of fabrics) {
      expect(buy).toEqual(sum([yardage?.buy ?? length(0), backing?.buy ?? length(0)]));
      if (yardage) expect(buy.compareTo(yardage.plan.length)).toBeGreaterThan(0);
    }
  });

  it(`${size}: has binding that goes round the quilt`, () => {
    if (binding === undefined) return;
    const round = finished.width.plus(finished.height).times(2);
    expect(binding.length.compareTo(round)).toBeGreaterThan(0);
  });

  it(`${size}: turns into JSON that reads well`, () => {
    const read = JSON.parse(JSON.stringify(plan));
    expect(read.finished.width).toBe(finished.width.toString());
    expect(JSON.stringify(read)).not.toContain('null');
  });
});

describe('doubling the blocks', () => {
  const blocksOnly = (across: number, down: number): QuiltPlan =>
    quilt(pattern, { name: 'Blocks', across, down, borders: [] });

  it('never more than doubles what a proven plan takes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 4 }), (half, down) => {
        const [once, twice] = [blocksOnly(2 * half, 2 * down), blocksOnly(4 * half, 2 * down)];
        for (const fabric of once.fabrics) {
          const more = twice.fabrics.find(({ id }) => id === fabric.id)?.yardage?.plan;
          const plan = fabric.yardage?.plan;
          // Binding goes round both once; it is no block.
          if (plan === undefined || more === undefined || fabric.id === 'harbor') continue;
          if (!more.optimal) continue;
          expect(more.length.compareTo(plan.length.times(2))).toBeLessThanOrEqual(0);
        }
      }),
      { numRuns: 8 },
    );
  });
});

describe('what is not in the recipe', () => {
  it('a measured top changes the borders that are cut, and nothing inside', () => {
    const spec = { measured: { width: '54', height: '72 1/4' } };
    const plan = quilt(pattern, 'Twin', spec);
    expect(plan.borders?.borders[0]?.parts[0]?.cut.length.toString()).toBe('72 1/4');
    expect(shown(plan)).toBe('67 by 85');
    expect(plan.warnings.map(({ code }) => code)).toContain('measured-differs');
  });

  it('layers are said in the steps', () => {
    const [ember] = quilt(pattern, 'Twin', { layers: 3 }).fabrics;
    expect(ember?.yardage?.plan.steps[1]?.code).toBe('stack-strips');
  });
});
