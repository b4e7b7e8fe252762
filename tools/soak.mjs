// `npm run soak`: a thousand edits to each element in Chromium. Memory must come back to where it was,
// no node may be left behind, and nothing may go wrong. `-- --edits 200 --seed 2` for another run.
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';
import { ensureBrowser } from './browser.mjs';
import { chance } from './fuzz/random.mjs';
import { serve } from './serve.mjs';

const { values } = parseArgs({
  options: {
    edits: { type: 'string', default: '1000' },
    seed: { type: 'string', default: '1' },
  },
});
const edits = Number(values.edits);
const seed = Number(values.seed);

/** Pages with an element each, and what may grow: an element that has shown more keeps some of it. */
const PAGES = [
  ['eighths-log-cabin', '/'],
  ['eighths-unit', '/unit.html'],
  ['eighths-fabric', '/fabric.html'],
  ['eighths-quilt', '/quilt.html'],
];
const MOST_GROWTH = 0.1;
const TEXTS = [
  '1',
  '2',
  '3',
  '4',
  '6',
  '8',
  '9',
  '10 1/2',
  '12',
  '2 1/2',
  '3/4',
  '',
  'zigzag',
  '0',
  '1/0',
];

const server = await serve();
const browser = await chromium.launch({
  executablePath: await ensureBrowser(),
  args: [...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), '--disable-gpu'],
});

/**
 * What a page holds when all that can be given back has been.
 *
 * @param {import('playwright-core').CDPSession} devtools
 */
async function held(devtools) {
  // What a first collection frees may free more.
  for (let times = 0; times < 3; times += 1) await devtools.send('HeapProfiler.collectGarbage');
  const { usedSize } = await devtools.send('Runtime.getHeapUsage');
  const { nodes, jsEventListeners } = await devtools.send('Memory.getDOMCounters');
  return { heap: usedSize, nodes, listeners: jsEventListeners };
}

/**
 * One edit as a reader makes it: a text typed, a choice taken or a button pressed.
 *
 * @param {import('playwright-core').Page} page
 * @param {string} tag
 * @param {{ where: number, text: string }} edit
 */
const edit = (page, tag, { where, text }) =>
  page.evaluate(
    async ([name, part, typed]) => {
      const host = document.querySelector(name);
      const controls = [
        ...(host?.shadowRoot?.querySelectorAll('input, select, summary, button') ?? []),
      ]
        // What prints, saves or copies leaves the page.
        .filter((node) => !node.closest('.actions, .panel-sheets') && node.checkVisibility());
      const control = controls[Math.floor(Number(part) * controls.length)];
      const heard = { bubbles: true, composed: true };
      if (control instanceof HTMLInputElement && control.type === 'text') {
        control.value = String(typed);
        control.dispatchEvent(new InputEvent('input', heard));
        control.dispatchEvent(new Event('change', heard));
      } else if (control instanceof HTMLSelectElement) {
        control.selectedIndex = Math.floor(Number(part) * 997) % control.options.length;
        control.dispatchEvent(new Event('change', heard));
      } else if (control instanceof HTMLElement) control.click();
      await Reflect.get(host ?? {}, 'updateComplete');
      await new Promise((resolve) => setTimeout(resolve));
    },
    /** @type {const} */ ([tag, where, text]),
  );

for (const [tag = '', path] of PAGES) {
  const page = await browser.newPage();
  /** @type {string[]} */
  const problems = [];
  page.on('pageerror', (error) => problems.push(error.stack ?? error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') problems.push(message.text());
  });
  await page.goto(server.url + path);
  const devtools = await page.context().newCDPSession(page);
  await page.locator(`${tag} [part=headline]`).first().waitFor();
  const attributes = await page
    .locator(tag)
    .first()
    .evaluate((node) => node.getAttributeNames().map((name) => [name, node.getAttribute(name)]));
  /** The page's first element as its author wrote it: both measurements are of the same page. */
  const renewed = () =>
    page.evaluate(
      async ([name, all]) => {
        const old = document.querySelector(String(name));
        const inside = old?.querySelector('script[type="application/json"]')?.cloneNode(true);
        const fresh = document.createElement(String(name));
        for (const [key, value] of /** @type {string[][]} */ (all))
          fresh.setAttribute(key ?? '', value ?? '');
        if (inside) fresh.append(inside);
        old?.replaceWith(fresh);
        await Reflect.get(fresh, 'updateComplete');
      },
      /** @type {const} */ ([tag, attributes]),
    );
  let before = await held(devtools);
  const began = performance.now();
  const warm = Math.min(100, Math.floor(edits / 5));
  for (let number = 0; number < warm + edits; number += 1) {
    const by = chance(seed, number);
    await edit(page, tag, { where: by.unit(), text: by.one(TEXTS) });
    // What is kept once and for all, such as tables and compiled code, is there after some edits.
    if (number === warm - 1) {
      await renewed();
      before = await held(devtools);
    }
    // So that one turn into a corner is not all that is seen.
    if (number % 50 === 49) await renewed();
  }
  await renewed();
  const after = await held(devtools);
  const growth = after.heap / before.heap - 1;
  if (growth > MOST_GROWTH) problems.push(`The heap has grown by ${(100 * growth).toFixed(0)} %.`);
  if (after.nodes > before.nodes * (1 + MOST_GROWTH)) {
    problems.push(`There were ${before.nodes} nodes, and are ${after.nodes}.`);
  }
  const mib = (/** @type {number} */ bytes) => (bytes / 2 ** 20).toFixed(2);
  const row = {
    element: tag,
    edits,
    seconds: ((performance.now() - began) / 1000).toFixed(0),
    'heap MiB': `${mib(before.heap)} → ${mib(after.heap)}`,
    nodes: `${before.nodes} → ${after.nodes}`,
    listeners: `${before.listeners} → ${after.listeners}`,
    problems: problems.length,
  };
  // At once: a browser that breaks later takes nothing of this along.
  console.log(row);
  for (const problem of new Set(problems)) {
    console.error(`${tag}: ${problem}`);
    process.exitCode = 1;
  }
  await page.close();
}
await browser.close();
await server.close();
