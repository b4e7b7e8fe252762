// `npm run soak`: a thousand edits to each element in Chromium. Nothing that scripts make may be kept,
// no node and no listener left behind, and nothing may go wrong. `-- --edits 200 --seed 2` for another
// run, `-- --only eighths-unit` for one element.
//
// The whole heap is no measure of that. It grows by a tenth in a thousand edits and levels off, and heap
// snapshots say by what: code that V8 compiles anew where it has become hot, its notes on what it has
// seen, and the browser's own lists of long tasks and media queries. Objects, closures, lists and texts
// stay as they are. So these are weighed by themselves, and the code is printed beside them.
import { inspect, parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { ensureBrowser } from './browser.mjs';
import { serve } from './serve.mjs';
import { leastGrowth, soak } from './soak/soak.mjs';

const { values } = parseArgs({
  options: {
    edits: { type: 'string', default: '1000' },
    seed: { type: 'string', default: '1' },
    only: { type: 'string', default: '' },
  },
});
const STRETCHES = 4;
const edits = Math.ceil(Number(values.edits) / STRETCHES);
const seed = Number(values.seed);

/** @typedef {import('./soak/held.mjs').Held} Held */

/** @type {readonly (readonly [tag: string, path: string])[]} */
const PAGES = [
  ['eighths-log-cabin', '/'],
  ['eighths-unit', '/unit.html'],
  ['eighths-fabric', '/fabric.html'],
  ['eighths-quilt', '/quilt.html'],
];
/** Bytes an edit: about a closure with what it closes over, the least that is worth the name. */
const MOST_KEPT = 50;

const server = await serve();
const browser = await chromium.launch({
  executablePath: await ensureBrowser(),
  args: [...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), '--disable-gpu'],
});

/**
 * @param {string} tag
 * @param {string} path
 */
async function tried(tag, path) {
  // In a context of its own it has a process of its own, and so a heap.
  const context = await browser.newContext();
  const page = await context.newPage();
  /** @type {string[]} */
  const problems = [];
  page.on('pageerror', (error) => problems.push(error.stack ?? error.message));
  page.on('crash', () => problems.push('The page has crashed.'));
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(message.text());
  });
  const began = performance.now();
  try {
    await page.goto(server.url + path);
    // The first stretch warms up: it meets most views, and makes the tables that are kept for good.
    const options = { seed, warm: edits, edits, stretches: STRETCHES };
    const measured = await soak(page, tag, options);
    const list = (/** @type {keyof Held} */ what) => measured.map((each) => each[what]);
    const kept = leastGrowth(list('values')) / edits;
    if (kept > MOST_KEPT) problems.push(`Each edit leaves ${kept.toFixed(0)} bytes behind.`);
    for (const what of /** @type {const} */ (['nodes', 'listeners'])) {
      if (leastGrowth(list(what)) > 0) problems.push(`Every stretch leaves ${what} behind.`);
    }
    const kib = (/** @type {readonly number[]} */ bytes) =>
      bytes.map((each) => (each / 2 ** 10).toFixed(0)).join(' ');
    // At once: a browser that breaks later takes nothing of this along.
    console.log({
      element: tag,
      edits: edits * STRETCHES,
      seconds: ((performance.now() - began) / 1000).toFixed(0),
      'values KiB': kib(list('values')),
      'kept an edit': `${kept.toFixed(1)} B`,
      'code KiB': kib(list('code')),
      nodes: list('nodes').join(' '),
      listeners: list('listeners').join(' '),
      problems: problems.length,
    });
  } catch (error) {
    problems.push(inspect(error));
  }
  for (const problem of new Set(problems)) {
    console.error(`${tag}: ${problem}`);
    process.exitCode = 1;
  }
}

const chosen = PAGES.filter(([tag]) => tag.includes(values.only));
if (chosen.length === 0) throw new Error(`There is no element ${values.only}.`);
await Promise.all(chosen.map(([tag, path]) => tried(tag, path)));
await browser.close();
await server.close();
