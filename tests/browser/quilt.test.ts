import { readFileSync } from 'node:fs';
import {
  formatLength,
  kits,
  type QuiltPlan,
  type QuiltRecipe,
  quilt,
  readRecipe,
} from '@eighths/core';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './support/axe.js';
import { type Demo, startDemo } from './support/launch.js';
import { listen, openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const file = new URL('../../docs/pages/recipes/thaw-at-fernhollow.json', import.meta.url);
const thaw = readRecipe(readFileSync(file, 'utf8'));

const windows: QuiltRecipe = {
  name: 'Nine Windows',
  fabrics: [
    { id: 'linen', name: 'Linen', price: '10.00' },
    { id: 'night', name: 'Night', price: '8.00' },
  ],
  blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 9 }],
  binding: { fabric: 'night' },
  sizes: [
    { name: 'Cushion', across: 3, down: 3 },
    { name: 'Cot', across: 4, down: 5 },
  ],
};

const inside = (recipe: unknown, attributes = ''): string =>
  `<eighths-quilt ${attributes}><script type="application/json">${JSON.stringify(recipe)}</script><p>A quilt.</p></eighths-quilt>`;

/** What stands in sight, words for the ear left out and spaces single. */
const seen = (locator: Locator): Promise<string[]> =>
  locator.evaluateAll((nodes) =>
    nodes.map((node) => {
      const copy = node.cloneNode(true);
      if (!(copy instanceof Element)) return '';
      for (const hidden of copy.querySelectorAll('.unseen, .minor')) hidden.remove();
      return copy.textContent.replace(/\s+/g, ' ').trim();
    }),
  );

const headline = async (page: Page): Promise<string> =>
  (await seen(page.locator('eighths-quilt .sheet [part=headline]'))).join();

/** What is bought, by the fabric's name. */
async function bought(page: Page): Promise<Readonly<Record<string, string>>> {
  const rows = page.locator('eighths-quilt table.buy tbody tr:has(td.figure)');
  const names = await seen(rows.locator('th'));
  const amounts = await seen(rows.locator('td:nth-child(2)'));
  return Object.fromEntries(names.map((name, index) => [name, amounts[index] ?? '']));
}

const plain = (text: string): string => text.replace(/\s+/g, ' ');

const boughtBy = ({ fabrics }: QuiltPlan): Readonly<Record<string, string>> =>
  Object.fromEntries(fabrics.map(({ name, yards }) => [name, plain(yards)]));

const headlineOf = ({ finished: { width, height } }: QuiltPlan): string =>
  width.equals(height)
    ? `${formatLength(width)} finished`
    : `${formatLength(width)} by ${formatLength(height)} finished`;

const errors = (page: Page): Promise<string[]> =>
  seen(page.locator('eighths-quilt p.error:not(:empty)'));

const size = (page: Page): Locator => page.getByLabel('Size', { exact: true });

describe('the quilt element', () => {
  test('says what the library says, for every size that is chosen', async () => {
    const { page, problems, close } = await demo.open('/quilt.html');
    for (const { name } of thaw.sizes) {
      await size(page).selectOption(name);
      const plan = quilt(thaw, name);
      await expect.poll(() => headline(page), { timeout: 30_000 }).toBe(headlineOf(plan));
      expect(await bought(page)).toEqual(boughtBy(plan));
    }
    expect(problems).toEqual([]);
    await close();
  });

  test('makes a size of one’s own from blocks across and down', async () => {
    const { page, problems, close } = await demo.open('/quilt.html');
    await page.getByLabel('Blocks across', { exact: true }).fill('8');
    const [, throwSize] = thaw.sizes;
    const plan = throwSize && quilt(thaw, { ...throwSize, name: 'own', across: 8 });
    await expect.poll(() => headline(page), { timeout: 30_000 }).toBe(plan && headlineOf(plan));
    expect(await bought(page)).toEqual(plan && boughtBy(plan));
    await expect.poll(() => size(page).locator('option:checked').textContent()).toContain('8 by 6');
    await size(page).selectOption('Crib');
    await expect
      .poll(() => headline(page), { timeout: 30_000 })
      .toBe(headlineOf(quilt(thaw, 'Crib')));
    expect(await page.getByLabel('Blocks across', { exact: true }).inputValue()).toBe('4');
    expect(problems).toEqual([]);
    await close();
  });

  test('tells at its input what number of blocks the pattern’s setting wants', async () => {
    const { page, problems, close } = await openGuest(demo, inside(thaw, 'size="Crib"'));
    const across = page.getByLabel('Blocks across', { exact: true });
    await across.fill('5');
    await across.blur();
    await expect.poll(() => across.getAttribute('aria-invalid')).toBe('true');
    const note = await across.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${note}"]`).textContent()).toContain('has to be even');
    await expect.poll(() => page.getByText('do not match').isVisible()).toBe(true);
    expect(problems).toEqual([]);
    await close();
  });

  test('cuts from another width, and with less fabric where that is asked for', async () => {
    const { page, problems, close } = await openGuest(demo, inside(thaw, 'size="Crib"'));
    await page.getByText('Fabric width, cutting, measures').click();
    await page.getByLabel('Usable width of fabric').fill('30');
    const fabrics = thaw.fabrics.map((fabric) => ({ ...fabric, width: 30 }));
    const narrow = quilt({ ...thaw, fabrics }, 'Crib');
    await expect.poll(() => bought(page), { timeout: 30_000 }).toEqual(boughtBy(narrow));
    await page.getByLabel('Least fabric').check();
    const thrifty = quilt({ ...thaw, fabrics }, 'Crib', { method: 'thrifty' });
    await expect.poll(() => bought(page), { timeout: 20_000 }).toEqual(boughtBy(thrifty));
    expect(problems).toEqual([]);
    await close();
  });

  test('shows the cuts of a fabric when it is opened', async () => {
    const { page, problems, close } = await openGuest(demo, inside(windows));
    const [linen] = quilt(windows).fabrics;
    expect(await page.locator('ol.steps li').count()).toBe(0);
    await page.locator('summary', { hasText: 'Linen' }).click();
    await expect
      .poll(() => page.locator('ol.steps li').count())
      .toBe(linen?.yardage?.plan.steps.length);
    expect(await page.locator('.cutting svg').count()).toBe(1);
    expect(problems).toEqual([]);
    await close();
  });

  test('tints the drawing in the color that the reader chooses, and takes it back', async () => {
    const { page, problems, close } = await openGuest(demo, inside(windows));
    const color = page.getByLabel('Color of Linen');
    const tint = () =>
      page
        .locator('.sheet path.fabric.tint-0')
        .first()
        .evaluate((path) => getComputedStyle(path).fill);
    await expect.poll(() => color.inputValue()).toBe('#f3e3c3');
    await color.fill('#204060');
    await expect.poll(tint).toBe('rgb(32, 64, 96)');
    await page.getByRole('button', { name: 'Colors as they were' }).click();
    await expect.poll(tint).toBe('rgb(243, 227, 195)');
    expect(problems).toEqual([]);
    await close();
  });

  test('tells a change as plain data that a cart can use', async () => {
    const { page, close } = await openGuest(demo, inside(windows));
    await expect.poll(() => headline(page)).toBe('27 finished');
    const heard = await listen(page);
    await size(page).selectOption('Cot');
    await expect.poll(async () => (await heard()).length).toBe(1);
    const [event] = await heard();
    expect(event?.detail).toMatchObject({ version: 1, spec: { size: 'Cot' } });
    const [linen] = quilt(windows, 'Cot').fabrics;
    const [line] = Array.isArray(event?.detail.buy) ? event.detail.buy : [];
    expect(line).toMatchObject({
      fabric: 'linen',
      name: 'Linen',
      increment: '1/8 yd',
      increments: linen?.buy.dividedBy('4 1/2').toNumber(),
      cost: linen?.cost,
    });
    await close();
  });

  test('works out kits, and says what the library says', async () => {
    const { page, problems, close } = await demo.open('/class.html');
    const { price, fabrics } = kits({
      ...{ recipe: thaw, size: 'Crib', people: 12, spares: 1 },
      margin: '7/20',
    });
    const table = page.locator('eighths-quilt').first().locator('table.kits-table');
    await expect
      .poll(() => seen(table.locator('tbody tr').first().locator('td')), { timeout: 30_000 })
      .toEqual(
        [fabrics[0]?.perKit, fabrics[0]?.separate, fabrics[0]?.pooled]
          .map((each) => plain(formatLength(each ?? 0, { unit: 'yd' })))
          .concat(String(fabrics[0]?.bolts.bolts)),
      );
    const cost = page.locator('eighths-quilt').first().locator('tfoot tr', { hasText: 'One kit' });
    expect(await cost.textContent()).toContain(`$${((price?.cost.cents ?? 0) / 100).toFixed(2)}`);
    const sold = page.locator('eighths-quilt').first().locator('tfoot tr', { hasText: 'sold for' });
    expect(await sold.textContent()).toContain(`$${((price?.price?.cents ?? 0) / 100).toFixed(2)}`);
    expect(problems).toEqual([]);
    await close();
  });

  test('says that it works on kits only where it does', async () => {
    const { page, close } = await openGuest(demo, inside(windows, 'people="12"'));
    await expect.poll(() => page.locator('table.kits-table').count()).toBe(1);
    const down = page.getByLabel('Blocks down', { exact: true });
    await down.fill('0');
    await down.blur();
    await expect.poll(() => down.getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('.kits-none').textContent()).toBe('');
    await close();
  });

  test.each(['readonly', 'readonly=""', 'readonly="true"'])(
    'is a page to read with %s: no inputs, and everything unfolded',
    async (readonly) => {
      const { page, problems, close } = await openGuest(demo, inside(windows, readonly));
      await expect.poll(() => headline(page)).toBe('27 finished');
      expect(await page.locator('eighths-quilt input, eighths-quilt select').count()).toBe(0);
      expect(await page.locator('eighths-quilt details').count()).toBe(0);
      expect(await page.locator('ol.steps').count()).toBeGreaterThan(1);
      expect(problems).toEqual([]);
      await close();
    },
  );

  test('is no page to read with readonly="false"', async () => {
    const { page, close } = await openGuest(demo, inside(windows, 'readonly="false"'));
    await expect.poll(() => size(page).count()).toBe(1);
    await close();
  });
});

describe('a recipe', () => {
  test('that cannot be so is told with its path, in its place', async () => {
    const recipe = { ...windows, sizes: [{ name: 'Cushion', across: 0, down: 3 }] };
    const { page, problems, close } = await openGuest(demo, inside(recipe));
    await expect
      .poll(() => errors(page))
      .toEqual([
        expect.stringMatching(/^sizes\[0\]\.across A whole number from 1 to 100 is needed/),
      ]);
    expect(problems).toEqual([]);
    await close();
  });

  test('is never markup, whatever its texts hold', async () => {
    const evil = '<img src=x onerror="globalThis.hacked=1">';
    const recipe = {
      ...windows,
      name: evil,
      about: evil,
      fabrics: [
        { id: 'linen', name: evil, role: evil, price: '10.00' },
        { id: 'night', name: evil },
      ],
    };
    const { page, problems, close } = await openGuest(demo, inside(recipe));
    await expect.poll(() => headline(page)).toBe('27 finished');
    for (const summary of await page.locator('eighths-quilt summary').all()) await summary.click();
    await expect.poll(() => page.locator('ol.steps').count()).toBeGreaterThan(1);
    expect(await page.locator('eighths-quilt img').count()).toBe(0);
    expect(await page.locator('h3', { hasText: evil }).count()).toBeGreaterThan(0);
    expect(await page.evaluate(() => Reflect.get(globalThis, 'hacked'))).toBeUndefined();
    expect(problems).toEqual([]);
    await close();
  });

  test('is followed when the page changes its script, or sets it as a property', async () => {
    const { page, problems, close } = await openGuest(demo, inside(windows));
    await expect.poll(() => headline(page)).toBe('27 finished');
    const { blocks: _, ...others } = windows;
    const larger: QuiltRecipe = {
      ...others,
      blocks: [{ id: 'window', kind: 'plain', fabric: 'linen', finished: 12 }],
    };
    await page.locator('eighths-quilt > script').evaluate((script, text) => {
      script.textContent = text;
    }, JSON.stringify(larger));
    await expect.poll(() => headline(page)).toBe('36 finished');
    await page.locator('eighths-quilt').evaluate((element, recipe) => {
      Reflect.set(element, 'recipe', recipe);
    }, windows);
    await expect.poll(() => headline(page)).toBe('27 finished');
    await page.locator('eighths-quilt').evaluate((element) => {
      Reflect.set(element, 'recipe', undefined);
      element.replaceChildren();
    });
    await expect.poll(() => errors(page)).toEqual([expect.stringContaining('no pattern here yet')]);
    expect(problems).toEqual([]);
    await close();
  });

  test('may be a property before the element is defined', async () => {
    const { page, close } = await openGuest(demo, '<eighths-quilt></eighths-quilt>', { head: '' });
    await page.locator('eighths-quilt').evaluate((element, recipe) => {
      Reflect.set(element, 'recipe', recipe);
    }, windows);
    await page.addScriptTag({ url: '/eighths/eighths-quilt.js' });
    await expect.poll(() => headline(page)).toBe('27 finished');
    await close();
  });

  test('at an address that is not there is told with the answer, and another is fetched', async () => {
    const { page, close } = await openGuest(
      demo,
      '<eighths-quilt src="none.json"></eighths-quilt>',
    );
    await expect
      .poll(() => errors(page))
      .toEqual([
        expect.stringContaining('No recipe could be fetched from none.json: it answered 404'),
      ]);
    const set = (src: string) =>
      page
        .locator('eighths-quilt')
        .evaluate((element, text) => element.setAttribute('src', text), src);
    await set('http://127.0.0.1:1/none.json');
    await expect.poll(() => errors(page)).toEqual([expect.stringContaining('nothing answered')]);
    await set('recipes/thaw-at-fernhollow.json');
    await expect.poll(() => headline(page)).toBe(headlineOf(quilt(thaw)));
    expect(await errors(page)).toEqual([]);
    await close();
  });

  test('of ten million characters is refused before all of it is read', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      inside({ ...windows, about: 'x'.repeat(10_000_000) }),
    );
    await expect
      .poll(() => errors(page))
      .toEqual([expect.stringContaining('up to 1000000 is read')]);
    await page.route('**/huge.json', (route) =>
      route.fulfill({ contentType: 'application/json', body: `"${'x'.repeat(10_000_000)}"` }),
    );
    await page
      .locator('eighths-quilt')
      .evaluate((element) => element.setAttribute('src', 'huge.json'));
    await expect
      .poll(() => errors(page))
      .toEqual([expect.stringContaining('more than 1000000 characters')]);
    expect(problems).toEqual([]);
    await close();
  });

  test('on its way is said, and no longer asked for when the element is taken away', async () => {
    const { page, close } = await openGuest(demo, '');
    await page.route('**/slow.json', () => undefined);
    await page.evaluate(() => {
      const { fetch } = window;
      window.fetch = (input, init) => {
        init?.signal?.addEventListener('abort', () => {
          document.body.dataset.givenUp = String(input);
        });
        return fetch(input, init);
      };
      const element = document.createElement('eighths-quilt');
      element.setAttribute('src', 'slow.json');
      document.body.append(element);
    });
    await expect.poll(() => page.getByText('Fetching the pattern').count()).toBe(1);
    await page.locator('eighths-quilt').evaluate((element) => element.remove());
    await expect
      .poll(() => page.locator('body').getAttribute('data-given-up'))
      .toContain('slow.json');
    await close();
  });
});

describe('on a page', () => {
  test('a shop’s basket holds the yards of the size that is chosen, and their total', async () => {
    const { page, problems, close } = await demo.open('/shop.html');
    await expect
      .poll(() => headline(page), { timeout: 30_000 })
      .toBe(headlineOf(quilt(thaw, 'Crib')));
    const basket = page.getByRole('table', { name: /^Fabric for/ });
    await page.getByRole('button', { name: 'Put the fabric in the basket' }).click();
    for (const name of ['Crib', 'Twin']) {
      await size(page).selectOption(name);
      const { fabrics, cost } = quilt(thaw, name);
      await expect
        .poll(() => seen(basket.locator('tbody tr td:nth-child(2)')))
        .toEqual(fabrics.map(({ buy }) => formatLength(buy.dividedBy(36), { style: 'ascii' })));
      const total = ((cost?.cents ?? 0) / 100).toFixed(2);
      expect(await basket.locator('tfoot').textContent()).toContain(`$${total}`);
    }
    expect(problems).toEqual([]);
    await close();
  });

  test('of a strict policy nothing of it is refused', async () => {
    const { page, problems, close } = await demo.open('/strict.html');
    await expect.poll(() => headline(page)).toBe('18 finished');
    for (const summary of await page.locator('eighths-quilt summary').all()) await summary.click();
    await page.getByLabel('Color of Night').fill('#204060');
    await expect
      .poll(() => page.getByRole('button', { name: 'Colors as they were' }).count())
      .toBe(1);
    expect(await page.evaluate(() => Reflect.get(globalThis, 'violations'))).toEqual([]);
    expect(problems).toEqual([]);
    await close();
  });

  test('nothing moves sideways at 320 pixels, folded or not', async () => {
    const { page, close } = await demo.open('/class.html', {
      viewport: { width: 320, height: 800 },
    });
    await expect.poll(() => page.locator('table.kits-table').count(), { timeout: 30_000 }).toBe(2);
    for (const summary of await page.locator('eighths-quilt summary').all()) {
      if (!(await summary.evaluate((each) => each.parentElement?.hasAttribute('open')))) {
        await summary.click();
      }
    }
    const wide = await page
      .locator('eighths-quilt')
      .evaluateAll((elements) =>
        elements.flatMap((element) =>
          [...(element.shadowRoot?.querySelectorAll('table, svg, ol, p, .fields') ?? [])]
            .filter((each) => each.getBoundingClientRect().right > innerWidth + 1)
            .map((each) => each.className),
        ),
      );
    expect(wide).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    await close();
  });

  test('of paper everything is unfolded, and folded again afterwards', async () => {
    const { page, close } = await openGuest(demo, inside(windows));
    await expect.poll(() => headline(page)).toBe('27 finished');
    await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
    await expect.poll(() => page.locator('ol.steps').count()).toBe(2);
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect.poll(() => page.locator('ol.steps').count()).toBe(0);
    await close();
  });

  test.each([
    ['light', 1000],
    ['dark', 320],
  ] as const)(
    'axe finds nothing, in the %s at %i pixels, unfolded and with an error',
    async (colorScheme, width) => {
      const { page, close } = await openGuest(
        demo,
        `<main><h1>Guest</h1><h2>Pattern</h2>${inside(windows, 'people="12"')}</main>`,
        { colorScheme, viewport: { width, height: 800 } },
      );
      await expect.poll(() => page.locator('table.kits-table').count()).toBe(1);
      await page.locator('eighths-quilt details').evaluateAll((parts) => {
        for (const part of parts) if (part instanceof HTMLDetailsElement) part.open = true;
      });
      await expect.poll(() => page.locator('ol.steps').count()).toBe(2);
      expect(await violations(page)).toEqual([]);
      await page.getByLabel('Blocks down', { exact: true }).fill('0');
      await page.getByLabel('Blocks down', { exact: true }).blur();
      await expect
        .poll(() => page.getByLabel('Blocks down', { exact: true }).getAttribute('aria-invalid'))
        .toBe('true');
      expect(await violations(page)).toEqual([]);
      await close();
    },
  );

  test('a king gives the page a turn between its parts', async () => {
    const { page, close } = await openGuest(demo, inside(thaw, 'size="Crib"'));
    await expect
      .poll(() => headline(page), { timeout: 30_000 })
      .toBe(headlineOf(quilt(thaw, 'Crib')));
    const turns = await page.evaluate(async () => {
      let count = 0;
      const channel = new MessageChannel();
      channel.port1.onmessage = () => {
        count += 1;
        channel.port2.postMessage(0);
      };
      channel.port2.postMessage(0);
      const element = document.querySelector('eighths-quilt');
      const done = new Promise((resolve) =>
        element?.addEventListener('eighths-change', resolve, { once: true }),
      );
      if (element) Reflect.set(element, 'size', 'King');
      await done;
      channel.port1.close();
      return count;
    });
    expect(turns).toBeGreaterThan(3);
    expect(await page.locator('.sheet svg path').count()).toBeLessThan(100);
    await close();
  });
});
