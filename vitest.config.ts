import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const source = (path: string) => fileURLToPath(new URL(`packages/${path}`, import.meta.url));

export default defineConfig({
  // Tests read the source: a failure names its line, and nothing has to be built first.
  resolve: {
    alias: [
      { find: /^@eighths\/core$/, replacement: source('core/src/index.ts') },
      { find: /^@eighths\/widget$/, replacement: source('widget/src/index.ts') },
      { find: /^@eighths\/widget\/define\.js$/, replacement: source('widget/src/define.ts') },
    ],
  },
  test: {
    // In another browser (`npm run firefox`), what needs one; and whether its troubles are noticed.
    include:
      process.env.EIGHTHS_BROWSER === undefined
        ? ['tests/**/*.test.ts']
        : ['tests/browser/*.test.ts', 'tests/house/browser.test.ts'],
    exclude: ['**/node_modules/**'],
    setupFiles: ['tests/support/equalLengths.ts'],
    // Nothing here is kept between tests, so that files may share what is loaded: a third less time.
    isolate: false,
    // Left to itself, the runner takes one fewer than the cores there are.
    maxWorkers: 2,
    // axe takes its time in Firefox.
    testTimeout: process.env.EIGHTHS_BROWSER === undefined ? 60_000 : 180_000,
    coverage: {
      provider: 'v8',
      include: ['packages/core/src/**/*.ts'],
      reporter: ['text-summary', 'json-summary'],
      reportsDirectory: '.cache/coverage',
      // What is left guards against what no spec was found to cause: effort that ends, rounding, plain JavaScript.
      thresholds: { branches: 95 },
    },
    hookTimeout: 120_000,
  },
});
