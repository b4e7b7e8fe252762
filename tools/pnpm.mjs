// The pnpm that package.json pins, for machines that have only npm: `node tools/pnpm.mjs -r build`.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isProgram, root, run } from './run.mjs';

/** `pnpm@` and the version in package.json. */
export function pinnedPnpm() {
  const { packageManager } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const pinned = /^pnpm@\d+\.\d+\.\d+/.exec(packageManager ?? '');
  if (pinned === null) {
    throw new Error('package.json pins no pnpm: "packageManager" should read "pnpm@10.x.y".');
  }
  return pinned[0];
}

/**
 * Runs the pinned pnpm, which npm fetches the first time.
 *
 * @param {readonly string[]} args plain words only: on Windows they pass through a shell, because
 *   npx is a script there
 * @param {{ watch?: boolean }} [options]
 */
export const pnpm = (args, options = {}) =>
  // What npm has fetched before it need not ask for again: the version is exact.
  run('npx', ['--yes', '--prefer-offline', pinnedPnpm(), ...args], {
    shell: process.platform === 'win32',
    ...options,
  });

if (isProgram(import.meta)) {
  const { code } = await pnpm(process.argv.slice(2));
  process.exitCode = code;
}
