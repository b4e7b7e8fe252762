// The tests in Firefox: `npm run firefox`, with words for vitest after `--`. `npm test` runs the main
// job's tests so where a Firefox is installed.
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

/** What the tests' runner is told, for it to start Firefox and run what needs a browser. */
export const inFirefox = { EIGHTHS_BROWSER: 'firefox' };

/** The tests of what everybody does: a block typed by keyboard, and answered at every key. */
export const mainJob = ['mainJob', 'keyboard', 'typing'].map(
  (name) => `tests/browser/${name}.test.ts`,
);

if (isProgram(import.meta)) {
  if (findFirefox() === undefined) {
    console.error(noFirefox);
    process.exitCode = 1;
  } else {
    const words = process.argv.slice(2);
    const { code } = await runNode(['node_modules/vitest/vitest.mjs', 'run', ...words], {
      env: inFirefox,
    });
    process.exitCode = code;
  }
}
