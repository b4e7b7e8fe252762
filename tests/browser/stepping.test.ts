import { logCabin, trimCuts } from '@eighths/core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Demo, startDemo } from './support/launch.js';
import {
  button,
  choice,
  element,
  example,
  headline,
  openGuest,
  readSheet,
} from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const where = async (page: Page) => (await page.locator('.where').textContent())?.trim();

/** The paths of a role in the drawing, and the drawing’s own name. */
const paths = (page: Page, role: string): Promise<readonly string[]> =>
  page
    .locator(`[part=drawing] path.${role}`)
    .evaluateAll((list) => list.map((path) => path.getAttribute('d') ?? ''));

const texts = (page: Page, role: string): Promise<readonly string[]> =>
  page.locator(`[part=drawing] text.${role}`).allTextContents();

/** Every step from the whole block to the last, by the button. */
async function stepNames(page: Page): Promise<readonly string[]> {
  const names: string[] = [];
  for (;;) {
    const name = await where(page);
    names.push(name ?? '');
    if ((await button(page, 'Next').getAttribute('aria-disabled')) === 'true') return names;
    await button(page, 'Next').click();
    await expect.poll(() => where(page)).not.toBe(name);
  }
}

test('the drawings go from the whole block through every placement of the ruler and back', async () => {
  const { page, problems, close } = await demo.open('/');
  const expected = [
    'Whole block',
    ...example.rounds.flatMap((round) =>
      trimCuts(example, round, 'right').map(
        ({ cuts }) =>
          `Round ${round.number} of 4: cuts ${cuts.map(({ order }) => order).join(', ')}`,
      ),
    ),
  ];
  expect(await stepNames(page)).toEqual(expected);
  for (const name of expected.slice(0, -1).reverse()) {
    await button(page, 'Back').click();
    await expect.poll(() => where(page)).toBe(name);
  }
  expect(problems).toEqual([]);
  await close();
});

test('at either end the button stays, says that it is off, and keeps the focus', async () => {
  const { page, close } = await demo.open('/');
  const [back, next] = [button(page, 'Back'), button(page, 'Next')];
  expect(await back.getAttribute('aria-disabled')).toBe('true');
  await back.focus();
  await page.keyboard.press('Enter');
  expect(await where(page)).toBe('Whole block');
  expect(await back.evaluate((node) => node.matches(':focus'))).toBe(true);

  await button(page, 'Round 4').click();
  await next.focus();
  const last = 'Round 4 of 4: cuts 3, 4';
  await page.keyboard.press('Enter');
  await expect.poll(() => where(page)).toBe(last);
  await page.keyboard.press('Enter');
  expect(await where(page)).toBe(last);
  expect(await next.getAttribute('aria-disabled')).toBe('true');
  expect(await next.evaluate((node) => node.matches(':focus'))).toBe(true);
  await close();
});

test('a round’s name in the trim chart shows its drawing and marks its rows', async () => {
  const { page, close } = await demo.open('/');
  for (const round of [3, 1, 4]) {
    await button(page, `Round ${round}`).click();
    await expect.poll(() => where(page)).toBe(`Round ${round} of 4: cuts 1, 2`);
    const chosen = await page.locator('tbody.chosen').allTextContents();
    expect(chosen.map((text) => /Round \d/.exec(text)?.[0])).toEqual([`Round ${round}`]);
  }
  await close();
});

test('the ruler lines under the drawing are those of the chart', async () => {
  const { page, close } = await demo.open('/');
  const { trims } = await readSheet(page);
  await button(page, 'Round 2').click();
  await expect.poll(() => where(page)).toBe('Round 2 of 4: cuts 1, 2');
  const sides = trims[1]?.sides;
  expect([...(await texts(page, 'measure'))].sort()).toEqual(
    ['right', 'top']
      .flatMap((side) => {
        const [center, last] = side === 'right' ? (sides?.right ?? []) : (sides?.top ?? []);
        return [`center seam ${center}`, `last seam ${last}`];
      })
      .sort(),
  );
  await close();
});

test('a left hand mirrors the ruler and the order of cuts, never the block', async () => {
  const { page, close } = await demo.open('/');
  await button(page, 'Round 1').click();
  await expect.poll(() => where(page)).toBe('Round 1 of 4: cuts 1, 2');
  const right = {
    fabric: await paths(page, 'fabric'),
    seam: await paths(page, 'center-seam'),
    ruler: await paths(page, 'ruler'),
    trim: await paths(page, 'trim-line'),
    cuts: await texts(page, 'cut'),
  };
  const before = await readSheet(page);
  await choice(page, 'Left').check();
  await expect.poll(() => paths(page, 'ruler')).not.toEqual(right.ruler);
  expect(await paths(page, 'fabric')).toEqual(right.fabric);
  expect(await paths(page, 'center-seam')).toEqual(right.seam);
  expect(await paths(page, 'trim-line')).not.toEqual(right.trim);
  expect(await readSheet(page)).toEqual(before);

  // The ruler’s corner, where the first two cuts meet, changes from the right to the left.
  const lines = (list: readonly string[]) =>
    list.map((d) => [...d.matchAll(/-?[\d.]+/g)].map(([number]) => Number(number)));
  const upright = (list: readonly string[]) =>
    lines(list).find(([x1, , x2]) => x1 === x2)?.[0] ?? Number.NaN;
  const middle = upright(right.seam);
  expect(upright(right.trim)).toBeGreaterThan(middle);
  expect(upright(await paths(page, 'trim-line'))).toBeLessThan(middle);
  expect(await element(page).evaluate((node) => Reflect.get(node, 'hand'))).toBe('left');
  await close();
});

test('the whole block and its drawing stay the same for either hand', async () => {
  const { page, close } = await demo.open('/');
  const block = await paths(page, 'fabric');
  expect(block).toHaveLength(17);
  await choice(page, 'Left').check();
  await expect.poll(() => element(page).evaluate((node) => Reflect.get(node, 'hand'))).toBe('left');
  expect(await paths(page, 'fabric')).toEqual(block);
  await close();
});

test('exact strips leave nothing to trim: no ruler, no hand, sizes after each round', async () => {
  const { page, problems, close } = await openGuest(
    demo,
    '<eighths-log-cabin rounds="2" center="2" log="1" strips-log="1 1/2" trim-after="never"></eighths-log-cabin>',
  );
  await expect.poll(() => headline(page)).toBe('6 finished, trim to 6½');
  expect(await choice(page, 'Left').count()).toBe(0);
  expect(await page.getByRole('table', { name: 'Trim chart' }).count()).toBe(0);
  const table = page.getByRole('table', { name: 'Sizes after each round' });
  expect(await table.getByRole('columnheader', { name: 'Trims off' }).count()).toBe(0);
  expect(await stepNames(page)).toEqual(['Whole block', 'Round 1 of 2', 'Round 2 of 2']);
  expect(await paths(page, 'ruler')).toEqual([]);
  expect(problems).toEqual([]);
  await close();
});

test('trimming after each log has a placement of the ruler for every log', async () => {
  const { page, problems, close } = await openGuest(
    demo,
    '<eighths-log-cabin rounds="2" center="2" log="1" strips-log="2" trim-after="log"></eighths-log-cabin>',
  );
  const plan = logCabin({
    rounds: 2,
    center: 2,
    log: 1,
    strips: { log: 2 },
    trim: { after: 'log' },
  });
  expect(await stepNames(page)).toEqual([
    'Whole block',
    ...plan.rounds.flatMap(({ number, logs }) =>
      logs.map((_, index) => `Round ${number} of 2: cuts ${index + 1}`),
    ),
  ]);
  expect(problems).toEqual([]);
  await close();
});
