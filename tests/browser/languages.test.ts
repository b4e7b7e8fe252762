import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './support/axe.js';
import { type Demo, startDemo } from './support/launch.js';
import { headline, input, listen, moduleScript, openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const script = (name: string): string =>
  `<script type="module" src="/eighths/eighths${name}.js"></script>`;
const german = script('-de');
const japanese = script('-ja');

const block = (attributes = ''): string =>
  `<eighths-log-cabin finished="9" rounds="4" center="2" wide="1 1/4" narrow="1/2" strips-wide="2" strips-narrow="1 1/2"${attributes}></eighths-log-cabin>`;

const GERMAN = '9 fertig, auf 9½ zurückschneiden';
const ENGLISH = '9 finished, trim to 9½';
const JAPANESE = 'できあがり9、9½に切りそろえる';

/** What the elements say once all scripts have run. */
const says = (page: Page, text: string) => expect.poll(() => headline(page)).toBe(text);

describe('a language’s file', () => {
  test.each([
    ['after the elements', moduleScript + german],
    ['before the elements', german + moduleScript],
    ['twice', german + moduleScript + german.replace('-de.js', '-de.js?again')],
    ['before one element alone', german + script('-log-cabin')],
    ['as a classic script', `${german.replace(' type="module"', ' defer')}${moduleScript}`],
  ])('%s: the element speaks it', async (_, head) => {
    const { page, problems, close } = await openGuest(demo, block(' lang="de"'), { head });
    await says(page, GERMAN);
    expect(problems).toEqual([]);
    await close();
  });

  test('that comes long after the element is heard then, without a word to the page', async () => {
    const { page, problems, close } = await openGuest(demo, block(' lang="de"'));
    await says(page, ENGLISH);
    const heard = await listen(page);
    const before = await page.evaluate(() => Object.keys(window));
    await page.addScriptTag({ type: 'module', url: '/eighths/eighths-de.js' });
    await says(page, GERMAN);
    expect(await page.evaluate(() => Object.keys(window))).toEqual(before);
    expect(await heard()).toEqual([]);
    expect(problems).toEqual([]);
    await close();
  });
});

describe('the language is that of', () => {
  const head = moduleScript + german + japanese;

  test('the element itself, before that of what it stands in', async () => {
    const body = `<main lang="ja">${block(' lang="de"')}</main>`;
    const { page, close } = await openGuest(demo, body, { head });
    await says(page, GERMAN);
    await close();
  });

  test('what it stands in, through a shadow root', async () => {
    const { page, close } = await openGuest(demo, '<main lang="de"></main>', { head });
    await page.evaluate((html) => {
      const shadow = document.querySelector('main')?.attachShadow({ mode: 'closed' });
      const inside = document.createElement('div');
      inside.innerHTML = html;
      shadow?.append(inside);
      // Playwright does not see into a closed root.
      const made = inside.querySelector('eighths-log-cabin');
      Object.assign(window, { made });
    }, block());
    const shown = () =>
      page.evaluate(
        () => Reflect.get(window, 'made').shadowRoot.querySelector('[part=headline]').textContent,
      );
    await expect.poll(shown).toContain('fertig');
    await page.locator('main').evaluate((main) => main.setAttribute('lang', 'ja'));
    await expect.poll(shown).toContain('できあがり');
    await close();
  });

  test('the document, and changes with each of them', async () => {
    const { page, problems, close } = await openGuest(demo, `<main>${block()}</main>`, { head });
    await says(page, ENGLISH);
    await page.evaluate(() => document.documentElement.setAttribute('lang', 'de-AT'));
    await says(page, GERMAN);
    await page.locator('main').evaluate((main) => main.setAttribute('lang', 'ja'));
    await says(page, JAPANESE);
    await page.locator('eighths-log-cabin').evaluate((made) => made.setAttribute('lang', 'en-GB'));
    await says(page, ENGLISH);
    await page.locator('eighths-log-cabin').evaluate((made) => made.removeAttribute('lang'));
    await says(page, JAPANESE);
    expect(problems).toEqual([]);
    await close();
  });

  test('where it is moved to', async () => {
    const body = `<div lang="de"></div><main>${block()}</main>`;
    const { page, close } = await openGuest(demo, body, { head });
    await says(page, ENGLISH);
    await page.locator('eighths-log-cabin').evaluate((made) => {
      document.querySelector('div')?.append(made);
    });
    await says(page, GERMAN);
    // What it has left does not concern it any more.
    await page.locator('main').evaluate((main) => main.setAttribute('lang', 'ja'));
    await says(page, GERMAN);
    await close();
  });
});

describe('numbers', () => {
  const head = moduleScript + german;
  const labels = { de: 'Fertigmaß', en: 'Finished size' };

  test('typed with a comma are read, in German', async () => {
    const body = '<eighths-log-cabin lang="de" rounds="1" wide="2" narrow="1"></eighths-log-cabin>';
    const { page, close } = await openGuest(demo, body, { head });
    await input(page, labels.de).fill('10,5');
    await says(page, '10½ fertig, auf 11 zurückschneiden');
    await input(page, labels.de).fill('10,625');
    await says(page, '10⅝ fertig, auf 11⅛ zurückschneiden');
    await close();
  });

  test('follow the language in the inputs, and the block stays the same', async () => {
    const body =
      '<eighths-log-cabin lang="de" units="metric" rounds="1" wide="5" narrow="2.5"></eighths-log-cabin>';
    const { page, close } = await openGuest(demo, body, { head });
    await input(page, labels.de).fill('20,125');
    await says(page, '20,125 cm fertig, auf 21,625 cm zurückschneiden');
    const heard = await listen(page);
    await page.locator('eighths-log-cabin').evaluate((made) => made.setAttribute('lang', 'en'));
    await says(page, '20.125 cm finished, trim to 21.625 cm');
    expect(await input(page, labels.en).inputValue()).toBe('20.125');
    await page.locator('eighths-log-cabin').evaluate((made) => made.setAttribute('lang', 'de'));
    expect(await input(page, labels.de).inputValue()).toBe('20,125');
    expect(await heard()).toEqual([]);
    await close();
  });

  test('set by a script are numbers, whatever sign the page’s language has', async () => {
    const body = '<eighths-log-cabin lang="de" units="metric"></eighths-log-cabin>';
    const { page, close } = await openGuest(demo, body, { head });
    await page.locator('eighths-log-cabin').evaluate((made) => {
      Object.assign(made, { finished: 22.125, rounds: 1, wide: 5, narrow: 2.5 });
    });
    await says(page, '22,125 cm fertig, auf 23,625 cm zurückschneiden');
    await close();
  });

  test('are those of a language without a catalog, in English words that say they are', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      '<eighths-log-cabin lang="nl" units="metric"></eighths-log-cabin>',
      { head },
    );
    await says(page, '24 cm finished, trim to 25,5 cm');
    expect(await page.locator('[part=root]').getAttribute('lang')).toBe('en');
    expect(problems).toEqual([]);
    await close();
  });

  test('in metric are meters to buy, and the other measure beside them', async () => {
    const body = '<eighths-fabric lang="de" units="metric"></eighths-fabric>';
    const { page, close } = await openGuest(demo, body, { head });
    await expect.poll(() => headline(page)).toMatch(/^\d+,\d\sm kaufen oder ≈ [\d⅛¼⅜½⅝¾⅞]+\syd$/);
    expect(await page.locator('input[id="pieces[0].width"]').inputValue()).toBe('6,5');
    await close();
  });
});

describe('a page', () => {
  const elements = (units: string): string =>
    ['log-cabin', 'unit', 'fabric']
      .map((name) => `<h2>${name}</h2><eighths-${name} units="${units}"></eighths-${name}>`)
      .join('');

  test.each([
    ['de', 'inches', 'auf 9½ zurückschneiden'],
    ['ja', 'metric', '25.5 cmに切りそろえる'],
  ])(
    'in %s stays within 320 pixels, is accessible, and has no problem',
    async (language, units, words) => {
      const body = `<main lang="${language}"><h1>${language}</h1>${elements(units)}</main>`;
      const { page, problems, screenshot, close } = await openGuest(demo, body, {
        head: moduleScript + script(`-${language}`),
        viewport: { width: 320, height: 640 },
      });
      await expect.poll(() => headline(page)).toContain(words);
      for (const folded of await page.locator('summary').all()) await folded.click();
      await screenshot(`language-${language}`);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
      expect(await violations(page)).toEqual([]);
      expect(problems).toEqual([]);
      await close();
    },
  );
});
