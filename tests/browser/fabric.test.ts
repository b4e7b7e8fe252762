import { cuttingPlan, fabricYardage, formatLength, logCabin, yardage } from '@eighths/core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './support/axe.js';
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

const bought = (y: { readonly yards: string; readonly meters: string }): string =>
  `Buy ${y.yards} or ${y.meters}`.replace(/\s+/g, ' ');

describe('the fabric element', () => {
  test('says what the library says: what to buy, and how to cut it', async () => {
    const { page, problems, close } = await openGuest(demo, MARKUP);
    const answer = yardage({ width: 42, pieces: PIECES });
    const { plan } = answer;
    await expect.poll(() => headlines(page)).toEqual([bought(answer)]);
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
    const answer = yardage({
      width: 42,
      pieces: [
        { width: '2 1/2', length: '8 1/2', count: 60 },
        { width: 3, length: '4 1/2', count: 24 },
        { width: '6 1/2', length: '12 1/2', count: 5 },
      ],
    });
    await expect.poll(() => headlines(page)).toEqual([bought(answer)]);
    expect(problems).toEqual([]);
    await close();
  });

  test('shows an error beside the cell it is about, and keeps the last answer, out of date', async () => {
    const { page, problems, close } = await openGuest(demo, MARKUP);
    await expect.poll(async () => (await headlines(page)).length).toBe(1);
    const field = cell(page, 1, 'Strip width');
    // Longer than the fabric is wide: cut along its length.
    await cell(page, 1, 'Length').fill('45');
    await page.getByRole('heading', { name: 'Cut along the length' }).waitFor();
    const before = await headlines(page);
    await field.fill('43');
    await field.blur();
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    const note = await field.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${note}"]`).textContent()).toContain(
      'neither across nor along',
    );
    expect(await headlines(page)).toEqual(before);
    await expect.poll(() => page.getByText('do not match the sizes').isVisible()).toBe(true);
    await field.fill('4');
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
            method: 'plain',
          },
        ],
      },
    ]);
    await close();
  });

  test('says what thrifty cutting saves and how many cuts it takes, and cuts as it is told', async () => {
    // Four of the narrow pieces come from the end of the wide strip: arithmetic.
    const pieces = [
      { width: 5, length: 5, count: 6 },
      { width: '2 1/2', length: 6, count: 8 },
    ];
    const { page, problems, close } = await openGuest(
      demo,
      '<eighths-fabric width="42" pieces="6 of 5 by 5; 8 of 2 1/2 by 6"></eighths-fabric>',
    );
    const best = yardage({ width: 42, pieces });
    const plain = yardage(cuttingPlan({ width: 42, pieces, method: 'plain' }));
    await expect.poll(() => headlines(page)).toEqual([bought(best)]);
    const [one, other] = best.alternatives;
    const saving = page.locator('.sheet > p').filter({ hasText: 'Thrifty saves' });
    expect(await saving.textContent()).toContain(`${other?.cuts} cuts`);
    expect(await saving.textContent()).toContain(`plain has ${one?.cuts}`);
    expect((await steps(page)).join()).toContain('1 end 12, cut into 2 rows 2½');
    await page.getByRole('radio', { name: /^Plain/ }).check();
    await expect.poll(() => headlines(page)).toEqual([bought(plain)]);
    expect((await steps(page)).join()).not.toContain('1 end');
    expect(await saving.count()).toBe(1);
    expect(problems).toEqual([]);
    await close();
  });

  test('joins what may be joined, straight or diagonally, and says where the joins fall', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      '<eighths-fabric width="40" pieces="1 of 2 1/2 by 312"></eighths-fabric>',
    );
    const long = { width: '2 1/2', length: 312, count: 1 };
    const binding = { ...long, joinable: true };
    // Uncut at first: nothing says that it may be joined.
    await expect
      .poll(() => headlines(page))
      .toEqual([bought(fabricYardage({ width: 40, pieces: [long] }))]);
    await cell(page, 1, 'May be').selectOption('joined');
    const diagonal = fabricYardage({ width: 40, pieces: [binding] });
    await expect.poll(() => headlines(page)).toEqual([bought(diagonal)]);
    expect((await steps(page)).join()).toContain('Join 9 strips 2½ wide with diagonal seams');
    expect(await page.getByText('Piece 1, number 1').textContent()).toContain('38¾');
    await page.getByRole('radio', { name: 'Straight' }).check();
    const straight = fabricYardage({ width: 40, pieces: [binding], join: 'straight' });
    await expect.poll(() => headlines(page)).toEqual([bought(straight)]);
    await expect.poll(async () => (await steps(page)).join()).toContain('with straight seams of ¼');
    expect(problems).toEqual([]);
    await close();
  });

  test('cuts along the length what is longer than the fabric is wide, and others beside it', async () => {
    const { page, close } = await openGuest(
      demo,
      '<eighths-fabric width="40" pieces="4 of 5 1/2 by 70; 30 of 6 by 6"></eighths-fabric>',
    );
    await page.getByRole('heading', { name: 'Cut along the length' }).waitFor();
    const block = page.getByRole('img', { name: /^Fabric 40 by 70/ });
    const order = await block.locator('text.order').allTextContents();
    expect(order.filter((number) => number === '1')).toHaveLength(4);
    expect(order.filter((number) => number === '2')).toHaveLength(30);
    await close();
  });

  test('cuts from what is on hand, row by row, and says how many sets and what is missing', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      '<eighths-fabric width="40" pieces="30 of 5 by 5" on-hand="1 of 18 by 21"></eighths-fabric>',
    );
    const missing = yardage({ width: 40, pieces: [{ width: 5, length: 5, count: 18 }] });
    await expect.poll(() => headlines(page)).toEqual([bought(missing)]);
    expect(await page.getByText('12 of 30 pieces').count()).toBe(1);
    expect(await page.getByText('gives 0 complete sets').count()).toBe(1);
    const fabric = page.getByRole('group', { name: 'Fabric 1', exact: true });
    await fabric.getByLabel('How many', { exact: true }).fill('3');
    await expect.poll(() => headlines(page)).toEqual(['All of it can be cut from what is on hand']);
    await fabric.getByLabel('Missing corner').fill('20 by 4');
    await fabric.getByLabel('Missing corner').blur();
    const corner = fabric.getByLabel('Missing corner');
    await expect.poll(() => corner.getAttribute('aria-invalid')).toBe('true');
    await corner.fill('6 by 4');
    await page
      .getByRole('img', { name: /A corner of 6 by 4 is missing/ })
      .first()
      .waitFor();
    // The input that fractions were put into goes with it.
    await fabric.getByLabel('Usable width').focus();
    await page.getByRole('button', { name: 'Take fabric 1 away' }).click();
    await expect
      .poll(() => headlines(page))
      .toEqual([bought(yardage({ width: 40, pieces: [{ width: 5, length: 5, count: 30 }] }))]);
    expect(problems).toEqual([]);
    await close();
  });

  test('counts precuts in their packs, and names what cannot be cut from them', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      '<eighths-fabric pieces="30 of 5 by 5; 1 of 2 1/2 by 30"></eighths-fabric>',
    );
    await page.getByLabel('Bought as').selectOption('Fat quarters');
    await page.getByLabel('Sold in packs of').fill('2');
    await expect.poll(() => headlines(page)).toEqual(['Fat quarters: 3 2 packs of 2, 1 to spare']);
    expect(await page.getByRole('listitem').filter({ hasText: 'of piece 2' }).count()).toBe(1);
    expect(await page.getByText('The shop cuts in').count()).toBe(0);
    await page.getByLabel('Bought as').selectOption('5-inch squares');
    await expect
      .poll(() => headlines(page))
      .toEqual(['5-inch squares: 30 15 packs of 2, 0 to spare']);
    expect(problems).toEqual([]);
    await close();
  });

  test('is worked with the keyboard alone: a row, what may be done with it, and fabric on hand', async () => {
    const { page, close } = await openGuest(
      demo,
      '<eighths-fabric width="40" pieces="1 of 5 by 5"></eighths-fabric>',
    );
    await page.getByRole('button', { name: 'Add a piece' }).press('Enter');
    await cell(page, 2, 'How many').focus();
    for (const text of ['1', '2 1/2', '100', '']) {
      await page.keyboard.type(text);
      await page.keyboard.press('Tab');
    }
    await page.keyboard.press('j');
    await expect.poll(() => cell(page, 2, 'May be').inputValue()).toBe('joined');
    await expect.poll(async () => (await steps(page)).join()).toContain('Join 3 strips');
    await page.locator('summary', { hasText: 'Fabric on hand' }).press('Enter');
    await page.getByRole('button', { name: 'Add fabric on hand' }).press('Enter');
    await page.getByRole('group', { name: 'Fabric 1' }).getByLabel('Usable width').fill('10');
    await page.getByRole('group', { name: 'Fabric 1' }).getByLabel('Usable length').fill('10');
    await expect.poll(() => page.getByText('1 of 2 pieces').count()).toBe(1);
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
      await expect.poll(async () => (await headlines(page)).length).toBe(9);
      await page
        .locator('details')
        .first()
        .evaluate((node) => node.setAttribute('open', ''));
      expect(await violations(page)).toEqual([]);
      const scrolls = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(scrolls).toBeLessThanOrEqual(0);
      await screenshot(`fabric-${width}-${colorScheme}`);
      await close();
    },
  );
});
