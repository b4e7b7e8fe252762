import { defineConfig } from 'vitest/config';
import shared from './vitest.config.js';

/** What Stryker runs for each change of the core: its own tests, one file after the other. */
export default defineConfig({
  ...shared,
  test: {
    ...shared.test,
    include: ['tests/core/**/*.test.ts'],
  },
});
