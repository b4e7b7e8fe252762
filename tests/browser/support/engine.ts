import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core';

/** A file as it reached the reader. */
export interface SavedFile {
  readonly name: string;
  readonly text: string;
}

/** A browser that runs, whichever it is. */
export interface Engine {
  readonly open: (options: BrowserContextOptions) => Promise<BrowserContext>;
  /** What a page saves when something is done on it. */
  readonly saved: (page: Page, act: () => Promise<unknown>) => Promise<SavedFile>;
  readonly close: () => Promise<void>;
}

/**
 * Whether the tests run in Chromium, and not in Firefox (`npm run firefox`). A test that asks this
 * says beside it what the other browser, or its driver, cannot do.
 */
export const inChromium = process.env.EIGHTHS_BROWSER !== 'firefox';
