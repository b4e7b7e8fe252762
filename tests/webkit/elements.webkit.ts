import { Key, type WebDriver } from 'selenium-webdriver';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pagesIn } from '../../tools/serve.mjs';
import { script, startWebKit, type WebKit } from './support/launch.js';
import {
  choose,
  control,
  focused,
  keys,
  onPage,
  press,
  shown,
  sticksOut,
  typeInto,
  typeOver,
} from './support/reading.js';

let webkit: WebKit;
beforeAll(async () => {
  webkit = await startWebKit();
});
afterAll(() => webkit?.close());

const block = 'eighths-log-cabin';
const waiting = { timeout: 20_000 };

/** The headline of an element comes to be this. */
const says = (page: WebDriver, tag: string, text: string | RegExp) =>
  expect.poll(() => shown(page, tag), waiting).toMatch(text);

/** The elements of a page that show no answer. */
const unanswered = (page: WebDriver): Promise<readonly string[]> =>
  onPage(page, () =>
    [...document.querySelectorAll('*')]
      .filter((one) => one.localName.startsWith('eighths-'))
      .filter((one) => !/\d/.test(one.shadowRoot?.querySelector('.headline')?.textContent ?? ''))
      .map((one) => one.localName),
  );

const pages = (await pagesIn()).map(({ path }) => path);

describe('every element of a page shows its numbers, without a problem', () => {
  test.each(pages)('%s', async (path) => {
    const { page, problems } = await webkit.open(path);
    await expect.poll(() => unanswered(page), waiting).toEqual([]);
    expect(await sticksOut(page, 'element')).toEqual([]);
    expect(await problems()).toEqual([]);
  });

  test('and a problem would be told of', async () => {
    const { page, problems } = await webkit.openGuest(
      '<script>console.warn("mind this"); throw new Error("and that")</script><img src="/gone.png">',
    );
    await expect.poll(problems).toHaveLength(3);
    expect((await problems()).join()).toMatch(/warn: mind this.*and that.*gone\.png/);
    expect(await unanswered(page)).toEqual([]);
  });
});

const GEESE = '<eighths-unit unit="flying-geese" finished-width="3" count="48"></eighths-unit>';
const PIECES = '<eighths-fabric width="42" pieces="30 of 5 by 5"></eighths-fabric>';
const BLOCK = `<${block} finished="12" rounds="2" log="1"></${block}>`;

describe('what a person does is answered', () => {
  test('sizes that are typed, and beside the input what is wrong with one', async () => {
    const { page, problems } = await webkit.open('/');
    await typeInto(page, block, 'Center', Key.DELETE);
    await typeInto(page, block, 'Finished size', '10 1/2');
    await says(page, block, /^10½ finished, trim to 11$/);
    await typeInto(page, block, 'Finished size', `ten${Key.TAB}`);
    await expect.poll(() => shown(page, block, '#finished-note .error')).toMatch(/ten/);
    await typeInto(page, block, 'Finished size', '9½');
    await says(page, block, /^9½ finished, trim to 10$/);
    expect(await shown(page, block, '.error')).toBe('');
    expect(await problems()).toEqual([]);
  });

  test('a fraction’s button, and the arrow keys', async () => {
    const { page } = await webkit.openGuest(BLOCK);
    const input = await control(page, block, 'Finished size');
    await input.sendKeys(Key.END);
    await press(page, block, 'half an inch');
    await says(page, block, '12½ finished');
    await input.sendKeys(Key.ARROW_UP);
    await says(page, block, '12⅝ finished');
  });

  test('the other hand: the ruler is mirrored, the block is not', async () => {
    const { page } = await webkit.open('/');
    await press(page, block, 'Next');
    const drawn = (role: string) =>
      onPage(
        page,
        (what) =>
          [
            ...(document.querySelector('eighths-log-cabin')?.shadowRoot?.querySelectorAll(what) ??
              []),
          ]
            .map((one) => one.getAttribute('d'))
            .join(),
        `figure path.${role}`,
      );
    await expect.poll(() => drawn('ruler')).not.toBe('');
    const [ruler, fabric] = [await drawn('ruler'), await drawn('fabric')];
    await press(page, block, 'Left');
    await expect.poll(() => drawn('ruler')).not.toBe(ruler);
    expect(await drawn('fabric')).toBe(fabric);
  });

  test('centimeters', async () => {
    const { page, problems } = await webkit.open('/');
    await press(page, block, 'Sewing, trimming and measures');
    await press(page, block, 'Centimeters');
    await says(page, block, /^22\.86 cm finished, trim to 24\.13 cm$/);
    await typeInto(page, block, 'Center', Key.DELETE);
    await typeInto(page, block, 'Finished size', '30');
    await says(page, block, /^30 cm finished/);
    expect(await problems()).toEqual([]);
  });

  test('another unit, another method, more of them', async () => {
    const { page, problems } = await webkit.openGuest(GEESE);
    const unit = 'eighths-unit';
    await says(page, unit, /^3 by 1½ finished, trim to 3½ by 2$/);
    await press(page, unit, 'Stitch and flip');
    await expect.poll(() => shown(page, unit, 'table')).toContain('3½ by 2');
    await choose(page, unit, 'Unit', 'Half');
    await says(page, unit, /^\d+½? finished, trim to/);
    expect(await problems()).toEqual([]);
  });

  test('pieces of fabric, and one more of them', async () => {
    const { page, problems } = await webkit.openGuest(PIECES);
    const fabric = 'eighths-fabric';
    await says(page, fabric, /^Buy ¾ yd/);
    await typeInto(page, fabric, 'How many', '60');
    await says(page, fabric, /^Buy 1⅜ yd/);
    await press(page, fabric, 'Add a piece');
    await control(page, fabric, 'Take piece 2 away');
    expect(await problems()).toEqual([]);
  });

  test('another size of a pattern, and another color', async () => {
    const { page, problems } = await webkit.open('/quilt.html');
    const quilt = 'eighths-quilt';
    await says(page, quilt, /^65 finished/);
    await choose(page, quilt, 'Size', 'Crib');
    await says(page, quilt, /^40 finished/);
    await control(page, quilt, 'Color of Ember');
    expect(await problems()).toEqual([]);
  });

  test('the answer is copied, saved and printed', async () => {
    const { page, problems } = await webkit.openGuest(BLOCK);
    await press(page, block, 'Save the tables (CSV)');
    await press(page, block, 'Save the drawing (SVG)');
    await press(page, block, 'Copy as text');
    await expect.poll(() => shown(page, block, '[role=status]'), waiting).not.toBe('');
    // The dialog would be the system's; what is printed is kept in place of it.
    await onPage(page, () => {
      const root = document.querySelector('eighths-log-cabin')?.shadowRoot;
      const hold = ({ target }: Event) => {
        const view = target instanceof HTMLIFrameElement ? target.contentWindow : null;
        if (view === null) return;
        view.print = () => {
          const sheet = view.document.querySelector('div')?.shadowRoot;
          Reflect.set(window, 'printed', sheet?.querySelector('.headline')?.textContent);
        };
      };
      root?.addEventListener('load', hold, { capture: true });
    });
    await press(page, block, 'Print this');
    await expect
      .poll(() => onPage(page, () => Reflect.get(window, 'printed')))
      .toContain('trim to');
    expect(await problems()).toEqual([]);
  });
});

describe('by keyboard alone', () => {
  const MOST_STOPS = 60;

  /** Tabs on until something of that name has the focus. */
  async function tabTo(page: WebDriver, name: string): Promise<void> {
    const passed: string[] = [];
    for (let stops = 0; stops < MOST_STOPS; stops += 1) {
      await keys(page, Key.TAB);
      const now = await focused(page);
      if (now.name === name) return;
      passed.push(now.name);
    }
    throw new Error(`No way to “${name}” by Tab; passed ${passed.join(', ')}.`);
  }

  test('the whole job is done', async () => {
    const { page, problems } = await webkit.openGuest(BLOCK);
    const type = async (name: string, text: string) => {
      await tabTo(page, name);
      await typeOver(page, text);
    };
    await control(page, block, 'Finished size');
    await type('Finished size', '9');
    await type('Rounds', '4');
    await tabTo(page, 'All sides alike');
    await keys(page, Key.ARROW_RIGHT);
    await expect.poll(async () => (await focused(page)).name).toBe('Wide and narrow (curved)');
    await type('Wide log', '1 1/4');
    await type('Narrow log', '1/2');
    await type('Center', '2');
    await says(page, block, /^9 finished, trim to 9½$/);
    await tabTo(page, 'Sewing, trimming and measures');
    await keys(page, Key.ENTER);
    await tabTo(page, 'Seam allowance');
    await tabTo(page, 'Round 3');
    await keys(page, Key.ENTER);
    await expect.poll(() => shown(page, block, '.where')).toMatch(/^Round 3 of 4/);
    expect(await problems()).toEqual([]);
  });

  test('wherever the focus goes it is seen', async () => {
    const { page } = await webkit.openGuest(BLOCK);
    await control(page, block, 'Finished size');
    const names: string[] = [];
    await keys(page, Key.TAB);
    for (let stops = 0; stops < MOST_STOPS; stops += 1) {
      const now = await focused(page);
      if (names.includes(now.name) || now.name === 'A guest') break;
      expect(now, now.name).toMatchObject({ outline: 'solid 2px', visible: true });
      names.push(now.name);
      await keys(page, Key.TAB);
    }
    expect(names).toEqual(
      expect.arrayContaining([
        'Next',
        'Finished size',
        'Rounds',
        'Center',
        'Round 2',
        'Print this',
      ]),
    );
  });
});

describe('on any page', () => {
  test('a strict policy is kept: no style, script or markup is refused', async () => {
    const { page, problems } = await webkit.open('/strict.html');
    await expect.poll(() => unanswered(page), waiting).toEqual([]);
    await typeInto(page, block, 'Finished size', '9 1/2');
    await press(page, block, 'Next');
    await press(page, block, 'Save the tables (CSV)');
    await says(page, block, /^9½ finished/);
    expect(await onPage(page, () => Reflect.get(window, 'violations'))).toEqual([]);
    expect(await problems()).toEqual([]);
  });

  test.each([
    ['/', 240],
    ['/', 320],
    ['/blog.html', 240],
    ['/shop.html', 320],
    ['/fabric.html', 320],
    ['/unit.html', 320],
    ['/quilt.html', 320],
  ])('%s is read without moving sideways at %d pixels', async (path, width) => {
    const { page, problems } = await webkit.open(path, { width });
    await expect.poll(() => unanswered(page), waiting).toEqual([]);
    expect(await onPage(page, () => innerWidth)).toBe(width);
    expect(await sticksOut(page, 'page')).toEqual([]);
    expect(await problems()).toEqual([]);
  });

  test('in the dark the words are light', async () => {
    const ink = async (dark: boolean) => {
      const { page } = await webkit.open('/', { dark });
      await says(page, block, '9 finished');
      const color = await onPage(page, () => {
        const root = document
          .querySelector('eighths-log-cabin')
          ?.shadowRoot?.querySelector('.root');
        return root ? getComputedStyle(root).color : '';
      });
      return color;
    };
    expect(await ink(false)).toBe('rgb(0, 0, 0)');
    expect(await ink(true)).toBe('rgb(255, 255, 255)');
  });

  test.each([
    ['after', script('eighths') + script('eighths-de')],
    ['before', script('eighths-de') + script('eighths')],
  ])('German is spoken with its file %s the elements', async (_, head) => {
    const { page, problems } = await webkit.openGuest(
      `<${block} lang="de" finished="9"></${block}>`,
      head,
    );
    await says(page, block, '9 fertig, auf 9½ zurückschneiden');
    expect(await problems()).toEqual([]);
  });

  test('what stands inside the tag is read until the element is there', async () => {
    const { page, problems } = await webkit.openGuest(
      `<${block} finished="9"><p>Nine inches, trimmed to 9 1/2.</p></${block}>`,
      '',
    );
    const height = () =>
      onPage(page, () => document.querySelector('p')?.getBoundingClientRect().height ?? 0);
    expect(await height()).toBeGreaterThan(0);
    await onPage(page, () => {
      const late = document.createElement('script');
      late.type = 'module';
      late.src = '/eighths/eighths.js';
      document.head.append(late);
    });
    await says(page, block, '9 finished');
    expect(await height()).toBe(0);
    expect(await problems()).toEqual([]);
  });
});
