import { defineConfig } from 'tsup';

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
    define: { 'process.env.NODE_ENV': '"production"' },
    outExtension: () => ({ js: '.js' }),
  },
]);
