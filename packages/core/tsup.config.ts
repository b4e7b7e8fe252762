import { defineConfig } from 'tsup';

// One output module a source module, so that a page's bundler drops what the page does not use.
export default defineConfig({
  entry: ['src/**/*.ts'],
  format: 'esm',
  target: 'es2022',
  bundle: false,
  sourcemap: true,
  clean: true,
});
