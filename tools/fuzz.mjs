// `npm run fuzz -- --inputs 1000000 --seed 1`: throws strange inputs at the built packages. Whatever
// they throw back must be an EighthsError with a sentence; the longest call of each is printed.
// `--only readRecipe --from 1234 --inputs 1` tries a single one again.
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { root } from './run.mjs';

const { values } = parseArgs({
  options: {
    inputs: { type: 'string', default: '100000' },
    seed: { type: 'string', default: '1' },
    only: { type: 'string', default: '' },
    from: { type: 'string', default: '0' },
  },
});
/** A call that takes longer hangs. */
const LONGEST = 60_000;

const folder = join(root, 'docs', 'pages', 'recipes');
const recipes = await Promise.all(
  (await readdir(folder)).map(async (name) =>
    JSON.parse(await readFile(join(folder, name), 'utf8')),
  ),
);
// The input that is being tried, where another thread can see it: a call that hangs tells nothing.
const current = new Int32Array(new SharedArrayBuffer(4));
const worker = new Worker(new URL('fuzz/worker.mjs', import.meta.url), {
  workerData: {
    current,
    recipes: recipes.filter((recipe) => 'blocks' in recipe),
    inputs: Number(values.inputs),
    seed: Number(values.seed),
    only: values.only,
    from: Number(values.from),
  },
});
let before = -1;
const watch = setInterval(() => {
  const at = Atomics.load(current, 0);
  if (at === before) {
    console.error(`Input ${at} of the next target has not ended in ${LONGEST / 1000} seconds.`);
    process.exitCode = 1;
    void worker.terminate();
  }
  before = at;
}, LONGEST);
worker.on('message', (/** @type {import('./fuzz/fuzz.mjs').Outcome} */ outcome) => {
  const { name, tried, answered, findings, worst, worstAt } = outcome;
  const longest = `longest ${worst.toFixed(1)} ms (number ${worstAt})`;
  console.log(
    `${name}: ${tried} tried, ${answered} answered, ${longest}, ${findings.length} wrong`,
  );
  for (const { number, input, complaint } of findings) {
    console.error(`  number ${number}: ${input}\n    ${complaint}`);
    process.exitCode = 1;
  }
});
worker.on('error', (error) => {
  console.error(error);
  process.exitCode = 1;
});
worker.on('exit', () => clearInterval(watch));
