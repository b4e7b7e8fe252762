/**
 * How fast whole quilts are planned. Prints a table; fails where a budget is exceeded, by the time of
 * the processor, so that what else runs on the machine does not count. Build first:
 * pnpm --filter @eighths/core build; node tests/bench/quilt.mjs
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { fault, handOver, median, milliseconds, timed } from './report.mjs';

/** @typedef {import('@eighths/core').QuiltRecipe} QuiltRecipe */
/** @typedef {import('@eighths/core').QuiltPlan} QuiltPlan */

const root = fileURLToPath(new URL('../../', import.meta.url));
/** @type {typeof import('@eighths/core')} */
const { kits, precutsForInParts, quilt, quiltInParts, toHtml } = await import(
  `${root}packages/core/dist/index.js`
);

/** @type {QuiltRecipe} */
const pattern = JSON.parse(
  readFileSync(`${root}docs/pages/recipes/thaw-at-fernhollow.json`, 'utf8'),
);

/**
 * Two hundred rectangles of different sizes in eight fabrics: ten blocks of twenty, each cut into
 * columns and rows on the eighth.
 *
 * @returns {QuiltRecipe}
 */
function manyPieces() {
  const fabrics = Array.from({ length: 8 }, (_, index) => ({ id: `fabric-${index}`, price: 12 }));
  const blocks = Array.from({ length: 10 }, (_, block) => {
    // Four columns and five rows, none as wide or as high as another: 96 eighths each way.
    const columns = [15 + block, 20, 27, 34 - block];
    const rows = [12 + block, 15, 19, 22, 28 - block];
    return {
      id: `block-${block}`,
      kind: /** @type {const} */ ('pieces'),
      finished: 12,
      pieces: columns.flatMap((width, column) =>
        rows.map((height, row) => ({
          fabric: `fabric-${(column + row + block) % 8}`,
          finished: { width: `${width}/8`, height: `${height}/8` },
        })),
      ),
    };
  });
  return {
    name: 'Two Hundred Pieces',
    fabrics,
    blocks,
    setting: { pattern: [blocks.map(({ id }) => id)] },
    binding: { fabric: 'fabric-0' },
    sizes: [{ name: 'King', across: 10, down: 9 }],
  };
}

/**
 * The longest time between two pauses, and the whole.
 *
 * @param {Generator<unknown, unknown, undefined>} making
 */
function parts(making) {
  let longest = 0;
  let whole = 0;
  for (let done = false; !done; ) {
    const { result, ms, cpu } = timed(() => making.next());
    longest = Math.max(longest, Math.min(ms, cpu));
    whole += ms;
    done = result.done === true;
  }
  return { longest, whole };
}

/** @param {QuiltPlan} plan */
const inches = (plan) =>
  plan.fabrics.reduce((sum, { yardage }) => sum + (yardage?.plan.length.toNumber() ?? 0), 0);

const many = manyPieces();
const cases = [
  { name: 'king-size log cabin', recipe: pattern, size: 'King', runs: 41 },
  { name: '200 pieces', recipe: many, size: 'King', runs: 11 },
];
const rows = cases.map(({ name, recipe, size, runs }) => {
  const cold = timed(() => quilt(recipe, size));
  const warm = Array.from({ length: runs }, () => timed(() => quilt(recipe, size)));
  const stepped = Array.from({ length: runs }, () => parts(quiltInParts(recipe, size)));
  const plan = cold.result;
  return {
    name,
    fabrics: plan.fabrics.length,
    'first ms': cold.ms,
    'median ms': median(warm.map(({ ms }) => ms)),
    'median processor ms': median(warm.map(({ cpu }) => cpu)),
    'longest part, median ms': median(stepped.map(({ longest }) => longest)),
    proven: plan.fabrics.filter(({ yardage }) => yardage?.plan.optimal !== false).length,
    'inches (checksum)': inches(plan),
  };
});
console.table(
  rows.map((row) =>
    Object.fromEntries(
      Object.entries(row).map(([key, value]) => [
        key,
        key.endsWith('ms') ? Number(value).toFixed(1) : value,
      ]),
    ),
  ),
);
const [king, pieces] = rows;
if (king && king['median processor ms'] > 50) fault('a king-size quilt takes more than 50 ms');
if (pieces && pieces['median processor ms'] > 1000) fault('200 pieces take more than a second');
for (const row of rows) {
  if (row['longest part, median ms'] > 50) fault(`${row.name}: a part takes more than 50 ms`);
}

const kitted = timed(() => kits({ recipe: pattern, size: 'King', people: 12 })).ms;
const written = timed(() => toHtml(quilt(pattern, 'King'))).ms;
const precut = parts(precutsForInParts({ recipe: pattern, size: 'King' })).whole;
console.log(`kits for twelve: ${kitted.toFixed(0)} ms`);
console.log(`the pattern in HTML: ${written.toFixed(0)} ms`);
console.log(`precuts, all kinds: ${precut.toFixed(0)} ms`);

/** @type {(what: string, row: (typeof rows)[number] | undefined, most: number) => import('./report.mjs').Row[]} */
const rowsOf = (what, row, most) =>
  row === undefined
    ? []
    : [
        milliseconds(`${what}, the first time`, row['first ms']),
        milliseconds(`${what}, median`, row['median ms']),
        milliseconds('Work of the processor for it, median', row['median processor ms'], {
          atMost: most,
        }),
        milliseconds(
          'Its longest part before a page gets a turn, median',
          row['longest part, median ms'],
          {
            atMost: 50,
          },
        ),
      ];
handOver({
  title: 'Whole quilts',
  command: 'node tests/bench/quilt.mjs',
  rows: [
    ...rowsOf('Plan of a king-size log cabin quilt, with its fabric', king, 50),
    ...rowsOf('Plan of a quilt of 200 different pieces in eight fabrics', pieces, 1000),
    milliseconds('Kits of the king-size quilt for a class of twelve', kitted),
    milliseconds('Its pattern written as a page', written),
    milliseconds('What it takes of each kind of precut', precut),
  ],
});
