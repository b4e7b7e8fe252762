import { readFile } from 'node:fs/promises';
import { defineConfig, type Options } from 'tsup';

type Plugin = NonNullable<Options['esbuildPlugins']>[number];

/** Takes the indentation out of templates and style sheets; nothing in them depends on it. */
const withoutIndentation: Plugin = {
  name: 'without-indentation',
  setup(build) {
    build.onLoad({ filter: /widget[\\/]src[\\/].*\.ts$/ }, async ({ path }) => ({
      contents: (await readFile(path, 'utf8')).replace(/\n\s+/g, '\n'),
      loader: 'ts',
    }));
  },
};

export default defineConfig([
  // For npm: unbundled modules, with lit and the core left to the page's own bundler.
  {
    entry: ['src/**/*.ts'],
    format: 'esm',
    target: 'es2022',
    bundle: false,
    sourcemap: true,
    clean: true,
  },
  // For a script tag: one file that holds everything and runs as a module and as a classic script.
  {
    entry: { eighths: 'src/define.ts' },
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    noExternal: [/./],
    minify: true,
    sourcemap: true,
    esbuildPlugins: [withoutIndentation],
    outExtension: () => ({ js: '.js' }),
  },
]);
