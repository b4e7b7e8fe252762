import { logCabin } from '@eighths/core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Demo, startDemo } from './support/launch.js';
import {
  button,
  element,
  example,
  headline,
  input,
  moduleScript,
  openGuest,
  readSheet,
  sheetOf,
} from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const EXAMPLE =
  '<eighths-log-cabin finished="9" rounds="4" center="2" wide="1 1/4" narrow="1/2" strips-wide="2" strips-narrow="1 1/2"></eighths-log-cabin>';

/** Says something in every element, as a page does that runs what it is not given to run. */
const MARKUP = `<img src=x onerror="document.body.dataset.ran='yes'">`;

const attributes = [
  'finished',
  'center',
  'rounds',
  'blocks',
  'kind',
  'wide',
  'narrow',
  'strips-wide',
  'strips-narrow',
  'layout',
  'first',
  'direction',
  'start',
  'wide-sides',
  'trim-after',
  'trim-oversize',
  'seam',
  'extra',
  'grid',
] as const;

describe('whatever an author writes', () => {
  const nonsense = [
    ['a word', 'zigzag'],
    ['markup', MARKUP],
    ['a very long text', 'x'.repeat(100_000)],
    ['a very long list', '1; '.repeat(30_000)],
    ['a negative number', '-3'],
    ['a division by zero', '1/0'],
    ['something huge', '1e400'],
  ] as const;

  test.each(nonsense)(
    '%s in any setting gets a sentence in the element, and the page goes on',
    async (_, text) => {
      const { page, problems, close } = await openGuest(demo, '<main></main>');
      for (const name of attributes) {
        await page.evaluate(
          ([attribute, value]) => {
            const made = document.createElement('eighths-log-cabin');
            made.setAttribute(attribute, value);
            document.querySelector('main')?.replaceChildren(made);
          },
          [name, text] as const,
        );
        await expect.poll(() => page.locator('.error:visible').count(), { message: name }).toBe(1);
        const sentence = (await page.locator('.error:visible').textContent()) ?? '';
        expect(sentence.length, name).toBeLessThan(300);
        expect(await page.locator('.standing').textContent()).toMatch(/^There is nothing to show/);
      }
      // The last one can be mended by hand, so the page is alive.
      expect(await page.locator('img').count()).toBe(0);
      expect(await page.evaluate(() => document.body.dataset.ran)).toBe(undefined);
      expect(problems).toEqual([]);
      await close();
    },
  );

  test('a thousand rounds are refused, fifty are drawn', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      '<eighths-log-cabin rounds="1000" center="2" log="1/2"></eighths-log-cabin>',
    );
    await expect.poll(() => page.locator('.error').textContent()).toContain('from 1 to 50');
    await input(page, 'Rounds').fill('50');
    await expect.poll(() => headline(page)).toBe('52 finished, trim to 52½');
    expect(problems).toEqual([]);
    await close();
  });

  test('names of fabrics are text, however they are written', async () => {
    const { page, problems, close } = await openGuest(demo, '<main></main>', {
      viewport: { width: 320, height: 600 },
    });
    await page.evaluate((text) => {
      const made = document.createElement('eighths-log-cabin');
      made.setAttribute('fabrics-wide', text);
      made.setAttribute('fabrics-narrow', 'linen'.repeat(2000));
      document.querySelector('main')?.append(made);
    }, MARKUP);
    const cells = page.getByRole('table', { name: 'Strips' }).getByRole('cell');
    await expect.poll(() => cells.first().textContent()).toContain(MARKUP);
    expect(await page.locator('img').count()).toBe(0);
    expect(await page.evaluate(() => document.body.dataset.ran)).toBe(undefined);
    expect(problems).toEqual([]);
    await close();
  });

  test('an empty attribute says nothing, and an unknown one changes nothing', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      EXAMPLE.replace('finished=', 'seam="" grid="" colour="red" hand="" finished='),
    );
    await expect.poll(() => readSheet(page)).toEqual(sheetOf(example));
    expect(problems).toEqual([]);
    await close();
  });
});

describe('properties', () => {
  test('set before the script has run are taken, as numbers, lists and sizes', async () => {
    const { page, problems, close } = await openGuest(demo, '<main></main>', { head: '' });
    await page.evaluate(() => {
      const early = document.createElement('eighths-log-cabin');
      Object.assign(early, {
        center: { width: 2, height: 3 },
        rounds: 2,
        log: [1, '3/4'],
        stripsLog: '1 3/4',
        blocks: 4,
      });
      document.querySelector('main')?.append(early);
      const script = document.createElement('script');
      script.src = '/eighths/eighths.js';
      document.head.append(script);
    });
    await expect.poll(() => page.locator('[part=headline]').count()).toBe(1);
    const plan = logCabin({
      center: { width: 2, height: 3 },
      rounds: 2,
      log: [1, '3/4'],
      strips: { log: '1 3/4' },
    });
    expect((await readSheet(page)).cuts).toEqual(sheetOf(plan, 4).cuts);
    expect(await headline(page)).toBe('5½ by 6½ finished, trim to 6 by 7');
    expect(problems).toEqual([]);
    await close();
  });

  test('follow later changes, and null gives back the default', async () => {
    const { page, close } = await openGuest(
      demo,
      '<eighths-log-cabin log="1"></eighths-log-cabin>',
    );
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    await element(page).evaluate((node) => Object.assign(node, { finished: 10.5 }));
    await expect.poll(() => headline(page)).toBe('10½ finished, trim to 11');
    await element(page).evaluate((node) => Object.assign(node, { finished: null }));
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    await element(page).evaluate((node) => node.setAttribute('finished', '12'));
    await expect.poll(() => headline(page)).toBe('12 finished, trim to 12½');
    await element(page).evaluate((node) => node.removeAttribute('finished'));
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    await close();
  });
});

describe('an element that a page moves', () => {
  test('keeps what was typed and the drawing that is shown', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      `<aside></aside><main>${EXAMPLE}</main>`,
    );
    await input(page, 'Center').fill('');
    await input(page, 'Finished size').fill('10');
    await expect.poll(() => headline(page)).toBe('10 finished, trim to 10½');
    await button(page, 'Round 3').click();
    const before = await readSheet(page);
    await element(page).evaluate((node) => document.querySelector('aside')?.append(node));
    expect(await page.locator('aside eighths-log-cabin').count()).toBe(1);
    expect(await readSheet(page)).toEqual(before);
    expect(await input(page, 'Finished size').inputValue()).toBe('10');
    expect(await page.locator('.where').textContent()).toBe('Round 3 of 4: cuts 1, 2');
    await input(page, 'Finished size').fill('11');
    await expect.poll(() => headline(page)).toBe('11 finished, trim to 11½');
    expect(problems).toEqual([]);
    await close();
  });

  test('while somebody types still says what is wrong', async () => {
    const { page, close } = await openGuest(demo, `<aside></aside><main>${EXAMPLE}</main>`);
    await page.clock.install({ time: 0 });
    await page.clock.pauseAt(1000);
    // As a machine types, so that no leaving of the input settles it.
    await input(page, 'Center').evaluate((node) => {
      if (node instanceof HTMLInputElement) node.value = 'two';
      node.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    });
    await expect.poll(() => page.locator('.standing').textContent()).not.toBe('');
    expect(await page.locator('.error').count()).toBe(0);
    await element(page).evaluate((node) => document.querySelector('aside')?.append(node));
    await expect
      .poll(() => page.locator('.error').textContent())
      .toContain('“two” is not a length');
    await close();
  });

  test('is cloned with its attributes', async () => {
    const { page, close } = await openGuest(demo, EXAMPLE);
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    await element(page).evaluate((node) => node.replaceWith(node.cloneNode(true)));
    await expect.poll(() => readSheet(page)).toEqual(sheetOf(example));
    await close();
  });
});

describe('the file', () => {
  test.each([
    ['as a module', moduleScript],
    ['as a classic deferred script', '<script src="/eighths/eighths.js" defer></script>'],
    ['as a classic script in the head', '<script src="/eighths/eighths.js"></script>'],
    ['twice', `${moduleScript}<script type="module" src="/eighths/eighths.js?again"></script>`],
    [
      'as both kinds of script',
      `<script src="/eighths/eighths.js?classic" defer></script>${moduleScript}`,
    ],
  ])('loaded %s defines the element and says nothing', async (_, head) => {
    const { page, problems, close } = await openGuest(demo, EXAMPLE, { head });
    await expect.poll(() => readSheet(page)).toEqual(sheetOf(example));
    expect(problems).toEqual([]);
    await close();
  });

  test('leaves nothing behind on the page but its elements', async () => {
    const { page, close } = await openGuest(demo, '<main></main>', { head: '' });
    const names = () => page.evaluate(() => Object.getOwnPropertyNames(globalThis));
    const before = await names();
    await page.addScriptTag({ url: '/eighths/eighths.js' });
    await page.evaluate((html) => {
      const main = document.querySelector('main');
      if (main) main.innerHTML = html;
    }, EXAMPLE);
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    // Lit notes its own copies there.
    const known = [
      'litHtmlVersions',
      'litElementVersions',
      'litPropertyMetadata',
      'reactiveElementVersions',
    ];
    const added = (await names()).filter((name) => !before.includes(name));
    // In Firefox Playwright has names of its own there.
    expect(added.filter((name) => !name.startsWith('__pw')).sort()).toEqual(known.sort());
    expect(await page.evaluate(() => document.head.querySelectorAll('style, link').length)).toBe(0);
    expect(await page.evaluate(() => localStorage.length + sessionStorage.length)).toBe(0);
    expect(await page.evaluate(() => document.cookie)).toBe('');
    await close();
  });

  test('asks the network for nothing but itself', async () => {
    const { page, close } = await openGuest(demo, EXAMPLE, { head: '' });
    const asked: string[] = [];
    page.on('request', (request) => asked.push(new URL(request.url()).pathname));
    await page.reload();
    await page.addScriptTag({ url: '/eighths/eighths.js' });
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    await input(page, 'Rounds').fill('3');
    await button(page, 'Next').click();
    expect(asked.filter((path) => path !== '/favicon.ico')).toEqual([
      '/guest.html',
      '/eighths/eighths.js',
    ]);
    await close();
  });

  test('does all it does under a policy that allows scripts and styles of the page’s own address only', async () => {
    const { page, problems, close } = await openGuest(demo, EXAMPLE, {
      headers: {
        'content-security-policy':
          "default-src 'none'; script-src 'self'; style-src 'self'; require-trusted-types-for 'script'; trusted-types lit-html",
      },
    });
    await expect.poll(() => readSheet(page)).toEqual(sheetOf(example));
    await input(page, 'Center').fill('two');
    await page.keyboard.press('Tab');
    await page.locator('.error').waitFor();
    await input(page, 'Center').fill('2');
    await button(page, 'Round 2').click();
    await expect.poll(() => page.locator('.where').textContent()).toBe('Round 2 of 4: cuts 1, 2');
    await page.getByText('Sewing, trimming and measures').click();
    expect(problems).toEqual([]);
    await close();
  });
});

describe('without the script', () => {
  test('what the author wrote inside the tag is shown, and room is kept', async () => {
    const { page, close } = await demo.open('/pages.css');
    await page.route('**/eighths/**', (route) => route.abort());
    await page.goto(`${demo.url}/blog.html`);
    expect(await page.getByText('Nine inches finished: center cut 2 1/2').isVisible()).toBe(true);
    const box = await element(page).boundingBox();
    expect(box?.height).toBeGreaterThan(400);
    await close();
  });

  test('and with it that is hidden', async () => {
    const { page, close } = await demo.open('/blog.html');
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    expect(await page.getByText('Nine inches finished: center cut 2 1/2').isVisible()).toBe(false);
    await close();
  });
});

describe('a hostile page', () => {
  const styles = (page: Page, selector: string) =>
    page
      .locator(selector)
      .first()
      .evaluate((node) => {
        const {
          letterSpacing,
          textTransform,
          fontSize,
          display,
          lineHeight,
          wordSpacing,
          fontStyle,
        } = getComputedStyle(node);
        return {
          letterSpacing,
          textTransform,
          fontSize,
          display,
          lineHeight,
          wordSpacing,
          fontStyle,
        };
      });
  const SELECTORS = [
    '.root',
    '.headline',
    'label',
    'input[type=text]',
    'td.figure',
    'caption',
    'button',
  ];

  test.each([
    ['takes everything back', '* { all: unset !important }'],
    [
      'shouts',
      '* { letter-spacing: 1em !important; word-spacing: 1em !important; text-transform: uppercase !important; line-height: 3 !important; font-style: italic !important }',
    ],
    ['lays everything in a line', '* { display: inline !important }'],
    ['counts in small ems', 'html { font-size: 62.5% } body { font-size: 1.6rem }'],
    [
      'styles every table, input and button',
      'table, td, th, input, button, label, p, svg, path { border: 9px solid red !important; padding: 40px !important; font-size: 40px !important; color: red !important; fill: red !important }',
    ],
  ])('that %s changes nothing inside', async (_, css) => {
    const { page, problems, close } = await openGuest(demo, EXAMPLE);
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    const all = () => Promise.all(SELECTORS.map((selector) => styles(page, selector)));
    const plain = await all();
    await page.addStyleTag({ content: css });
    expect(await all()).toEqual(plain);
    expect(await element(page).evaluate((node) => getComputedStyle(node).display)).toBe('block');
    expect(problems).toEqual([]);
    await close();
  });

  test('the page’s font and color come in, by intent', async () => {
    const { page, close } = await openGuest(demo, EXAMPLE, {
      head: `${moduleScript}<style>body { font-family: "Courier New"; color: rgb(1, 2, 3) } eighths-log-cabin { --eighths-font-size: 20px; --eighths-accent: rgb(4, 5, 6) }</style>`,
    });
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    const looks = await page.locator('.root').evaluate((node) => {
      const { color, fontFamily, fontSize } = getComputedStyle(node);
      return { color, fontFamily, fontSize };
    });
    expect(looks).toEqual({
      color: 'rgb(1, 2, 3)',
      fontFamily: '"Courier New"',
      fontSize: '20px',
    });
    await button(page, 'Next').click();
    const line = page.locator('path.trim-line').first();
    expect(await line.evaluate((node) => getComputedStyle(node).stroke)).toBe('rgb(4, 5, 6)');
    await close();
  });
});

test('a page that a browser has translated still shows new numbers', async () => {
  const { page, problems, close } = await openGuest(demo, EXAMPLE);
  await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
  // What Chromium’s translator does: every text node goes into two <font> elements.
  const wrap = () =>
    element(page).evaluate((host) => {
      const root = host.shadowRoot;
      if (root === null) return 0;
      const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
      const nodes: Text[] = [];
      while (walker.nextNode()) {
        const { currentNode } = walker;
        if (currentNode instanceof Text && currentNode.data.trim() !== '') nodes.push(currentNode);
      }
      for (const node of nodes) {
        if (node.parentElement?.closest('style, svg') !== null) continue;
        const [outer, inner] = [document.createElement('font'), document.createElement('font')];
        node.replaceWith(outer);
        outer.append(inner);
        inner.append(node);
      }
      return nodes.length;
    });
  expect(await wrap()).toBeGreaterThan(100);
  await input(page, 'Center').fill('');
  await input(page, 'Finished size').fill('10 1/2');
  await input(page, 'Blocks').fill('3');
  const plan = (rounds: number) =>
    logCabin({
      finished: '10 1/2',
      rounds,
      wide: '1 1/4',
      narrow: '1/2',
      strips: { wide: 2, narrow: '1 1/2' },
    });
  await expect.poll(() => readSheet(page)).toEqual(sheetOf(plan(4), 3));
  await wrap();
  await input(page, 'Center').fill('two');
  await page.keyboard.press('Tab');
  await expect.poll(() => page.locator('.error').textContent()).toContain('“two” is not a length');
  await wrap();
  await input(page, 'Center').fill('');
  await input(page, 'Rounds').fill('3');
  await expect.poll(() => readSheet(page)).toEqual(sheetOf(plan(3), 3));
  expect(problems).toEqual([]);
  await close();
});
