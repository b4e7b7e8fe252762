// What a page pays for what it uses, minified and gzipped: `npm run sizes`, after a build.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { isProgram, root } from './run.mjs';

/**
 * @typedef {{ what: string, most: number, wish?: number, advice: string } & ({ file: string } | { loads: readonly string[] } | { code: string, beyond?: string })} Budget
 *   `most` in bytes, and a `wish` that is not met; `file` is a built file as it is; `loads` is what a page loads as needed;
 *   `code` is bundled first, as a page that depends on the published packages would; what it takes
 *   beyond other code counts, where that is given
 */

const LENGTHS = "import { length } from '@eighths/core'; console.log(length('10-1/2').toString());";

/** @type {readonly Budget[]} */
export const budgets = [
  {
    what: "import { length } from '@eighths/core'",
    code: LENGTHS,
    most: 6_000,
    advice:
      'Look for a module that does something when it is merely imported, or for a new import under core/src/length.',
  },
  // Plain and thrifty plans with their words: plain plans are 6 kB of it.
  {
    what: 'import { cuttingPlan, yardage }, beyond lengths',
    code: "import { cuttingPlan, yardage } from '@eighths/core'; console.log(cuttingPlan, yardage);",
    beyond: LENGTHS,
    most: 14_500,
    wish: 9_000,
    advice: 'Look at what the solvers share: one knapsack, one linear program, one search.',
  },
  // One file an element. Of the log cabin lit is 6.4 kB, exact lengths with their reading and writing
  // 6, the plan 6, the drawings 5, the style sheet 2.
  ...[
    { name: 'eighths-log-cabin.js', most: 38_000, wish: 25_000 },
    // The finder, the arc, the sheets and the other panels: as much again, 9 of it cutting plans.
    { name: 'eighths-log-cabin-workshop.js', most: 80_000 },
    // 24 kB of it are cutting plans, joins, precuts and fabric on hand, with their words; the rest is
    // what every element has, and the tables, steps and drawings for all that.
    { name: 'eighths-fabric.js', most: 60_000, wish: 30_000 },
    // A recipe may hold any unit and any log cabin: they are in it with their drawings and sentences,
    // and cutting plans, layouts, kits and the recipe's checks.
    { name: 'eighths-quilt.js', most: 101_000 },
    // The plans and drawings of all twenty units are 28 kB of it.
    { name: 'eighths-unit.js', most: 53_500 },
    // All elements, and all panels.
    { name: 'eighths.js', most: 166_000 },
    // The words of all elements in another language, which one element waits for beside its own file.
    ...['de', 'es', 'fr', 'ja'].map((lang) => ({ name: `eighths-${lang}.js`, most: 21_000 })),
  ].map(({ name, ...sizes }) => ({
    what: `packages/widget/dist/${name}`,
    file: `packages/widget/dist/${name}`,
    ...sizes,
    advice:
      'Look at what the element imports: words for one language, the core by name, nothing of lit beyond what is used.',
  })),
  // From `as-needed`, each file of it compressed by itself.
  ...[
    { loads: [], most: 2_000 },
    { loads: ['log-cabin'], most: 46_000 },
    { loads: ['log-cabin', 'log-cabin-workshop'], most: 95_000 },
    { loads: ['unit'], most: 60_000 },
    { loads: ['fabric'], most: 70_000 },
    { loads: ['quilt'], most: 120_000 },
  ].map(({ loads, most }) => ({
    what: `as-needed/eighths.js on a page with ${loads.join(', ') || 'none of them'}`,
    loads,
    most,
    advice:
      'Look at which files are loaded: something may have come to be shared that need not be.',
  })),
];

/** What a page may pay for one pieced unit, whichever it is. */
const MOST_OF_A_UNIT = 11_000;

/**
 * Each pieced unit imported alone, as the built core lists them.
 *
 * @returns {Promise<readonly Budget[]>}
 */
async function unitBudgets() {
  const core = join(root, 'packages', 'core', 'dist', 'index.js');
  if (!existsSync(core)) return [];
  /** @type {{ unitNames: () => readonly string[] }} */
  const { unitNames } = await import(pathToFileURL(core).href);
  return unitNames().map((unit) => {
    const name = unit.replace(/-(\w)/g, (_, letter) => letter.toUpperCase());
    return {
      what: `import { ${name} } from '@eighths/core'`,
      code: `import { ${name} } from '@eighths/core'; console.log(${name}({ finished: 6 }).trimTo);`,
      most: MOST_OF_A_UNIT,
      advice: 'A unit brings its own sentences only, and nothing of the other units.',
    };
  });
}

/**
 * The code as a page's bundler would make it: one module, minified, what is not used left out.
 *
 * @param {string} code
 */
async function bundled(code) {
  const entry = 'virtual:page';
  const made = await build({
    configFile: false,
    logLevel: 'error',
    // From here `@eighths/core` and lit are found as an outsider's bundler finds them.
    root: join(root, 'packages', 'widget'),
    plugins: [
      {
        name: 'page',
        resolveId: (id) => (id === entry ? join(root, 'packages', 'widget', 'page.js') : null),
        load: (id) => (id.endsWith('page.js') ? code : null),
      },
    ],
    build: {
      write: false,
      target: 'es2022',
      modulePreload: false,
      rollupOptions: { input: entry },
    },
  });
  const chunks = (Array.isArray(made) ? made : [made])
    .flatMap((one) => ('output' in one ? one.output : []))
    .filter((one) => one.type === 'chunk');
  const modules = chunks
    .flatMap((chunk) => Object.entries(chunk.modules))
    .map(([path, { renderedLength }]) => ({ path, length: renderedLength }))
    .sort((one, other) => other.length - one.length);
  return { text: chunks.map((chunk) => chunk.code).join(''), modules };
}

/**
 * What a page with some elements has loaded in the end, beginning with the file that its tag names.
 *
 * @param {readonly string[]} names of modules that are loaded as needed
 */
function loaded(names) {
  const folder = join(root, 'packages', 'widget', 'dist', 'as-needed');
  const files = new Set(['eighths.js']);
  for (const name of names) {
    const pattern = new RegExp(`^${name}-[\\w-]{8}\\.js$`);
    const file = readdirSync(folder).find((each) => pattern.test(each));
    if (file === undefined) throw new Error(`no file of as-needed is ${name}`);
    files.add(file);
  }
  // A set's loop comes to what is added meanwhile: each file's own imports.
  for (const file of files) {
    const text = readFileSync(join(folder, file), 'utf8');
    for (const [, other = ''] of text.matchAll(/(?:from|import)\s*["'`]\.\/([^"'`]+)/g)) {
      files.add(other);
    }
  }
  return [...files].map((file) => readFileSync(join(folder, file)));
}

/**
 * @param {Budget} budget
 * @returns {Promise<{ bytes: number, modules: readonly { path: string, length: number }[] }>}
 */
async function measured(budget) {
  if ('code' in budget) {
    const { text, modules } = await bundled(budget.code);
    const before = budget.beyond === undefined ? '' : (await bundled(budget.beyond)).text;
    const own = gzipSync(text, { level: 9 }).length;
    return { bytes: own - (before === '' ? 0 : gzipSync(before, { level: 9 }).length), modules };
  }
  if ('loads' in budget) {
    const files = loaded(budget.loads).map((file) => gzipSync(file, { level: 9 }).length);
    return { bytes: files.reduce((sum, bytes) => sum + bytes, 0), modules: [] };
  }
  const path = join(root, budget.file);
  if (!existsSync(path)) throw new Error('not built yet: run `npm run build`');
  return { bytes: gzipSync(readFileSync(path), { level: 9 }).length, modules: [] };
}

/**
 * A module's path in the repository, or in its package.
 *
 * @param {string} path
 */
const shortened = (path) => path.split('/node_modules/').at(-1)?.replace(`${root}/`, '');

/** @type {(budget: Budget, bytes: number) => import('../tests/bench/report.mjs').Row} */
const rowOf = (budget, bytes) => ({
  what: budget.what
    .replace(/^import \{.*\}(?: from '.*')?/, '`$&`')
    .replace(/^(?:packages\/widget\/dist\/)?((?:as-needed\/)?eighths[\w-]*\.js)/, '`$1`'),
  figure: bytes / 1000,
  unit: 'kB',
  limit: budget.most / 1000,
  ...(budget.wish !== undefined && { wish: { atMost: budget.wish / 1000 } }),
});

/** Measures everything and prints a table. Resolves to its rows, and whether all is within budget. */
export async function checkSizes() {
  const kilobytes = (/** @type {number} */ bytes) => `${(bytes / 1000).toFixed(2)} kB`;
  const all = [...budgets, ...(await unitBudgets())];
  const width = Math.max(...all.map(({ what }) => what.length));
  let within = true;
  /** @type {import('../tests/bench/report.mjs').Row[]} */
  const rows = [];
  for (const budget of all) {
    const name = budget.what.padEnd(width);
    try {
      const { bytes, modules } = await measured(budget);
      const over = bytes > budget.most;
      rows.push(rowOf(budget, bytes));
      console.log(
        `${name}  ${kilobytes(bytes).padStart(8)} of ${kilobytes(budget.most).padStart(8)}${over ? '  OVER' : ''}`,
      );
      within &&= !over;
      if (!over) continue;
      console.log(`  ${bytes - budget.most} bytes too many. ${budget.advice}`);
      for (const { path, length } of modules.slice(0, 6)) {
        console.log(`  ${String(length).padStart(6)} bytes before minifying: ${shortened(path)}`);
      }
    } catch (error) {
      console.log(`${name}  ${error instanceof Error ? error.message : error}`);
      within = false;
    }
  }
  return { within, rows };
}

if (isProgram(import.meta) && !(await checkSizes()).within) process.exitCode = 1;
