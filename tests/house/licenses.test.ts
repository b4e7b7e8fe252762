import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { bundled, dependencies, notices } from '../../tools/licenses.mjs';

const packages = fileURLToPath(new URL('../../packages', import.meta.url));

interface Manifest {
  readonly name: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

const wanted = readdirSync(packages).flatMap((folder) => {
  const manifest: Manifest = JSON.parse(
    readFileSync(join(packages, folder, 'package.json'), 'utf8'),
  );
  return Object.keys(manifest.dependencies ?? {})
    .filter((name) => !name.startsWith('@eighths/'))
    .map((name) => [name, manifest.name] as const);
});
const all = dependencies();

/** A folder with a source map that names a file of a package. */
function built(source: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'eighths-'));
  writeFileSync(join(folder, 'page.js.map'), JSON.stringify({ sources: [source] }));
  return folder;
}

// Whoever packs takes a package's own file along, and looks for one further up only where it finds none.
test.each(readdirSync(packages))('%s holds the license of the repository', (folder) => {
  const license = (path: string): string => readFileSync(join(packages, path, 'LICENSE'), 'utf8');
  expect(license(folder)).toBe(license('..'));
});

describe('what the packages bring along', () => {
  test.each(wanted)('%s is listed, for %s', (name, by) => {
    expect(all.find((each) => each.name === name)?.by).toContain(by);
  });

  test.each(all.map(({ name, license }) => [name, license]))(
    '%s has a license that asks for its notice alone: %s',
    (_, license) => {
      expect(['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD']).toContain(license);
    },
  );

  test('and what that depends on is listed too', () => {
    expect(all.find(({ name }) => name === 'lit-html')?.by).toContain('lit');
  });
});

describe('the notices beside the built files', () => {
  test('name all that is bundled', () => {
    const shipped = readFileSync(join(packages, 'widget', 'dist', 'THIRD-PARTY-LICENSES'), 'utf8');
    const names = [...bundled()];
    expect(names).toEqual(expect.arrayContaining(['lit-html', 'valibot']));
    expect(names.filter((name) => !shipped.includes(`${name} `))).toEqual([]);
    expect(shipped, 'built by `npm run build`').toBe(notices());
  });

  test('hold the whole text of a license', () => {
    const text = notices(built('../node_modules/.pnpm/valibot@1/node_modules/valibot/index.mjs'));
    expect(text).toMatch(/valibot \d+\.\d+\.\d+\n\nMIT License\n\nCopyright/);
    expect(text).not.toContain('lit-html');
  });

  test.each([
    ['@lit-labs/ssr-dom-shim', 'no license file'],
    ['vitest', 'no package depends on it'],
  ])('are not made where %s is bundled: %s', (name, complaint) => {
    expect(() => notices(built(`../node_modules/${name}/index.js`))).toThrow(complaint);
  });
});
