import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cuttingPlan, formatLength, logCabin, yardage } from '@eighths/core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Demo, startDemo } from './support/launch.js';
import { openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const PIECES = [
  { width: '2 1/2', length: '8 1/2', count: 24 },
  { width: '2 1/2', length: '4 1/2', count: 24 },
  { width: '4 1/2', length: '4 1/2', count: 12 },
] as const;

const MARKUP =
  '<eighths-fabric width="42" pieces="24 of 2 1/2 by 8 1/2; 24 of 2 1/2 by 4 1/2; 12 of 4 1/2 by 4 1/2"></eighths-fabric>';

const cell = (page: Page, row: number, name: string) =>
  page.getByRole('group', { name: `Piece ${row}`, exact: true }).getByLabel(name, { exact: true });

/** What stands in sight in the answer's headlines. */
const headlines = (page: Page): Promise<string[]> =>
  page.locator('[part=headline]').evaluateAll((nodes) =>
    nodes.map((node) => {
      const copy = node.cloneNode(true);
      if (!(copy instanceof Element)) return '';
      for (const hidden of copy.querySelectorAll('.unseen')) hidden.remove();
      return copy.textContent.replace(/\s+/g, ' ').trim();
    }),
  );

const steps = (page: Page): Promise<string[]> => page.locator('ol.steps li').allTextContents();

const bought = (y: ReturnType<typeof yardage>): string =>
  `Buy ${y.yards} or ${y.meters}`.replace(/\s+/g, ' ');

describe('the fabric element', () => {
  test('says what the library says: what to buy, and how to cut it', async () => {
    const { page, problems, close } = await openGuest(demo, MARKUP);
    const plan = cuttingPlan({ width: 42, pieces: PIECES });
    await expect.poll(() => headlines(page)).toEqual([bought(yardage(plan))]);
    expect((await steps(page)).length).toBe(plan.steps.length);
    expect((await steps(page)).at(-1)).toContain(`${plan.strips.at(-1)?.count} strips 2½`);
    expect(problems).toEqual([]);
    await close();
  });

  test('answers what is typed into the table, row by row', async () => {
    const { page, problems, close } = await openGuest(demo, MARKUP);
    await cell(page, 1, 'How many').fill('60');
    await cell(page, 2, 'Strip width').fill('3');
    await page.getByRole('button', { name: 'Take piece 3 away' }).click();
    await page.getByRole('button', { name: 'Add a piece' }).click();
    await cell(page, 3, 'How many').fill('5');
    await cell(page, 3, 'Strip width').fill('6 1/2');
    await cell(page, 3, 'Length').fill('12 1/2');
    const plan = cuttingPlan({
      width: 42,
      pieces: [
        { width: '2 1/2', length: '8 1/2', count: 60 },
        { width: 3, length: '4 1/2', count: 24 },
        { width: '6 1/2', length: '12 1/2', count: 5 },
      ],
    });
    await expect.poll(() => headlines(page)).toEqual([bought(yardage(plan))]);
    expect(problems).toEqual([]);
    await close();
  });

  test('shows an error beside the cell it is about, and keeps the last answer, out of date', async () => {
    const { page, problems, close } = await openGuest(demo, MARKUP);
    await expect.poll(async () => (await headlines(page)).length).toBe(1);
    const before = await headlines(page);
    const field = cell(page, 1, 'Length');
    await field.fill('45');
    await field.blur();
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    const note = await field.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${note}"]`).textContent()).toContain('does not fit across');
    expect(await headlines(page)).toEqual(before);
    await expect.poll(() => page.getByText('do not match the sizes').isVisible()).toBe(true);
    await field.fill('40');
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('false');
    expect(problems).toEqual([]);
    await close();
  });

  test('takes the cut list of a log cabin for all its blocks, and follows its changes', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      `<eighths-log-cabin id="block" blocks="16"></eighths-log-cabin>
       <eighths-fabric from="block" width="40" locked="pieces"></eighths-fabric>`,
    );
    const block = logCabin({
      finished: 9,
      rounds: 4,
      wide: '1 1/4',
      narrow: '1/2',
      strips: { wide: 2, narrow: '1 1/2' },
    });
    const forBlocks = (blocks: number) =>
      ['center', 'wide', 'narrow'].map((fabric) => {
        const pieces = block.pieces
          .filter((piece) => piece.fabric === fabric)
          .map((piece) => ({ ...piece, count: piece.count * blocks }));
        const { yards } = yardage({ width: 40, pieces });
        return `Buy ${yards} of ${fabric}`.replace(/\s+/g, ' ');
      });
    const buys = async () =>
      (await headlines(page.locator('eighths-fabric').page()))
        .filter((text) => text.startsWith('Buy'))
        .map((text) => text.replace(/ or .*$/, ''));
    await expect.poll(buys).toEqual(forBlocks(16));
    await page.getByRole('textbox', { name: 'Blocks', exact: true }).fill('36');
    await expect.poll(buys).toEqual(forBlocks(36));
    expect(problems).toEqual([]);
    await close();
  });

  test('tells a cart what to buy, in plain JSON, once for each change', async () => {
    const { page, close } = await openGuest(demo, MARKUP);
    await expect.poll(async () => (await headlines(page)).length).toBe(1);
    await page.evaluate(() => {
      const heard: unknown[] = [];
      Reflect.set(window, 'heard', heard);
      document.addEventListener('eighths-change', (event) => {
        if (event instanceof CustomEvent) heard.push(structuredClone(event.detail));
      });
    });
    await cell(page, 3, 'How many').fill('80');
    await expect
      .poll(() => page.evaluate(() => JSON.stringify(Reflect.get(window, 'heard'))))
      .not.toBe('[]');
    const heard: unknown = await page.evaluate(() => Reflect.get(window, 'heard'));
    const { buy } = yardage({
      width: 42,
      pieces: [PIECES[0], PIECES[1], { ...PIECES[2], count: 80 }],
    });
    expect(heard).toMatchObject([
      {
        version: 1,
        buy: [
          {
            fabric: null,
            length: `${buy}`,
            increment: '4 1/2',
            increments: buy.dividedBy('4 1/2').toNumber(),
            yards: formatLength(buy, { unit: 'yd' }),
          },
        ],
      },
    ]);
    await close();
  });

  test('says how many sets a piece on hand gives', async () => {
    const { page, close } = await openGuest(
      demo,
      '<eighths-fabric width="20 1/2" pieces="1 of 3 by 3" on-hand-length="17 1/2"></eighths-fabric>',
    );
    await expect.poll(() => headlines(page)).toContain('The piece on hand gives 30 complete sets.');
    await close();
  });

  test.each([
    ['markup', '<img src=x onerror=alert(1)> of 2 by 2'],
    ['words', 'as many as you like'],
    ['a count that is none', '2 1/2 of 2 by 2'],
    ['nothing', ' '],
    [
      'a great many sizes',
      Array.from({ length: 300 }, (_, i) => `1 of ${i + 1}/16 by 2`).join('; '),
    ],
  ])('answers pieces that are %s with a sentence, and runs nothing', async (_, pieces) => {
    const { page, problems, close } = await openGuest(demo, '<eighths-fabric></eighths-fabric>');
    await page.locator('eighths-fabric').evaluate((node, text) => {
      node.setAttribute('pieces', text);
    }, pieces);
    await expect.poll(() => page.locator('.error:not(:empty)').first().isVisible()).toBe(true);
    expect(await page.locator('eighths-fabric img').count()).toBe(0);
    expect(problems).toEqual([]);
    await close();
  });

  test.each([
    ['wide and light', 1280, 'light'],
    ['narrow and dark', 320, 'dark'],
  ] as const)(
    'has nothing that axe finds wrong, %s, and no sideways scroll',
    async (_, width, colorScheme) => {
      const { page, screenshot, close } = await demo.open('/fabric.html', {
        viewport: { width, height: 900 },
        colorScheme,
      });
      await expect.poll(async () => (await headlines(page)).length).toBe(5);
      await page
        .locator('details')
        .first()
        .evaluate((node) => node.setAttribute('open', ''));
      const axe = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
      await page.addScriptTag({ content: readFileSync(axe, 'utf8') });
      const found = await page.evaluate(async () => {
        const { violations } = await Reflect.get(window, 'axe').run(document);
        return violations.map(({ id, nodes }: { id: string; nodes: { html: string }[] }) => [
          id,
          nodes.map(({ html }) => html.slice(0, 120)),
        ]);
      });
      expect(found).toEqual([]);
      const scrolls = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(scrolls).toBeLessThanOrEqual(0);
      await screenshot(`fabric-${width}-${colorScheme}`);
      await close();
    },
  );
});
