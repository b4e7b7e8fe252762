// The elements in Firefox: `npm run firefox`. `npm test` does the same where a Firefox is installed.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { isProgram, runNode } from './run.mjs';

const names = ['firefox-esr', 'firefox'];
const elsewhere = [
  '/Applications/Firefox.app/Contents/MacOS/firefox',
  'C:\\Program Files\\Mozilla Firefox\\firefox.exe',
];

/** The path of an installed Firefox, or undefined; `FIREFOX_PATH` names one. */
export function findFirefox(env = process.env) {
  const { FIREFOX_PATH: named = '', PATH = '' } = env;
  if (named !== '') {
    if (existsSync(named)) return named;
    throw new Error(`FIREFOX_PATH is "${named}", and there is no such file.`);
  }
  const onPath = PATH.split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, ...elsewhere].find((path) => existsSync(path));
}

/** What is missing, in a sentence. */
export const noFirefox =
  'No Firefox was found, so the elements were not tried in it: `apt-get install -y firefox-esr` (or your system’s Firefox), or set FIREFOX_PATH.';

/** Runs the tests in Firefox; `more` are words for the test runner. */
export const testInFirefox = (/** @type {readonly string[]} */ more = []) =>
  runNode([
    'node_modules/vitest/vitest.mjs',
    'run',
    '--config',
    'vitest.firefox.config.ts',
    ...more,
  ]);

if (isProgram(import.meta)) {
  if (findFirefox() === undefined) {
    console.error(noFirefox);
    process.exitCode = 1;
  } else {
    process.exitCode = (await testInFirefox()).code;
  }
}
