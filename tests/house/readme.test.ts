import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import * as core from '@eighths/core';
import { EighthsFabric, EighthsLogCabin, EighthsQuilt, EighthsUnit } from '@eighths/widget';
import { describe, expect, test } from 'vitest';
import { parts, properties } from '../../packages/widget/manifest/describe.mjs';
import {
  docstringExamples,
  fencedBlocks,
  markupFaults,
  runSnippet,
  type Snippet,
  styleFaults,
  written,
} from './snippets.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

const widget: { readonly exports: Readonly<Record<string, unknown>> } = JSON.parse(
  readFileSync(join(root, 'packages', 'widget', 'package.json'), 'utf8'),
);

/** A reader of the documents has the two packages, which are their sources here. */
const load = async (name: string): Promise<unknown> => {
  const [, entry] = /^@eighths\/widget\/(.+)\.js$/.exec(name) ?? [];
  if (entry !== undefined) {
    if (!Object.hasOwn(widget.exports, `./${entry}.js`)) {
      throw new Error(`A snippet imports "${name}", which the package does not export.`);
    }
    return import(pathToFileURL(join(root, 'packages', 'widget', 'src', `${entry}.ts`)).href);
  }
  if (name.startsWith('@eighths/')) return import(/* @vite-ignore */ name);
  throw new Error(`A snippet imports "${name}", which its reader does not have.`);
};

const languageOf = ({ info }: Snippet) => info.split(/[\s{]/)[0]?.toLowerCase() ?? '';

/** Languages whose blocks are run. Markup and style are checked, others (JSON, text) only read. */
const RUN = new Set(['ts', 'typescript', 'js', 'javascript', 'mjs']);
const isRun = (block: Snippet) => RUN.has(languageOf(block));

const known = {
  elements: {
    'eighths-fabric': EighthsFabric.observedAttributes,
    'eighths-log-cabin': EighthsLogCabin.observedAttributes,
    'eighths-quilt': EighthsQuilt.observedAttributes,
    'eighths-unit': EighthsUnit.observedAttributes,
  },
};
const look = { properties: Object.keys(properties), parts: Object.keys(parts) };

/** What is wrong with a block that is not run. */
function faultsIn(block: Snippet): readonly string[] {
  const language = languageOf(block);
  if (language === 'html') return markupFaults(block.code, known);
  if (language === 'css') return styleFaults(block.code, look);
  if (language !== 'sh') return [];
  // What the command is given is a tag too.
  const tags = [...block.code.matchAll(/^npx @eighths\/widget render '(.+)'$/gm)];
  return tags.flatMap(([, tag = '']) => markupFaults(tag, known));
}

const guides = readdirSync(join(root, 'docs', 'guides'))
  .filter((name) => name.endsWith('.md'))
  .map((name) => `docs/guides/${name}`);

describe.each([
  'README.md',
  'DEVELOPERS.md',
  'packages/core/README.md',
  'packages/widget/README.md',
  ...guides,
])('%s', (name) => {
  const path = join(root, name);
  const text = existsSync(path) ? readFileSync(path, 'utf8') : '';

  test('is there', () => {
    expect(text).not.toBe('');
  });

  const blocks = fencedBlocks(text).filter(isRun);
  test.runIf(blocks.length > 0).each(blocks)('line $line is so', async (block) => {
    expect(block.info, 'a block of code cannot be marked as not to be run').not.toContain('no-run');
    await runSnippet(block, { load });
  });

  test('shows markup and styles that there are', () => {
    const faults = fencedBlocks(text).flatMap((block) =>
      faultsIn(block).map((fault) => `line ${block.line}: ${fault}`),
    );
    expect(faults).toEqual([]);
  });

  test('names files that the package exports', () => {
    const named = [
      ...text.matchAll(/(?:@eighths\/widget\/|`)((?:eighths|define|lang)[\w/-]*\.js)\b/g),
    ];
    const missing = named
      .map(([, file = '']) => file)
      .filter((file) => !Object.hasOwn(widget.exports, `./${file}`));
    expect(missing).toEqual([]);
  });
});

const packages = join(root, 'packages');
const examples = ['core', 'widget'].flatMap((name) =>
  readdirSync(join(packages, name, 'src'), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => join(packages, name, 'src', path))
    .flatMap((path) =>
      docstringExamples(readFileSync(path, 'utf8')).map((snippet) => ({
        ...snippet,
        path,
        name: relative(packages, path).split(sep).join('/').replace('/src/', '/'),
      })),
    ),
);

describe('the examples in docstrings', () => {
  test.each(examples.map((one) => [`${one.name}, line ${one.line}`, one] as const))(
    '%s',
    async (_, { path, ...snippet }) => {
      const own: Record<string, unknown> = await import(pathToFileURL(path).href);
      const shown = await runSnippet(snippet, { load, names: { ...own, ...core } });
      expect(shown, 'an example shows a result: `expression; // result`').toBeGreaterThan(0);
    },
  );
});

describe('blocks are found', () => {
  test('in Markdown, with their language and line', () => {
    const markdown = ['# Title', '', '```ts', 'a;', '', 'b;', '```', '~~~html', '<p>', '~~~'];
    expect(fencedBlocks(markdown.join('\n'))).toEqual([
      { code: 'a;\n\nb;', line: 4, info: 'ts' },
      { code: '<p>', line: 9, info: 'html' },
    ]);
  });

  test('inside a list, without its indent', () => {
    expect(fencedBlocks('1. So:\n   ```js\n   if (a) {\n     b;\n   }\n   ```')).toEqual([
      { code: 'if (a) {\n  b;\n}', line: 3, info: 'js' },
    ]);
  });

  test('and one inside a longer fence is no block', () => {
    expect(fencedBlocks('````md\n```ts\na;\n```\n````')).toEqual([
      { code: '```ts\na;\n```', line: 2, info: 'md' },
    ]);
  });

  test('and one without an end is refused', () => {
    expect(() => fencedBlocks('text\n```ts\na;')).toThrow('line 3');
  });

  test('in docstrings, with and without fences', () => {
    const text = `const before = 1;
/**
 * One.
 *
 * @example
 * a(); // 1
 *
 * b(); // 2
 * @returns nothing
 */
export const one = 1;

class Two {
  /**
   * @example
   * \`\`\`ts
   * if (c) {
   *   d(); // 3
   * }
   * \`\`\`
   */
  three = 3;
}
/** @example */
`;
    expect(docstringExamples(text)).toEqual([
      { code: 'a(); // 1\n\nb(); // 2', line: 6, info: '' },
      { code: 'if (c) {\n  d(); // 3\n}', line: 17, info: 'ts' },
      { code: '', line: 25, info: '' },
    ]);
  });
});

describe('markup', () => {
  test.each([
    '<eighths-log-cabin finished="9" strips-wide="2"></eighths-log-cabin>',
    '<eighths-unit id="geese" lang="de" units="metric"></eighths-unit>',
    '<div data-eighths="log-cabin" data-finished="9"></div><p class="a">text</p>',
    '<iframe src="embed.html?element=fabric&amp;width=40" title="Fabric"></iframe>',
  ])('is in order: %s', (html) => {
    expect(markupFaults(html, known)).toEqual([]);
  });

  test.each([
    ['<eighths-log-cabin finnished="9"></eighths-log-cabin>', 'no attribute finnished'],
    ['<eighths-log finished="9"></eighths-log>', 'no element eighths-log'],
    ['<eighths-log-cabin finished="9" />', 'closes itself'],
    [`<eighths-log-cabin finished='9'></eighths-log-cabin>`, 'not written as a tag'],
    ['<div data-eighths="log-cabin" data-size="9"></div>', 'no attribute size'],
    ['<div data-eighths="log" data-size="9"></div>', 'no element eighths-log'],
    ['<iframe src="embed.html?element=log-cabin&amp;size=9"></iframe>', 'no attribute size'],
  ])('is found out: %s', (html, fault) => {
    expect(markupFaults(html, known).join()).toContain(fault);
  });

  test('and so are styles for what there is not', () => {
    const css = 'a { --eighths-ink: 0; --eighths-accent: red } a::part(head), a::part(table) {}';
    expect(styleFaults(css, look)).toEqual(['--eighths-ink', 'head']);
  });
});

describe('a shown result', () => {
  const run = (code: string) =>
    runSnippet({ code, line: 1, info: 'ts' }, { load, names: { length: core.length, two: 2 } });

  test.each([
    [`length('10-1/2').toString(); // '10 1/2'`, 1],
    [`length('10-1/2').toString(); // "10 1/2"`, 1],
    [`length('10-1/2'); // 10 1/2`, 1],
    [`'9\u00a0cm'; // '9 cm'`, 1],
    ['1 + 1; // 2', 1],
    ['1 + 1; // => 2', 1],
    [`({ width: length('1/2') }); // { width: '1/2' }`, 1],
    [`[length('1/2'), 'a']; // ["1/2","a"]`, 1],
    [`[1, 2].map(\n  (n) => n + 1,\n); // [2, 3]`, 1],
    [`console.log('a'); // 'a'`, 1],
    [`import { length as read } from '@eighths/core';\nread('.5'); // 1/2`, 1],
    ['const length = (n: number): number => n;\nlength(2); // 2', 1],
    ['const later: number = await Promise.resolve(3);\nlater; // 3', 1],
    [`try {\n  length('x');\n} catch (error) {\n  if (error) 'caught'; // 'caught'\n}`, 1],
    ['[1, 2].forEach((n) => {\n  typeof n; // number\n});', 1],
    ['// a comment alone\ntwo; // 2\ntwo; /* no result */\nconst three = 3; // inches', 1],
  ])('passes where it is so: %j', async (code, count) => {
    expect(await run(code)).toBe(count);
  });

  test.each([
    [`two;\nlength('10-1/2').toString(); // '10 1/4'`, 'Line 2 shows 10 1/4, and it is 10 1/2.'],
    [`length('10-1/2'); // '10.5'`, 'Line 1 shows 10.5'],
    [`({ a: 1 }); // { a: 2 }`, 'Line 1 shows {"a":2}, and it is {"a":1}.'],
    ['if (two === 3) two; // 2', 'Line 1 was never reached.'],
    [`[].forEach(() => {\n  two; // 2\n});`, 'Line 2 was never reached.'],
    ['gone(); // 1', 'gone is not defined'],
    [`import { a } from 'somewhere';\na; // 1`, 'A snippet imports "somewhere"'],
    ['two two;', 'expected'],
    [`length('ten');`, 'ten'],
  ])('fails where it is not: %j', async (code, message) => {
    await expect(run(code)).rejects.toThrow(message);
  });

  test('is written as a reader would write it', () => {
    const values = [core.length('1/2'), 'a', 1n, null, undefined, [1], { a: 'b' }];
    expect(values.map(written)).toEqual(['1/2', 'a', '1', 'null', 'undefined', '[1]', '{"a":"b"}']);
  });
});
