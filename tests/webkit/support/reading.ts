import { Key, type WebDriver, type WebElement } from 'selenium-webdriver';

/** Runs a function on the page; it sees nothing but what it is given. */
export const onPage = <Given extends readonly unknown[], Result>(
  page: WebDriver,
  work: (...given: Given) => Result,
  ...given: Given
): Promise<Result> => page.executeScript<Result>(work, ...given);

/** What stands in sight in a part of an element: words for the ear alone are left out. */
export const shown = (page: WebDriver, tag: string, selector = '.headline'): Promise<string> =>
  onPage(
    page,
    (name, what) => {
      const copy = document.querySelector(name)?.shadowRoot?.querySelector(what)?.cloneNode(true);
      if (!(copy instanceof Element)) return '';
      for (const hidden of copy.querySelectorAll('.unseen')) hidden.remove();
      return (copy.textContent ?? '').replace(/\s+/g, ' ').trim();
    },
    tag,
    selector,
  );

/** An element’s input, button, list or fold by the words that name it, once it is there. */
export const control = (page: WebDriver, tag: string, name: string): Promise<WebElement> =>
  page.wait(
    // Nothing is found until it is there: then it is asked for again.
    () =>
      page.executeScript<WebElement>(
        (host: string, words: string) => {
          const root = document.querySelector(host)?.shadowRoot;
          const all = root?.querySelectorAll('input, button, select, summary, textarea') ?? [];
          return [...all].find((one) => {
            const labels = one instanceof HTMLInputElement || one instanceof HTMLSelectElement;
            const label = labels ? one.labels?.[0]?.textContent : one.textContent;
            return (one.getAttribute('aria-label') ?? label ?? '').trim() === words;
          });
        },
        tag,
        name,
      ),
    15_000,
    `There is no “${name}” in <${tag}>.`,
  );

export const press = async (page: WebDriver, tag: string, name: string): Promise<void> =>
  (await control(page, tag, name)).click();

/** Types over what stands in the input that has the focus. */
export const typeOver = (page: WebDriver, text: string): Promise<void> =>
  page.actions().keyDown(Key.CONTROL).sendKeys('a').keyUp(Key.CONTROL).sendKeys(text).perform();

/**
 * Types over what stands in an input. Not by a click on it first: for a text input in a shadow root
 * the driver takes the input's own text for something that lies above it.
 */
export async function typeInto(
  page: WebDriver,
  tag: string,
  name: string,
  text: string,
): Promise<void> {
  const input = await control(page, tag, name);
  await input.sendKeys(Key.chord(Key.CONTROL, 'a'));
  await input.sendKeys(text);
}

/** Chooses from a list as the keyboard does, by the first letters of the words. */
export async function choose(
  page: WebDriver,
  tag: string,
  name: string,
  words: string,
): Promise<void> {
  const list = await control(page, tag, name);
  await list.sendKeys(words);
}

/** Keys to whatever has the focus. */
export const keys = (page: WebDriver, ...pressed: readonly string[]): Promise<void> =>
  page
    .actions()
    .sendKeys(...pressed)
    .perform();

/** What has the focus, deep in its shadow root, and whether a person sees that. */
export const focused = (page: WebDriver) =>
  onPage(page, () => {
    let active = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    if (active === null) return { name: '', outline: '', visible: false };
    const label =
      active instanceof HTMLInputElement ? active.labels?.[0]?.textContent : active.textContent;
    const { outlineStyle, outlineWidth } = getComputedStyle(active);
    const { width, top, bottom } = active.getBoundingClientRect();
    return {
      name: (active.getAttribute('aria-label') ?? label ?? '').trim(),
      outline: `${outlineStyle} ${outlineWidth}`,
      visible: width > 0 && top > -1 && bottom < innerHeight + 1,
    };
  });

/** What reaches out sideways: beyond the page, or already beyond the element that it stands in. */
export const sticksOut = (
  page: WebDriver,
  beyond: 'page' | 'element',
): Promise<readonly string[]> =>
  onPage(
    page,
    (edge) => {
      const hosts = [...document.querySelectorAll('*')].filter((one) => one.shadowRoot !== null);
      const wide = hosts.flatMap((host) => {
        const most = edge === 'page' ? innerWidth : host.getBoundingClientRect().right;
        const inside = host.shadowRoot?.querySelectorAll('*:not(svg *, .unseen)') ?? [];
        return [...inside]
          .filter((one) => one.getBoundingClientRect().right > most + 0.5)
          .map((one) => `${host.localName} ${one.localName}.${one.className}`);
      });
      const { scrollWidth } = document.documentElement;
      return scrollWidth > innerWidth ? [`the page is ${scrollWidth} wide`, ...wide] : wide;
    },
    beyond,
  );
