import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core';
import { publint } from 'publint';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { type Demo, startDemo } from '../browser/support/launch.js';
import { consumerProject, nodeOf, packed } from './support.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const names = ['core', 'widget'] as const;

describe('a packed package', () => {
  const tarballs = packed();

  test.each(names)('%s has nothing that publint finds wrong', async (name) => {
    const tarball = new Uint8Array(readFileSync(tarballs[name])).buffer;
    const { messages } = await publint({ pack: { tarball }, strict: true });
    expect(messages).toEqual([]);
  });

  test.each([
    ['core', ['LICENSE', 'README.md']],
    ['widget', ['LICENSE', 'README.md', 'dist/THIRD-PARTY-LICENSES']],
  ] as const)('%s brings its license, and the notices of others', (name, files) => {
    const pack = createPackageFromTarballData(new Uint8Array(readFileSync(tarballs[name])));
    const folder = `/node_modules/@eighths/${name}`;
    expect(files.filter((file) => !pack.fileExists(`${folder}/${file}`))).toEqual([]);
  });

  test.each(names)('%s has the types that each way of importing looks for', async (name) => {
    const pack = createPackageFromTarballData(new Uint8Array(readFileSync(tarballs[name])));
    const result = await checkPackage(pack, { entrypoints: ['.'] });
    // Modules only, and no CommonJS: so the old resolutions are not asked.
    const problems = result.types === false ? ['no types'] : result.problems;
    const asked = problems.filter(
      (problem) =>
        typeof problem === 'string' ||
        !('resolutionKind' in problem) ||
        !/node10|node16-cjs/.test(problem.resolutionKind),
    );
    expect(asked).toEqual([]);
  });
});

describe('installed from its tarballs into an empty project', () => {
  let project = '';
  let demo: Demo;

  beforeAll(async () => {
    project = consumerProject();
    // As an author builds for readers; the tests' own setting would bring what is for developers.
    vi.stubEnv('NODE_ENV', 'production');
    await build({
      configFile: false,
      logLevel: 'error',
      root: project,
      define: {
        __VUE_OPTIONS_API__: 'true',
        __VUE_PROD_DEVTOOLS__: 'false',
        __VUE_PROD_HYDRATION_MISMATCH_DETAILS__: 'false',
      },
      build: {
        outDir: 'built',
        minify: false,
        rollupOptions: {
          input: ['html', 'react', 'vue'].map((each) => join(project, `${each}.html`)),
        },
      },
    });
    vi.unstubAllEnvs();
    demo = await startDemo({ '/': join(project, 'built') });
  });

  afterAll(() => demo?.close());

  test.each(['bundler', 'nodenext'])(
    'its types are found with moduleResolution %s',
    (resolution) => {
      const options = {
        strict: true,
        noEmit: true,
        // Nothing of React's and Vue's own is looked at; what we ship is, where it is used.
        skipLibCheck: true,
        jsx: 'react-jsx',
        target: 'es2022',
        lib: ['es2022', 'dom', 'dom.iterable'],
        types: [],
        module: resolution === 'bundler' ? 'esnext' : 'nodenext',
        moduleResolution: resolution,
      };
      const file = join(project, `tsconfig.${resolution}.json`);
      writeFileSync(
        file,
        JSON.stringify({ compilerOptions: options, files: ['maths.ts', 'react.tsx', 'vue.ts'] }),
      );
      const tsc = join(root, 'node_modules/typescript/bin/tsc');
      const run = (): string => {
        try {
          return execFileSync(process.execPath, [tsc, '-p', file], { encoding: 'utf8' });
        } catch (error) {
          return error instanceof Error && 'stdout' in error ? String(error.stdout) : String(error);
        }
      };
      expect(run()).toBe('');
    },
  );

  // The oldest that the packages' `engines` let in, and the one that is supported longest.
  describe.each(['20.19.0', '22.23.3'])('in Node %s', (version) => {
    let node = '';
    beforeAll(() => {
      node = nodeOf(version);
    });

    const run = (...args: readonly string[]): string =>
      execFileSync(node, args, { cwd: project, encoding: 'utf8' }).trim();

    test('is what runs', () => {
      expect(run('--version')).toBe(`v${version}`);
    });

    test('its maths run', () => {
      const program = `import { length, logCabin } from '@eighths/core';
        import '@eighths/widget';
        console.log(logCabin({ rounds: 4, finished: 9, log: 1 }).unfinished.width.plus(length('1/4')).toString());`;
      expect(run('--input-type=module', '-e', program)).toBe('9 3/4');
    });

    test('its command writes an element out', () => {
      const command = 'node_modules/@eighths/widget/bin/eighths.mjs';
      expect(run(command, 'render', '<eighths-log-cabin finished="9">')).toContain(
        '9 finished, trim to 9½',
      );
    });
  });

  test.each(['html', 'react', 'vue'])('a page made with %s answers', async (name) => {
    const { page, problems, close } = await demo.open(`/${name}.html`);
    await page.locator('.headline').waitFor();
    expect(await page.locator('.headline').textContent()).toContain('9½');
    if (name === 'html') {
      await page.locator('#finished').fill('10');
      await page.locator('#told').getByText('10 1/2 and 3/4').waitFor();
    } else {
      await page.getByText('One round more').click();
      await expect.poll(() => page.locator('#told').textContent()).toContain('"rounds":[');
      await expect
        .poll(
          async () => JSON.parse((await page.locator('#told').textContent()) ?? '{}').rounds.length,
        )
        .toBe(5);
    }
    expect(problems).toEqual([]);
    await close();
  });
});
