// `npm run bench`: builds the core and runs every benchmark. Figures, not checks: only what a
// benchmark itself calls a failure (an optimum missed, a budget exceeded) ends it with an error.
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { pnpm } from './pnpm.mjs';
import { root, run } from './run.mjs';

const folder = join(root, 'tests', 'bench');
/** A benchmark is a program by itself; what several share is named after what it holds. */
const benchmarks = ['fabric.mjs', 'thrifty.mjs', 'quilt.mjs', 'logCabin.mjs', 'page.mjs'];

const { code } = await pnpm(['--filter', '@eighths/core', 'build']);
if (code !== 0) process.exit(code);
const files = new Set(await readdir(folder));
for (const name of benchmarks) {
  if (!files.has(name)) throw new Error(`There is no benchmark ${name} in tests/bench.`);
  const done = await run(process.execPath, [join(folder, name), ...process.argv.slice(2)]);
  if (done.code !== 0) process.exitCode = done.code;
}
