import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { fencedBlocks } from '../house/snippets.js';
import { violations } from './support/axe.js';
import { type Demo, startDemo, type Visit } from './support/launch.js';
import { openGuest } from './support/sheet.js';

let demo: Demo;
let gallery: Visit;
beforeAll(async () => {
  demo = await startDemo();
  gallery = await openGallery(1280);
});
afterAll(() => demo?.close());

async function openGallery(width: number, colorScheme: 'light' | 'dark' = 'light'): Promise<Visit> {
  const visit = await demo.open('/gallery.html', {
    viewport: { width, height: 900 },
    colorScheme,
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  await visit.page.locator('html[data-ready]').waitFor();
  return visit;
}

const example = (page: Page, at: number): Locator => page.locator('.example').nth(at);
const lineOf = async (section: Locator): Promise<string> =>
  (await section.locator('.line code').textContent()) ?? '';

/** The plan of the element that a line makes in another page. */
async function planOf(line: string): Promise<unknown> {
  const guest = await openGuest(demo, `<main>${line}</main>`);
  const plan = await guest.page.locator('main > *').evaluate(async (node) => {
    const element: unknown = node.matches('div') ? node.firstElementChild : node;
    for (let waits = 0; waits < 250; waits += 1) {
      const made = Reflect.get(Object(element), 'plan');
      if (made !== undefined) return JSON.parse(JSON.stringify(made));
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    return undefined;
  });
  expect(guest.problems).toEqual([]);
  await guest.close();
  expect(plan).not.toBeUndefined();
  return plan;
}

const shownPlan = (section: Locator): Promise<unknown> =>
  section
    .locator('eighths-log-cabin, eighths-unit, eighths-fabric, eighths-quilt')
    .evaluate((element) => JSON.parse(JSON.stringify(Reflect.get(element, 'plan'))));

describe('the gallery', () => {
  test('shows each element’s own line as it comes: one line, double quotes, no closed tag', async () => {
    const lines = await gallery.page.locator('.example .line code').allTextContents();
    expect(lines).toHaveLength(await gallery.page.locator('.example').count());
    for (const line of lines) {
      expect(line).toMatch(/^<(eighths-[a-z-]+)( [a-z-]+="[^"<>]*")+><\/\1>$/);
    }
    expect(lines[2]).toBe(
      '<eighths-unit unit="flying-geese" finished-width="3" count="48"></eighths-unit>',
    );
  });

  test('writes the line anew as the reader types, and it makes the same plan elsewhere', async () => {
    const { page } = gallery;
    const section = example(page, 0);
    await section.getByRole('textbox', { name: 'Rounds' }).first().fill('3');
    await page.waitForFunction(() =>
      document.querySelector('.example .line')?.textContent?.includes('rounds="3"'),
    );
    const line = await lineOf(section);
    expect(line).toContain('finished="9" ');
    expect(await planOf(line)).toEqual(await shownPlan(section));
  });

  test('keeps what is left empty, where that is not the default', async () => {
    const { page } = gallery;
    const section = example(page, 5);
    await section.getByRole('textbox', { name: 'Finished size' }).first().fill('26');
    await section.getByText('finished="26"').waitFor();
    const line = await lineOf(section);
    expect(line).toContain('units="metric"');
    expect(await planOf(line)).toEqual(await shownPlan(section));
  });

  test('says so while the sizes make nothing, and keeps the last line', async () => {
    const { page } = gallery;
    const section = example(page, 1);
    const before = await lineOf(section);
    await section.getByRole('textbox', { name: 'Rounds' }).first().fill('none');
    await section.getByText('the last sizes that could be made').waitFor();
    expect(await lineOf(section)).toBe(before);
    await section.getByRole('textbox', { name: 'Rounds' }).first().fill('2');
    await section.getByText('rounds="2"').waitFor();
    expect(await section.getByText('the last sizes that could be made').count()).toBe(0);
  });

  test('writes it as a division or a frame for pages that take no more', async () => {
    const { page } = gallery;
    const section = example(page, 3);
    const [tag, plan] = [await lineOf(section), await shownPlan(section)];
    await page.getByLabel('known tags only').check();
    await section.getByText('data-eighths').waitFor();
    const division = await lineOf(section);
    expect(division).toMatch(
      /^<div data-eighths="fabric" data-pieces="[^"]+" data-width="40"><\/div>$/,
    );
    expect(await planOf(division)).toEqual(plan);
    await page.getByLabel('a frame only').check();
    await section.getByText('embed.html').waitFor();
    const [, query = ''] = /src="embed\.html\?([^"]+)"/.exec(await lineOf(section)) ?? [];
    expect(Object.fromEntries(new URLSearchParams(query.replaceAll('&amp;', '&')))).toEqual({
      element: 'fabric',
      pieces: '24 of 2 1/2 by 8 1/2, dusk; 12 of 5 by 5, linen',
      width: '40',
    });
    await page.getByLabel('any tag').check();
    await section.getByText('<eighths-fabric').waitFor();
    expect(await lineOf(section)).toBe(tag);
  });

  test('copies the line', async () => {
    const { page, problems } = gallery;
    const section = example(page, 2);
    await section.getByRole('button', { name: 'Copy the line' }).click();
    await section.getByText('Copied.').waitFor();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await lineOf(section));
    expect(problems).toEqual([]);
  });

  test('has no fault in the dark on a narrow screen, and at no width anything to scroll sideways', async () => {
    const { page, problems, close } = await openGallery(320, 'dark');
    for (const width of [320, 768, 1280]) {
      await page.setViewportSize({ width, height: 900 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    }
    // The elements themselves are looked at on pages of their own.
    await page.evaluate(() => {
      for (const each of document.querySelectorAll('.example > :not(h2, p, div)')) each.remove();
    });
    expect(await violations(page)).toEqual([]);
    expect(problems).toEqual([]);
    await close();
  });
});

const guides = fileURLToPath(new URL('../../docs/guides', import.meta.url));

describe('the markup in the guides', () => {
  const blocks = readdirSync(guides)
    .filter((name) => name.endsWith('.md'))
    .flatMap((name) =>
      fencedBlocks(readFileSync(join(guides, name), 'utf8'))
        .filter(({ info }) => info === 'html')
        .map(({ code }) => code),
    );

  test('works as it is pasted, all on one page', async () => {
    const sections = blocks.map((code) =>
      code
        .replace(/<script[^>]*src=[^>]*><\/script>/g, '')
        // Where the frame's page stands here.
        .replaceAll('src="embed.html', 'src="/eighths/embed.html'),
    );
    const guest = await openGuest(demo, `<main>${sections.join('\n')}</main>`);
    await guest.page.waitForFunction(() =>
      [
        ...document.querySelectorAll(
          'eighths-log-cabin, eighths-unit, eighths-fabric, eighths-quilt',
        ),
      ].every((element) => Reflect.get(element, 'plan') !== undefined),
    );
    expect(await guest.page.locator('.error:not(:empty)').count()).toBe(0);
    expect(guest.problems).toEqual([]);

    // The frame has told how high it is.
    await guest.page.waitForFunction(() => {
      const height = Number(document.querySelector('iframe')?.height);
      return height > 400 && height !== 1400;
    });

    // The cart: a reader who wants eight blocks instead of four.
    const bundles = guest.page.locator('#bundles');
    expect(await bundles.textContent()).toBe('1');
    await guest.page.locator('#block').getByRole('textbox', { name: 'Blocks' }).fill('8');
    await guest.page.waitForFunction(() => document.querySelector('#bundles')?.textContent !== '1');
    expect(await bundles.textContent()).toBe('2');

    // What to buy, as the fabric element tells it.
    await guest.page
      .locator('#fabric')
      .getByRole('textbox', { name: /^usable width/i })
      .fill('42');
    const bought = guest.page.locator('#to-buy li');
    await bought.first().waitFor();
    expect(await bought.allTextContents()).toEqual([
      expect.stringMatching(/^dusk: \S+\s+yd$/),
      expect.stringMatching(/^linen: \S+\s+yd$/),
    ]);

    // And a whole pattern, in steps of the shop.
    await guest.page
      .locator('#pattern')
      .evaluate((element) => element.setAttribute('size', 'Throw'));
    const lines = guest.page.locator('#lines li');
    await lines.first().waitFor();
    for (const line of await lines.allTextContents()) {
      expect(line).toMatch(/^\w+: \d+ × 1\/8 yd, \d+(?:\.\d+)? USD$/);
    }
    expect(guest.problems).toEqual([]);
    await guest.close();
  });
});
