import { readFileSync } from 'node:fs';
import { defineConfig } from 'vite';

/**
 * A small file that loads the others beside it as a page needs them; what they share stands once.
 * Not by tsup: to its bundler, all that a package exports is shared by all who import any of it.
 */
export default defineConfig({
  publicDir: false,
  plugins: [
    {
      name: 'templates-without-indentation',
      enforce: 'pre',
      load: {
        filter: { id: /widget[\\/]src[\\/].*\.ts$/ },
        handler: (id) => readFileSync(id, 'utf8').replace(/\n\s+/g, '\n'),
      },
    },
  ],
  build: {
    outDir: 'dist/as-needed',
    target: 'es2022',
    sourcemap: true,
    lib: { entry: { eighths: 'src/define/as-needed.ts' }, formats: ['es'] },
    rolldownOptions: {
      output: { chunkFileNames: '[name]-[hash].js', minify: true },
    },
  },
});
