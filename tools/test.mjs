// `npm test`: every check there is. The last line says how many passed and how many failed.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBrowser } from './browser.mjs';
import { countTests } from './counts.mjs';
import { findFirefox, inFirefox, mainJob, noFirefox } from './firefox.mjs';
import { pnpm } from './pnpm.mjs';
import { root, runNode } from './run.mjs';
import { setup } from './setup.mjs';

const biome = 'node_modules/@biomejs/biome/bin/biome';
const tsc = 'node_modules/typescript/bin/tsc';
const vitest = 'node_modules/vitest/vitest.mjs';

let passed = 0;
let failed = 0;
/** @type {string[]} */
const complaints = [];

/**
 * Runs a step and counts it as one check. Resolves to whether it passed.
 *
 * @param {string} name
 * @param {() => Promise<{ code: number } | void>} work
 */
async function step(name, work) {
  console.log(`\n— ${name}`);
  const began = performance.now();
  let complaint = '';
  try {
    const code = (await work())?.code ?? 0;
    if (code !== 0) complaint = `${name}: ended with code ${code}`;
  } catch (error) {
    complaint = `${name}: ${error instanceof Error ? error.message : error}`;
    console.error(complaint);
  }
  const took = `${((performance.now() - began) / 1000).toFixed(1)} s`;
  console.log(`— ${name}: ${complaint === '' ? 'passed' : 'FAILED'} (${took})`);
  if (complaint === '') passed += 1;
  else {
    failed += 1;
    complaints.push(complaint);
  }
  return complaint === '';
}

/**
 * Runs tests and counts each of them.
 *
 * @param {string} name
 * @param {readonly string[]} [words] for the tests' runner: which files
 * @param {Record<string, string>} [env]
 */
async function tests(name, words = [], env = {}) {
  console.log(`\n— ${name}`);
  const report = join(root, '.cache', 'vitest.json');
  rmSync(report, { force: true });
  mkdirSync(join(root, '.cache'), { recursive: true });
  const { code } = await runNode(
    [
      vitest,
      'run',
      '--allowOnly=false',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
      ...words,
    ],
    { env },
  );
  const counted = countTests(
    existsSync(report) ? JSON.parse(readFileSync(report, 'utf8')) : undefined,
    code,
  );
  passed += counted.passed;
  failed += counted.failed;
  complaints.push(...counted.complaints.map((each) => `${name}: ${each}`));
}

async function all() {
  // Without the packages nothing else can run.
  if (!(await step('setup', setup))) return;
  await step('lint', () => runNode([biome, 'ci', '--error-on-warnings', '.']));
  await step('build', () => pnpm(['-r', 'build']));
  await step('docs', () => runNode(['tools/docs.mjs']));
  // The packages' own types are checked as they are built.
  await step('types of the tests', () => runNode([tsc, '--noEmit', '-p', '.']));
  await step('browser', async () => {
    process.env.CHROMIUM_PATH = await ensureBrowser();
    console.log(process.env.CHROMIUM_PATH);
  });
  await tests('tests');
  // A second browser where there is one: the main job in it. `npm run firefox` runs all that it can.
  if (findFirefox() === undefined) console.log(`\n— tests in Firefox: not run. ${noFirefox}`);
  else await tests('tests in Firefox', mainJob, inFirefox);
  await step('sizes', () => runNode(['tools/sizes.mjs']));
}

try {
  await all();
} catch (error) {
  failed += 1;
  complaints.push(error instanceof Error ? (error.stack ?? error.message) : String(error));
}
if (complaints.length > 0) console.log(`\n${complaints.join('\n')}`);
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
