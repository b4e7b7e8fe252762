import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Demo, startDemo } from './support/launch.js';
import { example, headline, openGuest, readSheet, sheetOf } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

interface Focused {
  readonly name: string;
  readonly outline: string;
  readonly visible: boolean;
}

/** What has the focus, deep in its shadow root, and whether a person sees that. */
const focused = (page: Page): Promise<Focused> =>
  page.evaluate(() => {
    let active: Element | null = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    if (active === null) return { name: '', outline: '', visible: false };
    const label =
      active instanceof HTMLInputElement && active.labels !== null
        ? active.labels[0]?.textContent
        : active.textContent;
    const style = getComputedStyle(active);
    const box = active.getBoundingClientRect();
    return {
      name: (active.getAttribute('aria-label') ?? label ?? '').trim(),
      outline: `${style.outlineStyle} ${style.outlineWidth}`,
      visible: box.width > 0 && box.top > -1 && box.bottom < innerHeight + 1,
    };
  });

const MOST_STOPS = 40;

/** Tabs on until something of that name has the focus. */
async function tabTo(page: Page, name: string): Promise<void> {
  const passed: string[] = [];
  for (let stops = 0; stops < MOST_STOPS; stops += 1) {
    await page.keyboard.press('Tab');
    const now = await focused(page);
    if (now.name === name) return;
    passed.push(now.name);
  }
  throw new Error(`No way to “${name}” by Tab; passed ${passed.join(', ')}.`);
}

test('the whole job is done by Tab, arrows, Enter and typing', async () => {
  const { page, problems, close } = await openGuest(
    demo,
    '<eighths-log-cabin finished="12" rounds="2" log="1"></eighths-log-cabin>',
  );
  const type = async (name: string, text: string) => {
    await tabTo(page, name);
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type(text);
  };
  await type('Finished size', '9');
  await type('Rounds', '4');
  await tabTo(page, 'All sides alike');
  await page.keyboard.press('ArrowRight');
  await expect.poll(async () => (await focused(page)).name).toBe('Wide and narrow (curved)');
  await type('Wide log', '1 1/4');
  await type('Narrow log', '1/2');
  await type('Wide strip cut', '2');
  await type('Narrow strip cut', '1 1/2');
  await type('Center', '2');
  await expect.poll(() => readSheet(page)).toEqual(sheetOf(example));

  await tabTo(page, 'Sewing, trimming and measures');
  await page.keyboard.press('Enter');
  await tabTo(page, 'Spiral');
  await tabTo(page, 'Seam allowance');
  await tabTo(page, 'Round 3');
  await page.keyboard.press('Enter');
  const where = () => page.locator('.where').textContent();
  await expect.poll(where).toBe('Round 3 of 4: cuts 1, 2');
  for (let stops = 0; (await focused(page)).name !== 'Next'; stops += 1) {
    expect(stops).toBeLessThan(MOST_STOPS);
    await page.keyboard.press('Shift+Tab');
  }
  await page.keyboard.press('Space');
  await expect.poll(where).toBe('Round 3 of 4: cuts 3, 4');
  await tabTo(page, 'Right');
  await page.keyboard.press('ArrowRight');
  await expect
    .poll(() => page.getByRole('radio', { name: 'Left', exact: true }).isChecked())
    .toBe(true);
  expect(await headline(page)).toBe('9 finished, trim to 9½');
  expect(problems).toEqual([]);
  await close();
});

test.each(['light', 'dark'] as const)(
  'wherever the focus goes it is seen, in %s',
  async (colorScheme) => {
    const { page, close } = await demo.open('/', { colorScheme });
    await page.getByText('Sewing, trimming and measures').click();
    await page.getByRole('link').last().focus();
    const names: string[] = [];
    for (let stops = 0; stops < MOST_STOPS; stops += 1) {
      await page.keyboard.press('Tab');
      if (!(await page.evaluate(() => document.activeElement?.shadowRoot))) break;
      await expect.poll(async () => (await focused(page)).visible).toBe(true);
      const now = await focused(page);
      expect(now, now.name).toMatchObject({ outline: 'solid 2px' });
      names.push(now.name);
    }
    expect(names).toEqual(
      expect.arrayContaining(['Back', 'Next', 'Right', 'Finished size', 'Center', 'Round 4']),
    );
    expect(new Set(names).size).toBe(names.length);
    await close();
  },
);
