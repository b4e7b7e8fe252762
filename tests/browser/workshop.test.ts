import { logCabin, trimSheets } from '@eighths/core';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './support/axe.js';
import { inChromium } from './support/engine.js';
import { type Demo, startDemo, type Visit } from './support/launch.js';
import { printed } from './support/paper.js';
import type { PdfPage } from './support/pdfPaths.js';
import {
  element,
  example,
  headline,
  input,
  openGuest,
  readSheet,
  sheetOf,
} from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const PANELS = [
  'finder',
  'resize',
  'strips',
  'arc',
  'compare',
  'settings',
  'table',
  'seam',
  'sheets',
] as const;
type Panel = (typeof PANELS)[number];

const script = (name: string) => `<script type="module" src="/eighths/${name}.js"></script>`;
const head = script('eighths-log-cabin-workshop');

/** The nine-inch block of the README, with more attributes. */
const tag = (more = '') =>
  `<main><h1>Guest</h1><eighths-log-cabin finished="9" rounds="4" wide="1 1/4" narrow="1/2" strips-wide="2" strips-narrow="1 1/2" ${more}></eighths-log-cabin></main>`;

const panel = (page: Page, name: Panel): Locator => page.locator(`.panel-${name}`);
const contents = (page: Page, name: Panel): Locator => panel(page, name).locator('.contents');
const within = (page: Page, name: Panel, label: string): Locator =>
  panel(page, name).getByRole('textbox', { name: label, exact: true });
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

/** What each panel is for, done: everything that it can show is shown. */
const uses: Readonly<Record<Panel, (page: Page) => Promise<unknown>>> = {
  finder: (page) => press(page, 'Show up to 100'),
  resize: (page) => within(page, 'resize', 'Wished finished size').fill('12'),
  strips: (page) => within(page, 'strips', 'wide, cut 2: strips').fill('20'),
  arc: (page) => within(page, 'arc', 'Center, or from to').fill('1 to 3'),
  compare: (page) => press(page, 'Keep the block above as the other'),
  settings: (page) => within(page, 'settings', 'Blocks down').fill('6'),
  table: (page) => within(page, 'table', 'Layers cut at once').fill('4'),
  seam: async (page) => {
    await within(page, 'seam', 'They measure').fill('3 3/8');
    await within(page, 'seam', 'Blocks measure, raw edge to raw edge').fill('9 1/2; 9 1/4');
  },
  sheets: (page) => page.getByRole('radio', { name: 'A4', exact: true }).check(),
};

async function openPanel(name: Panel, options: Parameters<typeof openGuest>[2] = {}) {
  const visit = await openGuest(demo, tag(`panels="${name}" panels-open="${name}"`), {
    head,
    ...options,
  });
  await contents(visit.page, name).waitFor();
  return visit;
}

async function openAll(options: Parameters<typeof openGuest>[2] = {}) {
  const visit = await openGuest(demo, tag(`panels-open="${PANELS.join(' ')}"`), {
    head,
    ...options,
  });
  for (const name of PANELS) {
    await contents(visit.page, name).waitFor();
    await uses[name](visit.page);
  }
  return visit;
}

describe('a page says which panels there are', () => {
  test.each([
    ['by default all', '', PANELS],
    ['those that it names', 'panels="sheets finder"', ['finder', 'sheets']],
    ['none', 'panels="none"', []],
  ] as const)('%s', async (_, attribute, names) => {
    const { page, problems, close } = await openGuest(demo, tag(attribute), { head });
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    const classes = await page
      .locator('details.panel')
      .evaluateAll((list) => list.map(({ className }) => className));
    expect(classes).toEqual(names.map((name) => `panel panel-${name}`));
    expect(problems).toEqual([]);
    await close();
  });

  test('and the calculator’s own file has none', async () => {
    const { page, close } = await openGuest(demo, tag(), { head: script('eighths-log-cabin') });
    await expect.poll(() => readSheet(page)).toEqual(sheetOf(example));
    expect(await page.locator('.panels').count()).toBe(0);
    await close();
  });
});

describe('a panel', () => {
  test('is worked out only while it is open, and keeps what was typed in it', async () => {
    const { page, problems, close } = await openGuest(demo, tag(), { head });
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    expect(await page.locator('.contents').count()).toBe(0);
    const summary = panel(page, 'finder').locator('summary');
    await summary.press('Enter');
    await within(page, 'finder', 'Rounds').fill('3');
    await input(page, 'Finished size').fill('10');
    await expect.poll(() => headline(page)).toBe('10 finished, trim to 10½');
    expect(await within(page, 'finder', 'Rounds').inputValue()).toBe('3');
    // What is typed above is followed a moment later.
    await expect.poll(() => within(page, 'finder', 'Finished, or from to').inputValue()).toBe('10');
    await summary.press('Enter');
    await expect.poll(() => page.locator('.contents').count()).toBe(0);
    await summary.press('Enter');
    await expect.poll(() => within(page, 'finder', 'Rounds').inputValue()).toBe('3');
    expect(problems).toEqual([]);
    await close();
  });

  test('says what is wrong at its own input once it is left, and not in the block’s', async () => {
    const { page, close } = await openPanel('finder');
    await within(page, 'finder', 'Wide, or from to').fill('2 to 1');
    expect(await page.locator('.error:visible').count()).toBe(0);
    await page.keyboard.press('Tab');
    await page.locator('.panel .error').waitFor();
    expect(await page.locator('[aria-invalid=true]').getAttribute('id')).toBe('find-wide');
    expect(await readSheet(page)).toEqual(sheetOf(example));
    await close();
  });

  test('is written anew when the reader changes the units', async () => {
    const { page, close } = await openPanel('finder');
    await within(page, 'finder', 'Center, or from to').fill('1 to 2');
    await page.getByText('Sewing, trimming and measures').click();
    await page.getByRole('radio', { name: 'Centimeters', exact: true }).check();
    await expect
      .poll(() => within(page, 'finder', 'Center, or from to').inputValue())
      .toBe('2.54 to 5.08');
    await close();
  });
});

describe('what is chosen', () => {
  test('in the finder fills the inputs, and the sheet follows', async () => {
    const { page, problems, close } = await openPanel('finder');
    await within(page, 'finder', 'Wide : narrow wished').fill('5 : 2');
    await within(page, 'finder', 'Center wished').fill('3');
    const first = page
      .getByRole('table', { name: 'Blocks that come out exactly' })
      .locator('tbody tr');
    await expect.poll(() => first.first().textContent()).toContain('½');
    await press(page, 'Use 1');
    const texts = await Promise.all(
      ['Wide log', 'Narrow log', 'Wide strip cut', 'Narrow strip cut'].map((label) =>
        page.locator('.form').getByRole('textbox', { name: label, exact: true }).inputValue(),
      ),
    );
    const [wide = '', narrow = '', strip = '', other = ''] = texts;
    const plan = logCabin({
      finished: 9,
      rounds: 4,
      wide,
      narrow,
      strips: { wide: strip, narrow: other },
    });
    await expect.poll(() => readSheet(page)).toEqual(sheetOf(plan));
    expect(problems).toEqual([]);
    await close();
  });

  test('leaves alone what the page fixes', async () => {
    const { page, close } = await openGuest(
      demo,
      tag('panels-open="finder resize compare" locked="rounds strips-wide"'),
      { head },
    );
    await contents(page, 'finder').waitFor();
    expect(await within(page, 'finder', 'Rounds').count()).toBe(0);
    expect(await within(page, 'finder', 'Wide strip cut').count()).toBe(0);
    // Another size, or another block, would not leave them as they are.
    expect(await panel(page, 'resize').locator('tbody tr').count()).toBeGreaterThan(0);
    expect(await panel(page, 'resize').getByRole('button').count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Change places' }).count()).toBe(0);
    await press(page, 'Use 5');
    const set = await element(page).evaluate((node) => [
      Reflect.get(node, 'rounds'),
      Reflect.get(node, 'stripsWide'),
    ]);
    expect(set).toEqual(['4', '2']);
    await close();
  });

  test('as an arc is a list of widths, and the line of color follows it', async () => {
    const { page, close } = await openPanel('arc');
    await press(page, 'Use these widths');
    const wide = page.locator('.form').getByRole('textbox', { name: 'Wide log', exact: true });
    expect((await wide.inputValue()).split('; ')).toHaveLength(4);
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    await expect
      .poll(() => contents(page, 'arc').textContent())
      .toMatch(/in the block above, 0\.00/);
    await close();
  });

  test('in comparing changes places', async () => {
    const { page, close } = await openPanel('compare');
    const column = async (at: number) => {
      const cells = contents(page, 'compare').locator(`td:nth-child(${at})`);
      return (await cells.allTextContents()).sort();
    };
    const before = await column(3);
    await press(page, 'Change places');
    await expect.poll(() => column(2)).toEqual(before);
    await close();
  });

  test('as a quilt top counts the cut list', async () => {
    const { page, close } = await openPanel('settings');
    await within(page, 'settings', 'Blocks down').fill('6');
    await press(page, 'Count the cut list for 24');
    await expect.poll(() => readSheet(page)).toEqual(sheetOf(example, 24));
    await close();
  });
});

const sticksOut = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const root = document.querySelector('eighths-log-cabin')?.shadowRoot;
    const inside = [...(root?.querySelectorAll('*:not(svg *, .unseen)') ?? [])];
    return inside
      .filter((one) => one.getBoundingClientRect().right > innerWidth + 0.5)
      .map((one) => `${one.localName}.${one.className}`);
  });

describe('every panel, used and side by side with the others', () => {
  test.each([
    ['1280 wide', { viewport: { width: 1280, height: 900 } }],
    ['320 wide, dark', { viewport: { width: 320, height: 700 }, colorScheme: 'dark' }],
  ] as const)('has nothing that axe finds wrong or that sticks out, %s', async (_, options) => {
    const { page, problems, close } = await openAll(options);
    expect(await violations(page)).toEqual([]);
    expect(await sticksOut(page)).toEqual([]);
    expect(problems).toEqual([]);
    await close();
  });
});

test('every number in the panels is glyphs for the eye and words for the ear', async () => {
  const { page, close } = await openAll();
  const glyphs = await page.locator('.panels').evaluate((root) => {
    const copy = root.cloneNode(true);
    if (!(copy instanceof Element)) return [];
    // What the ear never hears: figures beside their words, drawings with a description, and inputs.
    for (const quiet of copy.querySelectorAll('[aria-hidden=true], svg, select, input, label')) {
      quiet.remove();
    }
    return copy.textContent.match(/.{0,20}[¼½¾⅛⅜⅝⅞⁄×].{0,20}/g) ?? [];
  });
  expect(glyphs).toEqual([]);
  await close();
});

/** A page’s frames do not print: they keep what they would have printed. */
const keepPrints = (page: Page) =>
  page.addInitScript(() => {
    window.print = () => {
      const rules = (sheets: readonly CSSStyleSheet[]) =>
        sheets.flatMap((sheet) => [...sheet.cssRules].map((rule) => rule.cssText)).join('\n');
      const shadow = document.body.firstElementChild?.shadowRoot;
      Object.assign(top ?? window, {
        printed: {
          css: rules(document.adoptedStyleSheets),
          body: document.body.innerHTML,
          headline: shadow?.querySelector('[part=headline]')?.textContent ?? '',
          texts: [...(shadow?.querySelectorAll('input[type=text]') ?? [])].map((each) =>
            each instanceof HTMLInputElement ? each.value : '',
          ),
        },
      });
      window.dispatchEvent(new Event('afterprint'));
    };
  });

interface Printed {
  readonly css: string;
  readonly body: string;
  readonly headline: string;
  readonly texts: readonly string[];
}

const printedOn = async (page: Page): Promise<Printed> =>
  page.evaluate(() => Reflect.get(window, 'printed'));

async function openSheets(options: Parameters<typeof openGuest>[2] = {}): Promise<Visit> {
  const visit = await openPanel('sheets', options);
  await keepPrints(visit.page);
  await visit.page.reload();
  await contents(visit.page, 'sheets').waitFor();
  return visit;
}

const INCH = 72;
const NEAR = 0.5;

const squares = ({ paths }: PdfPage, inches: number) =>
  paths.filter(
    ({ width, height }) =>
      Math.abs(width - inches * INCH) < NEAR && Math.abs(height - inches * INCH) < NEAR,
  );

/** As it is printed, on the paper that it asks for. */
async function pdfOf(html: string): Promise<readonly PdfPage[]> {
  const { page, close } = await openGuest(demo, '<p></p>');
  await page.setContent(html);
  const pages = await printed(page, { width: 8.5, height: 11 });
  await close();
  return pages;
}

describe('the sheets', () => {
  test.each([
    ['Letter', 'letter', 8.5, 11],
    ['A4', 'a4', 210 / 25.4, 297 / 25.4],
  ] as const)(
    'on %s are printed by themselves, at their true size',
    async (label, paper, across, down) => {
      const { page, problems, close } = await openSheets();
      await page.getByRole('radio', { name: label, exact: true }).check();
      await press(page, 'Print the sheets');
      const { css, body } = await printedOn(page);
      expect(await page.locator('iframe').count()).toBe(0);
      const pages = await pdfOf(`<style>${css}</style>${body}`);
      expect(pages).toHaveLength(trimSheets(example, { paper }).length);
      for (const sheet of pages) {
        expect(Math.abs(sheet.width - across * INCH)).toBeLessThan(1);
        expect(Math.abs(sheet.height - down * INCH)).toBeLessThan(1);
        expect(squares(sheet, 1).length).toBeGreaterThan(0);
        expect(squares(sheet, 5 / 2.54).length).toBeGreaterThan(0);
      }
      // The first two rounds fit on one sheet each: trimmed to 4 1/4 and 6.
      expect(squares(pages[0] ?? { width: 0, height: 0, paths: [] }, 4.25).length).toBeGreaterThan(
        0,
      );
      expect(squares(pages[1] ?? { width: 0, height: 0, paths: [] }, 6).length).toBeGreaterThan(0);
      expect(problems).toEqual([]);
      await close();
    },
  );

  test('can be kept as a file that prints the same', async () => {
    const { page, saved, close } = await openSheets();
    await page.getByRole('radio', { name: 'Foundation', exact: true }).check();
    const { name, text: file } = await saved(() => press(page, 'Save the sheets as a file'));
    expect(name).toBe('foundation-letter.html');
    await press(page, 'Print the sheets');
    const { css, body } = await printedOn(page);
    const [kept, sheets] = [await pdfOf(file), await pdfOf(`<style>${css}</style>${body}`)];
    expect(kept.length).toBeGreaterThan(0);
    expect(kept).toEqual(sheets);
    await close();
  });

  test('and the chart, which is this element’s alone, whatever else stands on the page', async () => {
    const { page, problems, close } = await openSheets();
    await input(page, 'Finished size').fill('10 1/2');
    await press(page, 'Print the chart');
    const { headline: title, body, texts } = await printedOn(page);
    expect(title.replace(/\s+/g, ' ')).toContain('finished, trim to');
    expect(title).toContain('10½');
    expect(texts[0]).toBe('10 1/2');
    expect(body).not.toContain('Guest');
    expect(await page.locator('iframe').count()).toBe(0);
    expect(problems).toEqual([]);
    await close();
  });

  test('under a strict policy too, with every panel in use', async () => {
    const policy =
      "default-src 'none'; script-src 'self'; style-src 'self'; require-trusted-types-for 'script'; trusted-types lit-html";
    const { page, problems, close } = await openGuest(demo, tag(), {
      head,
      headers: { 'content-security-policy': policy },
    });
    await keepPrints(page);
    await page.reload();
    for (const name of PANELS) {
      await panel(page, name).locator('summary').click();
      await contents(page, name).waitFor();
      await uses[name](page);
    }
    await press(page, 'Print the sheets');
    expect((await printedOn(page)).css).toContain('@page');
    await press(page, 'Print the chart');
    expect((await printedOn(page)).headline).toContain('9½');
    expect(problems).toEqual([]);
    await close();
  });
});

// Firefox’s driver has no paper to look at a page on but a printed one.
test.runIf(inChromium)(
  'the steps are printed with the chart where they are open, every round of them',
  async () => {
    const { page, close } = await openPanel('table');
    await page.emulateMedia({ media: 'print' });
    expect(await contents(page, 'table').locator('.round').count()).toBe(5);
    expect(await contents(page, 'table').isVisible()).toBe(true);
    expect(await contents(page, 'table').locator('.fields').isVisible()).toBe(false);
    const columns = await page
      .locator('.rounds')
      .evaluate((node) => getComputedStyle(node).columnWidth);
    expect(columns).toBe('auto');
    await close();
  },
);

test.each([
  ['find-a-size', 'finder'],
  ['compare', 'compare'],
  ['settings', 'settings'],
  ['at-the-table', 'table'],
] as const)('the demo’s page %s shows the panel %s, and no more is amiss', async (path, name) => {
  const { page, problems, close } = await demo.open(`/${path}.html`);
  await contents(page, name).first().waitFor();
  expect(problems).toEqual([]);
  await close();
});
