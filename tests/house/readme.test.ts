import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import * as core from '@eighths/core';
import { describe, expect, test } from 'vitest';
import { docstringExamples, fencedBlocks, runSnippet, type Snippet, written } from './snippets.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** A reader of the documents has the two packages, which are their sources here. */
const load = async (name: string): Promise<unknown> => {
  if (name.startsWith('@eighths/')) return import(/* @vite-ignore */ name);
  throw new Error(`A snippet imports "${name}", which its reader does not have.`);
};

/** Languages whose blocks are run. Others (HTML, shell, JSON) are only read. */
const RUN = new Set(['ts', 'typescript', 'js', 'javascript', 'mjs']);
const isRun = ({ info }: Snippet) => RUN.has(info.split(/[\s{]/)[0]?.toLowerCase() ?? '');

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (name) => {
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
});

const source = join(root, 'packages', 'core', 'src');
const examples = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .flatMap((path) =>
    docstringExamples(readFileSync(join(source, path), 'utf8')).map((snippet) => ({
      ...snippet,
      path: join(source, path),
      name: relative(source, join(source, path)).split(sep).join('/'),
    })),
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
