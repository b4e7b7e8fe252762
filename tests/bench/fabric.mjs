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
import { allOf, fault, handOver, median, milliseconds, quantile, timed } from './report.mjs';

/** @typedef {import('@eighths/core').CuttingPlan} CuttingPlan */
/** @typedef {{ readonly result: CuttingPlan, readonly ms: number }} Run */

const SEED = 20240607;
const core = fileURLToPath(new URL('../../packages/core/', import.meta.url));
/** @type {typeof import('@eighths/core')} */
const { cuttingPlan } = await import(`${core}dist/index.js`);
/** @param {CuttingPlan} plan */
const stripsIn = (plan) => plan.strips.reduce((sum, { count }) => sum + count, 0);

const timesOf = (/** @type {readonly { readonly ms: number }[]} */ runs) =>
  runs.map(({ ms }) => ms);

/**
 * The table's row for some plans.
 *
 * @param {string} name
 * @param {readonly Run[]} runs
 */
function row(name, runs) {
  const plans = runs.map(({ result }) => result);
  const times = timesOf(runs);
  return {
    name,
    plans: plans.length,
    'median ms': median(times).toFixed(2),
    '99 % ms': quantile(times, 0.99).toFixed(2),
    'worst ms': quantile(times, 1).toFixed(2),
    proven: plans.filter(({ optimal }) => optimal).length,
    'strips (checksum)': plans.reduce((sum, plan) => sum + stripsIn(plan), 0),
    'different strips': plans.reduce((sum, { strips }) => sum + strips.length, 0),
  };
}

const specs = realistic(SEED, 1000).map((instance) => specOf(instance));
const cold = specs.map((spec) => timed(() => cuttingPlan(spec)));
const warm = specs.map((spec) => timed(() => cuttingPlan(spec)));
const proven = warm.filter(({ result }) => result.optimal).length;
if (proven < warm.length) fault('a realistic instance is not proven');

/** @type {{ instances: readonly (import('./instances.mjs').Instance & { optimum: number })[] }} */
const { instances } = JSON.parse(
  readFileSync(new URL('../data/bin-packing-uniform.json', import.meta.url), 'utf8'),
);
const published = instances.map((instance) => timed(() => cuttingPlan(specOf(instance))));
const reached = published.filter(
  ({ result }, i) => stripsIn(result) === instances[i]?.optimum,
).length;
if (reached < instances.length) fault(`${reached} of ${instances.length} published optima`);

console.table([
  row('1000 realistic, cold', cold),
  row('1000 realistic, warm', warm),
  row(`${instances.length} published, ${reached} at their optimum`, published),
]);

/** @type {import('./report.mjs').Row[]} */
const compared = [];
if (!process.argv.includes('--no-highs')) {
  const { default: loadHighs } = await import('highs');
  const highs = await loadHighs();
  const some = realistic(SEED + 1, 200);
  const theirs = some.map((instance) => timed(() => highs.solve(arcFlow(instance))));
  const ours = some.map((instance) => timed(() => cuttingPlan(specOf(instance))));
  const equal = ours.filter(
    ({ result }, i) => stripsIn(result) === Math.round(theirs[i]?.result.ObjectiveValue ?? 0),
  ).length;
  if (equal < some.length) fault(`the same optimum as HiGHS in ${equal} of ${some.length}`);
  const [fast, slow] = [median(timesOf(ours)), median(timesOf(theirs))];
  console.log(
    `HiGHS: ${equal} of ${some.length} optima the same; median ${slow.toFixed(1)} ms against ${fast.toFixed(2)} ms, ${Math.round(slow / fast)} times.`,
  );
  compared.push(
    allOf(
      'Lists for which HiGHS, a general solver, comes to the same number of strips',
      equal,
      some.length,
    ),
    milliseconds('Our plan of such a list, median', fast),
    milliseconds('The time HiGHS takes, median', slow),
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
if (solver > 4096) fault(`the solver takes ${solver} B`);

const lists = `${warm.length} made-up lists of up to twelve lengths`;
handOver({
  title: 'Cutting plans of strips',
  command: 'node tests/bench/fabric.mjs',
  rows: [
    milliseconds(`Plan of one list of pieces (${lists}), median`, median(timesOf(warm))),
    milliseconds('The slowest of these plans', quantile(timesOf(warm), 1)),
    allOf('Plans proven to take the fewest strips', proven, warm.length),
    allOf(
      'Published bin-packing problems solved to their known optimum',
      reached,
      published.length,
    ),
    milliseconds('Time for such a problem, median', median(timesOf(published))),
    ...compared,
    {
      what: 'The solver, minified and gzipped',
      figure: solver,
      unit: 'bytes',
      wish: { atMost: 4096 },
    },
  ],
});
