import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Demo, startDemo, type Visit } from './support/launch.js';
import { button, headline, input, openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const head = '<script type="module" src="/eighths/as-needed/eighths.js"></script>';
const nine = 'finished="9" rounds="4" wide="1 1/4" narrow="1/2"';

const open = (body: string): Promise<Visit> => openGuest(demo, body, { head });

/** The files that were fetched so far, without the hash in their names. */
const fetched = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .map(({ name }) => name.replace(/^.*\//, '').replace(/-[\w-]{8}(?=\.js$)/, '')),
  );

test('a page without an element loads no element', async () => {
  const { page, problems, close } = await open('<p>About us</p>');
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(done)));
  expect([...(await fetched(page))].sort()).toEqual(['eighths.js', 'languages.js']);
  expect(problems).toEqual([]);
  await close();
});

test('a page with a log cabin loads it without its panels, where it wants none', async () => {
  const { page, problems, close } = await open(
    `<eighths-log-cabin ${nine} panels="none"></eighths-log-cabin>`,
  );
  await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
  const files = await fetched(page);
  expect(files).toContain('log-cabin.js');
  for (const other of ['log-cabin-workshop.js', 'fabric.js', 'quilt.js', 'unit.js', 'de.js']) {
    expect(files).not.toContain(other);
  }
  expect(problems).toEqual([]);
  await close();
});

test('the panels come to a block that is shown, keep what was typed, and work', async () => {
  const { page, problems, close } = await open('<eighths-log-cabin></eighths-log-cabin>');
  await input(page, 'Finished size').fill('10 1/2');
  await page.locator('.panel-compare > summary').click();
  await page.locator('.panel-compare .contents').waitFor();
  expect(await page.locator('#finished').inputValue()).toBe('10 1/2');
  // The panels’ own style sheet is there, too.
  expect(
    await page.evaluate(
      () => document.querySelector('eighths-log-cabin')?.shadowRoot?.adoptedStyleSheets.length ?? 0,
    ),
  ).toBe(2);
  expect(problems).toEqual([]);
  await close();
});

test('an element that is added later is loaded then, as a tag and as a division', async () => {
  const { page, problems, close } = await open('<main></main>');
  await page.evaluate(() => {
    const main = document.querySelector('main');
    main?.append(document.createElement('eighths-unit'));
  });
  await page.locator('eighths-unit [part=headline]').waitFor();
  expect(await fetched(page)).not.toContain('log-cabin.js');
  await page.evaluate((given) => {
    const division = document.createElement('div');
    division.dataset.eighths = 'log-cabin';
    for (const [, name = '', value = ''] of given.matchAll(/([\w-]+)="([^"]*)"/g)) {
      division.setAttribute(`data-${name}`, value);
    }
    document.querySelector('main')?.append(division);
  }, nine);
  await expect
    .poll(() => page.locator('eighths-log-cabin [part=headline]').first().isVisible())
    .toBe(true);
  expect(problems).toEqual([]);
  await close();
});

test('the page’s language is loaded, and another when the page changes to it', async () => {
  const { page, problems, close } = await open(
    `<div lang="de-CH"><eighths-log-cabin ${nine} panels="none"></eighths-log-cabin></div>`,
  );
  await page.getByRole('textbox', { name: 'Fertigmaß', exact: true }).waitFor();
  expect(await fetched(page)).not.toContain('fr.js');
  await page.evaluate(() => document.querySelector('div')?.setAttribute('lang', 'fr'));
  await button(page, 'Imprimer').waitFor();
  expect(await fetched(page)).toContain('fr.js');
  expect(problems).toEqual([]);
  await close();
});

test('a policy that allows the page’s own scripts is kept', async () => {
  const { page, problems, close } = await openGuest(
    demo,
    `<eighths-log-cabin ${nine}></eighths-log-cabin>`,
    {
      head,
      headers: { 'content-security-policy': "default-src 'none'; script-src 'self'" },
    },
  );
  await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
  await page.locator('.panel-compare > summary').waitFor();
  expect(problems).toEqual([]);
  await close();
});

test('beside the one file, nothing is defined twice and nothing is said', async () => {
  const { page, problems, close } = await openGuest(
    demo,
    `<eighths-log-cabin ${nine}></eighths-log-cabin>`,
    { head: `<script type="module" src="/eighths/eighths.js"></script>${head}` },
  );
  await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
  await expect.poll(() => fetched(page)).toContain('log-cabin-workshop.js');
  expect(problems).toEqual([]);
  await close();
});
