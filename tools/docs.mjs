// `npm run docs` builds the documentation: the guides and the reference, in docs/site. With
// `--if-stale` only where it is missing or older than its sources.
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join, relative, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { order, withMade } from '../docs/guides/made.mjs';
import { groupsOf, packages } from './api.mjs';
import { isProgram, root } from './run.mjs';

const guides = join(root, 'docs', 'guides');
const staged = join(root, '.cache', 'docs');
export const site = join(root, 'docs', 'site');

/** @param {string} path */
async function inlineSvg(path) {
  const svg = await readFile(path, 'utf8');
  // Inside a page its colors are the page's.
  const plain = svg.replace(/<style>.*?<\/style>/s, '').replace(/\s*\n\s*/g, ' ');
  return `<figure class="drawing">${plain.trim()}</figure>`;
}

/**
 * A guide as the site takes it: its title on top, what is made in its place, drawings in the page, and
 * demo pages where they are served.
 *
 * @param {string} name
 * @param {import('../docs/guides/made.mjs').Core} core
 */
async function stage(name, core) {
  const text = await readFile(join(guides, `${name}.md`), 'utf8');
  const title = /^# (.+)$/m.exec(text)?.[1] ?? name;
  let body = withMade(text.replace(/^# .+\n/, ''), core).replaceAll('](../pages/', '](/');
  for (const [image, path = ''] of body.matchAll(/!\[[^\]]*\]\((images\/[\w-]+\.svg)\)/g)) {
    body = body.replace(image, await inlineSvg(join(guides, path)));
  }
  const head = name === 'index' ? `# ${title}\n` : `---\ntitle: ${title}\n---\n`;
  await writeFile(join(staged, `${name}.md`), head + body);
}

/**
 * Gives the modules the packages' names, and each public name its place and group in the index.
 *
 * @param {import('typedoc').ProjectReflection} project
 * @param {typeof import('typedoc')} typedoc
 */
function arrange(project, { Comment, CommentTag }) {
  for (const [at, module] of (project.children ?? []).entries()) {
    const name = packages[at];
    if (name === undefined) continue;
    module.name = `@eighths/${name}`;
    const titles = new Map(
      groupsOf(name).flatMap(({ title, names }) => names.map((one) => [one, title])),
    );
    const places = [...titles.keys()];
    module.children?.sort((a, b) => places.indexOf(a.name) - places.indexOf(b.name));
    for (const child of module.children ?? []) {
      const title = titles.get(child.name);
      if (title === undefined || title === '') continue;
      child.comment ??= new Comment();
      child.comment.blockTags.push(new CommentTag('@category', [{ kind: 'text', text: title }]));
    }
  }
}

/** What is wrong with the links in the built pages. */
export async function brokenLinks(folder = site) {
  const names = (await readdir(folder, { recursive: true })).filter((one) => one.endsWith('.html'));
  /** @type {Map<string, { ids: Set<string>, links: string[] }>} */
  const pages = new Map();
  for (const name of names) {
    const html = await readFile(join(folder, name), 'utf8');
    pages.set(join(folder, name), {
      ids: new Set([...html.matchAll(/\sid="([^"]+)"/g)].map(([, id = '']) => id)),
      links: [...html.matchAll(/\s(?:href|src)="([^"]+)"/g)].map(([, link = '']) => link),
    });
  }
  /** @type {string[]} */
  const broken = [];
  for (const [page, { links }] of pages) {
    for (const link of links) {
      if (/^[a-z]+:/.test(link)) continue;
      const [path = '', id = ''] = decodeURI(link.replaceAll('&amp;', '&')).split('#');
      const file = path.startsWith('/')
        ? join(root, 'docs', 'pages', path === '/' ? 'index.html' : path)
        : path === ''
          ? page
          : resolve(dirname(page), path);
      const ids = pages.get(file)?.ids;
      const isThere = existsSync(file) && (id === '' || ids === undefined || ids.has(id));
      if (!isThere) broken.push(`${relative(folder, page)}: ${link}`);
    }
  }
  return broken;
}

/** Builds docs/site from the sources; the core must be built, since it draws some of the pictures. */
export async function buildDocs() {
  await rm(staged, { recursive: true, force: true });
  await mkdir(staged, { recursive: true });
  const built = join(root, 'packages', 'core', 'dist', 'index.js');
  const core = await import(pathToFileURL(built).href);
  for (const name of ['index', ...order]) await stage(name, core);

  const typedoc = await import('typedoc');
  const categories = packages.flatMap((name) => groupsOf(name).map(({ title }) => title));
  const app = await typedoc.Application.bootstrapWithPlugins({
    options: join(root, 'typedoc.json'),
    readme: join(staged, 'index.md'),
    projectDocuments: order.map((name) => join(staged, `${name}.md`)),
    categoryOrder: [...new Set(categories), '*'],
  });
  app.converter.on(typedoc.Converter.EVENT_RESOLVE_BEGIN, ({ project }) =>
    arrange(project, typedoc),
  );
  app.renderer.on(typedoc.PageEvent.END, (page) => {
    if (page.contents === undefined) return;
    page.contents = page.contents
      // The theme names its header and its navigation, and not what the page is about.
      .replace('class="col-content"', '$& role="main"')
      // On a phone a table may be moved sideways: by the keyboard too.
      .replaceAll('<table>', '<table tabindex="0">');
  });
  const project = await app.convert();
  if (project === undefined) throw new Error('The reference could not be read from the sources.');
  app.validate(project);
  await rm(site, { recursive: true, force: true });
  await app.generateDocs(project, site);
  if (app.logger.hasErrors() || app.logger.hasWarnings()) {
    throw new Error('The documentation has faults; the lines above name them.');
  }
  const broken = await brokenLinks();
  if (broken.length > 0) throw new Error(`Broken links:\n${broken.join('\n')}`);
}

/** When anything below a folder, or a file, was last changed. */
async function lastChange(/** @type {string} */ path) {
  const found = await stat(path).catch(() => undefined);
  if (found === undefined) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  const below = await readdir(path, { recursive: true });
  const times = await Promise.all(below.map(async (one) => (await stat(join(path, one))).mtimeMs));
  return Math.max(0, ...times);
}

const sources = [
  'docs/guides',
  'packages/core/src',
  'packages/widget/src',
  'packages/widget/manifest/describe.mjs',
  'typedoc.json',
  'tools/docs.mjs',
  'tools/api.mjs',
];

/** Whether docs/site is missing, or older than what it is made from. */
export async function isStale() {
  const built = await lastChange(join(site, 'index.html'));
  const changes = await Promise.all(sources.map((path) => lastChange(join(root, path))));
  return built < Math.max(...changes);
}

if (isProgram(import.meta)) {
  try {
    if (!process.argv.includes('--if-stale') || (await isStale())) await buildDocs();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
