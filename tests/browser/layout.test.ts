import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inChromium } from './support/engine.js';
import { type Demo, startDemo } from './support/launch.js';
import { printed } from './support/paper.js';
import { button, choice, element, headline, input, openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

/** What sticks out of the page sideways, inside the element too. */
const sticksOut = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const root = document.querySelector('eighths-log-cabin')?.shadowRoot;
    const inside = [...(root?.querySelectorAll('*:not(svg *, .unseen)') ?? [])];
    const wide = inside.filter((one) => one.getBoundingClientRect().right > innerWidth + 0.5);
    const names = wide.map((one) => `${one.localName}.${one.className} ${one.textContent.trim()}`);
    const { scrollWidth } = document.documentElement;
    return scrollWidth > innerWidth ? [`the page is ${scrollWidth} wide`, ...names] : names;
  });

const metric = async (page: Page) => {
  await page.getByText('Sewing, trimming and measures').click();
  await choice(page, 'Centimeters').check();
  await expect.poll(() => headline(page)).toContain('cm');
};

describe('nothing sticks out sideways', () => {
  test.each([
    ['/', 240],
    ['/', 320],
    ['/', 1280],
    ['/blog.html', 240],
    ['/blog.html', 320],
    ['/shop.html', 320],
  ] as const)('of %s at %d pixels', async (path, width) => {
    const { page, close } = await demo.open(path, { viewport: { width, height: 700 } });
    expect(await sticksOut(page)).toEqual([]);
    await button(page, 'Next').click();
    expect(await sticksOut(page)).toEqual([]);
    await close();
  });

  test.each([320, 820, 1280])('in centimeters, for many blocks, at %d pixels', async (width) => {
    const { page, close } = await demo.open('/blog.html', { viewport: { width, height: 700 } });
    await metric(page);
    await input(page, 'Blocks').fill('1000');
    await expect.poll(() => page.getByText('For 1000 blocks', { exact: true }).count()).toBe(1);
    expect(await sticksOut(page)).toEqual([]);
    await close();
  });

  test('with an error and long names of fabrics, at 320 pixels', async () => {
    const { page, close } = await openGuest(
      demo,
      `<eighths-log-cabin fabrics-wide="${'longest'.repeat(9)}" fabrics-narrow="dawn over the far hills"></eighths-log-cabin>`,
      { viewport: { width: 320, height: 700 } },
    );
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    await input(page, 'Center').fill('x'.repeat(60));
    await page.keyboard.press('Tab');
    await page.locator('.error').waitFor();
    expect(await sticksOut(page)).toEqual([]);
    await close();
  });
});

describe('nothing jumps', () => {
  /** From where to where something reaches below the element's top. */
  const box = (page: Page, selector: string): Promise<string> =>
    page
      .locator(selector)
      .first()
      .evaluate((node) => {
        const root = node.getRootNode();
        const host = root instanceof ShadowRoot ? root.host : node;
        const { top } = host.getBoundingClientRect();
        const own = node.getBoundingClientRect();
        return `${(own.top - top).toFixed(2)} to ${(own.bottom - top).toFixed(2)}`;
      });

  const height = (page: Page, selector: string): Promise<string> =>
    page.locator(selector).evaluate((node) => node.getBoundingClientRect().height.toFixed(2));

  test.each([375, 1280])('while valid numbers are typed, at %d pixels', async (width) => {
    const { page, close } = await demo.open('/blog.html', { viewport: { width, height: 800 } });
    const places = async () => ({
      form: await box(page, '.form'),
      chart: await box(page, '.trims'),
      drawing: await box(page, 'figure'),
    });
    const before = await places();
    for (const [label, text, finished] of [
      ['Finished size', '10', '10'],
      ['Finished size', '10.5', '10½'],
      ['Finished size', '11 7/8', '11⅞'],
      ['Wide log', '1', '11⅞'],
      ['Wide log', '1.125', '11⅞'],
      // With a warning.
      ['Narrow log', '3/8', '11⅞'],
    ] as const) {
      await input(page, label).fill(text);
      await expect.poll(() => headline(page)).toContain(`${finished} finished`);
      expect(await places(), `${label} ${text}`).toEqual(before);
    }
    expect(await page.locator('.warnings li').count()).toBe(1);
    // A number that is not there yet moves nothing either.
    await input(page, 'Finished size').fill('');
    await input(page, 'Finished size').pressSequentially('9 1/');
    expect((await places()).form).toBe(before.form);
    await close();
  });

  test.each([320, 820, 1280])(
    'when the drawings are stepped through, at %d pixels',
    async (width) => {
      const { page, close } = await demo.open('/', { viewport: { width, height: 800 } });
      const places = async () => ({
        buttons: await box(page, '.stepper'),
        drawing: (await box(page, 'figure')).split(' ')[0],
        lastRow: await height(page, '.trims tbody:last-child'),
      });
      const before = await places();
      for (let step = 0; step < 8; step += 1) {
        await button(page, 'Next').click();
        await expect.poll(() => page.locator('.where').textContent()).not.toBe('Whole block');
        expect(await places()).toEqual(before);
      }
      await close();
    },
  );
});

describe('on paper', () => {
  // Firefox’s driver has no paper to look at a page on but a printed one.
  test.runIf(inChromium)(
    'controls are gone, what was typed and the tables stay, dark on light',
    async () => {
      const { page, close } = await demo.open('/', { colorScheme: 'dark' });
      await page.emulateMedia({ media: 'print' });
      for (const name of ['Next', 'Back', '½']) {
        expect(await page.getByText(name, { exact: true }).first().isVisible(), name).toBe(false);
      }
      expect(await page.getByRole('group', { name: 'Put in a fraction' }).count()).toBe(0);
      expect(await page.getByText('Sewing, trimming and measures').isVisible()).toBe(false);
      for (const name of ['Trim chart', 'Strips', 'Cut list']) {
        expect(await page.getByRole('table', { name }).isVisible(), name).toBe(true);
      }
      expect(await input(page, 'Finished size').isVisible()).toBe(true);
      expect(await page.getByText('Wide and narrow (curved)').isVisible()).toBe(true);
      expect(await page.getByText('All sides alike').isVisible()).toBe(false);
      const looks = await page.locator('.root').evaluate((node) => {
        const { color, colorScheme } = getComputedStyle(node);
        return { color, colorScheme };
      });
      expect(looks).toEqual({ color: 'rgb(0, 0, 0)', colorScheme: 'light' });
      const head = page.getByRole('table', { name: 'Cut list' }).locator('thead');
      expect(await head.evaluate((node) => getComputedStyle(node).display)).toBe(
        'table-header-group',
      );
      const row = page.getByRole('table', { name: 'Cut list' }).locator('tbody tr').first();
      expect(await row.evaluate((node) => getComputedStyle(node).breakInside)).toBe('avoid');
      await close();
    },
  );

  test('a sheet with one block takes two letter pages', async () => {
    const { page, close } = await demo.open('/');
    await button(page, 'Next').click();
    const pages = await printed(page, { width: 8.5, height: 11, margin: 0.5 });
    expect(pages).toHaveLength(2);
    await close();
  });

  // As above: what is visible on paper is only asked on a page that is looked at there.
  test.runIf(inChromium)('a warning and an error are printed', async () => {
    const { page, close } = await openGuest(
      demo,
      '<eighths-log-cabin finished="9" wide="1" narrow="3/8"></eighths-log-cabin>',
    );
    await page.locator('.warnings li').first().waitFor();
    await input(page, 'Center').fill('two');
    await page.keyboard.press('Tab');
    await page.locator('.error').waitFor();
    const ring = () =>
      page.locator('input:focus-visible').evaluate((node) => getComputedStyle(node).outlineStyle);
    expect(await ring()).toBe('solid');
    await page.emulateMedia({ media: 'print' });
    expect(await ring()).toBe('none');
    expect(await page.locator('.warnings li').first().isVisible()).toBe(true);
    expect(await page.locator('.error').isVisible()).toBe(true);
    expect(await page.getByText('These numbers do not match').isVisible()).toBe(true);
    await close();
  });
});

describe('in a page’s other lights', () => {
  test('a theme of its own brings its own paper', async () => {
    const { page, close } = await openGuest(
      demo,
      '<eighths-log-cabin theme="dark"></eighths-log-cabin><eighths-log-cabin theme="light"></eighths-log-cabin>',
      { colorScheme: 'light' },
    );
    await expect.poll(() => page.locator('[part=headline]').count()).toBe(2);
    const papers = await page
      .locator('.root')
      .evaluateAll((list) => list.map((node) => getComputedStyle(node).backgroundColor));
    const [dark = '', light = ''] = papers;
    expect(light).toBe('rgb(255, 255, 255)');
    expect(dark).not.toBe(light);
    await close();
  });

  test('in forced colors the lines to cut by and the fabrics’ edges are still drawn', async () => {
    const { page, close } = await demo.open('/', { forcedColors: 'active' });
    await button(page, 'Next').click();
    await page.locator('path.trim-line').first().waitFor({ state: 'attached' });
    const stroke = (role: string) =>
      page
        .locator(`path.${role}`)
        .first()
        .evaluate((node) => getComputedStyle(node).stroke);
    expect(await stroke('fabric')).toBe(await stroke('outline'));
    expect(await stroke('trim-line')).not.toBe(await stroke('fabric'));
    await close();
  });

  test('on a page that reads from right to left the block is not mirrored', async () => {
    const fabric = (page: Page) =>
      page
        .locator('[part=drawing] path.fabric')
        .evaluateAll((list) => list.map((path) => path.getAttribute('d')));
    const left = await openGuest(demo, '<eighths-log-cabin></eighths-log-cabin>');
    const right = await openGuest(
      demo,
      '<div dir="rtl"><eighths-log-cabin></eighths-log-cabin></div>',
    );
    await expect.poll(() => headline(right.page)).toBe('9 finished, trim to 9½');
    expect(await fabric(right.page)).toEqual(await fabric(left.page));
    expect(await element(right.page).evaluate((node) => getComputedStyle(node).direction)).toBe(
      'rtl',
    );
    expect(await sticksOut(right.page)).toEqual([]);
    await left.close();
    await right.close();
  });
});
