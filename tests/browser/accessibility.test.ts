import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { violations } from './support/axe.js';
import { type Demo, startDemo } from './support/launch.js';
import { button, choice, headline, input, openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const nothing = async () => undefined;
const openMore = (page: Page) => page.getByText('Sewing, trimming and measures').click();
const go = async (page: Page, name: string) => button(page, name).click();

interface State {
  readonly name: string;
  readonly path?: string;
  readonly options?: BrowserContextOptions;
  readonly reach?: (page: Page) => Promise<unknown>;
}

const narrow = { viewport: { width: 320, height: 640 } };
const wide = { viewport: { width: 1280, height: 900 } };

const states: readonly State[] = [
  { name: 'as it comes, 1280 wide', options: wide },
  { name: 'as it comes, 320 wide', options: narrow },
  { name: 'dark, with all folded out', options: { colorScheme: 'dark' }, reach: openMore },
  {
    name: 'an error, dark, and numbers out of date',
    options: { colorScheme: 'dark' },
    reach: async (page) => {
      await input(page, 'Center').fill('two');
      await page.keyboard.press('Tab');
      await page.locator('[aria-invalid=true]').waitFor();
    },
  },
  {
    name: 'an error on the blog, 320 wide',
    path: '/blog.html',
    options: narrow,
    reach: async (page) => {
      await input(page, 'Wide strip cut').fill('1');
      await page.keyboard.press('Tab');
      await page.locator('[aria-invalid=true]').waitFor();
    },
  },
  {
    name: 'left-handed, in the second placement',
    reach: async (page) => {
      await choice(page, 'Left').check();
      await go(page, 'Round 2');
      await go(page, 'Next');
    },
  },
  {
    name: 'in centimeters, with all folded out, 320 wide',
    options: narrow,
    reach: async (page) => {
      await openMore(page);
      await choice(page, 'Centimeters').check();
    },
  },
  { name: 'the blog, sixteen blocks', path: '/blog.html', options: wide },
  { name: 'the shop, with an input fixed', path: '/shop.html', options: wide },
  {
    name: 'the shop in the dark, 320 wide',
    path: '/shop.html',
    options: { ...narrow, colorScheme: 'dark' },
  },
];

describe('axe finds nothing wrong with', () => {
  test.each(states)('$name', async ({ path = '/', options = {}, reach = nothing }) => {
    const { page, problems, close } = await demo.open(path, options);
    await reach(page);
    expect(await violations(page)).toEqual([]);
    expect(problems).toEqual([]);
    await close();
  });

  test('the drawing of any round', async () => {
    const { page, close } = await demo.open('/');
    for (const round of [1, 2, 3, 4]) {
      await go(page, `Round ${round}`);
      await page.getByText(`Round ${round} of 4: cuts 1, 2`).waitFor();
      expect(await violations(page), `round ${round}`).toEqual([]);
    }
    await close();
  });

  test('warnings, and faults of the page’s own settings', async () => {
    const { page, close } = await openGuest(
      demo,
      '<main><h1>Guest</h1><eighths-log-cabin finished="9" wide="1" narrow="3/8"></eighths-log-cabin><eighths-log-cabin layout="maze" locked="finished" finished="nine"></eighths-log-cabin></main>',
    );
    await page.locator('.warnings').waitFor();
    expect(await page.locator('.error').allTextContents()).toEqual([
      expect.stringContaining('finished: “nine” is not a length'),
      expect.stringContaining('layout: “maze” is not known'),
    ]);
    expect(await violations(page)).toEqual([]);
    await close();
  });

  test('and it does find what is wrong', async () => {
    const { page, close } = await openGuest(demo, '<main><h1>A</h1><input></main>');
    expect(await violations(page)).toEqual([expect.stringContaining('label at input')]);
    await close();
  });
});

describe('spoken', () => {
  test('every number in sight is glyphs for the eye and words for the ear', async () => {
    const { page, close } = await demo.open('/');
    const numbers = await page.locator('.number').evaluateAll((list) =>
      list.map((number) => {
        const [eye, ear, ...more] = number.children;
        return {
          figures: eye?.textContent ?? '',
          hidden: eye?.getAttribute('aria-hidden'),
          words: ear?.textContent ?? '',
          offScreen: ear !== undefined && getComputedStyle(ear).clipPath === 'inset(50%)',
          more: more.length,
          untranslated: number.querySelectorAll('[translate=no]').length,
        };
      }),
    );
    expect(numbers.length).toBeGreaterThan(50);
    for (const number of numbers) {
      expect(number).toMatchObject({ hidden: 'true', offScreen: true, more: 0, untranslated: 2 });
      expect(number.words).toMatch(/inch/);
      expect(number.words).not.toMatch(/[¼½¾⅛⅜⅝⅞⁄×]/);
    }
    expect(numbers.slice(0, 2).map(({ figures, words }) => [figures, words])).toEqual([
      ['9', '9 inches'],
      ['9½', '9 and a half inches'],
    ]);
    await close();
  });

  test('the heading and the cells of tables are read in words', async () => {
    const { page, close } = await demo.open('/');
    const heading = await page.locator('[part=headline]').ariaSnapshot();
    expect(heading).toContain('9 inches');
    expect(heading).toContain('9 and a half inches');
    expect(heading).not.toContain('½');
    const cells = page.getByRole('table', { name: 'Cut list' }).getByRole('cell');
    expect(await cells.nth(1).ariaSnapshot()).toContain(
      '2 and a half inches by 2 and a half inches',
    );
    await close();
  });

  test('a change is announced once, after a pause, and nothing at load', async () => {
    const { page, close } = await demo.open('/blog.html');
    const output = page.locator('output');
    expect(await output.textContent()).toBe('');
    await page.clock.install({ time: 0 });
    await page.clock.pauseAt(1000);
    await page.evaluate(() => {
      const region = document
        .querySelector('eighths-log-cabin')
        ?.shadowRoot?.querySelector('output');
      document.body.dataset.announced = '0';
      if (region) {
        new MutationObserver(() => {
          document.body.dataset.announced = String(Number(document.body.dataset.announced) + 1);
        }).observe(region, { childList: true, characterData: true, subtree: true });
      }
    });
    await input(page, 'Finished size').focus();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('10 1/2');
    await expect.poll(() => headline(page)).toBe('10½ finished, trim to 11');
    expect(await output.textContent()).toBe('');
    await page.clock.runFor(5000);
    await expect
      .poll(() => output.textContent())
      .toBe(
        '10 and a half inches finished, trim to 11 inches. Center 3 and a half inches. 4 rounds.',
      );
    expect(await page.evaluate(() => document.body.dataset.announced)).toBe('1');
    await close();
  });
});

describe('colors', () => {
  /**
   * The contrast of every text of a drawing with what lies under it: each fabric's tint with the color
   * of its figures, and the accent with the page. Computed from what the browser resolved.
   */
  const contrasts = (page: Page): Promise<Readonly<Record<string, number>>> =>
    page.evaluate(() => {
      const canvas = document.createElement('canvas');
      canvas.width = canvas.height = 1;
      const context = canvas.getContext('2d', { willReadFrequently: true });
      const root = document.querySelector('eighths-log-cabin')?.shadowRoot?.querySelector('.root');
      if (!context || !root) throw new Error('There is nothing to measure.');
      /** Red, green and blue of layers of color, the lowest first. */
      const mixed = (...colors: readonly string[]): readonly number[] => {
        context.clearRect(0, 0, 1, 1);
        for (const color of colors) {
          context.fillStyle = color;
          context.fillRect(0, 0, 1, 1);
        }
        return [...context.getImageData(0, 0, 1, 1).data.slice(0, 3)];
      };
      const light = (rgb: readonly number[]): number => {
        const [r = 0, g = 0, b = 0] = rgb.map((value) => {
          const part = value / 255;
          return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const contrast = (one: readonly number[], other: readonly number[]): number => {
        const [low = 0, high = 0] = [light(one), light(other)].sort((a, b) => a - b);
        return (high + 0.05) / (low + 0.05);
      };
      const resolved = (classes: string, property: 'backgroundColor' | 'color'): string => {
        const probe = document.createElement('span');
        probe.className = classes;
        if (property === 'color') probe.style.color = classes;
        root.append(probe);
        const value = getComputedStyle(probe)[property];
        probe.remove();
        return value;
      };
      const page = mixed('white', resolved('var(--paper)', 'color'));
      const ink = mixed(resolved('var(--ink)', 'color'));
      const accent = mixed(resolved('var(--accent)', 'color'));
      const text = mixed(getComputedStyle(root).color);
      const found: Record<string, number> = {
        'accent on paper': contrast(accent, page),
        'text on paper': contrast(text, page),
      };
      for (let tint = 0; tint < 8; tint += 1) {
        found[`ink on tint ${tint}`] = contrast(
          ink,
          mixed(resolved(`tint-${tint}`, 'backgroundColor')),
        );
      }
      return found;
    });

  test.each([
    ['/', 'light'],
    ['/', 'dark'],
    ['/blog.html', 'light'],
    ['/shop.html', 'light'],
  ] as const)('of text on %s reach 4.5 to 1 in %s', async (path, colorScheme) => {
    const { page, close } = await demo.open(path, { colorScheme });
    const found = await contrasts(page);
    expect(Object.keys(found)).toHaveLength(10);
    const tooLow = Object.entries(found).filter(([, value]) => !(value >= 4.5));
    expect(tooLow).toEqual([]);
    await close();
  });

  test('are told apart by hatch too: no two fabrics of a block look alike without color', async () => {
    const { page, close } = await demo.open('/');
    const hatches = await page.locator('[part=drawing] path.hatch').count();
    const fabrics = await page.locator('[part=drawing] path.fabric').count();
    // Every log is hatched, the center is plain.
    expect(hatches).toBe(fabrics - 1);
    await close();
  });
});
