import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Firefox, startFirefox } from './launch.js';

let firefox: Firefox;
beforeAll(async () => {
  firefox = await startFirefox();
});
afterAll(() => firefox?.close());

/** What is read of an element's part, for the eye. */
const shown = (page: Page, tag: string, selector = '.headline'): Promise<string> =>
  page.evaluate(
    (name, what) => {
      const part = document.querySelector(name)?.shadowRoot?.querySelector(what);
      const copy = part?.cloneNode(true);
      if (!(copy instanceof Element)) return '';
      for (const each of copy.querySelectorAll('.unseen')) each.remove();
      return (copy.textContent ?? '').replace(/\s+/g, ' ').trim();
    },
    tag,
    selector,
  );

const typeInto = async (page: Page, tag: string, id: string, text: string): Promise<void> => {
  await page.evaluate(
    (name, field) => {
      const input = document.querySelector(name)?.shadowRoot?.querySelector(`#${field}`);
      if (input instanceof HTMLInputElement) {
        input.focus();
        input.select();
      }
    },
    tag,
    id,
  );
  await page.keyboard.type(text);
};

describe('in Firefox', () => {
  test.each([
    ['/', 'eighths-log-cabin', /^9 finished, trim to 9½/],
    ['/shop.html', 'eighths-log-cabin', /^12 finished, trim to 12½/],
    ['/blog.html', 'eighths-log-cabin', /^9 finished/],
    ['/fabric.html', 'eighths-fabric', /^Buy/],
    ['/unit.html', 'eighths-unit', /finished/],
    ['/quilt.html', 'eighths-quilt', /^65 finished/],
  ])('the page %s shows its numbers, without a problem', async (path, tag, headline) => {
    const { page, problems, close } = await firefox.open(path);
    await expect.poll(() => shown(page, tag), { timeout: 10_000 }).toMatch(headline);
    expect(problems).toEqual([]);
    await close();
  });

  test('what is typed is answered, and what is wrong is said beside the input', async () => {
    const { page, problems, close } = await firefox.open('/');
    await expect.poll(() => shown(page, 'eighths-log-cabin')).toMatch(/^9 finished/);
    await typeInto(page, 'eighths-log-cabin', 'center', ' ');
    await page.keyboard.press('Backspace');
    await typeInto(page, 'eighths-log-cabin', 'finished', '10 1/2');
    await expect.poll(() => shown(page, 'eighths-log-cabin')).toBe('10½ finished, trim to 11');
    await typeInto(page, 'eighths-log-cabin', 'finished', 'ten');
    await page.keyboard.press('Tab');
    await expect.poll(() => shown(page, 'eighths-log-cabin', '.error')).not.toBe('');
    expect(problems).toEqual([]);
    await close();
  });

  test('a strict policy is kept: no style, script or markup is refused', async () => {
    const { page, problems, close } = await firefox.open('/strict.html');
    await expect
      .poll(() => shown(page, 'eighths-log-cabin'), { timeout: 10_000 })
      .toMatch(/finished/);
    expect(await page.evaluate(() => Reflect.get(window, 'violations'))).toEqual([]);
    expect(problems).toEqual([]);
    await close();
  });
});
