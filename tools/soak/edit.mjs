// What a reader does to an element, by chance, and the way back to what the page's author wrote.
import { setTimeout as after } from 'node:timers/promises';

/** @typedef {import('playwright-core').Page} Page */
/** @typedef {import('../fuzz/random.mjs').Chance} Chance */

const TEXTS = [
  '1',
  '2',
  '3',
  '4',
  '6',
  '8',
  '9',
  '10 1/2',
  '12',
  '2 1/2',
  '3/4',
  '',
  'zigzag',
  '0',
  '1/0',
];
/** An edit that takes longer, in milliseconds, hangs. */
const LONGEST = 30_000;

/**
 * What a page comes to within the bound. A page that hangs cannot say so itself.
 *
 * @param {Promise<void>} done
 * @param {string} what
 */
async function within(done, what) {
  const stop = new AbortController();
  const late = after(LONGEST, undefined, { signal: stop.signal }).then(() => {
    throw new Error(`${what} has not ended in ${LONGEST / 1000} seconds.`);
  });
  try {
    await Promise.race([done, late]);
  } finally {
    stop.abort();
    late.catch(() => undefined);
  }
}

/**
 * Waits until the page's first element has answered: while it is at work it says so, in a sentence that
 * ends in an ellipsis.
 *
 * @param {Page} page
 * @param {string} tag
 */
export const answered = (page, tag) =>
  within(
    page.evaluate(async (name) => {
      const host = document.querySelector(name);
      const isBusy = () =>
        [...(host?.shadowRoot?.querySelectorAll('.standing, .kits-none') ?? [])].some((node) =>
          node.textContent?.trim().endsWith('…'),
        );
      do {
        await Reflect.get(host ?? {}, 'updateComplete');
        await new Promise((resolve) => setTimeout(resolve));
      } while (isBusy());
    }, tag),
    `The answer of ${tag}`,
  );

/**
 * One edit as a reader makes it: a text typed, a choice taken or a button pressed. One in four waits for
 * the answer; the others are overtaken by the next, as by somebody who types on.
 *
 * @param {Page} page
 * @param {string} tag
 * @param {Chance} by
 */
export async function edit(page, tag, by) {
  const color = `#${by.whole(0, 0xffffff).toString(16).padStart(6, '0')}`;
  const done = page.evaluate(
    async ([name, part, typed, picked]) => {
      const host = document.querySelector(name);
      const controls = [
        ...(host?.shadowRoot?.querySelectorAll('input, select, summary, button') ?? []),
      ]
        // What prints, saves or copies leaves the page.
        .filter((node) => !node.closest('.actions, .panel-sheets') && node.checkVisibility());
      const control = controls[Math.floor(part * controls.length)];
      const heard = { bubbles: true, composed: true };
      // A click on a color would open the browser's own window.
      if (control instanceof HTMLInputElement && ['text', 'color'].includes(control.type)) {
        control.value = control.type === 'text' ? typed : picked;
        control.dispatchEvent(new InputEvent('input', heard));
        control.dispatchEvent(new Event('change', heard));
      } else if (control instanceof HTMLSelectElement) {
        control.selectedIndex = Math.floor(part * 997) % control.options.length;
        control.dispatchEvent(new Event('change', heard));
      } else if (control instanceof HTMLElement) control.click();
      await Reflect.get(host ?? {}, 'updateComplete');
      await new Promise((resolve) => setTimeout(resolve));
    },
    /** @type {const} */ ([tag, by.unit(), by.one(TEXTS), color]),
  );
  await within(done, `An edit of ${tag}`);
  if (by.often(0.25)) await answered(page, tag);
}

/**
 * Makes another element as the author wrote the page's first, waits until it shows something, takes its
 * properties over into the first and throws it away. What is open is folded. So all measurements are of
 * the same page, with the same element on it from first to last, and others come and go.
 *
 * @param {Page} page
 * @param {string} tag
 * @param {readonly (readonly [name: string, value: string])[]} attributes
 */
export async function reset(page, tag, attributes) {
  const done = page.evaluate(
    async ([name, all]) => {
      const turn = () => new Promise((resolve) => setTimeout(resolve));
      const host = document.querySelector(name);
      const fresh = document.createElement(name);
      for (const [key, value] of all) fresh.setAttribute(key, value);
      const script = host?.querySelector('script[type="application/json"]');
      if (script) fresh.append(script.cloneNode(true));
      host?.after(fresh);
      while (!fresh.shadowRoot?.querySelector('[part=headline]')) await turn();
      /** @type {ReadonlyMap<string, unknown>} */
      const properties = Reflect.get(fresh.constructor, 'elementProperties');
      for (const property of properties.keys()) {
        Reflect.set(host ?? {}, property, Reflect.get(fresh, property));
      }
      fresh.remove();
      await Reflect.get(host ?? {}, 'updateComplete');
      const open = () => host?.shadowRoot?.querySelector('details[open] > summary');
      for (let summary = open(); summary instanceof HTMLElement; summary = open()) {
        summary.click();
        await turn();
      }
    },
    /** @type {const} */ ([tag, attributes]),
  );
  await within(done, `Another ${tag}`);
  await answered(page, tag);
}
