import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './support/axe.js';
import { type Demo, startDemo } from './support/launch.js';

const site = fileURLToPath(new URL('../../docs/site', import.meta.url));

let demo: Demo;
beforeAll(async () => {
  if (!existsSync(join(site, 'index.html')))
    throw new Error('The documentation is not built: run `npm run docs` first.');
  demo = await startDemo();
});
afterAll(() => demo?.close());

const guides = existsSync(site)
  ? readdirSync(join(site, 'documents')).map((name) => `documents/${name}`)
  : [];
const aReference = 'functions/_eighths_core.logCabin.html';

describe('the documentation', () => {
  test.each(['index.html', aReference, ...guides])(
    '%s stays within a phone, and axe finds nothing in the dark',
    async (path) => {
      const visit = await demo.open(`/docs/${path}`, {
        viewport: { width: 320, height: 640 },
        colorScheme: 'dark',
      });
      const beyond = await visit.page.evaluate(
        () => document.documentElement.scrollWidth - window.innerWidth,
      );
      expect(beyond).toBeLessThanOrEqual(0);
      const found = await violations(visit.page);
      // The theme of the reference jumps from its first to its fourth level.
      const ours = found.filter((each) => path !== aReference || !each.startsWith('heading-order'));
      expect(ours).toEqual([]);
      expect(visit.problems).toEqual([]);
      await visit.close();
    },
  );

  test.each([
    ['logCabin', aReference],
    ['true scale', 'documents/Printing_at_true_scale.html'],
  ])('a search for “%s” leads to its page, by keyboard alone', async (words, path) => {
    const { page, problems, close } = await demo.open('/docs/index.html', {
      viewport: { width: 360, height: 640 },
    });
    await page.locator('#tsd-search-trigger').focus();
    await page.keyboard.press('Enter');
    await page.keyboard.type(words);
    const found = page.locator('#tsd-search-results li').first();
    await found.waitFor();
    await expect.poll(() => found.locator('a').getAttribute('href')).toContain(path);
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.waitForURL(`**/${path}*`);
    expect(await page.locator('h1').first().textContent()).not.toBe('');
    expect(problems).toEqual([]);
    await close();
  });

  test('on a phone its menu leads from the first page to a guide', async () => {
    const { page, problems, close, screenshot } = await demo.open('/docs/index.html', {
      viewport: { width: 360, height: 640 },
    });
    await page.locator('#tsd-toolbar-menu-trigger').click();
    await screenshot('docs-menu-phone');
    await page.locator('.site-menu').getByText('Printing at true scale').click();
    await page.waitForURL('**/documents/Printing_at_true_scale.html');
    expect(problems).toEqual([]);
    await close();
  });
});
