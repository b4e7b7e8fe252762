import {
  BLOCK_SETTINGS,
  blockTurns,
  type CellKind,
  cuttingPlan,
  length,
  type QuiltLayout,
  type QuiltLayoutSpec,
  quiltLayout,
  squareRoot,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { refusal } from '../block/support.js';
import { chordsAlong, doubleArea } from './chords.js';

const eighths = fc.integer({ min: 4, max: 120 }).map((count) => length(count).dividedBy(8));

const straight: fc.Arbitrary<QuiltLayoutSpec> = fc.record({
  block: fc.record({ width: eighths, height: eighths }),
  across: fc.integer({ min: 1, max: 6 }),
  down: fc.integer({ min: 1, max: 6 }),
  alternate: fc.boolean(),
  sashing: fc.record({ width: eighths, outer: fc.boolean(), cornerstones: fc.boolean() }),
});

const onPoint: fc.Arbitrary<QuiltLayoutSpec> = fc.record({
  block: eighths,
  setting: fc.constant('on-point' as const),
  across: fc.integer({ min: 1, max: 4 }),
  down: fc.integer({ min: 1, max: 4 }),
  alternate: fc.boolean(),
});

const sashedOnPoint = fc
  .tuple(onPoint, eighths)
  .map(([spec, width]): QuiltLayoutSpec => ({ ...spec, sashing: { width } }));

const unsashed = straight.map(({ sashing: _, ...spec }): QuiltLayoutSpec => spec);

const any = fc.oneof(straight, unsashed, onPoint, sashedOnPoint);

const cellsOf = ({ cells }: QuiltLayout, kind: CellKind) =>
  cells.filter((cell) => cell.kind === kind);

describe('the cells of a top', () => {
  it('fill it exactly: their areas add up to its own', () => {
    fc.assert(
      fc.property(any, (spec) => {
        const { cells, finished } = quiltLayout(spec);
        const sum = cells.reduce((all, cell) => all.plus(doubleArea(cell)), length(0));
        expect(sum).toEqual(finished.width.times(finished.height).times(2));
      }),
      { numRuns: 24 },
    );
  });

  it('lie side by side along any line across it, from edge to edge, without gap or overlap', () => {
    fc.assert(
      fc.property(any, fc.integer({ min: 1, max: 88 }), (spec, part) => {
        const { cells, finished } = quiltLayout(spec);
        // No seam lies at such a height: sizes are eighths, or eighths times √2.
        const height = finished.height
          .times(part)
          .dividedBy(89)
          .toGrid('1/128', 'down')
          .plus('1/1313');
        let at = length(0);
        for (const [from, to] of chordsAlong(cells, height)) {
          expect(from).toEqual(at);
          at = to;
        }
        expect(at).toEqual(finished.width);
      }),
      { numRuns: 24 },
    );
  });

  it('are numbered: no two blocks have one row and one column', () => {
    fc.assert(
      fc.property(any, (spec) => {
        const { cells } = quiltLayout(spec);
        const squares = cells.filter(({ kind }) => kind === 'block' || kind === 'alternate');
        expect(new Set(squares.map(({ row, column }) => `${row} ${column}`)).size).toBe(
          squares.length,
        );
      }),
      { numRuns: 20 },
    );
  });
});

describe('counts', () => {
  // TRADE's closed forms; each is counted on the cells here.
  it.each<[string, boolean, number, number, number, number]>([
    ['between blocks only, 4 across and 5 down', false, 4, 5, 5 * 3 + 4 * 4, 3 * 4],
    ['with an outer round, 4 across and 5 down', true, 4, 5, 5 * 5 + 4 * 6, 5 * 6],
    ['between blocks only, 1 by 1', false, 1, 1, 0, 0],
    ['with an outer round, 1 by 1', true, 1, 1, 4, 4],
    ['between blocks only, 1 by 3', false, 1, 3, 2, 0],
  ])('of sashes and cornerstones %s', (_, outer, across, down, sashes, stones) => {
    const sashing = { width: 2, outer, cornerstones: true };
    const top = quiltLayout({ block: 9, across, down, sashing });
    expect([top.counts.sashes, top.counts.cornerstones]).toEqual([sashes, stones]);
    expect(top.blocks).toBe(across * down);
    expect(cellsOf(top, 'sash')).toHaveLength(sashes);
  });

  it('of sashes without cornerstones: short ones between blocks, long ones between rows', () => {
    const { counts, parts } = quiltLayout({ block: 9, across: 4, down: 5, sashing: { width: 2 } });
    expect([counts.sashes, counts.longSashes, counts.cornerstones]).toEqual([15, 4, 0]);
    expect(parts.map(({ cut, count }) => `${count} of ${cut.height} by ${cut.width}`)).toEqual([
      '15 of 2 1/2 by 9 1/2',
      '4 of 2 1/2 by 42 1/2',
    ]);
  });

  it('of two sizes of sashes where the block is not square', () => {
    const block = { width: 6, height: 9 };
    const sashing = { width: 1, outer: true, cornerstones: true };
    const { parts } = quiltLayout({ block, across: 2, down: 3, sashing });
    expect(parts.map(({ cut, count }) => `${count} of ${cut.height} by ${cut.width}`)).toEqual([
      '9 of 1 1/2 by 9 1/2',
      '8 of 1 1/2 by 6 1/2',
      '12 of 1 1/2 by 1 1/2',
    ]);
  });

  it('on point: n·m + (n − 1)(m − 1) blocks, 2(n − 1) + 2(m − 1) sides and 4 corners', () => {
    for (const [n, m] of [
      [1, 1],
      [1, 4],
      [4, 5],
      [7, 3],
    ] as const) {
      const { counts, finished } = quiltLayout({
        block: 8,
        setting: 'on-point',
        across: n,
        down: m,
      });
      expect(counts.blocks).toBe(n * m + (n - 1) * (m - 1));
      expect(counts.sideTriangles).toBe(2 * (n - 1) + 2 * (m - 1));
      expect(counts.cornerTriangles).toBe(4);
      expect(finished.width).toEqual(squareRoot(2).times(8 * n));
      expect(finished.height).toEqual(squareRoot(2).times(8 * m));
    }
  });

  it('on point with sashing: four sashes a block of the rows, halves of cornerstones at the edge', () => {
    const top = quiltLayout({
      block: 8,
      setting: 'on-point',
      across: 3,
      down: 4,
      sashing: { width: 2 },
    });
    expect(top.counts).toMatchObject({
      sashes: 48,
      cornerstones: 3 * 3 + 2 * 4,
      halfCornerstones: 14,
    });
    expect(top.finished.width).toEqual(squareRoot(2).times(30));
    const halves = top.parts.find(
      ({ part, diagonalCuts }) => part === 'cornerstone' && diagonalCuts === 2,
    );
    expect([halves?.count, halves?.yield, halves?.needed]).toEqual([4, 4, 14]);
  });

  it.each<[string, QuiltLayoutSpec, number, number]>([
    ['every second place', { block: 6, across: 3, down: 3 }, 5, 4],
    ['between the rows on point', { block: 6, across: 3, down: 3, setting: 'on-point' }, 9, 4],
  ])('of alternates: %s', (_, spec, blocks, alternates) => {
    const { counts, parts } = quiltLayout({ ...spec, alternate: true });
    expect([counts.blocks, counts.alternates]).toEqual([blocks, alternates]);
    expect(parts[0]).toMatchObject({ part: 'alternate', count: alternates });
    expect(parts[0]?.cut.width).toEqual(length('6 1/2'));
  });
});

describe('setting triangles', () => {
  it('for block 6 are cut from 9 3/4 and 5 1/8: Moonlight Quilters guild (C)', () => {
    const spec = { block: 6, setting: 'on-point', across: 4, down: 5, oversize: 0 } as const;
    const { parts } = quiltLayout(spec);
    expect(parts.map(({ part, cut }) => [part, cut.width.toString()])).toEqual([
      ['side-triangle', '9 3/4'],
      ['corner-triangle', '5 1/8'],
    ]);
  });

  it('come four and two from a square, and are cut generously unless said otherwise', () => {
    const { parts, counts } = quiltLayout({ block: 9, setting: 'on-point', across: 4, down: 5 });
    expect(counts.sideTriangles).toBe(14);
    expect(
      parts.map(({ count, yield: each, diagonalCuts }) => [count, each, diagonalCuts]),
    ).toEqual([
      [4, 4, 2],
      [2, 2, 1],
    ]);
    // 9√2 + 1.2071 + 1/2 and 9/√2 + 0.8536 + 1/2, up to the eighth.
    expect(parts.map(({ cut }) => cut.width.toString())).toEqual(['14 1/2', '7 3/4']);
  });
});

describe('turns', () => {
  it.each(BLOCK_SETTINGS)('of %s are those of the setting, row by row', (turns) => {
    const { cells } = quiltLayout({ block: 9, across: 4, down: 6, turns, sashing: { width: 1 } });
    const rows = cells.filter(({ kind }) => kind === 'block').map(({ turn }) => turn);
    expect(rows).toEqual(blockTurns(turns, 4, 6).rows.flat());
  });

  it.each(['barn-raising', 'circles'] as const)(
    'of %s on point are the same when the quilt is turned half round',
    (turns) => {
      const top = quiltLayout({ block: 9, setting: 'on-point', across: 3, down: 4, turns });
      const blocks = cellsOf(top, 'block');
      for (const { corners, turn } of blocks) {
        const [x, y] = [corners[0]?.x ?? length(0), corners[0]?.y ?? length(0)];
        const other = blocks.find(
          ({ corners: [, , bottom] }) =>
            bottom?.x.equals(top.finished.width.minus(x)) &&
            bottom.y.equals(top.finished.height.minus(y)),
        );
        expect(other?.turn).toBe((turn + 2) % 4);
      }
    },
  );

  it('say which prints stand on their side and upside down', () => {
    const { warnings } = quiltLayout({ block: 9, across: 2, down: 2, turns: 'circles' });
    expect(warnings.map(({ code, values }) => [code, values])).toEqual([
      ['prints-turn', { sideways: 2, upsideDown: 1 }],
    ]);
  });
});

it('the pieces of a layout are ready for a cutting plan', () => {
  const sashing = { width: '1 1/2', cornerstones: true };
  const { pieces } = quiltLayout({ block: 9, across: 4, down: 4, sashing });
  // 24 sashes of 2 × 9 1/2, four from 40; 9 cornerstones of 2: 6 strips, and one more.
  expect(cuttingPlan({ width: 40, method: 'plain', pieces }).length.toString()).toBe('14');
});

describe('refused', () => {
  const good = { block: 9, across: 4, down: 5 } as const;
  it.each<[string, string, QuiltLayoutSpec]>([
    ['not-a-count', 'across', { ...good, across: 0 }],
    ['not-a-count', 'across', { ...good, across: -3 }],
    ['not-a-count', 'down', { ...good, down: 101 }],
    ['not-a-count', 'down', { ...good, down: 1e15 }],
    ['not-a-count', 'across', { ...good, across: 51, setting: 'on-point' }],
    ['not-positive', 'block', { ...good, block: 0 }],
    ['not-positive', 'sashing.width', { ...good, sashing: { width: 0 } }],
    ['not-positive', 'sashing.width', { ...good, sashing: { width: -1 } }],
    ['not-square', 'block', { ...good, block: { width: 6, height: 9 }, setting: 'on-point' }],
    [
      'not-square',
      'block',
      { ...good, block: { width: 6, height: 9 }, turns: 'streak-of-lightning' },
    ],
    ['odd-count', 'down', { ...good, turns: 'circles' }],
    ['even-sum', 'across', { ...good, down: 4, turns: 'circles', setting: 'on-point' }],
    [
      'conflicting-fields',
      'sashing.outer',
      { ...good, setting: 'on-point', sashing: { width: 1, outer: false } },
    ],
    ['seam-too-wide', 'seam', { ...good, block: '1/4', setting: 'on-point' }],
    ['unknown-choice', 'turns', { ...good, turns: JSON.parse('"pinwheels"') }],
    ['unknown-field', 'sashes', JSON.parse('{"block":9,"across":1,"down":1,"sashes":1}')],
    ['missing-field', 'block', JSON.parse('{"across":1,"down":1}')],
    ['out-of-range', 'block', { ...good, block: 1e9 }],
  ])('%s of %s', (code, field, spec) => {
    const error = refusal(() => quiltLayout(spec));
    expect([error.code, error.field]).toEqual([code, field]);
  });

  it('but straight furrows turn blocks that are not square, half round', () => {
    const block = { width: 6, height: 9 };
    const { cells } = quiltLayout({ block, across: 2, down: 1, turns: 'straight-furrows' });
    expect(cells.map(({ turn }) => turn)).toEqual([0, 2]);
  });
});
