// `npm run bench`: builds both packages, runs every benchmark, and writes what they measured to
// docs/guides/figures.json, which a guide shows. Figures, not checks: only what a benchmark itself
// calls a failure (an optimum missed, a budget exceeded) ends it with an error.
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { cpus } from 'node:os';
import { join } from 'node:path';
import { pnpm } from './pnpm.mjs';
import { root, run } from './run.mjs';
import { checkSizes } from './sizes.mjs';

/** @typedef {import('../tests/bench/report.mjs').Measured} Measured */

const folder = join(root, 'tests', 'bench');
const handedOver = join(root, '.cache', 'figures.jsonl');
/** A benchmark is a program by itself; what several share is named after what it holds. */
const benchmarks = ['fabric.mjs', 'thrifty.mjs', 'quilt.mjs', 'logCabin.mjs', 'page.mjs'];

/** @type {(benchmarks: readonly Measured[]) => import('../tests/bench/report.mjs').Figures} */
const figuresOf = (measured) => ({
  date: new Date().toISOString().slice(0, 10),
  machine: {
    cores: cpus().length,
    processor: cpus()[0]?.model.trim() ?? 'unknown',
    node: process.version,
    browser: measured.find(({ browser }) => browser !== undefined)?.browser ?? 'none',
  },
  benchmarks: measured,
});

const { code } = await pnpm(['-r', 'build']);
if (code !== 0) process.exit(code);
await mkdir(join(root, '.cache'), { recursive: true });
await rm(handedOver, { force: true });
const files = new Set(await readdir(folder));
for (const name of benchmarks) {
  if (!files.has(name)) throw new Error(`There is no benchmark ${name} in tests/bench.`);
  const done = await run(process.execPath, [join(folder, name), ...process.argv.slice(2)], {
    env: { EIGHTHS_FIGURES: handedOver },
  });
  if (done.code !== 0) process.exitCode = done.code;
}
const { within, rows } = await checkSizes();
if (!within) process.exitCode = 1;

/** @type {Measured[]} */
const measured = (await readFile(handedOver, 'utf8'))
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line));
if (measured.length < benchmarks.length) {
  console.error(
    'Not every benchmark came to its end, so docs/guides/figures.json is left as it was.',
  );
  process.exitCode = 1;
} else {
  const sizes = { title: 'Sizes, minified and gzipped', command: 'npm run sizes', rows };
  const figures = figuresOf([...measured, sizes]);
  // Five digits are more than a machine repeats.
  const short = (/** @type {string} */ _, /** @type {unknown} */ value) =>
    typeof value === 'number' ? Number(value.toPrecision(5)) : value;
  const path = join(root, 'docs', 'guides', 'figures.json');
  await writeFile(path, `${JSON.stringify(figures, short, 2)}\n`);
  console.log('Written: docs/guides/figures.json');
}
