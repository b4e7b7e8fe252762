import { kits, type QuiltRecipe, quilt, toMarkdown } from '@eighths/core';
import { describe, expect, it } from 'vitest';
import { everything, plain } from './recipes.js';

/** What stands in a table below a caption: its head, and its rows. */
function rowsOf(page: string, caption: RegExp): readonly (readonly string[])[] {
  const lines = page.split('\n');
  const at = lines.findIndex((line) => line.startsWith('**') && caption.test(line));
  expect(at, `a table with the caption ${caption}`).toBeGreaterThanOrEqual(0);
  const table = lines.slice(at + 2);
  return table
    .slice(0, table.indexOf(''))
    .filter((line) => !line.includes('---'))
    .map((line) =>
      line
        .slice(1, -1)
        .split('|')
        .map((cell) => cell.trim().replaceAll('\\', '').replace(/\s/g, ' ')),
    );
}

/** The plain quilt with its own fabric on the back as well. */
const backed: QuiltRecipe = {
  ...plain,
  fabrics: [
    { id: 'linen', name: 'Linen', price: 12 },
    { id: 'night', name: 'Night' },
  ],
  backing: { fabric: 'linen' },
};

describe('kits whose top and backing are of one fabric', () => {
  const page = toMarkdown(
    kits({
      recipe: backed,
      people: 9,
      spares: 1,
      backing: true,
      bolt: '6 yd',
      margin: '1/4',
      extras: [{ name: 'Thread' }, { name: 'Labels', cost: '1.50' }],
    }),
  );

  // By hand: three strips of four 9 1/2-inch squares, one to spare and an inch to straighten are 39
  // inches, 1 1/8 yards; 35 inches of backing are a yard. Ten times 2 1/8 are 21 1/4 yards. Six yards
  // hold two kits and leave 1 3/4.
  it('have two lengths of it, whose amounts are told once', () => {
    const [, ...rows] = rowsOf(page, /cutting counter.*bolts of 6.yd/);
    expect(rows).toEqual([
      ['Linen, top', '1⅛ yd', '10', '21¼ yd', '2', '5', '1¾ yd', '1¾ yd'],
      ['Linen, backing', '1 yd', '10', '', '', '', '', ''],
    ]);
    expect(page).toContain('- Linen, top: 1⅛\u00a0yd in one piece\n- Linen, backing: 1\u00a0yd');
  });

  // By hand: 2 1/8 yards at 12 are 25.50, and with labels 27: three quarters of 36. Nine are sold and
  // ten are made: 324 less 270.
  it('cost what is known of their parts, and leave what the margin says', () => {
    expect(rowsOf(page, /What a kit costs/).slice(1)).toEqual([
      ['Linen', '$25.50'],
      ['Thread', ''],
      ['Labels', '$1.50'],
      ['One kit', '$27.00'],
      ['All kits', '$270.00'],
      ['Price of a kit', '$36.00'],
      ['Margin', '$9.00, 25 %'],
      ['Left when all are sold', '$54.00'],
    ]);
  });
});

describe('kits without prices', () => {
  const page = toMarkdown(kits({ recipe: plain, people: 2 }));

  it('say nothing of costs', () => {
    expect(page).toContain('2 kits: 2 people.');
    expect(page).not.toContain('costs');
  });

  // Two of 1 1/8 yards, from the usual bolt of 15: 12 3/4 are left, and no full bolt is cut up.
  it('leave the rest of one bolt', () => {
    const [, row] = rowsOf(page, /cutting counter/);
    expect(row?.slice(3)).toEqual(['2¼ yd', '13', '1', '', '12¾ yd']);
  });
});

describe('kits that cost something and are not sold', () => {
  it('have no price and no margin', () => {
    const rows = rowsOf(toMarkdown(kits({ recipe: backed, people: 2 })), /What a kit costs/);
    expect(rows.map(([part]) => part)).toEqual(['Part', 'Linen', 'One kit', 'All kits']);
  });
});

describe('the rows of a top', () => {
  const dark = { id: 'dark', name: 'Dark', kind: 'plain', fabric: 'night', finished: 9 } as const;
  const setting = (more: NonNullable<QuiltRecipe['setting']>) =>
    quilt({ ...backed, blocks: [...plain.blocks, dark], setting: more });

  it('tell neighbors that are the same together', () => {
    const page = toMarkdown(setting({ pattern: [['window', 'dark', 'dark'], ['dark']] }));
    expect(rowsOf(page, /Row by row/)).toEqual([
      ['Row', 'Blocks'],
      ['1', 'window; 2 × Dark'],
      ['2', '3 × Dark'],
      ['3', 'window; 2 × Dark'],
    ]);
  });

  it('tell turns by themselves where all blocks are the same', () => {
    const page = toMarkdown(
      quilt({
        ...plain,
        setting: { turns: 'barn-raising' },
        sizes: [{ name: 'Mat', across: 2, down: 2 }],
      }),
    );
    const [head, ...rows] = rowsOf(page, /Row by row/);
    expect(head).toEqual(['Row', 'Turns']);
    expect(rows.map(([row]) => row)).toEqual(['1', '2']);
    for (const [, turns] of rows) expect(turns).toMatch(/^[0-3] [0-3]$/);
  });

  it('say that blocks stand on point', () => {
    const page = toMarkdown(
      quilt({ ...plain, setting: { arrangement: 'on-point', triangles: 'night' } }),
    );
    expect(page).toContain('3 by 3 blocks on point');
  });
});

describe('binding', () => {
  const bound = (cut: 'straight' | 'bias-strips' | 'bias-continuous') =>
    toMarkdown(quilt({ ...plain, binding: { fabric: 'night', cut, strip: '2 1/4' } }));

  it.each([
    ['straight', /Binding: 4 strips 2¼″ wide, joined on the diagonal: .*, 118″ needed\./],
    ['bias-strips', /Binding: \d+ bias strips 2¼″ wide from .* of fabric: .*, 118″ needed\./],
    [
      'bias-continuous',
      /Binding: continuous bias 2¼″ wide from 1 squares of .*: .*, 118″ needed\./,
    ],
  ] as const)('that is cut %s says so', (cut, sentence) => {
    expect(bound(cut)).toMatch(sentence);
  });
});

describe('a pattern with every kind of block and border', () => {
  const page = toMarkdown(quilt(everything, 'Small'));

  it.each([
    ['log cabins', '### cabin\n\nMake 8, 6″ × 6″ finished, 6½″ × 6½″ unfinished (log cabin).'],
    ['blocks of pieces', '### Flight\n\nMake 4, 6″ × 6″ finished, 6½″ × 6½″ unfinished (pieced).'],
    ['plain squares', '### rest\n\nMake 4, 6″ × 6″ finished, 6½″ × 6½″ unfinished (plain).'],
    [
      'units of a border',
      '### saw\n\nMake 52, 3″ × 3″ finished, 3½″ × 3½″ unfinished (pieced unit). 52 of them are for borders.',
    ],
  ])('says how many %s are made, and how large', (_, told) => {
    expect(page).toContain(told);
  });

  // Five by four sashes each way, and five by five cornerstones.
  it('counts sashes and cornerstones', () => {
    expect(rowsOf(page, /Between and round/).slice(1)).toEqual([
      ['Sash', '6″ × 1½″', '40'],
      ['Cornerstone', '1½″ × 1½″', '25'],
    ]);
  });

  // By hand: 31 1/2 and two borders of 3 3/4 are 39, thirteen units of 3; with them 45, and two of 4 are 53.
  it('says what is sewn to each side, and how the quilt grows', () => {
    const [, ...rows] = rowsOf(page, /Cut to the measured top/);
    expect(rows.map(([border, strips, , , finished]) => [border, strips, finished])).toEqual([
      ['1, straight', 'sides', '39″ × 39″'],
      ['1, straight', 'top and bottom', '39″ × 39″'],
      ['2, pieced', 'sides', '45″ × 45″'],
      ['2, pieced', 'top and bottom', '45″ × 45″'],
      ['2, pieced', 'corner squares', '45″ × 45″'],
      ['3, mitered', 'sides', '53″ × 53″'],
      ['3, mitered', 'top and bottom', '53″ × 53″'],
    ]);
    expect(rows[2]?.[2]).toBe('13 blocks each');
  });
});
