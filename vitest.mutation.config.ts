import { defineConfig } from 'vitest/config';
import shared from './vitest.config.js';

/** A room's own tests, such as `tests/core/length`; left out, all of the core's. */
const tests = process.env.EIGHTHS_TESTS ?? 'tests/core';

/** What Stryker runs for each change of the core, one file after the other. */
export default defineConfig({
  ...shared,
  test: {
    ...shared.test,
    include: [`${tests}/**/*.test.ts`],
    // It loads the core a second time: what runs only then would pass for what a test reaches.
    exclude: ['**/node_modules/**', 'tests/core/length/secondCopy.test.ts'],
  },
});
