import { logCabin } from '@eighths/core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Demo, startDemo } from './support/launch.js';
import { example, headline, input, openGuest, readSheet, sheetOf } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const TYPED = [
  ['Finished size', '9'],
  ['Rounds', '4'],
  ['Wide log', '1 1/4'],
  ['Narrow log', '1/2'],
  ['Wide strip cut', '2'],
  ['Narrow strip cut', '1 1/2'],
  ['Center', '2'],
] as const;

test('a block typed by keyboard shows the numbers of the library, for one block and for many', async () => {
  const { page, problems, close } = await openGuest(
    demo,
    '<eighths-log-cabin finished="12" rounds="2" wide="1" narrow="3/4"></eighths-log-cabin>',
  );
  await expect.poll(() => headline(page)).toBe('12 finished, trim to 12½');
  await page.keyboard.press('Tab');
  for (const [label, text] of TYPED) {
    const field = input(page, label);
    await field.focus();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type(text);
    expect(await field.inputValue()).toBe(text);
  }
  await page.keyboard.press('Tab');
  await expect.poll(() => readSheet(page)).toEqual(sheetOf(example));

  await page.keyboard.type('16');
  await expect.poll(() => readSheet(page)).toEqual(sheetOf(example, 16));
  expect(problems).toEqual([]);
  await close();
});

test('the example of the README stands on the first page, every number of it', async () => {
  const { page, problems, close } = await demo.open('/');
  const sheet = await readSheet(page);
  expect(sheet).toEqual(sheetOf(example));
  expect(sheet.headline).toBe('9 finished, trim to 9½');
  expect(sheet.trims.map(({ round }) => round)).toEqual([
    'Round 1 trim to 4¼ untrimmed 5',
    'Round 2 trim to 6 untrimmed 6¾',
    'Round 3 trim to 7¾ untrimmed 8½',
    'Round 4 trim to 9½ untrimmed 10¼',
  ]);
  expect(sheet.trims[3]?.sides).toEqual({
    top: ['2¼', '¾', '½'],
    right: ['5¼', '1½', '¼'],
    bottom: ['5¼', '1½', '¼'],
    left: ['2¼', '¾', '½'],
  });
  expect(sheet.strips).toEqual([
    ['wide', '2', '47'],
    ['narrow', '1½', '57'],
  ]);
  expect(problems).toEqual([]);
  await close();
});

test('the blog’s page shows the same block with its own fabrics, for sixteen blocks', async () => {
  const { page, problems, close } = await demo.open('/blog.html');
  const plan = logCabin({
    finished: 9,
    rounds: 4,
    wide: '1 1/4',
    narrow: '1/2',
    strips: { wide: 2, narrow: '1 1/2' },
    fabrics: { center: 'marigold', wide: 'dusk', narrow: 'linen' },
  });
  expect(await readSheet(page)).toEqual(sheetOf(plan, 16));
  expect(await input(page, 'Center').getAttribute('placeholder')).toBe('2');
  expect(problems).toEqual([]);
  await close();
});

test('the shop’s page shows a plain block from strips that it fixes', async () => {
  const { page, problems, close } = await demo.open('/shop.html');
  // The pattern further down has tables of its own.
  await page.locator('eighths-quilt').evaluate((quilt) => quilt.remove());
  const plan = logCabin({
    finished: 12,
    rounds: 3,
    log: '1 1/2',
    strips: { log: '2 1/2' },
    fabrics: { left: 'linen', top: 'linen', right: 'blue', bottom: 'blue' },
  });
  expect(await readSheet(page)).toEqual(sheetOf(plan));
  expect(await input(page, 'Strip cut').count()).toBe(0);
  expect(problems).toEqual([]);
  await close();
});
