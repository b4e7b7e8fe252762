// The elements in WebKit: `npm run webkit`. Debian’s WebKit stands in for Safari’s: the same engine,
// without Apple’s window.
import { existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { isProgram, runNode } from './run.mjs';

/** Where systems keep the programs of a library that nobody starts by name. */
const libraries = ['/usr/lib', '/usr/lib64', '/usr/libexec'];

/**
 * @param {string} folder
 * @param {RegExp} pattern
 */
const inside = (folder, pattern) =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter((name) => pattern.test(name))
        .sort()
        .map((name) => join(folder, name))
    : [];

/** Likeliest first: Debian has a folder for each kind of processor between. */
const browsers = () =>
  libraries
    .flatMap((folder) => [folder, ...inside(folder, /-linux-gnu/)])
    .flatMap((folder) => inside(folder, /^webkit2?gtk-/))
    .map((folder) => join(folder, 'MiniBrowser'));

/**
 * @param {string} variable
 * @param {NodeJS.ProcessEnv} env
 * @param {() => string[]} places
 */
function find(variable, env, places) {
  const named = env[variable];
  if (named === undefined || named === '') return places().find((path) => existsSync(path));
  if (existsSync(named)) return named;
  throw new Error(`${variable} is "${named}", and there is no such file.`);
}

/**
 * WebKit’s driver, the browser that it drives, and what gives that a screen: a display’s name, or
 * the program that makes one. What was not found is left out.
 *
 * @param {NodeJS.ProcessEnv} env
 */
export function findWebKit(env = process.env) {
  const onPath = (/** @type {string} */ name) =>
    (env.PATH ?? '').split(delimiter).map((folder) => join(folder, name));
  const driver = find('WEBKIT_DRIVER_PATH', env, () => onPath('WebKitWebDriver'));
  const browser = find('WEBKIT_BROWSER_PATH', env, browsers);
  const display = env.DISPLAY || undefined;
  const xvfb = onPath('Xvfb').find((path) => existsSync(path));
  return { driver, browser, display, xvfb };
}

/**
 * What is missing, and what to install, in sentences; empty where nothing is.
 *
 * @param {NodeJS.ProcessEnv} env
 */
export function noWebKit(env = process.env) {
  const { driver, browser, display, xvfb } = findWebKit(env);
  const missing = [
    ...(driver === undefined ? ['WebKitWebDriver (WEBKIT_DRIVER_PATH names one)'] : []),
    ...(browser === undefined ? ['MiniBrowser (WEBKIT_BROWSER_PATH names one)'] : []),
    ...(display === undefined && xvfb === undefined ? ['a display, or Xvfb'] : []),
  ];
  if (missing.length === 0) return '';
  return `The elements were not tried in WebKit, for want of ${missing.join(' and ')}: \`apt-get install -y webkit2gtk-driver xvfb\`.`;
}

/** What tells the tests' runner that they are those in WebKit. */
export const withWebKit = ['--config', 'vitest.webkit.config.ts'];

if (isProgram(import.meta)) {
  const missing = noWebKit();
  if (missing !== '') console.error(missing);
  const run = () => runNode(['node_modules/vitest/vitest.mjs', 'run', ...withWebKit]);
  process.exitCode = missing === '' ? (await run()).code : 1;
}
