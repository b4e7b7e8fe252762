import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demo as mounts } from '../../tools/serve.mjs';
import { type Demo, startDemo } from './support/launch.js';
import {
  button,
  element,
  headline,
  input,
  moduleScript,
  openGuest,
  readSheet,
} from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const BLOCK =
  '<eighths-log-cabin finished="9" rounds="4" wide="1 1/4" narrow="1/2" strips-wide="2" strips-narrow="1 1/2"></eighths-log-cabin>';
const UNIT = '<eighths-unit unit="flying-geese" finished-width="3"></eighths-unit>';
const FABRIC = '<eighths-fabric></eighths-fabric>';
const QUILT = '<eighths-quilt src="/recipes/thaw-at-fernhollow.json" size="Crib"></eighths-quilt>';
const tags = ['eighths-log-cabin', 'eighths-unit', 'eighths-fabric', 'eighths-quilt'] as const;

/** Elements that have something to show. */
const answered = (page: Page): Promise<number> => page.locator('[part=headline]:visible').count();

/** The drawings of an element that are drawn at a size. */
const drawn = (page: Page, tag: string): Promise<boolean> =>
  page
    .locator(`${tag} svg:visible`)
    .first()
    .evaluate((svg) => svg.getBoundingClientRect().width > 100);

describe('where it cannot be seen at first', () => {
  test.each([
    [
      'in closed details',
      `<details><summary>More</summary>${BLOCK}${UNIT}${FABRIC}${QUILT}</details>`,
      (page: Page) => page.getByText('More', { exact: true }).click(),
    ],
    [
      'in a dialog',
      `<dialog>${BLOCK}${UNIT}${FABRIC}${QUILT}</dialog>`,
      (page: Page) =>
        page.locator('dialog').evaluate((node: HTMLDialogElement) => node.showModal()),
    ],
    [
      'in a hidden tab',
      `<div id="tab" hidden>${BLOCK}${UNIT}${FABRIC}${QUILT}</div>`,
      (page: Page) => page.locator('#tab').evaluate((node) => node.removeAttribute('hidden')),
    ],
  ] as const)('%s it is whole when that opens, and can be used', async (_, body, open) => {
    const { page, problems, close } = await openGuest(demo, body);
    await page.locator('eighths-log-cabin [part=headline]').waitFor({ state: 'attached' });
    expect(await answered(page)).toBe(0);
    await open(page);
    await expect.poll(() => answered(page)).toBeGreaterThanOrEqual(tags.length);
    for (const tag of tags) expect(await drawn(page, tag), tag).toBe(true);
    await page.locator('eighths-log-cabin').locator('#finished').fill('10');
    await expect
      .poll(() => page.locator('eighths-log-cabin [part=headline]').textContent())
      .toContain('10');
    expect(problems).toEqual([]);
    await close();
  });
});

describe('nothing sticks out', () => {
  test.each([
    [
      'of a column of 240 pixels',
      '<div class="column" style="width: 240px">',
      { width: 1000, height: 800 },
    ],
    // 1280 by 1024 at 400 %.
    ['of a page at 400 %', '<div class="column">', { width: 320, height: 256 }],
    [
      'of a page that reads from right to left',
      '<div class="column" dir="rtl">',
      { width: 320, height: 800 },
    ],
  ])('%s', async (_, column, viewport) => {
    const { page, close } = await openGuest(
      demo,
      `${column}${BLOCK}${UNIT}${FABRIC}${QUILT}</div>`,
      {
        viewport,
      },
    );
    await expect.poll(() => answered(page)).toBeGreaterThanOrEqual(tags.length);
    await page
      .locator('eighths-log-cabin')
      .evaluate((node) =>
        node.setAttribute('panels-open', 'finder arc compare settings table seam sheets'),
      );
    await page.locator('.panel-sheets .contents').waitFor();
    const out = await page.evaluate((names) => {
      const { left, right } = document.querySelector('.column')?.getBoundingClientRect() ?? {
        left: 0,
        right: 0,
      };
      return names.flatMap((name) =>
        [...(document.querySelector(name)?.shadowRoot?.querySelectorAll('*') ?? [])]
          .filter((node) => node.checkVisibility() && !node.matches('svg *, .unseen, .unseen *'))
          .filter((node) => {
            const box = node.getBoundingClientRect();
            return box.right > right + 0.5 || box.left < left - 0.5;
          })
          .map((node) => `${name}: ${node.localName} ${node.getAttribute('class')}`),
      );
    }, tags);
    expect(out).toEqual([]);
    const sideways = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(sideways).toBe(0);
    await close();
  });
});

test('turned, scaled and moved by its page it is worked like any other', async () => {
  const { page, problems, close } = await openGuest(
    demo,
    `<div style="transform: translateX(40px) rotate(4deg) scale(0.8)">${BLOCK}</div>`,
  );
  await input(page, 'Rounds').click();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type('3');
  await button(page, 'Round 2').click();
  await expect.poll(() => page.locator('.where').textContent()).toContain('Round 2 of 3');
  expect(problems).toEqual([]);
  await close();
});

test('where a reader wants no motion nothing moves, and in forced colors every control has an edge', async () => {
  const { page, close } = await openGuest(demo, BLOCK + UNIT + FABRIC + QUILT, {
    reducedMotion: 'reduce',
    forcedColors: 'active',
  });
  await expect.poll(() => answered(page)).toBeGreaterThanOrEqual(tags.length);
  const found = await page.evaluate((names) => {
    const list: string[] = [];
    for (const name of names) {
      for (const node of document.querySelector(name)?.shadowRoot?.querySelectorAll('*') ?? []) {
        const looks = getComputedStyle(node);
        const is = `${name} ${node.localName}.${node.getAttribute('class')}`;
        const moves = [looks.animationDuration, looks.transitionDuration].join();
        if (moves !== '0s,0s') list.push(`${is} moves: ${moves}`);
        if (looks.scrollBehavior === 'smooth') list.push(`${is} scrolls smoothly`);
        const isControl = node.matches('button, select, input[type=text], textarea');
        const edge = parseFloat(looks.borderBottomWidth) > 0;
        const isLink = looks.textDecorationLine === 'underline';
        if (isControl && node.checkVisibility() && !edge && !isLink) {
          list.push(`${is} has no edge`);
        }
      }
    }
    return list;
  }, tags);
  expect(found).toEqual([]);
  await close();
});

test('two versions on one page: the first stays, and one warning names both', async () => {
  const { page, problems, close } = await openGuest(demo, BLOCK, {
    head: '<script src="/eighths/eighths-log-cabin.js" defer></script>',
  });
  const file = readFileSync(join(mounts['/eighths/'], 'eighths-log-cabin.js'), 'utf8');
  const own = await element(page).evaluate((node) => Reflect.get(node.constructor, 'version'));
  expect(file).toContain(`"${own}"`);
  await page.route('**/newer.js', (route) =>
    route.fulfill({
      contentType: 'text/javascript',
      body: file.replaceAll(`"${own}"`, '"99.0.0"'),
    }),
  );
  await page.addScriptTag({ url: '/newer.js' });
  // Lit says in its own words that it is there twice, in a development build only.
  await expect.poll(() => problems.length).toBe(1);
  expect(problems[0]).toContain(`version ${own} stays, version 99.0.0 is not used`);
  await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
  await close();
});

describe('taken from one document into another', () => {
  const looks = (page: Page) =>
    page.locator('eighths-log-cabin .root').evaluate((root) => {
      const { display, fontSize } = getComputedStyle(root);
      const table = root.querySelector('table');
      const collapse = table === null ? '' : getComputedStyle(table).borderCollapse;
      return { display, fontSize, collapse, width: Math.round(root.getBoundingClientRect().width) };
    });

  test('one that was made in a frame without the script becomes an element', async () => {
    const { page, problems, close } = await openGuest(demo, '<main></main><iframe></iframe>', {
      head: moduleScript,
    });
    await page.evaluate((html) => {
      const inside = document.querySelector('iframe')?.contentDocument;
      if (!inside) return;
      inside.body.innerHTML = html;
      const made = inside.body.firstElementChild;
      if (made) Object.assign(made, { blocks: 4 });
      if (made) document.querySelector('main')?.append(document.adoptNode(made));
    }, BLOCK);
    const shown = page.locator('[part=headline]');
    await expect.poll(() => shown.textContent()).toContain('trim to 9½');
    await input(page, 'Finished size').fill('10');
    await expect.poll(() => shown.textContent()).toContain('trim to 10½');
    expect(await input(page, 'Blocks').inputValue()).toBe('4');
    expect(problems).toEqual([]);
    await close();
  });

  test('one that was in use keeps what was typed and how it looks', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      `<main>${BLOCK}</main><iframe></iframe>`,
    );
    await input(page, 'Finished size').fill('10 1/2');
    await expect.poll(() => headline(page)).toBe('10½ finished, trim to 11');
    const before = { sheet: await readSheet(page), looks: await looks(page) };
    await element(page).evaluate((node) => {
      const inside = document.querySelector('iframe')?.contentDocument;
      inside?.body.append(node);
      document.querySelector('main')?.append(node);
    });
    expect({ sheet: await readSheet(page), looks: await looks(page) }).toEqual(before);
    expect(await input(page, 'Finished size').inputValue()).toBe('10 1/2');
    await input(page, 'Finished size').fill('9');
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    expect(problems).toEqual([]);
    await close();
  });

  test('and in the frame it looks as it did', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      `<main>${BLOCK}</main><iframe></iframe>`,
    );
    await expect.poll(() => headline(page)).toBe('9 finished, trim to 9½');
    await element(page).evaluate((node) =>
      document.querySelector('iframe')?.contentDocument?.body.append(node),
    );
    const root = page.frameLocator('iframe').locator('eighths-log-cabin .root');
    expect(
      await root
        .locator('table')
        .first()
        .evaluate((node) => getComputedStyle(node).borderCollapse),
    ).toBe('collapse');
    expect(problems).toEqual([]);
    await close();
  });
});
