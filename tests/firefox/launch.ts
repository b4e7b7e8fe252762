import { type Browser, launch, type Page } from 'puppeteer-core';
import { findFirefox, noFirefox } from '../../tools/firefox.mjs';
import { type Mounts, serve } from '../../tools/serve.mjs';

/** A page as a person has it open, and what went wrong on it so far. */
export interface FirefoxVisit {
  readonly page: Page;
  readonly problems: readonly string[];
  readonly close: () => Promise<void>;
}

/** Firefox beside the server of the demo pages. */
export interface Firefox {
  readonly url: string;
  readonly open: (path: string) => Promise<FirefoxVisit>;
  readonly close: () => Promise<void>;
}

export async function startFirefox(mounts?: Mounts): Promise<Firefox> {
  const executablePath = findFirefox();
  if (executablePath === undefined) throw new Error(noFirefox);
  const browser: Browser = await launch({ browser: 'firefox', executablePath, headless: true });
  const server = await serve(mounts === undefined ? {} : { mounts });
  return {
    url: server.url,
    open: async (path) => {
      const context = await browser.createBrowserContext();
      const page = await context.newPage();
      page.setDefaultTimeout(15_000);
      const problems: string[] = [];
      page.on('console', (message) => {
        const type = message.type();
        if (type === 'error' || type === 'warn') problems.push(`${type}: ${message.text()}`);
      });
      page.on('pageerror', (error) => problems.push(String(error)));
      await page.goto(server.url + path);
      return { page, problems, close: () => context.close() };
    },
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}
