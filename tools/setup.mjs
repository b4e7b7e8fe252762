// Brings a bare machine to where everything else can run: `node tools/setup.mjs`.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pinnedPnpm, pnpm } from './pnpm.mjs';
import { isProgram, root } from './run.mjs';

/** What went wrong, by what npm or pnpm wrote about it. The first that fits is told. */
const reasons = [
  {
    sign: /ERR_PNPM_OUTDATED_LOCKFILE/,
    advice: () =>
      `package.json and pnpm-lock.yaml disagree. Run \`npx ${pinnedPnpm()} install\` and commit the lockfile.`,
  },
  {
    sign: /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|EHOSTUNREACH|ERR_SOCKET_TIMEOUT|ERR_PNPM_META_FETCH_FAIL|ERR_PNPM_FETCH/,
    advice: () =>
      'The npm registry could not be reached. Setting up needs it once: check the network, or npm’s `registry` and `proxy` settings.',
  },
  {
    sign: /spawn npx ENOENT|npx: (?:command )?not found|'npx' is not recognized/,
    advice: () => 'npm is missing. It comes with Node: install Node again, with npm.',
  },
  { sign: /ENOSPC/, advice: () => 'The disk is full.' },
  {
    sign: /EACCES|EPERM/,
    advice: () => 'A file could not be written: look at who owns this folder.',
  },
];

/**
 * Throws if this Node is older than package.json asks for.
 *
 * @param {string} [version]
 */
export function checkNode(version = process.versions.node) {
  const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const wanted = engines.node.replace('>=', '');
  const [wantedMajor = 0, wantedMinor = 0] = wanted.split('.').map(Number);
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major < wantedMajor || (major === wantedMajor && minor < wantedMinor)) {
    throw new Error(`Eighths needs Node ${wanted} or newer, and this is Node ${version}.`);
  }
}

/** Installs exactly what the lockfile names. Throws with one sentence that says what to do. */
export async function setup() {
  checkNode();
  // Without the setting, pnpm asks before it replaces a node_modules that npm made, and nobody is
  // there to answer.
  const args = ['install', '--frozen-lockfile', '--config.confirmModulesPurge=false'];
  const { code, output } = await pnpm(args, { watch: true });
  if (code === 0) return;
  const reason = reasons.find(({ sign }) => sign.test(output));
  throw new Error(
    `Setting up failed. ${reason?.advice() ?? `\`npx ${pinnedPnpm()} ${args.join(' ')}\` ended with code ${code}; the lines above say why.`}`,
  );
}

if (isProgram(import.meta)) {
  try {
    await setup();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
