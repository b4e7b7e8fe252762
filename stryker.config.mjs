// `npm run mutation -- --mutate 'packages/core/src/length/**/*.ts'`: changes the core's code bit by bit,
// and reports each change that no test of tests/core notices. The whole core takes hours; a room takes
// minutes where EIGHTHS_TESTS=tests/core/length names its own tests.
/** @type {import('@stryker-mutator/api/core').PartialStrykerOptions} */
export default {
  // Named, since pnpm keeps packages where Stryker does not look for them.
  plugins: ['@stryker-mutator/vitest-runner'],
  testRunner: 'vitest',
  // Every test loads all of the core: to look for those that load a file finds them all.
  vitest: { configFile: 'vitest.mutation.config.ts', related: false },
  coverageAnalysis: 'perTest',
  // What runs as a file is loaded is covered by every test there is: hours for a few tables of words.
  ignoreStatic: true,
  mutate: [
    'packages/core/src/**/*.ts',
    // Lists of names and of sentences: tests of words would only repeat them.
    '!packages/core/src/**/index.ts',
    '!packages/core/src/**/*entences.ts',
    '!packages/core/src/unit/sentences/**',
    '!packages/core/src/errors/codes.ts',
  ],
  // Not needed in the copy that is changed.
  ignorePatterns: [
    '/.cache',
    '/packages/widget',
    '/packages/*/dist',
    '/tests/browser',
    '/tests/packages',
  ],
  concurrency: 1,
  reporters: ['clear-text', 'json', 'html', 'progress-append-only'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: '.cache/mutation/mutation.json' },
  htmlReporter: { fileName: '.cache/mutation/mutation.html' },
  incremental: true,
  incrementalFile: '.cache/mutation/incremental.json',
  tempDirName: '.cache/mutation/work',
  thresholds: { high: 85, low: 60, break: null },
};
