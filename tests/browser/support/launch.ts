import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { demo, type Mounts, serve } from '../../../tools/serve.mjs';
import { startChromium } from './chromium.js';
import { inChromium, type SavedFile } from './engine.js';
import { startFirefox } from './firefox.js';

const screenshots = fileURLToPath(new URL('../../../.cache/screenshots', import.meta.url));

/** A page as a person has it open. */
export interface Visit {
  readonly page: Page;
  /** What went wrong so far: errors and warnings on the console, and exceptions nobody caught. */
  readonly problems: readonly string[];
  /** Writes `.cache/screenshots/<name>.png`, the whole page, and resolves to its path. */
  readonly screenshot: (name: string) => Promise<string>;
  /** What the page saves when something is done on it. */
  readonly saved: (act: () => Promise<unknown>) => Promise<SavedFile>;
  readonly close: () => Promise<void>;
}

/** A browser beside the server of the demo pages. */
export interface Demo {
  /** The server's address, without a slash at its end. */
  readonly url: string;
  /**
   * Opens the page at a path (`/`, `/shop.html?units=cm`) as a new person: nothing is kept from
   * other visits. Options are Playwright's: `viewport`, `colorScheme`, `locale`, `reducedMotion`,
   * `forcedColors` and so on.
   */
  readonly open: (path: string, options?: BrowserContextOptions) => Promise<Visit>;
  readonly close: () => Promise<void>;
}

function problemsOf(page: Page): readonly string[] {
  const problems: string[] = [];
  page.on('console', (message) => {
    const type = message.type();
    if (type !== 'error' && type !== 'warning') return;
    const { url, lineNumber } = message.location();
    problems.push(`${type}: ${message.text()} (${url}:${lineNumber + 1})`);
  });
  page.on('pageerror', (error) => problems.push(`exception: ${error.stack ?? error.message}`));
  // Chromium writes this to the console by itself.
  if (!inChromium) {
    page.on('response', (response) => {
      if (response.status() >= 400)
        problems.push(`error: ${response.status()} (${response.url()})`);
    });
  }
  page.on('crash', () => problems.push('the page crashed'));
  return problems;
}

/** @param mounts folders to serve; left out, the demo pages and the built elements */
export async function startDemo(mounts?: Mounts): Promise<Demo> {
  if (mounts === undefined && !existsSync(join(demo['/eighths/'], 'eighths.js'))) {
    throw new Error('The elements are not built: run `npm run build` first.');
  }
  const engine = await (inChromium ? startChromium() : startFirefox());
  const server = await serve(mounts === undefined ? {} : { mounts });
  return {
    url: server.url,
    open: async (path, options = {}) => {
      const context = await engine.open({
        viewport: { width: 1000, height: 800 },
        reducedMotion: 'reduce',
        locale: 'en-US',
        ...options,
      });
      const page = await context.newPage();
      page.setDefaultTimeout(15_000);
      const problems = problemsOf(page);
      await page.goto(server.url + path);
      return {
        page,
        problems,
        screenshot: async (name) => {
          const file = join(screenshots, `${name}.png`);
          await page.screenshot({ path: file, fullPage: true, animations: 'disabled' });
          return file;
        },
        saved: (act) => engine.saved(page, act),
        close: () => context.close(),
      };
    },
    close: async () => {
      await engine.close();
      await server.close();
    },
  };
}
