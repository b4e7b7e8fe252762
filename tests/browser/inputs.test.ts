import { logCabin } from '@eighths/core';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { inChromium } from './support/engine.js';
import { type Demo, startDemo } from './support/launch.js';
import {
  button,
  choice,
  element,
  example,
  headline,
  input,
  listen,
  openGuest,
  readSheet,
  sheetOf,
} from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const hasFocus = (page: Page, label: string): Promise<boolean> =>
  input(page, label).evaluate((node) => node.matches(':focus'));

test('fraction buttons put a fraction to the number in the input that was used last', async () => {
  const { page, problems, close } = await demo.open('/blog.html');
  const field = input(page, 'Finished size');
  await field.focus();
  for (const [name, text] of [
    ['half an inch', '9 1/2'],
    ['1 eighth of an inch', '9 1/8'],
    ['7 eighths of an inch', '9 7/8'],
    ['A step more', '10'],
    ['A step less', '9 7/8'],
  ] as const) {
    const pressed = page.getByRole('group', { name: 'Put in a fraction' });
    await pressed.getByRole('button', { name, exact: true }).click();
    await expect.poll(() => field.inputValue()).toBe(text);
  }
  await expect.poll(() => headline(page)).toBe('9⅞ finished, trim to 10⅜');

  await input(page, 'Narrow log').fill('');
  await page.getByRole('group', { name: 'Put in a fraction' }).getByRole('button').first().click();
  await expect.poll(() => input(page, 'Narrow log').inputValue()).toBe('1/8');
  expect(await field.inputValue()).toBe('9 7/8');
  expect(problems).toEqual([]);
  await close();
});

test('a tap on a fraction leaves the focus, and the keyboard of a phone, where it was', async () => {
  const { page, close } = await demo.open('/blog.html', {
    hasTouch: inChromium,
    isMobile: inChromium,
    viewport: { width: 375, height: 700 },
  });
  // Firefox’s driver has no finger; what is pressed with its mouse moves the focus in the same way.
  const tap = (locator: Locator) => (inChromium ? locator.tap() : locator.click());
  await tap(input(page, 'Wide log'));
  expect(await hasFocus(page, 'Wide log')).toBe(true);
  await tap(page.getByRole('group', { name: 'Put in a fraction' }).getByRole('button').nth(4));
  await expect.poll(() => input(page, 'Wide log').inputValue()).toBe('1 5/8');
  expect(await hasFocus(page, 'Wide log')).toBe(true);
  await close();
});

test('arrow keys step a length by an eighth and a count by one, and stop above zero', async () => {
  const { page, close } = await demo.open('/blog.html');
  const press = async (label: string, key: string, text: string) => {
    await input(page, label).press(key);
    await expect.poll(() => input(page, label).inputValue()).toBe(text);
  };
  await press('Finished size', 'ArrowUp', '9 1/8');
  await press('Finished size', 'ArrowDown', '9');
  await press('Finished size', 'ArrowDown', '8 7/8');
  await press('Rounds', 'ArrowUp', '5');
  await press('Rounds', 'ArrowDown', '4');
  await input(page, 'Rounds').fill('1');
  await press('Rounds', 'ArrowDown', '1');
  await input(page, 'Narrow log').fill('1/8');
  await press('Narrow log', 'ArrowDown', '1/8');
  // What is no single length is left alone.
  await input(page, 'Wide log').fill('1 1/4; 1');
  await press('Wide log', 'ArrowUp', '1 1/4; 1');
  await close();
});

test('other measures show the same block, and switching back restores what was typed', async () => {
  const { page, problems, close } = await demo.open('/');
  const heard = await listen(page);
  const inches = await readSheet(page);
  await page.getByText('Sewing, trimming and measures').click();
  await choice(page, 'Centimeters').check();
  await expect.poll(() => headline(page)).toBe('22.86 cm finished, trim to 24.13 cm');
  for (const [label, text] of [
    ['Finished size', '22.86'],
    ['Rounds', '4'],
    ['Wide log', '3.175'],
    ['Narrow log', '1.27'],
    ['Wide strip cut', '5.08'],
    ['Narrow strip cut', '3.81'],
    ['Center', '5.08'],
    ['Blocks', '1'],
  ] as const) {
    expect(await input(page, label).inputValue(), label).toBe(text);
  }
  const centimeters = await readSheet(page);
  expect(centimeters.trims[3]).toEqual({
    round: 'Round 4 trim to 24.13 cm untrimmed 26.035 cm',
    sides: {
      top: ['5.715', '1.905', '1.27'],
      right: ['13.335', '3.81', '0.635'],
      bottom: ['13.335', '3.81', '0.635'],
      left: ['5.715', '1.905', '1.27'],
    },
  });
  expect(centimeters.strips).toEqual([
    ['wide', '5.08', '119.38'],
    ['narrow', '3.81', '144.78'],
  ]);
  expect(await page.getByRole('table', { name: 'Cut list Centimeters' }).count()).toBe(1);

  await choice(page, 'Inches').check();
  await expect.poll(() => readSheet(page)).toEqual(inches);
  expect(await input(page, 'Wide log').inputValue()).toBe('1 1/4');
  expect(await heard()).toEqual([]);
  expect(problems).toEqual([]);
  await close();
});

test('a metric page takes and shows centimeters', async () => {
  const { page, problems, close } = await openGuest(
    demo,
    '<eighths-log-cabin units="metric" finished="24" rounds="3" log="2.5" strips-log="5" seam="0.75"></eighths-log-cabin>',
  );
  await expect.poll(() => headline(page)).toBe('24 cm finished, trim to 25.5 cm');
  expect(await input(page, 'Center').getAttribute('placeholder')).toBe('9');
  await input(page, 'Finished size').fill('10 in');
  await expect.poll(() => headline(page)).toBe('25.4 cm finished, trim to 26.9 cm');
  expect(problems).toEqual([]);
  await close();
});

test('without any attribute there is a block that can be sewn, in inches and in centimeters', async () => {
  const { page, problems, close } = await openGuest(
    demo,
    '<eighths-log-cabin></eighths-log-cabin><eighths-log-cabin units="metric"></eighths-log-cabin>',
  );
  const headlines = page.locator('[part=headline] [aria-hidden=true]');
  await expect
    .poll(() => headlines.allTextContents())
    .toEqual(['9', '9½', '24\u00a0cm', '25.5\u00a0cm']);
  expect(await page.locator('.error, .warnings').count()).toBe(0);
  expect(problems).toEqual([]);
  await close();
});

test('what the page fixes is shown as text and still counts', async () => {
  const { page, close } = await openGuest(
    demo,
    '<eighths-log-cabin finished="9" wide="1 1/4" narrow="1/2" strips-wide="2" strips-narrow="1 1/2" locked="wide strips-wide, kind hand"></eighths-log-cabin>',
  );
  await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
  for (const label of ['Wide log', 'Wide strip cut']) {
    expect(await input(page, label).count(), label).toBe(0);
  }
  expect(await input(page, 'Narrow log').count()).toBe(1);
  expect(await choice(page, 'Wide and narrow (curved)').count()).toBe(0);
  expect(await choice(page, 'Left').count()).toBe(0);
  expect(await page.locator('.fixed').allTextContents()).toEqual([
    'Right',
    'Wide and narrow (curved)',
    '1 1/4',
    '2',
  ]);
  await input(page, 'Finished size').fill('10');
  await expect.poll(() => headline(page)).toBe('10 finished, trim to 10½');
  expect(await readSheet(page)).toEqual(
    sheetOf(
      logCabin({
        finished: 10,
        rounds: 4,
        wide: '1 1/4',
        narrow: '1/2',
        strips: { wide: 2, narrow: '1 1/2' },
      }),
    ),
  );
  await close();
});

test('all sides alike asks for one width, and each kind keeps what was typed', async () => {
  const { page, problems, close } = await demo.open('/blog.html');
  await choice(page, 'All sides alike').check();
  await expect.poll(() => input(page, 'Wide log').count()).toBe(0);
  await input(page, 'Log').fill('3/4');
  await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
  expect(await input(page, 'Center').getAttribute('placeholder')).toBe('3');
  await choice(page, 'Wide and narrow (curved)').check();
  await expect.poll(() => input(page, 'Wide log').inputValue()).toBe('1 1/4');
  await choice(page, 'All sides alike').check();
  await expect.poll(() => input(page, 'Log').inputValue()).toBe('3/4');
  expect(problems).toEqual([]);
  await close();
});

test('what is folded away counts: seam, layout, direction and what is sewn first', async () => {
  const { page, close } = await demo.open('/');
  await page.getByText('Sewing, trimming and measures').click();
  await choice(page, 'Courthouse steps').check();
  await choice(page, 'Narrow pair').check();
  await choice(page, 'Counterclockwise').check();
  await input(page, 'Seam allowance').fill('3/8');
  await expect.poll(() => headline(page)).toBe('9 finished, trim to 9¾');
  const plan = logCabin({
    finished: 9,
    rounds: 4,
    center: 2,
    wide: '1 1/4',
    narrow: '1/2',
    strips: { wide: 2, narrow: '1 1/2' },
    layout: 'courthouse',
    first: 'narrow',
    direction: 'counterclockwise',
    seam: '3/8',
  });
  await expect.poll(() => readSheet(page)).toEqual(sheetOf(plan));
  expect(sheetOf(plan)).not.toEqual(sheetOf(example));
  await close();
});

test('the plan is a property of the element: the library’s own', async () => {
  const { page, close } = await demo.open('/');
  const plan = await element(page).evaluate((node) => JSON.stringify(Reflect.get(node, 'plan')));
  expect(JSON.parse(plan)).toEqual(JSON.parse(JSON.stringify(example)));
  await button(page, 'Next').click();
  await close();
});
