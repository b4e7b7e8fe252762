import {
  compareMethods,
  flyingGeese,
  formatLength,
  type Length,
  planUnit,
  UNITS,
  type UnitPlan,
  unitNames,
  yardage,
} from '@eighths/core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './support/axe.js';
import { type Demo, startDemo } from './support/launch.js';
import { button, choice, headline, input, listen, openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const GEESE = '<eighths-unit unit="flying-geese" finished-width="3"></eighths-unit>';

const element = (page: Page) => page.locator('eighths-unit');
const unitList = (page: Page) => page.getByRole('combobox', { name: 'Unit', exact: true });

/** The rows of a table, as what stands in sight in each cell. */
const table = (page: Page, name: string): Promise<string[][]> =>
  page
    .getByRole('table', { name })
    .locator('tbody tr')
    .evaluateAll((rows) =>
      rows.map((row) =>
        [...row.children].map((cell) => {
          const copy = cell.cloneNode(true);
          if (!(copy instanceof Element)) return '';
          for (const hidden of copy.querySelectorAll('.unseen')) hidden.remove();
          return copy.textContent.replace(/\s+/g, ' ').trim();
        }),
      ),
    );

const steps = (page: Page) => page.getByRole('list', { name: 'How to make it' }).locator('li');

const decimal = (value: Length) => formatLength(value, { style: 'decimal' });
const size = (width: Length, height: Length) =>
  width.equals(height) ? formatLength(width) : `${formatLength(width)} by ${formatLength(height)}`;

/** The cut list that a plan of squares should be shown with, made without the element. */
const cutRows = ({ cuts, sets }: UnitPlan): string[][] =>
  cuts.map(({ label, fabric, width, height, exact, count, diagonalCuts }) => {
    const on = ['', ' once corner to corner', ' twice corner to corner'][diagonalCuts];
    const rounded = exact.width.equals(width) ? '' : ` exact ${decimal(exact.width)}`;
    return [
      `${label.charAt(0).toUpperCase()}${label.slice(1)}${on}`,
      fabric,
      size(width, height) + rounded,
      String(count),
      String(count * sets),
    ];
  });

async function typeInto(page: Page, label: string, text: string): Promise<void> {
  await input(page, label).focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
}

describe('the unit element', () => {
  test('answers what is typed by keyboard with the numbers of the library', async () => {
    const { page, problems, close } = await openGuest(demo, GEESE);
    await expect.poll(() => headline(page)).toBe('3 by 1½ finished, trim to 3½ by 2');
    await typeInto(page, 'Finished width', '5 1/2');
    await typeInto(page, 'How many', '10');
    await page.keyboard.press('Tab');
    const plan = flyingGeese({ finished: '5 1/2', count: 10 });
    await expect.poll(() => headline(page)).toBe('5½ by 2¾ finished, trim to 6 by 3¼');
    expect(await table(page, 'Cut list')).toEqual(cutRows(plan));
    expect(await steps(page).allTextContents()).toEqual(
      plan.steps.map(({ text }) => figures(text)),
    );
    expect((await table(page, 'Trim marks'))[0]).toEqual(['Point', '3', '¼']);
    expect(problems).toEqual([]);
    await close();
  });

  test('sets the methods side by side as the library compares them, and changes to another', async () => {
    const { page, problems, close } = await openGuest(demo, GEESE);
    await typeInto(page, 'How many', '7');
    const { methods } = compareMethods('flying-geese', 3, 7);
    const row = (name: string, value: (method: (typeof methods)[number]) => string | number) => [
      name,
      ...methods.map((method) => String(value(method))),
    ];
    await expect
      .poll(async () => (await table(page, 'Methods side by side')).slice(1))
      .toEqual([
        row('A set makes', ({ plan }) => plan.yield),
        row('Sets', ({ sets }) => sets),
        row('Left over', ({ leftOver }) => leftOver),
        row('Fabric, square inches', ({ fabric }) => Math.round(fabric.toNumber())),
        row('Of it, seams and waste', ({ waste }) => Math.round(waste.toNumber())),
        row('Bias edges handled', ({ biasEdges }) => biasEdges),
        row('Bias edges outside', ({ biasOutside }) => biasOutside),
        row('Seams', ({ seams }) => seams),
        row('Trims', ({ trims }) => trims),
      ]);
    await choice(page, 'Stitch and flip').check();
    const plan = flyingGeese({ finished: 3, count: 7, method: 'stitch-and-flip' });
    await expect.poll(() => table(page, 'Cut list')).toEqual(cutRows(plan));
    await button(page, 'Cut triangles').click();
    await expect.poll(() => choice(page, 'Cut triangles').isChecked()).toBe(true);
    expect(problems).toEqual([]);
    await close();
  });

  test('shows an error beside the input it is about, and the last answer out of date', async () => {
    const { page, close } = await openGuest(
      demo,
      '<eighths-unit unit="flying-geese" finished="3" method="four-at-a-time"></eighths-unit>',
    );
    const height = input(page, 'Finished height');
    await height.fill('2');
    await height.blur();
    const width = input(page, 'Finished width');
    await expect.poll(() => width.getAttribute('aria-invalid')).toBe('true');
    const note = await width.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${note}"]`).textContent()).toContain(
      'Make them 4 by 2, or 3 by 1½',
    );
    expect(await page.getByText('do not match the sizes').isVisible()).toBe(true);
    expect(await headline(page)).toBe('3 by 1½ finished, trim to 3½ by 2');
    await width.fill('4');
    await expect.poll(() => headline(page)).toBe('4 by 2 finished, trim to 4½ by 2½');
    await close();
  });

  test.each([
    ['How many', '2 1/2', 'A whole number from 1 to 100000'],
    ['Finished width', '0', 'more than 0'],
    ['Finished width', '10 / 2', 'space'],
  ])('says beside %s what would do instead of %s', async (label, text, words) => {
    const { page, close } = await openGuest(demo, GEESE);
    const field = input(page, label);
    await field.fill(text);
    await field.blur();
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    const note = await field.getAttribute('aria-describedby');
    expect(await page.locator(`[id="${note}"]`).textContent()).toContain(words);
    await close();
  });

  test('keeps the size for another unit that can be made so, else starts with its example', async () => {
    const { page, problems, close } = await openGuest(demo, GEESE);
    await unitList(page).selectOption({ label: 'Half-square triangles' });
    await expect.poll(() => headline(page)).toBe('3 finished, trim to 3½');
    await unitList(page).selectOption({ label: 'Trapezoid' });
    await expect.poll(() => input(page, 'Finished width').inputValue()).toBe('6');
    expect(await input(page, 'Finished height').inputValue()).toBe('2');
    await unitList(page).selectOption({ label: 'Strip set' });
    await expect
      .poll(() => input(page, 'Finished widths of the strips').inputValue())
      .toBe('1; 2; 1');
    expect(problems).toEqual([]);
    await close();
  });

  test('steps through the unit and its cuts, and mirrors the ruler for the left hand', async () => {
    const { page, close } = await openGuest(demo, GEESE);
    const ruler = page.locator('path.ruler');
    const middle = async () => {
      const [box, unit] = await Promise.all([
        ruler.boundingBox(),
        page.locator('path.outline').first().boundingBox(),
      ]);
      if (box === null || unit === null) throw new Error('nothing is drawn');
      return box.x + box.width / 2 - (unit.x + unit.width / 2);
    };
    expect(await middle()).toBeLessThan(0);
    const before = await table(page, 'Trim marks');
    await choice(page, 'Left').check();
    await expect.poll(middle).toBeGreaterThan(0);
    expect(await table(page, 'Trim marks')).toEqual(before);
    const shown = () => page.locator('svg[part=drawing]').getAttribute('aria-label');
    await button(page, 'Next').click();
    await expect.poll(shown).toContain('To cut: 1 of 4¼');
    await button(page, 'Next').click();
    await expect.poll(shown).toContain('To cut: 4 of 2⅜');
    expect(await button(page, 'Next').getAttribute('aria-disabled')).toBe('true');
    await close();
  });

  test('takes and shows centimeters', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      '<eighths-unit unit="half-square-triangles" finished="7.5" units="metric"></eighths-unit>',
    );
    const plan = planUnit('half-square-triangles', {
      finished: '7.5 cm',
      seam: '0.75 cm',
      grid: '1 mm',
    });
    const cm = (value: Length | undefined) => formatLength(value ?? 0, { unit: 'cm' });
    await expect.poll(() => headline(page)).toBe('7.5 cm finished, trim to 9 cm');
    const [row = []] = await table(page, 'Cut list');
    expect(row[2]).toMatch(new RegExp(`^${cm(plan.cuts[0]?.width).replace(/\s*cm/, '')} exact ≈ `));
    await page.locator('details').evaluate((node) => node.setAttribute('open', ''));
    await choice(page, 'Inches').check();
    await expect.poll(() => headline(page)).toContain('finished, trim to');
    expect(await input(page, 'Finished side').inputValue()).not.toBe('7.5');
    expect(problems).toEqual([]);
    await close();
  });

  test('gives its pieces to the fabric element, and follows changes', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      `<eighths-unit id="geese" unit="flying-geese" finished="3" count="48"></eighths-unit>
       <eighths-fabric from="geese" width="40" locked="pieces"></eighths-fabric>`,
    );
    const buys = (count: number) => {
      const { pieces } = flyingGeese({ finished: 3, count });
      return ['goose', 'sky'].map((fabric) => {
        const own = pieces.filter((piece) => piece.fabric === fabric);
        return `Buy ${yardage({ width: 40, pieces: own }).yards} of ${fabric}`.replace(/\s+/g, ' ');
      });
    };
    const shown = async () => {
      const text = await page.locator('eighths-fabric .headline').allTextContents();
      return Promise.all(
        text.map(async (_, index) =>
          (
            await page
              .locator('eighths-fabric .headline')
              .nth(index)
              .evaluate((node) => {
                const copy = node.cloneNode(true);
                if (!(copy instanceof Element)) return '';
                for (const hidden of copy.querySelectorAll('.unseen, .minor')) hidden.remove();
                return copy.textContent;
              })
          )
            .replace(/\s+/g, ' ')
            .trim(),
        ),
      );
    };
    await expect.poll(shown).toEqual(buys(48));
    await element(page).getByRole('textbox', { name: 'How many', exact: true }).fill('200');
    await expect.poll(shown).toEqual(buys(200));
    expect(problems).toEqual([]);
    await close();
  });

  test('tells what changed and what is wrong, in plain JSON', async () => {
    const { page, close } = await openGuest(demo, GEESE);
    await expect.poll(() => headline(page)).toContain('3 by 1½');
    const heard = await listen(page);
    await input(page, 'How many').fill('8');
    await expect.poll(async () => (await heard()).length).toBe(1);
    const [change] = await heard();
    expect(change).toMatchObject({
      type: 'eighths-change',
      detail: { version: 1, units: 8, spec: { unit: 'flying-geese' }, plan: { sets: 2 } },
    });
    await input(page, 'How many').fill('none');
    await input(page, 'How many').blur();
    await expect.poll(async () => (await heard()).at(-1)?.type).toBe('eighths-error');
    expect((await heard()).at(-1)?.detail).toMatchObject({ code: 'not-a-count', field: 'count' });
    await close();
  });

  test('saves a template as a sheet in real inches', async () => {
    const { page, problems, saved, close } = await openGuest(
      demo,
      '<eighths-unit unit="drunkards-path" finished="4"></eighths-unit>',
    );
    await button(page, 'Next').click();
    const { text: svg } = await saved(() =>
      page.getByRole('link', { name: 'Save this template' }).click(),
    );
    expect(svg).toMatch(/^<svg [^>]*width="[\d.]+in" height="[\d.]+in"/);
    expect(svg).toContain('Never cut against paper.');
    expect(problems).toEqual([]);
    await close();
  });
});

/** Figures as they stand in sentences of the element. */
function figures(text: string): string {
  return text.replace(/(\d+ )?\d+\/\d+|\d+/g, (number) => formatLength(number));
}

describe.each([
  ['inches', ''],
  ['centimeters', ' units="metric"'],
])('in %s', (_, attribute) => {
  test('every unit and method is rendered whole, without a problem', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      `<eighths-unit${attribute}></eighths-unit>`,
    );
    for (const name of unitNames()) {
      for (const { name: method } of UNITS[name].methods) {
        await element(page).evaluate(
          async (node, [unit = '', way = '']) => {
            const fresh = document.createElement('eighths-unit');
            for (const { name: each, value } of node.attributes) fresh.setAttribute(each, value);
            fresh.setAttribute('unit', unit);
            fresh.setAttribute('method', way);
            node.replaceWith(fresh);
            await Reflect.get(fresh, 'updateComplete');
          },
          [name, method],
        );
        const cuts = UNITS[name].plan({ ...UNITS[name].example, method }).cuts.length;
        expect(
          await page.locator('.error:not(:empty)').allTextContents(),
          `${name} ${method}`,
        ).toEqual([]);
        for (let cut = 0; cut <= cuts; cut += 1) {
          const text = await page.locator('.root').evaluate((root) => {
            const drawn = [...root.querySelectorAll('svg, path')].map(
              (node) => node.getAttribute('d') ?? node.getAttribute('aria-label'),
            );
            const leaves = [...root.querySelectorAll('*')].filter(
              (node) => node.childElementCount === 0,
            );
            return [...leaves.map((node) => node.textContent), ...drawn].join(' ');
          });
          expect(text, `${name} ${method}`).not.toMatch(
            /NaN|Infinity|undefined|\{\w+\}|√|\[object|\d{6}/,
          );
          if (cut < cuts) await button(page, 'Next').click();
        }
        expect(await button(page, 'Next').getAttribute('aria-disabled')).toBe('true');
      }
    }
    expect(problems).toEqual([]);
    await close();
  });
});

describe.each([
  [320, 'light'],
  [320, 'dark'],
  [1280, 'light'],
  [1280, 'dark'],
] as const)('at %s, %s', (width, colorScheme) => {
  test('axe finds nothing wrong on the page of units', async () => {
    const { page, problems, screenshot, close } = await demo.open('/unit.html', {
      viewport: { width, height: 900 },
      colorScheme,
    });
    await expect.poll(() => page.locator('eighths-fabric .headline').count()).toBe(2);
    for (const details of await page.locator('details').all()) {
      await details.evaluate((node) => node.setAttribute('open', ''));
    }
    expect(await violations(page)).toEqual([]);
    expect(problems).toEqual([]);
    await screenshot(`unit-page-${width}-${colorScheme}`);
    await close();
  });
});

test.each([240, 320])('no unit makes a page %s wide scroll sideways', async (width) => {
  const { page, close } = await openGuest(demo, '<eighths-unit count="100"></eighths-unit>', {
    viewport: { width, height: 900 },
  });
  for (const name of unitNames()) {
    await element(page).evaluate(async (node, unit) => {
      node.setAttribute('unit', unit);
      await Reflect.get(node, 'updateComplete');
    }, name);
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over, name).toBeLessThanOrEqual(0);
  }
  await close();
});
