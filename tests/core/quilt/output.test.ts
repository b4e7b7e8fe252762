import {
  drawQuiltPlan,
  kits,
  type QuiltRecipe,
  quilt,
  toCsv,
  toHtml,
  toMarkdown,
  toSvg,
} from '@eighths/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvCell } from '../../../packages/core/src/quilt/output/csv.js';
import { escapeMarkdown } from '../../../packages/core/src/quilt/output/markdown.js';
import { refusal } from '../block/support.js';
import { classOf, everything, onPoint, pattern, plain } from './recipes.js';

const hostile = `<script>alert("1")</script> & 'x' | *y* [z](javascript:1) \`c\`\n# t`;
const named = (text: string): QuiltRecipe => ({
  ...plain,
  name: text.slice(0, 100),
  about: text,
  fabrics: [{ id: 'linen', name: text.slice(0, 100), role: text.slice(0, 100) }, { id: 'night' }],
});

describe('a quilt in HTML', () => {
  const page = toHtml(quilt(pattern, 'Twin'));

  it('stands in the order of a printed pattern', () => {
    const headings = [...page.matchAll(/<h3>(.*?)<\/h3>/g)].map(([, text]) => text);
    expect(headings).toEqual([
      'What to buy',
      'Cutting',
      'Blocks',
      'The top',
      'Borders',
      'Finishing',
    ]);
  });

  it('has tables with captions and heads for columns and rows', () => {
    const tables = page.match(/<table>/g)?.length ?? 0;
    expect(tables).toBeGreaterThan(8);
    expect(page.match(/<caption>/g)?.length).toBe(tables);
    expect(page.match(/<thead>/g)?.length).toBe(tables);
    expect(page).toContain('<th scope="col">Fabric</th>');
    expect(page).toContain('<th scope="row">Ember</th><td>centers</td>');
  });

  it('calls fabrics by their names, in the steps as well', () => {
    expect(page).toContain('2″ by 2½″ of Night');
    expect(page).not.toContain('of night');
  });

  it('opens and closes every element', () => {
    const open: string[] = [];
    for (const [, slash, name = ''] of page.matchAll(/<(\/?)([a-z0-9]+)[^>]*>/g)) {
      if (slash === '') open.push(name);
      else expect(open.pop()).toBe(name);
    }
    expect(open).toEqual([]);
  });

  it('brings no style, script, id or class', () => {
    expect(page).not.toMatch(/<(?:script|style|a|img)\b|\b(?:style|class|id|on\w+)=/);
  });

  it('begins at the heading that is asked for', () => {
    expect(toHtml(quilt(plain), { headingLevel: 4 })).toContain('<h4>Nine Windows, Cushion</h4>');
    expect(refusal(() => toHtml(quilt(plain), { headingLevel: 6 })).code).toBe('not-a-count');
  });

  it('keeps whatever a recipe says a text', () => {
    const made = toHtml(quilt(named(hostile)));
    expect(made).not.toMatch(/<script|"1"/);
    expect(made).toContain('&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;x&#39;');
  });
});

describe('a quilt in Markdown', () => {
  it('says what to buy in a table', () => {
    expect(toMarkdown(quilt(pattern, 'Twin'))).toContain(
      '| Ember | centers | 40″ | ⅜\u00a0yd | \\$11.80 a yard | \\$4.43 |',
    );
  });

  it('says sizes in centimeters where they are asked for', () => {
    const made = toMarkdown(quilt(pattern, 'Twin'), { units: 'cm' });
    expect(made).toContain('170.18\u00a0cm × 215.9\u00a0cm finished');
    expect(made).not.toMatch(/\d″/);
  });

  it.each([
    ['a | b', 'a \\| b'],
    ['*a*', '\\*a\\*'],
    ['1. a', '1\\. a'],
    ['134.62 cm', '134.62 cm'],
    ['- a', '\\- a'],
    ['a\n\n# b', 'a \\# b'],
    ['<b>&lt;', '\\<b\\>\\&lt;'],
    ['a_b `c` [d](e)', 'a\\_b \\`c\\` \\[d\\](e)'],
    ['\\', '\\\\'],
  ])('%j is written %j', (text, escaped) => {
    expect(escapeMarkdown(text)).toBe(escaped);
  });

  it('has as many cells in each row of a table as its head, whatever names hold', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme-ascii' }), (text) => {
        const made = toMarkdown(quilt(named(`x${text}`)));
        const cells = (line: string): number => line.replace(/\\./g, '').split('|').length;
        let head = 0;
        for (const line of made.split('\n')) {
          if (!line.startsWith('|')) head = 0;
          else if (head === 0) head = cells(line);
          else expect(cells(line)).toBe(head);
        }
      }),
      { numRuns: 25 },
    );
  });
});

/** A small reader of comma-separated values. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, bare = '', end] of text.matchAll(
    /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g,
  )) {
    rows.at(-1)?.push(quoted === undefined ? bare : quoted.replaceAll('""', '"'));
    if (end !== ',') rows.push([]);
  }
  return rows.slice(0, -1);
}

describe('a shopping list in CSV', () => {
  it('has a line for each fabric, the batting and the sum', () => {
    const rows = readCsv(toCsv(quilt(pattern, 'Twin')));
    expect(rows[0]).toEqual(['Fabric', 'For', 'Usable width', 'Buy', 'Price', 'Cost']);
    expect(rows[1]).toEqual(['Ember', 'centers', '40″', '⅜\u00a0yd', '$11.80 a yard', '$4.43']);
    expect(rows.map(([first]) => first).slice(-2)).toEqual(['Batting', 'All fabrics']);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([6]));
  });

  it.each([
    ['=1+1', "'=1+1"],
    ['+1', "'+1"],
    ['-1', "'-1"],
    ['@x', "'@x"],
    [' =1', "' =1"],
    ['\t=1', `"'\t=1"`],
    ['\uff1d1', "'\uff1d1"],
    ['=a,b', `"'=a,b"`],
    ['a "b"', '"a ""b"""'],
    ['a\nb', '"a\nb"'],
    ['a,b', '"a,b"'],
    [' a', '" a"'],
    ['a', 'a'],
    ['1/2', '1/2'],
  ])('%j is written %j', (text, cell) => {
    expect(csvCell(text)).toBe(cell);
  });

  it('reads back as it was, and never begins a formula', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, maxLength: 60, unit: 'binary-ascii' }), (text) => {
        const [row] = readCsv(`${csvCell(text)},x\r\n`);
        const cell = row?.[0] ?? '';
        expect(cell.replace(/^'/, '')).toBe(text.replace(/^'/, ''));
        expect(cell).not.toMatch(/^\s*[=+\-@]/);
      }),
      { numRuns: 200 },
    );
  });
});

describe('a class’s kits', () => {
  const plan = kits({ recipe: pattern, ...classOf });

  it('have a cut sheet, a checklist and what they cost', () => {
    const made = toMarkdown(plan);
    expect(made).toContain('| Night | ⅝\u00a0yd | 13 | 8⅛\u00a0yd | 24 | 1 |  | 6⅞\u00a0yd |');
    expect(made).toContain('- Night: ⅝\u00a0yd in one piece');
    expect(made).toContain('- Printed pattern');
    expect(made).toMatch(/\| One kit \| \\\$\d+\.\d\d \|/);
  });

  it('have a cut sheet in CSV', () => {
    const rows = readCsv(toCsv(plan));
    expect(rows.length).toBe(plan.fabrics.length + 1);
    expect(rows[2]?.slice(0, 3)).toEqual(['Night', '⅝\u00a0yd', '13']);
  });

  it('are written in HTML as well', () => {
    expect(toHtml(plan)).toContain('<h2>Kits for Thaw at Fernhollow, Crib</h2>');
  });
});

describe('a picture of a recipe’s quilt', () => {
  it.each<[string, QuiltRecipe, readonly string[]]>([
    ['the demo pattern', pattern, ['ember', 'night', 'dusk', 'harbor', 'linen', 'oat', 'frost']],
    ['one of everything', everything, ['sky', 'moss', 'sand', 'border 2']],
    ['blocks on point', onPoint, ['moss', 'sand', 'sky']],
  ])('%s shows its fabrics by their ids', (_, recipe, fabrics) => {
    const drawing = drawQuiltPlan(quilt(recipe));
    expect([...drawing.fabrics].sort()).toEqual([...fabrics].sort());
    expect(toSvg(drawing, {})).toContain('<svg');
  });
});
