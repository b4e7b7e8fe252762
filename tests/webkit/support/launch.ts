import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Builder, type WebDriver } from 'selenium-webdriver';
import { DriverService } from 'selenium-webdriver/remote';
import { findWebKit, noWebKit } from '../../../tools/webkit.mjs';
import { openDisplay } from './display.js';
import { servePages } from './pages.js';

const screenshots = fileURLToPath(new URL('../../../.cache/screenshots/webkit', import.meta.url));

/** A page as a person has it open. */
export interface WebKitVisit {
  readonly page: WebDriver;
  /** What went wrong so far: errors, warnings, and what the page’s policy refused. */
  readonly problems: () => Promise<readonly string[]>;
  /** Writes `.cache/screenshots/webkit/<name>.png`: what the window shows. */
  readonly screenshot: (name: string) => Promise<void>;
}

export interface VisitOptions {
  readonly dark?: boolean;
  /** The page's width in pixels; the window's own is 1024. */
  readonly width?: number;
}

/** WebKit beside the server of the demo pages. */
export interface WebKit {
  /**
   * Opens the page at a path as a new person: nothing is kept from other visits. The driver has one
   * window at a time, so that a visit ends where the next begins.
   */
  readonly open: (path: string, options?: VisitOptions) => Promise<WebKitVisit>;
  /** Opens a page that some author wrote: its body as given, with the built file in its head. */
  readonly openGuest: (body: string, head?: string) => Promise<WebKitVisit>;
  readonly close: () => Promise<void>;
}

/** The tag that loads a built file. */
export const script = (name: string): string =>
  `<script type="module" src="/eighths/${name}.js"></script>`;

/** What starts the driver as a program, each time with a screen to show its windows on. */
async function drivers() {
  const { driver, browser, display, xvfb } = findWebKit();
  const missing = noWebKit();
  if (driver === undefined || browser === undefined || missing !== '') throw new Error(missing);
  const screen = xvfb === undefined || display !== undefined ? undefined : await openDisplay(xvfb);
  const inherited = Object.entries(process.env).map(([name, value = '']) => [name, value] as const);
  const environment = new Map([
    ...inherited,
    ['DISPLAY', display ?? screen?.name ?? ''],
    ['GDK_BACKEND', 'x11'],
    ['LANG', 'en_US.UTF-8'],
  ]);
  return {
    browser,
    start: async () => {
      const service = new DriverService.Builder(driver)
        .setLoopback(true)
        .setEnvironment(environment)
        .build();
      return { address: await service.start(), stop: () => service.kill() };
    },
    close: () => screen?.close(),
  };
}

interface Window {
  readonly page: WebDriver;
  readonly quit: () => Promise<void>;
}

/** Seconds that a window may take to open; it takes less than one. */
const BEGINNING = 12;

/** What comes in time. */
async function withinSeconds<Answer>(
  seconds: number,
  answer: PromiseLike<Answer>,
): Promise<Answer | undefined> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<undefined>((resolve) => {
    timer = setTimeout(() => resolve(undefined), seconds * 1000);
  });
  return Promise.race([answer, late]).finally(() => clearTimeout(timer));
}

export async function startWebKit(): Promise<WebKit> {
  const { browser, start, close } = await drivers();
  const pages = await servePages();

  /** A window, and a driver for it: one that has closed some dozens may wait for the next without end. */
  const window = async (dark: boolean, tries = 3): Promise<Window> => {
    const driver = await start();
    const page = await withinSeconds(
      BEGINNING,
      new Builder()
        .usingServer(driver.address)
        .withCapabilities({
          browserName: 'MiniBrowser',
          'webkitgtk:browserOptions': {
            binary: browser,
            args: ['--automation', ...(dark ? ['--dark-mode'] : [])],
          },
        })
        .build(),
    );
    if (page !== undefined) return { page, quit: () => page.quit().finally(driver.stop) };
    await driver.stop();
    if (tries > 1) return window(dark, tries - 1);
    throw new Error('WebKit’s driver gave no window, however often it was started.');
  };

  let leave = async (): Promise<void> => undefined;

  const open = async (path: string, { dark = false, width }: VisitOptions = {}) => {
    await leave();
    const { page, quit } = await window(dark);
    leave = async () => {
      // Whatever becomes of it, it is left once.
      leave = async () => undefined;
      await quit();
    };
    if (width === undefined) await page.get(pages.url + path);
    else {
      // A window is as wide as its buttons; a page in a frame may be narrower.
      const frame = `<iframe src="${path}" width="${width}" height="660"></iframe>`;
      await page.get(pages.url + pages.write('frame.html', frame));
      await page.switchTo().frame(0);
    }
    return {
      page,
      problems: () => page.executeScript<readonly string[]>('return problems'),
      screenshot: async (name: string) => {
        mkdirSync(screenshots, { recursive: true });
        writeFileSync(join(screenshots, `${name}.png`), await page.takeScreenshot(), 'base64');
      },
    };
  };

  return {
    open,
    openGuest: (body, head = script('eighths')) => {
      const html = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A guest</title>${head}</head><body>${body}</body></html>`;
      return open(pages.write('guest.html', html));
    },
    close: async () => {
      // All of it, whatever one of them says: nothing is left running.
      const left = await Promise.allSettled([leave(), pages.close()]);
      close();
      for (const each of left) if (each.status === 'rejected') throw each.reason;
    },
  };
}
