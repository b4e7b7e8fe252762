import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { ensureBrowser } from '../../../tools/browser.mjs';
import { demo, type Mounts, serve } from '../../../tools/serve.mjs';

const screenshots = fileURLToPath(new URL('../../../.cache/screenshots', import.meta.url));

/** Debian's Chromium starts as root only without its sandbox; it opens nothing but our own pages. */
const root = process.getuid?.() === 0;

const args = [
  ...(root ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A page as a person has it open. */
export interface Visit {
  readonly page: Page;
  /** What went wrong so far: errors and warnings on the console, and exceptions nobody caught. */
  readonly problems: readonly string[];
  /** Writes `.cache/screenshots/<name>.png`, the whole page, and resolves to its path. */
  readonly screenshot: (name: string) => Promise<string>;
  readonly close: () => Promise<void>;
}

/** A browser beside the server of the demo pages. */
export interface Demo {
  readonly browser: Browser;
  /** The server's address, without a slash at its end. */
  readonly url: string;
  /**
   * Opens the page at a path (`/`, `/shop.html?units=cm`) as a new person: nothing is kept from
   * other visits. Options are Playwright's: `viewport`, `colorScheme`, `locale`, `reducedMotion`,
   * `forcedColors`, `javaScriptEnabled` and so on.
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
  page.on('crash', () => problems.push('the page crashed'));
  return problems;
}

/** @param mounts folders to serve; left out, the demo pages and the built elements */
export async function startDemo(mounts?: Mounts): Promise<Demo> {
  if (mounts === undefined && !existsSync(join(demo['/eighths/'], 'eighths.js'))) {
    throw new Error('The elements are not built: run `npm run build` first.');
  }
  const executablePath = await ensureBrowser();
  const browser = await chromium.launch({ executablePath, args });
  const server = await serve(mounts === undefined ? {} : { mounts });
  return {
    browser,
    url: server.url,
    open: async (path, options = {}) => {
      const context = await browser.newContext({
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
        close: () => context.close(),
      };
    },
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}
