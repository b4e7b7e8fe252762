import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Demo, startDemo, type Visit } from './support/launch.js';
import {
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
let first: Visit;
beforeAll(async () => {
  demo = await startDemo();
  first = await demo.open('/');
});
afterAll(() => demo?.close());

const empty = async (visit: Visit, label: string) => {
  await input(visit.page, label).focus();
  await visit.page.keyboard.press('ControlOrMeta+a');
  await visit.page.keyboard.press('Delete');
};

const STALE = 'These numbers do not match the sizes above yet.';

/** What a screen reader would read as an input's description. */
const note = (visit: Visit, label: string): Promise<string> =>
  input(visit.page, label).evaluate((node) => {
    const { id } = node;
    const described = node.getAttribute('aria-describedby');
    const root = node.getRootNode();
    if (!(root instanceof ShadowRoot) || described === null) return `no description of ${id}`;
    return root.getElementById(described)?.textContent?.trim() ?? `no ${described}`;
  });

test.each(['10 1/2', '10-1/2', '10½', ' 9.50 ', '3 ft 4 in', '22.86cm', '1/2/3', '<b>9</b>'])(
  'every character of %j stays as it was typed',
  async (text) => {
    const visit = first;
    await visit.page.reload();
    await empty(visit, 'Finished size');
    let typed = '';
    for (const character of text) {
      await visit.page.keyboard.type(character);
      typed += character;
      expect(await input(visit.page, 'Finished size').inputValue()).toBe(typed);
    }
    await visit.page.keyboard.press('Tab');
    expect(await input(visit.page, 'Finished size').inputValue()).toBe(text);
    expect(visit.problems).toEqual([]);
  },
);

test('an unfinished fraction is out of date at once, and wrong only when the input is left', async () => {
  const visit = await demo.open('/blog.html');
  const { page } = visit;
  const field = input(page, 'Finished size');
  // A clock that stands still from before the first key: nobody has paused.
  await page.clock.install({ time: 0 });
  await page.clock.pauseAt(1000);
  await empty(visit, 'Finished size');
  await page.keyboard.type('10 1/');
  await expect.poll(() => page.getByText(STALE).count()).toBe(1);
  expect(await field.getAttribute('aria-invalid')).toBe('false');
  expect(await note(visit, 'Finished size')).toBe('');

  await page.keyboard.press('Tab');
  await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
  expect(await note(visit, 'Finished size')).toMatch(/^“10 1\/” stops before the length/);
  expect(await headline(page)).toBe('10 finished, trim to 10½');

  await field.focus();
  await page.keyboard.press('End');
  await page.keyboard.type('2');
  await expect.poll(() => field.getAttribute('aria-invalid')).toBe('false');
  expect(await note(visit, 'Finished size')).toBe('');
  await expect.poll(() => headline(page)).toBe('10½ finished, trim to 11');
  expect(await page.getByText(STALE).count()).toBe(0);
  expect(visit.problems).toEqual([]);
  await visit.close();
});

test('a pause says what is wrong without leaving the input', async () => {
  const visit = first;
  await visit.page.reload();
  const field = input(visit.page, 'Center');
  await empty(visit, 'Center');
  await visit.page.keyboard.type('two');
  await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
  expect(await note(visit, 'Center')).toMatch(/^“two” is not a length/);
  expect(await field.evaluate((node) => node.matches(':focus'))).toBe(true);
});

test.each([
  ['Finished size', '10', 'add up to 9, but the finished size is given as 10'],
  ['Rounds', '1000', 'from 1 to 50'],
  ['Rounds', '0', 'from 1 to 50'],
  ['Rounds', 'many', 'from 1 to 50'],
  ['Wide log', 'x', 'is not a length'],
  ['Narrow log', '-1/2', 'more than 0'],
  ['Wide strip cut', '1 1/2', 'at least 1¾'],
  ['Narrow strip cut', '1/8', 'at least 1'],
  ['Center', '0', 'more than 0'],
  ['Blocks', '1.5', 'from 1 to 10000'],
] as const)(
  '%s %j: the error stands at that input and the last numbers stay',
  async (label, text, words) => {
    const visit = first;
    const { page } = visit;
    await page.reload();
    const before = await input(page, label).inputValue();
    await input(page, label).fill(text);
    await page.keyboard.press('Tab');
    await expect.poll(() => page.locator('[aria-invalid=true]').count()).toBe(1);
    expect(await input(page, label).getAttribute('aria-invalid')).toBe('true');
    expect(await note(visit, label)).toContain(words);
    expect(await readSheet(page)).toEqual(sheetOf(example));
    expect(await page.getByText(STALE).isVisible()).toBe(true);
    expect(
      await page
        .locator('td.figure')
        .first()
        .evaluate((cell) => getComputedStyle(cell).textDecorationLine),
    ).toBe('line-through');

    await input(page, label).fill(before);
    await expect.poll(() => page.getByText(STALE).count()).toBe(0);
    expect(await page.locator('[aria-invalid=true]').count()).toBe(0);
    expect(visit.problems).toEqual([]);
  },
);

test('a change is told once, an error once, as plain JSON that leaves the shadow tree', async () => {
  const visit = await demo.open('/');
  const { page } = visit;
  const heard = await listen(page);
  await input(page, 'Center').fill('');
  await expect.poll(async () => (await heard()).length).toBe(1);
  await input(page, 'Finished size').fill('10');
  await page.keyboard.press('Tab');
  await expect.poll(async () => (await heard()).length).toBe(2);
  // The same block in other words is no change.
  await input(page, 'Finished size').fill('10.0');
  await page.keyboard.press('Tab');
  await input(page, 'Center').fill('two');
  await page.keyboard.press('Tab');
  await expect.poll(async () => (await heard()).length).toBe(3);
  await input(page, 'Center').fill('');
  await page.keyboard.press('Tab');
  await expect.poll(async () => (await heard()).length).toBe(4);

  const [emptied, changed, wrong, mended] = await heard();
  expect(mended).toEqual(changed);
  expect(emptied?.type).toBe('eighths-change');
  expect(changed).toMatchObject({
    type: 'eighths-change',
    detail: {
      version: 1,
      spec: { finished: '10', rounds: 4, wide: '1 1/4', narrow: '1/2' },
      plan: { finished: { width: '10', height: '10' }, center: { finished: { width: '3' } } },
    },
  });
  expect(wrong).toMatchObject({
    type: 'eighths-error',
    detail: { code: 'length-syntax', field: 'center', values: { text: 'two' } },
  });
  for (const { detail } of await heard()) {
    expect(JSON.parse(JSON.stringify(detail))).toEqual(detail);
  }
  await visit.close();
});

test('events bubble and are composed, come from the element, and none comes at load', async () => {
  const visit = await openGuest(demo, '<main></main>');
  const { page } = visit;
  const heard = await listen(page);
  await page.evaluate(() => {
    document.body.dataset.heard = '';
    for (const name of ['eighths-change', 'input', 'change']) {
      document.body.addEventListener(name, (event) => {
        const from = event.target instanceof Element ? event.target.localName : '';
        document.body.dataset.heard += `${name} ${from} ${event.bubbles} ${event.composed};`;
      });
    }
    const made = document.createElement('eighths-log-cabin');
    made.setAttribute('finished', '8');
    document.querySelector('main')?.append(made);
  });
  await expect.poll(() => headline(page)).toBe('8 finished, trim to 8½');
  expect(await heard()).toEqual([]);

  await input(page, 'Rounds').fill('3');
  await page.keyboard.press('Tab');
  await choice(page, 'All sides alike').check();
  await expect
    .poll(() => page.evaluate(() => document.body.dataset.heard))
    .toBe('eighths-change eighths-log-cabin true true;'.repeat(2));
  await visit.close();
});

test('the Enter key submits no form of the page', async () => {
  const visit = await openGuest(
    demo,
    `<form action="/left"><input name="q"><eighths-log-cabin></eighths-log-cabin><button>Go</button></form>`,
  );
  const { page } = visit;
  await input(page, 'Rounds').fill('3');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect
    .poll(() => element(page).evaluate((node) => node.matches(':focus-within')))
    .toBe(true);
  expect(new URL(page.url()).pathname).toBe('/guest.html');
  // The form itself is alive: its own input submits it.
  await page.locator('input[name=q]').press('Enter');
  await page.waitForURL('**/left*');
  await visit.close();
});
