/**
 * How fast and how well thrifty plans are made. Prints a table; fails where an answer is wrong, not
 * where a machine is slow. Build first: pnpm --filter @eighths/core build; node tests/bench/thrifty.mjs
 */
import { fileURLToPath } from 'node:url';
import { quiltPieces } from './instances.mjs';

const core =
  process.env.EIGHTHS_CORE ??
  fileURLToPath(new URL('../../packages/core/dist/index.js', import.meta.url));
/** @type {typeof import('@eighths/core')} */
const { checkPlan, cuttingPlan, length, yardage } = await import(core);
/** @type {string[]} */
const faults = [];

/**
 * @template Result
 * @param {() => Result} work
 */
function timed(work) {
  const start = performance.now();
  const result = work();
  return { result, ms: performance.now() - start };
}

/** @param {readonly number[]} list */
const mean = (list) => list.reduce((sum, each) => sum + each, 0) / list.length;

/**
 * @param {string} name
 * @param {readonly import('@eighths/core').CuttingSpec[]} specs
 */
function row(name, specs) {
  const plans = specs.map((spec) => {
    const { result: plan, ms } = timed(() => cuttingPlan({ ...spec, method: 'thrifty' }));
    const plain = cuttingPlan({ ...spec, method: 'plain' });
    const wrong = checkPlan({ ...spec, method: 'thrifty' }, plan);
    if (wrong.length > 0) faults.push(`${name}: ${wrong.join(', ')}`);
    if (plan.length.compareTo(plain.length) > 0) faults.push(`${name}: longer than plain`);
    const [long, bound] = [plan.length.toNumber(), plan.lowerBound.toNumber()];
    const saved = 1 - long / plain.length.toNumber();
    return { plan, ms, gap: long / bound - 1, saved, proven: yardage(plan).purchaseProven };
  });
  const times = plans.map(({ ms }) => ms).sort((a, b) => a - b);
  const percent = (/** @type {number} */ part) => `${(100 * part).toFixed(2)} %`;
  const total = plans.reduce((sum, { plan }) => sum.plus(plan.length), length(0));
  return {
    name,
    plans: plans.length,
    'mean gap': percent(mean(plans.map(({ gap }) => gap))),
    optimal: plans.filter(({ plan }) => plan.optimal).length,
    'purchases proven': plans.filter(({ proven }) => proven).length,
    'saved of plain': percent(mean(plans.map(({ saved }) => saved))),
    'median ms': (times[Math.floor(times.length / 2)] ?? 0).toFixed(0),
    'worst ms': (times.at(-1) ?? 0).toFixed(0),
    'inches (checksum)': `${total}`,
  };
}

const SEED = 20240607;
const amount = Number(process.env.EIGHTHS_PLANS ?? 200);
cuttingPlan({ width: 42, pieces: [{ width: 5, length: 5, count: 12 }] });
console.table([
  row('4 to 300 of each', quiltPieces(SEED, amount)),
  row('4 to 300 of each, turning', quiltPieces(SEED, amount, { turnable: true })),
  row('4 to 60 of each', quiltPieces(SEED, amount, { count: 60 })),
  row('4 to 60 of each, turning', quiltPieces(SEED, amount, { count: 60, turnable: true })),
]);

const six = {
  width: 42,
  pieces: [
    { width: '2 1/2', length: '2 1/2', count: 36 },
    { width: '2 1/2', length: '4 1/2', count: 24 },
    { width: '2 1/2', length: '6 1/2', count: 24 },
    { width: '3 1/2', length: '6 1/2', count: 16 },
    { width: '4 1/2', length: '4 1/2', count: 20 },
    { width: '6 1/2', length: '6 1/2', count: 9 },
  ],
};
const times = Array.from({ length: 9 }, () => timed(() => cuttingPlan(six)).ms).sort(
  (a, b) => a - b,
);
const bought = yardage(six);
const told = bought.alternatives.map(
  ({ method, buy, cuts }) => `${method} buys ${buy} with ${cuts} cuts`,
);
console.log(
  `A small quilt’s six pieces: ${(times[4] ?? 0).toFixed(1)} ms; ${told.join(', ')}; the purchase is ${bought.purchaseProven ? '' : 'not '}proven.`,
);

for (const fault of faults) console.error(`FAULT: ${fault}`);
process.exitCode = faults.length > 0 ? 1 : 0;
