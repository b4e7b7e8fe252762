/**
 * How fast a log cabin is planned and found, and how soon a keystroke is on the screen. Prints medians
 * with a checksum beside each; fails where a time is over its limit. Build both packages first:
 * npm run build; node tests/bench/logCabin.mjs
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { ensureBrowser } from '../../tools/browser.mjs';
import { serve } from '../../tools/serve.mjs';
import { handOver, judge, median, milliseconds, quantile } from './report.mjs';

const packages = fileURLToPath(new URL('../../packages/', import.meta.url));
/** @type {typeof import('@eighths/core')} */
const { findLogCabins, fitArc, logCabin } = await import(`${packages}core/dist/index.js`);
/** @type {import('./report.mjs').Row[]} */
const figures = [];

/**
 * A row of the table: the median of many runs, after as many to warm up.
 *
 * @param {string} name
 * @param {string} what the same for a newcomer
 * @param {number} limit in milliseconds
 * @param {() => unknown} work what it gives is the checksum
 */
function measured(name, what, limit, work) {
  const times = [];
  let checksum;
  for (let run = 0; run < 200; run += 1) {
    const start = performance.now();
    checksum = work();
    if (run >= 100) times.push(performance.now() - start);
  }
  const middle = median(times);
  judge(name, middle, limit);
  figures.push(milliseconds(`${what}, median`, middle, { under: limit }));
  const shown = (/** @type {number} */ ms) => ms.toFixed(3);
  return {
    name,
    'median ms': shown(middle),
    '99 % ms': shown(quantile(times, 0.99)),
    limit,
    checksum,
  };
}

const strips = { wide: 2, narrow: '1 1/2' };
const curved = { center: 2, wide: '1 1/4', narrow: '1/2', strips };
console.table([
  measured('plan of 10 rounds', 'Plan of a log cabin of ten rounds', 1, () =>
    logCabin({ rounds: 10, ...curved }).unfinished.width.toString(),
  ),
  measured(
    'finder, 9 in 4 rounds at 1/8',
    'All log cabins of four rounds that finish 9 inches, in eighths, found and ranked',
    5,
    () => findLogCabins({ finished: 9, rounds: 4 }).total,
  ),
  measured('arc of 12 rounds', 'Widths of twelve rounds that come closest to an arc', 100, () =>
    fitArc({ rounds: 12, finished: 24, center: 2, strips }).greatestDeviation.toNumber().toFixed(5),
  ),
]);

/**
 * From the dispatch of each input event to the first task after the frame that shows what follows from
 * it, in milliseconds. Frames are not held back for a screen, so that waiting for one is no part of it.
 *
 * @param {import('playwright-core').Page} page
 */
const keystrokes = (page) =>
  page.evaluate(async () => {
    const root = document.querySelector('eighths-log-cabin')?.shadowRoot;
    const input = root?.querySelector('#finished');
    if (!(input instanceof HTMLInputElement)) throw new Error('There is no input.');
    const painted = () =>
      new Promise((resolve) => {
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => resolve(undefined);
          port2.postMessage(undefined);
        });
      });
    const texts = ['1', '10', '10 ', '10 1', '10 1/', '10 1/2', '10 1/', '10 1', '10', '9'];
    const times = [];
    for (let key = 0; key < 300; key += 1) {
      await new Promise((resolve) => setTimeout(resolve, 4));
      const start = performance.now();
      input.value = texts[key % texts.length] ?? '';
      input.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
      await painted();
      if (key >= 100) times.push(performance.now() - start);
    }
    return times;
  });

/** @type {string | undefined} */
let version;
if (!existsSync(`${packages}widget/dist/eighths.js`)) {
  console.log('The elements are not built, so no keystroke was measured: run `npm run build`.');
} else {
  const server = await serve();
  const browser = await chromium.launch({
    executablePath: await ensureBrowser(),
    args: [
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-frame-rate-limit',
      '--disable-gpu-vsync',
    ],
  });
  version = `Chromium ${browser.version()}`;
  const rows = [];
  const panels = ['none', 'finder', 'arc', 'compare', 'settings', 'table', 'seam', 'sheets'];
  for (const panel of panels) {
    const page = await browser.newPage();
    await page.goto(`${server.url}/`);
    const element = page.locator('eighths-log-cabin');
    await element.evaluate((node, name) => node.setAttribute('panels-open', name), panel);
    await page.locator(panel === 'none' ? '.panels' : `.panel-${panel} .contents`).waitFor();
    const times = await keystrokes(page);
    const last = quantile(times, 0.95);
    if (panel === 'none') judge('a keystroke on the screen, 95 %', last, 16);
    const opened = panel === 'none' ? '' : `, with its panel “${panel}” open`;
    figures.push(
      milliseconds(
        `From a key to the screen in \`<eighths-log-cabin>\`${opened}: 95 of 100 keys`,
        last,
        panel === 'none' ? { under: 16 } : undefined,
      ),
    );
    rows.push({
      'panel open': panel,
      'median ms': median(times).toFixed(1),
      '95 % ms': last.toFixed(1),
    });
    await page.close();
  }
  console.log('From a keystroke to the screen:');
  console.table(rows);
  await browser.close();
  await server.close();
}

handOver({
  title: 'Log cabins',
  command: 'node tests/bench/logCabin.mjs',
  ...(version !== undefined && { browser: version }),
  rows: figures,
});
