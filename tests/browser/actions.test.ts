import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Demo, startDemo } from './support/launch.js';
import { button, element, headline, input, openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const block = (more = ''): string =>
  `<eighths-log-cabin finished="9" rounds="2" wide="1 1/4" narrow="1/2" ${more}></eighths-log-cabin>`;

describe('with its answer an element', () => {
  test('puts text on the clipboard, its figures as they are typed', async () => {
    const { page, problems, close } = await openGuest(demo, block(), {
      permissions: ['clipboard-read', 'clipboard-write'],
    });
    await button(page, 'Copy as text').click();
    await page.getByText('Copied.').waitFor();
    const text = await page.evaluate(() => navigator.clipboard.readText());
    expect(text).toContain('9 finished, trim to 9 1/2');
    expect(text).toContain('Part\tFabric\tCut\tFor 1 block');
    expect(text).toMatch(/\t1 3\/4 by \d/);
    expect(text).not.toMatch(/[½¼¾⅛⁄]|inches\b.*inches/);
    expect(problems).toEqual([]);
    await close();
  });

  test.each([
    ['a page may not use the clipboard', 'refused'],
    ['nobody answers whether a page may use the clipboard', 'unanswered'],
  ])('lays the text out where %s', async (_, answer) => {
    const { page, close } = await openGuest(demo, block());
    await page.evaluate((given) => {
      const writeText = () =>
        given === 'refused' ? Promise.reject(new Error('not here')) : new Promise(() => undefined);
      Object.defineProperty(navigator, 'clipboard', { value: { writeText } });
    }, answer);
    await button(page, 'Copy as text').click();
    const byHand = page.locator('textarea');
    expect(await byHand.inputValue()).toContain('9 finished, trim to 9 1/2');
    await close();
  });

  test('saves its tables and its drawing as files', async () => {
    const { page, problems, saved, close } = await openGuest(
      demo,
      block('fabrics-center="=SUM(1,2)" fabrics-wide="blue &quot;stars&quot;"'),
    );
    const tables = await saved(() => button(page, 'Save the tables (CSV)').click());
    expect(tables.name).toBe('log-cabin.csv');
    expect(tables.text).toContain('"\'=SUM(1,2)"');
    expect(tables.text).toContain('"blue ""stars"""');
    expect(tables.text.split('\r\n').length).toBeGreaterThan(15);
    const drawing = await saved(() => button(page, 'Save the drawing (SVG)').click());
    expect(drawing.name).toBe('log-cabin.svg');
    expect(drawing.text).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" role="img"/);
    expect(problems).toEqual([]);
    await close();
  });

  test('prints itself and nothing else of the page', async () => {
    const { page, problems, close } = await openGuest(demo, `<h1>The page</h1>${block()}`);
    // The frame that is printed stays as long as its dialog is open: it is never opened here.
    await page.evaluate(() => {
      const shadow = document.querySelector('eighths-log-cabin')?.shadowRoot;
      shadow?.addEventListener(
        'load',
        ({ target }) => {
          const view = target instanceof HTMLIFrameElement ? target.contentWindow : null;
          if (view) view.print = () => undefined;
        },
        true,
      );
    });
    await button(page, 'Print this').click();
    const printed = () =>
      page.evaluate(() => {
        const frame = document
          .querySelector('eighths-log-cabin')
          ?.shadowRoot?.querySelector('iframe');
        return frame?.contentDocument?.body.firstElementChild?.shadowRoot?.textContent ?? '';
      });
    await expect.poll(printed).toContain('Cut list');
    expect(await printed()).not.toContain('The page');
    expect(problems).toEqual([]);
    await close();
  });

  test('gives a link that brings its settings back, where the page asks for that', async () => {
    const tag = block('id="mine" actions="link"');
    const { page, problems, close } = await openGuest(demo, tag, {
      permissions: ['clipboard-read', 'clipboard-write'],
    });
    await input(page, 'Finished size').fill('10 1/2');
    await button(page, 'Copy a link to this').click();
    await page.getByText('Copied.').waitFor();
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(new URL(link).hash).toContain('#mine?');
    expect(new URL(link).search).toBe('');
    await page.evaluate((address) => {
      location.hash = new URL(address).hash;
      const old = document.querySelector('eighths-log-cabin');
      const fresh = document.createElement('eighths-log-cabin');
      fresh.id = 'mine';
      fresh.setAttribute('actions', 'link');
      fresh.setAttribute('locked', 'rounds');
      fresh.setAttribute('rounds', '3');
      old?.replaceWith(fresh);
    }, link);
    await expect.poll(() => headline(page)).toBe('10½ finished, trim to 11');
    // What the page fixes, a link does not change.
    expect(await element(page).evaluate((each) => Reflect.get(each, 'plan').rounds.length)).toBe(3);
    expect(problems).toEqual([]);
    await close();
  });

  test('offers what the page names, and nothing where it says none', async () => {
    const { page, close } = await openGuest(demo, block('actions="none"'));
    await expect.poll(() => headline(page)).not.toBe('');
    expect(await page.locator('[part=actions]').count()).toBe(0);
    await close();
  });
});

describe('ways in', () => {
  test('a division that an editor leaves alone becomes an element', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      '<div data-eighths="log-cabin" data-finished="10" data-rounds="2"><p>Ten inches.</p></div>',
    );
    await expect.poll(() => headline(page)).toBe('10 finished, trim to 10½');
    expect(await page.locator('eighths-log-cabin').count()).toBe(1);
    expect(problems).toEqual([]);
    await close();
  });

  test('the page for frames is set by its address, and says how high it is', async () => {
    const { page, problems, close } = await openGuest(
      demo,
      `<iframe title="A block" src="/eighths/embed.html?element=log-cabin&finished=12&rounds=3&onclick=alert(1)" width="600" height="100"></iframe>
       <script>addEventListener('message', ({ data }) => { document.querySelector('iframe').height = data.height; });</script>`,
    );
    const frame = page.frameLocator('iframe');
    await frame.locator('.headline').waitFor();
    expect(await frame.locator('.headline').textContent()).toContain('12½');
    await expect
      .poll(() => page.locator('iframe').evaluate((each) => each.clientHeight))
      .toBeGreaterThan(600);
    expect(problems).toEqual([]);
    await close();
  });
});
