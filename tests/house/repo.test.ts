import { execFile } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/[\\/]$/, '');
const run = promisify(execFile);

interface Manifest {
  readonly name: string;
  readonly license?: string;
  readonly packageManager?: string;
  readonly exports: Readonly<Record<string, string | Readonly<Record<string, string>>>>;
}

const manifest = (folder: string): Manifest =>
  JSON.parse(readFileSync(join(root, folder, 'package.json'), 'utf8'));

const folders = readdirSync(join(root, 'packages')).map((name) => `packages/${name}`);

/** What .gitignore names, and git's own folder: everything else is committed sooner or later. */
const ignored = [
  '.git',
  ...readFileSync(join(root, '.gitignore'), 'utf8')
    .split(/\r?\n/)
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.replace(/\/$/, '')),
];

const isIgnored = (name: string) =>
  ignored.some((one) => (one.startsWith('*') ? name.endsWith(one.slice(1)) : name === one));

function filesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (isIgnored(entry.name)) return [];
    return entry.isDirectory() ? filesIn(path) : [path];
  });
}

/** Where the repository lies here; a folder with a single name says too little to look for. */
const here = root.split(sep).length > 2 ? [root] : [];

/** Traces of one machine. A text that has one of these was not written for every reader. */
const traces: readonly [string, RegExp][] = [
  ['a path of one machine', /(?<![\w.-])\/(?:work|root|home|Users|workspace)\/\w/],
  ...here.map((path): [string, RegExp] => [
    'the path of this folder',
    new RegExp(path.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&')),
  ]),
  [
    'the host of a registry',
    /\b(?:registry|npm|npmjs|nexus|artifactory|verdaccio|mirrors?)\.(?:[\w-]+\.)+(?:com|org|net|io|dev|cn|local|internal|lan)\b/,
  ],
  ['the host of a registry', /\bhttps?:\/\/[^\s/"'`]*:4873\b/],
  ['a private address', /\bhttps?:\/\/(?:10|172|192\.168)\.\d/],
];

const tracesIn = (text: string): string[] =>
  traces.flatMap(([what, pattern]) => {
    const found = pattern.exec(text)?.[0];
    return found === undefined ? [] : [`${what}: ${found}`];
  });

describe('what is committed', () => {
  test('shows nothing of the machine it was written on', () => {
    const found = filesIn(root).flatMap((path) =>
      tracesIn(readFileSync(path, 'latin1')).map(
        (trace) => `${relative(root, path).split(sep).join('/')}: ${trace}`,
      ),
    );
    expect(found).toEqual([]);
  });

  // Put together here, so that this file does not show them itself.
  test.each([
    ['', 'work', 'shared', 'notes.md'].join('/'),
    `see ${['', 'home', 'ann', 'eighths'].join('/')}`,
    `https://${['registry', 'example', 'org'].join('.')}/lit`,
    `https://${['npm', 'example', 'com'].join('.')}/lit`,
    `http://localhost:${4000 + 873}/lit`,
    `http://${[10, 0, 0, 1].join('.')}/lit`,
    ...here,
  ])('and would be caught if it did: %s', (text) => {
    expect(tracesIn(text)).not.toEqual([]);
  });

  test.each([
    'https://example.com/work/log-cabin',
    'registry.define(tag, this)',
    'https://www.npmjs.com/package/lit',
    'http://localhost:4173/',
    'framework/base',
  ])('and is left alone where it does not: %s', (text) => {
    expect(tracesIn(text)).toEqual([]);
  });
});

describe('the lockfile', () => {
  test('names versions and no addresses', () => {
    const lockfile = readFileSync(join(root, 'pnpm-lock.yaml'), 'utf8');
    expect(lockfile).toContain('lockfileVersion');
    expect(lockfile.match(/^.*https?:\/\/.*$/gm)).toBeNull();
  });

  test('is read by one pnpm 10', () => {
    expect(manifest('.').packageManager).toMatch(/^pnpm@10\.\d+\.\d+$/);
  });
});

/**
 * The files for a script tag bring their own Lit, made for a page. Nobody imports them in Node: there
 * the other entries stand.
 */
const SCRIPT_TAG = /^\.\/eighths[\w-]*\.js$/;

describe.each(folders)('%s', (folder) => {
  const { license, exports, name } = manifest(folder);
  const entries = Object.entries(exports).filter(([, target]) => typeof target !== 'string');

  test('has a license', () => {
    expect(license).toBe('MIT');
  });

  test('names its types first', () => {
    expect(entries).not.toEqual([]);
    for (const [, conditions] of entries) expect(Object.keys(conditions)[0]).toBe('types');
  });

  test('has built all that it promises', () => {
    const promised = Object.values(exports).flatMap((target) =>
      typeof target === 'string' ? [target] : Object.values(target),
    );
    const missing = promised.filter((path) => !existsSync(join(root, folder, path)));
    expect(missing, 'built by `npm run build`').toEqual([]);
  });

  test.each(Object.keys(exports).filter((one) => /^\.$|\.js$/.test(one) && !SCRIPT_TAG.test(one)))(
    '%s can be imported in plain Node',
    async (entry) => {
      const specifier = entry.replace(/^\./, name);
      const script = `console.log(Object.keys(await import('${specifier}')).length >= 0)`;
      const { stdout, stderr } = await run(
        process.execPath,
        ['--input-type=module', '-e', script],
        { cwd: join(root, folder), env: { PATH: process.env.PATH } },
      );
      expect({ stdout: stdout.trim(), stderr }).toEqual({ stdout: 'true', stderr: '' });
    },
  );
});
