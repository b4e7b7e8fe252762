import { formatLength, type LogCabin, logCabin, SIDES, type Side } from '@eighths/core';
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import type { Demo, Visit } from './launch.js';

/** A side's numbers in the trim chart: center seam to edge, last seam to edge, trimmed off. */
type SideNumbers = readonly string[];

/** All the numbers that an element shows, as a person reads them. */
export interface Sheet {
  readonly headline: string;
  readonly trims: readonly {
    readonly round: string;
    readonly sides: Partial<Record<Side, SideNumbers>>;
  }[];
  readonly strips: readonly (readonly string[])[];
  readonly cuts: readonly (readonly string[])[];
}

/** The nine-inch curved block that is the example everywhere. */
export const example: LogCabin = logCabin({
  finished: 9,
  rounds: 4,
  center: 2,
  wide: '1 1/4',
  narrow: '1/2',
  strips: { wide: 2, narrow: '1 1/2' },
});

/** An input by its label, without the drawing whose description has the same words. */
export const input = (page: Page, label: string): Locator =>
  page.getByRole('textbox', { name: label, exact: true });

export const button = (page: Page, name: string): Locator =>
  page.getByRole('button', { name, exact: true });

export const choice = (page: Page, name: string): Locator =>
  page.getByRole('radio', { name, exact: true });

export const element = (page: Page): Locator => page.locator('eighths-log-cabin');

/** What stands in sight in each place: words for the ear alone are left out, spaces are single. */
const seen = (locator: Locator): Promise<string[]> =>
  locator.evaluateAll((nodes) =>
    nodes.map((node) => {
      const copy = node.cloneNode(true);
      if (!(copy instanceof Element)) return '';
      for (const hidden of copy.querySelectorAll('.unseen')) hidden.remove();
      return copy.textContent.replace(/\s+/g, ' ').trim();
    }),
  );

export const headline = async (page: Page): Promise<string> =>
  (await seen(page.locator('[part=headline]'))).join();

/** The rows of the table with a caption, head included, as what stands in each cell. */
async function rows(page: Page, caption: string): Promise<string[][]> {
  const all = page.getByRole('table', { name: caption }).locator('tr');
  const cells = await seen(all.locator('th, td'));
  const counts = await all.evaluateAll((list) => list.map((row) => row.children.length));
  return counts.map((count) => cells.splice(0, count));
}

const isSide = (word: string): word is Side => SIDES.some((side) => side === word);

/** Reads the whole sheet off the page. */
export async function readSheet(page: Page): Promise<Sheet> {
  const trims: { round: string; sides: Partial<Record<Side, SideNumbers>> }[] = [];
  for (const [first = '', ...numbers] of (await rows(page, 'Trim chart')).slice(1)) {
    if (numbers.length === 0) trims.push({ round: first, sides: {} });
    const round = trims.at(-1);
    const words: readonly string[] = first === 'all sides' ? SIDES : first.split(', ');
    for (const side of words.filter(isSide)) if (round) round.sides[side] = numbers;
  }
  return {
    headline: await headline(page),
    trims,
    strips: (await rows(page, 'Strips')).slice(1),
    cuts: (await rows(page, 'Cut list')).slice(1),
  };
}

const figures = (value: Parameters<typeof formatLength>[0]) => formatLength(value);

/** The sheet that a plan should be shown as, made without the element. */
export function sheetOf(plan: LogCabin, blocks = 1): Sheet {
  const all = (count: number) => (blocks > 1 ? [String(count * blocks)] : []);
  return {
    headline: `${figures(plan.finished.width)} finished, trim to ${figures(plan.unfinished.width)}`,
    trims: plan.rounds.map((round) => ({
      round: [
        `Round ${round.number}`,
        `trim to ${figures(round.trimTo.width)}`,
        `untrimmed ${figures(round.untrimmed.width)}`,
      ].join(' '),
      sides: Object.fromEntries(
        plan.sides.map((side) => [
          side,
          [
            figures(round.centerSeamToEdge[side]),
            figures(round.lastSeamToEdge[side]),
            figures(round.trimAway[side]),
          ],
        ]),
      ),
    })),
    strips: plan.strips.map(({ fabric, width, length }) => [
      fabric,
      figures(width),
      figures(length),
      ...(blocks > 1 ? [figures(length.times(blocks))] : []),
    ]),
    cuts: plan.pieces.map(({ part, logs, fabric = '', width, length, count }) => [
      part === 'center' ? 'Center' : `Log ${logs.join(', ')}`,
      fabric,
      `${figures(width)} by ${figures(length)}`,
      String(count),
      ...all(count),
    ]),
  };
}

/** What a page of our own making is served with. */
interface GuestOptions extends BrowserContextOptions {
  readonly head?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

export const moduleScript = '<script type="module" src="/eighths/eighths.js"></script>';

/** Opens a page that some author wrote: its body as given, with the built file in its head. */
export async function openGuest(
  demo: Demo,
  body: string,
  { head = moduleScript, headers = {}, ...options }: GuestOptions = {},
): Promise<Visit> {
  // Any file will do; routes are only taken once a page is open.
  const visit = await demo.open('/pages.css', options);
  await visit.page.route('**/guest.html', (route) =>
    route.fulfill({
      contentType: 'text/html; charset=utf-8',
      headers,
      body: `<!doctype html><html lang="en"><head><meta name="viewport" content="width=device-width"><title>A guest</title>${head}</head><body>${body}</body></html>`,
    }),
  );
  await visit.page.goto(`${demo.url}/guest.html`);
  return visit;
}

/** An event of the element, as the page around it heard it. */
export interface Heard {
  readonly type: string;
  readonly detail: Readonly<Record<string, unknown>>;
}

const EVENTS = ['eighths-change', 'eighths-error'];

/** Listens on the document from now on; resolves to a function that says what was heard. */
export async function listen(page: Page): Promise<() => Promise<readonly Heard[]>> {
  const heard = await page.evaluateHandle((names) => {
    const list: { type: string; detail: Record<string, unknown> }[] = [];
    for (const name of names) {
      document.addEventListener(name, (event) => {
        if (event instanceof CustomEvent) {
          list.push({ type: name, detail: structuredClone(event.detail) });
        }
      });
    }
    return list;
  }, EVENTS);
  return () => heard.evaluate((list) => list);
}
