import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demo as mounts } from '../../tools/serve.mjs';
import { type Demo, startDemo, type Visit } from './support/launch.js';
import { moduleScript, openGuest } from './support/sheet.js';

let demo: Demo;
beforeAll(async () => {
  demo = await startDemo();
});
afterAll(() => demo?.close());

const built = (name: string) => readFileSync(join(mounts['/eighths/'], name));
const hashOf = (name: string) =>
  `sha384-${createHash('sha384').update(built(name)).digest('base64')}`;

/** What runs, or would, wherever it is taken for markup. */
const MARKUP = `<img src=x onerror="document.body.dataset.ran='yes'">`;

const RECIPE = {
  name: `Nine Windows ${MARKUP}`,
  about: `An invented cushion. ${MARKUP}`,
  fabrics: [
    { id: 'linen', name: `Linen ${MARKUP}`, role: MARKUP },
    { id: 'night', name: 'Night' },
  ],
  blocks: [{ id: 'window', name: MARKUP, kind: 'plain', fabric: 'linen', finished: 9 }],
  binding: { fabric: 'night' },
  sizes: [{ name: MARKUP, across: 3, down: 3 }],
};
/** As a page holds it: nothing in it ends the script that it stands in. */
const recipe = `<script type="application/json">${JSON.stringify(RECIPE).replaceAll('<', '\\u003c')}</script>`;

const PANELS = 'finder resize strips arc compare settings table seam sheets';
const ELEMENTS = {
  'eighths-log-cabin': `<eighths-log-cabin finished="9" rounds="4" wide="1 1/4" narrow="1/2" strips-wide="2" strips-narrow="1 1/2" panels-open="${PANELS}"></eighths-log-cabin>`,
  'eighths-unit': '<eighths-unit unit="flying-geese" finished-width="3"></eighths-unit>',
  'eighths-fabric': '<eighths-fabric></eighths-fabric>',
  'eighths-quilt': `<eighths-quilt>${recipe}</eighths-quilt>`,
} as const;
type Tag = keyof typeof ELEMENTS;
const tags: readonly Tag[] = [
  'eighths-log-cabin',
  'eighths-unit',
  'eighths-fabric',
  'eighths-quilt',
];

/** Nothing is allowed but what the page names one by one, and no text becomes markup. */
const POLICIES = [
  {
    name: 'its hash',
    script: () =>
      `<script src="/eighths/eighths.js" integrity="${hashOf('eighths.js')}" defer></script>`,
    sources: () => `script-src '${hashOf('eighths.js')}'; style-src 'none'`,
  },
  {
    name: 'a nonce',
    script: () =>
      '<style nonce="guest">body { margin: 1em }</style><script nonce="guest" src="/eighths/eighths.js" type="module"></script>',
    sources: () => "script-src 'nonce-guest'; style-src 'nonce-guest'",
  },
] as const;

const strict = (sources: string) => ({
  'content-security-policy': `default-src 'none'; ${sources}; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types lit-html`,
});

/** Opens a page that notes what its policy refuses, and prints nothing. */
async function openWatched(
  body: string,
  options: Parameters<typeof openGuest>[2],
): Promise<Visit & { readonly refused: () => Promise<readonly string[]> }> {
  const watched = await openGuest(demo, body, options);
  const { page } = watched;
  await page.addInitScript(() => {
    const refused: string[] = [];
    Object.assign(window, { refused });
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
      refused.push(`${violatedDirective}: ${blockedURI}`),
    );
    window.print = () => {
      Object.assign(top ?? window, {
        prints: Number(Reflect.get(top ?? window, 'prints') ?? 0) + 1,
      });
      window.dispatchEvent(new Event('afterprint'));
    };
  });
  await page.reload();
  return { ...watched, refused: () => page.evaluate(() => Reflect.get(window, 'refused')) };
}

const prints = (page: Page): Promise<number> =>
  page.evaluate(() => Number(Reflect.get(window, 'prints') ?? 0));

/** Everything there is to press below an answer. */
async function usesActions({ page, saved }: Visit, host: Locator): Promise<void> {
  const press = (name: string) => host.getByRole('button', { name, exact: true }).click();
  await press('Copy as text');
  await expect.poll(() => host.locator('.actions .note').textContent()).not.toBe('');
  // The fabric element’s answer has no table: what it saves is empty.
  const tables = (await host.locator('table').count()) > 0 ? ['Save the tables (CSV)'] : [];
  for (const name of [...tables, 'Save the drawing (SVG)']) {
    expect((await saved(() => press(name))).text).not.toBe('');
  }
  const before = await prints(page);
  await press('Print this');
  await expect.poll(() => prints(page)).toBe(before + 1);
}

/** Types into an element's first length, what is wrong and then what is right. */
async function types(page: Page, host: Locator): Promise<void> {
  const input = host.locator('input[type=text]:visible').first();
  const text = await input.inputValue();
  await input.fill('zigzag');
  await page.keyboard.press('Tab');
  await expect.poll(() => input.getAttribute('aria-invalid')).toBe('true');
  await input.fill(text);
  await expect.poll(() => input.getAttribute('aria-invalid')).not.toBe('true');
}

test.each(POLICIES)(
  'under a policy that allows the script by $name only every element does all it does, and nothing is refused',
  async ({ script, sources }) => {
    const visit = await openWatched(Object.values(ELEMENTS).join(''), {
      head: script(),
      headers: strict(sources()),
    });
    const { page, problems, refused, close } = visit;
    for (const panel of PANELS.split(' '))
      await page.locator(`.panel-${panel} .contents`).waitFor();
    for (const tag of tags) {
      const host = page.locator(tag);
      await host.locator('[part=headline]').first().waitFor();
      await types(page, host);
      await usesActions(visit, host);
    }
    expect(await refused()).toEqual([]);
    expect(problems).toEqual([]);
    await close();
  },
);

test('under such a policy a style or a script of the page’s text is refused, and that is seen', async () => {
  const { page, problems, refused, close } = await openWatched(
    '<p style="color: red">Refused</p><script>document.body.dataset.ran = "yes"</script>',
    { head: '', headers: strict("script-src 'nonce-guest'; style-src 'nonce-guest'") },
  );
  await expect.poll(async () => (await refused()).length).toBe(2);
  expect(await page.evaluate(() => document.body.dataset.ran)).toBe(undefined);
  expect(problems.length).toBeGreaterThan(0);
  await close();
});

describe('text is never taken for markup', () => {
  test('in any attribute', async () => {
    const { page, problems, close } = await openGuest(demo, '<main></main>');
    const made = await page.evaluate(
      async ([elements, text]) => {
        const found: string[] = [];
        let tried = 0;
        for (const name of elements) {
          const names: readonly string[] = Reflect.get(
            await customElements.whenDefined(name),
            'observedAttributes',
          );
          for (const attribute of [...names, 'lang', 'title']) {
            // Such an address is asked for, as the page’s author wrote it; that is no markup.
            if (attribute === 'src') continue;
            const element = document.createElement(name);
            element.setAttribute(attribute, text);
            document.querySelector('main')?.replaceChildren(element);
            await Reflect.get(element, 'updateComplete');
            if (element.shadowRoot?.querySelector('img')) found.push(`${name} ${attribute}`);
            tried += 1;
          }
        }
        return { found, tried };
      },
      [tags, MARKUP] as const,
    );
    expect(made.found).toEqual([]);
    expect(made.tried).toBeGreaterThan(100);
    expect(await page.evaluate(() => document.body.dataset.ran)).toBe(undefined);
    expect(problems).toEqual([]);
    await close();
  });

  test('in any text of a recipe', async () => {
    const { page, problems, close } = await openGuest(demo, ELEMENTS['eighths-quilt']);
    const host = page.locator('eighths-quilt');
    await expect.poll(() => host.locator('.sheet').textContent()).toContain(MARKUP);
    expect(await host.locator('img').count()).toBe(0);
    expect(await page.evaluate(() => document.body.dataset.ran)).toBe(undefined);
    expect(problems).toEqual([]);
    await close();
  });

  test('and that would be seen', async () => {
    const { page, close } = await openGuest(demo, `<main>${MARKUP}</main>`);
    await expect.poll(() => page.evaluate(() => document.body.dataset.ran)).toBe('yes');
    await close();
  });
});

describe('the hashes that a build writes', () => {
  const hashes: Readonly<Record<string, string>> = JSON.parse(`${built('integrity.json')}`);

  test('are those of its files', () => {
    expect(Object.keys(hashes)).toContain('eighths.js');
    for (const [name, hash] of Object.entries(hashes)) expect(hashOf(name), name).toBe(hash);
  });

  const script = (name: string, hash: string | undefined) =>
    `<script src="/eighths/${name}" integrity="${hash}" crossorigin="anonymous" defer></script>`;

  test('let a page load that file', async () => {
    const { page, problems, close } = await openGuest(demo, ELEMENTS['eighths-unit'], {
      head: script('eighths-unit.js', hashes['eighths-unit.js']),
    });
    await page.locator('[part=headline]').first().waitFor();
    expect(problems).toEqual([]);
    await close();
  });

  test('and no other', async () => {
    const { page, problems, close } = await openGuest(demo, ELEMENTS['eighths-unit'], {
      head: script('eighths-unit.js', hashes['eighths-fabric.js']),
    });
    await expect.poll(() => problems.join()).toContain('eighths-unit.js');
    expect(await page.evaluate(() => customElements.get('eighths-unit') === undefined)).toBe(true);
    await close();
  });
});

test('a page that has a Trusted Types policy of Lit’s already allows a second one by name', async () => {
  const allowed = "require-trusted-types-for 'script'; trusted-types lit-html";
  const twice = `${moduleScript}<script type="module" src="/eighths/eighths.js?other"></script>`;
  const open = (policy: string) =>
    openGuest(demo, ELEMENTS['eighths-unit'], {
      head: twice,
      headers: { 'content-security-policy': policy },
    });
  const refusing = await open(allowed);
  await refusing.page.locator('[part=headline]').first().waitFor();
  expect(refusing.problems.join()).toContain('lit-html');
  await refusing.close();
  const allowing = await open(`${allowed} 'allow-duplicates'`);
  await allowing.page.locator('[part=headline]').first().waitFor();
  expect(allowing.problems).toEqual([]);
  await allowing.close();
});
