// The browser that the tests drive: one that is there, or Debian's.
import { existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { isProgram, run } from './run.mjs';

const names = [
  // Chromium without its windows, where it is there: the tests take half the time in it.
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'google-chrome-beta',
  'chrome',
];

/** @param {string} path */
const isFile = (path) => existsSync(path) && statSync(path).isFile();

/**
 * Where a browser may be on this system, likeliest first.
 *
 * @param {NodeJS.ProcessEnv} env
 * @param {NodeJS.Platform} platform
 * @returns {string[]}
 */
function places(env, platform) {
  if (platform === 'win32') {
    const folders = [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA];
    return folders.flatMap((folder) =>
      folder === undefined
        ? []
        : [
            join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
            join(folder, 'Chromium', 'Application', 'chrome.exe'),
          ],
    );
  }
  const onPath = (env.PATH ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
    .flatMap((folder) => names.map((name) => join(folder, name)));
  if (platform === 'darwin') {
    const folders = ['/Applications', join(env.HOME ?? '', 'Applications')];
    const apps = ['Google Chrome', 'Chromium'];
    return [
      ...folders.flatMap((folder) =>
        apps.map((app) => join(folder, `${app}.app`, 'Contents', 'MacOS', app)),
      ),
      ...onPath,
    ];
  }
  return [
    ...onPath,
    '/usr/bin/chromium-headless-shell',
    '/usr/bin/chromium',
    '/usr/lib/chromium/chromium',
    '/opt/google/chrome/chrome',
    '/snap/bin/chromium',
  ];
}

/**
 * The path of an installed Chromium or Chrome, or undefined. Throws if `CHROMIUM_PATH` names no
 * file.
 *
 * @param {NodeJS.ProcessEnv} [env]
 * @param {NodeJS.Platform} [platform]
 */
export function findBrowser(env = process.env, platform = process.platform) {
  const named = env.CHROMIUM_PATH;
  if (named !== undefined && named !== '') {
    if (isFile(named)) return named;
    throw new Error(`CHROMIUM_PATH is "${named}", and there is no such file.`);
  }
  return places(env, platform).find(isFile);
}

/** What a person has to do where no browser was found and none can be installed from here. */
function advice() {
  if (process.platform === 'darwin') {
    return 'Install Google Chrome (`brew install --cask google-chrome`, or from its own site)';
  }
  if (process.platform === 'win32') {
    return 'Install Google Chrome (`winget install Google.Chrome`, or from its own site)';
  }
  if (existsSync('/etc/debian_version')) {
    return 'Run `apt-get update && apt-get install -y chromium` as root (on Ubuntu, `snap install chromium`)';
  }
  return 'Install the package `chromium` (or `google-chrome-stable`) of your system';
}

/**
 * The path of a browser for the tests: an installed one, else, on Debian as root, the `chromium`
 * package installed now. Throws with a sentence that says exactly what to install.
 */
export async function ensureBrowser() {
  const found = findBrowser();
  if (found !== undefined) return found;
  const why = [];
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    console.log('No Chromium or Chrome was found. Installing Debian’s `chromium` package.');
    const env = { DEBIAN_FRONTEND: 'noninteractive' };
    for (const args of [['update'], ['install', '-y', 'chromium']]) {
      const { code } = await run('apt-get', args, { env });
      if (code !== 0) why.push(`\`apt-get ${args.join(' ')}\` ended with code ${code}.`);
    }
    // Not every Debian has it, and nothing is missing without it but time.
    await run('apt-get', ['install', '-y', 'chromium-headless-shell'], { env });
    const installed = findBrowser();
    if (installed !== undefined) return installed;
  }
  throw new Error(
    [
      'The tests need Chromium or Chrome, and none was found.',
      ...why,
      `${advice()}, or set CHROMIUM_PATH to the program.`,
    ].join(' '),
  );
}

if (isProgram(import.meta)) {
  try {
    console.log(await ensureBrowser());
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
