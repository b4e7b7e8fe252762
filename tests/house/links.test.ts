import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import * as core from '@eighths/core';
import { describe, expect, test } from 'vitest';
import { made, madeIn, order, withMade } from '../../docs/guides/made.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '');
const guidesFolder = join(root, 'docs', 'guides');
const pagesFolder = join(root, 'docs', 'pages');

const named = (folder: string, ending: string): readonly string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(ending))
    .map((name) => join(folder, name));

const guides = named(guidesFolder, '.md');
const pages = named(pagesFolder, '.html');

/** What is served beside the demo pages. The documentation is built by `npm run docs`. */
const mounts: Readonly<Record<string, string>> = { '/docs/': guidesFolder, '/': pagesFolder };

/** The built files of the elements, whether they are built here or not. */
const { exports: builtFiles }: { readonly exports: Readonly<Record<string, unknown>> } = JSON.parse(
  readFileSync(join(root, 'packages', 'widget', 'package.json'), 'utf8'),
);
const BUILT = '/eighths/';

/** Without what stands in fences and in code: a link there is an example. */
const prose = (markdown: string): string =>
  markdown.replace(/^(`{3,}|~{3,}).*?^\1/gms, '').replace(/`[^`\n]*`/g, '');

const linksInMarkdown = (markdown: string): string[] =>
  [...prose(markdown).matchAll(/\]\(([^()\s]+)\)/g)].map(([, link = '']) => link);

/** What a page shows as code is an example too. */
const linksInPage = (html: string): string[] =>
  [...html.replace(/<code>.*?<\/code>/gs, '').matchAll(/\s(?:href|src)="([^"]*)"/g)].map(
    ([, link = '']) => link.replaceAll('&amp;', '&'),
  );

/** How a heading is named in a link. */
const slugOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .trim()
    .replace(/\s/g, '-');

function anchorsIn(path: string): readonly string[] {
  const text = readFileSync(path, 'utf8');
  return path.endsWith('.md')
    ? [...prose(text).matchAll(/^#+ (.+)$/gm)].map(([, heading = '']) => slugOf(heading))
    : [...text.matchAll(/\sid="([^"]+)"/g)].map(([, id = '']) => id);
}

function fileOf(link: string, from: string): string {
  const mount = Object.keys(mounts).find((one) => link.startsWith(one));
  if (mount === undefined) return link === '' ? from : resolve(dirname(from), link);
  return join(mounts[mount] ?? root, link.slice(mount.length));
}

/** Links of a file that lead nowhere. */
function broken(path: string): string[] {
  const text = readFileSync(path, 'utf8');
  const links = path.endsWith('.md') ? linksInMarkdown(text) : linksInPage(text);
  return links.filter((link) => {
    if (/^[a-z]+:/.test(link)) return false;
    const [address = '', anchor] = link.split('#');
    if (address.startsWith(BUILT)) {
      return !Object.hasOwn(builtFiles, `./${address.slice(BUILT.length)}`);
    }
    const file = fileOf(decodeURI(address.split('?')[0] ?? ''), path);
    if (!existsSync(file)) return true;
    return (
      anchor !== undefined &&
      anchor !== '' &&
      // Settings may stand in a fragment: `#block?finished=9`.
      !anchorsIn(file).includes(anchor.split('?')[0] ?? '')
    );
  });
}

const shown = (path: string): string => relative(root, path).split(sep).join('/');

describe('no link is broken in', () => {
  const read = ['README.md', 'DEVELOPERS.md'].map((name) => join(root, name));
  test.each([...read, ...guides, ...pages].map((path) => [shown(path), path]))('%s', (_, path) => {
    expect(broken(path)).toEqual([]);
  });

  test('and one that is would be found', () => {
    expect(linksInMarkdown('[a](gone.md) `[b](c.md)`\n```md\n[d](e.md)\n```\n')).toEqual([
      'gone.md',
    ]);
    expect(linksInPage('<a href="gone.html?a=1&amp;b=2">')).toEqual(['gone.html?a=1&b=2']);
    expect(slugOf('How long a log is cut')).toBe('how-long-a-log-is-cut');
  });
});

describe('the guides', () => {
  test('are all listed, and every one is linked from the first page', () => {
    const names = guides.map((path) => shown(path).replace(/^.*\/|\.md$/g, ''));
    expect(names.filter((name) => name !== 'index').sort()).toEqual([...order].sort());
    const first = linksInMarkdown(readFileSync(join(guidesFolder, 'index.md'), 'utf8'));
    expect(order.filter((name) => !first.includes(`${name}.md`))).toEqual([]);
  });

  test.each(guides.map((path) => [shown(path), path]))('%s has one title', (_, path) => {
    expect(prose(readFileSync(path, 'utf8')).match(/^# .+$/gm)).toHaveLength(1);
  });

  test('show every drawing, each with words for who cannot see it', () => {
    const images = guides.flatMap((path) =>
      [...readFileSync(path, 'utf8').matchAll(/!\[([^\]]*)\]\(images\/([\w-]+\.svg)\)/g)].map(
        ([, alt = '', name = '']) => ({ alt, name }),
      ),
    );
    expect(images.filter(({ alt }) => alt === '')).toEqual([]);
    const folder = join(guidesFolder, 'images');
    expect([...new Set(images.map(({ name }) => name))].sort()).toEqual(readdirSync(folder).sort());
    for (const path of named(folder, '.svg')) {
      expect(statSync(path).size, shown(path)).toBeLessThan(5000);
      expect(readFileSync(path, 'utf8')).toMatch(/<title>.+<\/title>\n<desc>.+<\/desc>/);
    }
  });

  test('have made what they ask for, and nothing is made for nobody', () => {
    const texts = guides.map((path) => readFileSync(path, 'utf8'));
    expect([...new Set(texts.flatMap(madeIn))].sort()).toEqual(Object.keys(made).sort());
    for (const text of texts) expect(withMade(text, core)).not.toContain('<!-- made');
    expect(withMade('<!-- made: trim -->', core)).toMatch(
      /^<figure class="drawing"><svg .*<title>/,
    );
    expect(withMade('<!-- made: parts -->', core)).toContain(
      '| `headline` | The answer in a line. |',
    );
    expect(() => withMade('<!-- made: gone -->', core)).toThrow('“gone”');
  });
});
