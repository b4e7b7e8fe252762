/**
 * How fast and how well cutting plans are made. Prints a table; fails where an answer is wrong, not
 * where a machine is slow. Build first: pnpm --filter @eighths/core build; node tests/bench/fabric.mjs
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { arcFlow } from './arcFlow.mjs';
import { realistic, specOf } from './instances.mjs';

/** @typedef {import('@eighths/core').CuttingPlan} CuttingPlan */
/**
 * @template Result
 * @typedef {{ readonly result: Result, readonly ms: number }} Timed
 */

const SEED = 20240607;
const core = fileURLToPath(new URL('../../packages/core/', import.meta.url));
/** @type {typeof import('@eighths/core')} */
const { cuttingPlan } = await import(`${core}dist/index.js`);
/** @type {string[]} */
const faults = [];

/** @param {CuttingPlan} plan */
const stripsIn = (plan) => plan.strips.reduce((sum, { count }) => sum + count, 0);

/**
 * @template Result
 * @param {() => Result} work
 * @returns {Timed<Result>}
 */
function timed(work) {
  const start = performance.now();
  const result = work();
  return { result, ms: performance.now() - start };
}

/**
 * The time that a part of the runs did not exceed.
 *
 * @param {readonly Timed<unknown>[]} runs
 * @param {number} part
 */
function quantile(runs, part) {
  const times = runs.map(({ ms }) => ms).sort((a, b) => a - b);
  return times[Math.min(times.length - 1, Math.floor(part * times.length))] ?? 0;
}

/**
 * The table's row for some plans.
 *
 * @param {string} name
 * @param {readonly Timed<CuttingPlan>[]} runs
 */
function row(name, runs) {
  const plans = runs.map(({ result }) => result);
  return {
    name,
    plans: plans.length,
    'median ms': quantile(runs, 0.5).toFixed(2),
    '99 % ms': quantile(runs, 0.99).toFixed(2),
    'worst ms': quantile(runs, 1).toFixed(2),
    proven: plans.filter(({ optimal }) => optimal).length,
    'strips (checksum)': plans.reduce((sum, plan) => sum + stripsIn(plan), 0),
    'different strips': plans.reduce((sum, { strips }) => sum + strips.length, 0),
  };
}

const specs = realistic(SEED, 1000).map((instance) => specOf(instance));
const cold = specs.map((spec) => timed(() => cuttingPlan(spec)));
const warm = specs.map((spec) => timed(() => cuttingPlan(spec)));
if (warm.some(({ result }) => !result.optimal)) faults.push('a realistic instance is not proven');

/** @type {{ instances: readonly (import('./instances.mjs').Instance & { optimum: number })[] }} */
const { instances } = JSON.parse(
  readFileSync(new URL('../data/bin-packing-uniform.json', import.meta.url), 'utf8'),
);
const published = instances.map((instance) => timed(() => cuttingPlan(specOf(instance))));
const reached = published.filter(
  ({ result }, i) => stripsIn(result) === instances[i]?.optimum,
).length;
if (reached < instances.length) faults.push(`${reached} of ${instances.length} published optima`);

console.table([
  row('1000 realistic, cold', cold),
  row('1000 realistic, warm', warm),
  row(`${instances.length} published, ${reached} at their optimum`, published),
]);

if (!process.argv.includes('--no-highs')) {
  const { default: loadHighs } = await import('highs');
  const highs = await loadHighs();
  const some = realistic(SEED + 1, 200);
  const theirs = some.map((instance) => timed(() => highs.solve(arcFlow(instance))));
  const ours = some.map((instance) => timed(() => cuttingPlan(specOf(instance))));
  const equal = ours.filter(
    ({ result }, i) => stripsIn(result) === Math.round(theirs[i]?.result.ObjectiveValue ?? 0),
  ).length;
  if (equal < some.length) faults.push(`the same optimum as HiGHS in ${equal} of ${some.length}`);
  const [fast, slow] = [quantile(ours, 0.5), quantile(theirs, 0.5)];
  console.log(
    `HiGHS: ${equal} of ${some.length} optima the same; median ${slow.toFixed(1)} ms against ${fast.toFixed(2)} ms, ${Math.round(slow / fast)} times.`,
  );
}

/**
 * Gzipped size of a module bundled with what it imports, except lengths, numbers and errors.
 *
 * @param {string} entry
 */
async function bundledSize(entry) {
  const fromTsup = createRequire(createRequire(import.meta.url).resolve('tsup'));
  /** @type {{ build(options: object): Promise<{ outputFiles: { contents: Uint8Array }[] }> }} */
  const { build } = fromTsup('esbuild');
  const { outputFiles } = await build({
    entryPoints: [`${core}src/fabric/${entry}.ts`],
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    write: false,
    external: ['../errors/*', '../length/*', '../number/*', '../plan/*'],
  });
  return gzipSync(outputFiles[0]?.contents ?? '', { level: 9 }).length;
}
const solver = await bundledSize('stock/cuttingStock');
console.log(
  `Gzipped: solver ${solver} B (at most 4096); cutting plans, with their words, ${await bundledSize('cuttingPlan')} B; yardage too, ${await bundledSize('yardage')} B.`,
);
if (solver > 4096) faults.push(`the solver takes ${solver} B`);

for (const fault of faults) console.error(`FAULT: ${fault}`);
process.exitCode = faults.length > 0 ? 1 : 0;
