/**
 * How fast and how well thrifty plans are made. Prints a table; fails where an answer is wrong, not
 * where a machine is slow. Build first: pnpm --filter @eighths/core build; node tests/bench/thrifty.mjs
 */
import { fileURLToPath } from 'node:url';
import { quiltPieces } from './instances.mjs';
import { fault, handOver, median, milliseconds, timed } from './report.mjs';

const core =
  process.env.EIGHTHS_CORE ??
  fileURLToPath(new URL('../../packages/core/dist/index.js', import.meta.url));
/** @type {typeof import('@eighths/core')} */
const { checkPlan, cuttingPlan, length, yardage } = await import(core);
/** @type {import('./report.mjs').Row[]} */
const figures = [];

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
    if (wrong.length > 0) fault(`${name}: ${wrong.join(', ')}`);
    if (plan.length.compareTo(plain.length) > 0) fault(`${name}: longer than plain`);
    const [long, bound] = [plan.length.toNumber(), plan.lowerBound.toNumber()];
    const saved = 1 - long / plain.length.toNumber();
    return { plan, ms, gap: long / bound - 1, saved, proven: yardage(plan).purchaseProven };
  });
  const times = plans.map(({ ms }) => ms);
  const percent = (/** @type {number} */ part) => `${(100 * part).toFixed(2)} %`;
  const gap = mean(plans.map((plan) => plan.gap));
  const saved = mean(plans.map((plan) => plan.saved));
  const proven = plans.filter((plan) => plan.proven).length;
  const lists = `${plans.length} made-up lists, ${name}`;
  figures.push(
    milliseconds(`Thrifty plan of one list of pieces (${lists}), median`, median(times)),
    milliseconds('The slowest of these plans', Math.max(...times)),
    { what: 'Fabric saved against plans of plain strips, mean', figure: 100 * saved, unit: '%' },
    { what: 'Fabric over the proven bound, mean', figure: 100 * gap, unit: '%' },
    {
      what: 'Lists for which it is proven that nobody can buy less',
      figure: proven,
      unit: `of ${plans.length}`,
    },
  );
  const total = plans.reduce((sum, { plan }) => sum.plus(plan.length), length(0));
  return {
    name,
    plans: plans.length,
    'mean gap': percent(gap),
    optimal: plans.filter(({ plan }) => plan.optimal).length,
    'purchases proven': proven,
    'saved of plain': percent(saved),
    'median ms': median(times).toFixed(0),
    'worst ms': Math.max(...times).toFixed(0),
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
const small = median(Array.from({ length: 9 }, () => timed(() => cuttingPlan(six)).ms));
const bought = yardage(six);
const told = bought.alternatives.map(
  ({ method, buy, cuts }) => `${method} buys ${buy} with ${cuts} cuts`,
);
console.log(
  `A small quilt’s six pieces: ${small.toFixed(1)} ms; ${told.join(', ')}; the purchase is ${bought.purchaseProven ? '' : 'not '}proven.`,
);

handOver({
  title: 'Thrifty cutting plans',
  command: 'node tests/bench/thrifty.mjs',
  rows: [...figures, milliseconds('Plan of a small quilt’s six kinds of pieces, median', small)],
});
