import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inChromium } from './support/engine.js';
import { type Demo, startDemo } from './support/launch.js';
import { choice, headline } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

// Only Chromium counts its nodes for others; `npm run soak` tries all elements at length.
describe.runIf(inChromium)('in memory', () => {
  test('nothing is kept of choices that are taken out of sight', async () => {
    const { page, problems, close } = await demo.open('/');
    await expect.poll(() => headline(page)).not.toBe('');
    const devtools = await page.context().newCDPSession(page);
    const counts = async (): Promise<readonly [nodes: number, listeners: number]> => {
      await devtools.send('HeapProfiler.collectGarbage');
      const { nodes, jsEventListeners } = await devtools.send('Memory.getDOMCounters');
      return [nodes, jsEventListeners];
    };
    const thereAndBack = async (): Promise<void> => {
      await choice(page, 'All sides alike').check();
      await choice(page, 'Wide and narrow (curved)').check();
    };
    // What is made once for all, such as templates, is there after the first time.
    await thereAndBack();
    await thereAndBack();
    const [nodes, listeners] = await counts();
    const TIMES = 10;
    for (let time = 0; time < TIMES; time += 1) await thereAndBack();
    await expect.poll(async () => (await counts())[0]).toBeLessThan(nodes + TIMES);
    await expect.poll(async () => (await counts())[1]).toBeLessThan(listeners + TIMES);
    expect(problems).toEqual([]);
    await close();
  });
});
