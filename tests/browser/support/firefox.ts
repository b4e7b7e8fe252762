import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContextOptions, firefox } from 'playwright-core';
import { vi } from 'vitest';
import { findFirefox, noFirefox } from '../../../tools/firefox.mjs';
import type { Engine } from './engine.js';

type Preferences = Record<string, number | boolean>;

/**
 * What a reader’s system would say. Over WebDriver BiDi a page cannot be told of another system, so
 * Firefox is started on one: these are the preferences that stand for it.
 */
function systemOf({
  colorScheme,
  reducedMotion,
  forcedColors,
}: BrowserContextOptions): Preferences {
  const forced = forcedColors === 'active';
  return {
    'ui.systemUsesDarkTheme': colorScheme === 'dark' ? 1 : 0,
    'ui.prefersReducedMotion': reducedMotion === 'reduce' ? 1 : 0,
    'ui.useAccessibilityTheme': forced ? 1 : 0,
    // 2 is always: the reader's colors instead of the page's.
    'browser.display.document_color_use': forced ? 2 : 0,
    // As Playwright starts Chromium: no room is taken by scroll bars, and no icon is asked for.
    'ui.useOverlayScrollbars': 1,
    'browser.chrome.site_icons': false,
  };
}

/**
 * Firefox as Debian ships it, over WebDriver BiDi. Playwright is held at 1.63 for it: from 1.64 on it
 * sends a command that Firefox ESR does not know.
 */
export async function startFirefox(): Promise<Engine> {
  const executablePath = findFirefox();
  if (executablePath === undefined) throw new Error(noFirefox);
  const downloads = mkdtempSync(join(tmpdir(), 'eighths-downloads-'));
  /** One for each system that was asked for. */
  const running = new Map<string, Promise<Browser>>();
  const browserOn = (system: Preferences): Promise<Browser> => {
    const key = JSON.stringify(system);
    const browser =
      running.get(key) ??
      firefox.launch({
        channel: 'moz-firefox',
        executablePath,
        firefoxUserPrefs: system,
        downloadsPath: downloads,
      });
    running.set(key, browser);
    return browser;
  };
  return {
    open: async (options) => {
      const browser = await browserOn(systemOf(options));
      return browser.newContext(options);
    },
    // Playwright 1.63 overlooks a download that does not come of a navigation: the file is there.
    saved: async (_page, act) => {
      const before = readdirSync(downloads);
      await act();
      const file = await vi.waitFor(
        () => {
          const [name, ...more] = readdirSync(downloads).filter((each) => !before.includes(each));
          // The name is taken before there is anything in it.
          const text = name === undefined ? '' : readFileSync(join(downloads, name), 'utf8');
          if (name === undefined || text === '' || more.length > 0) throw new Error('Not saved.');
          return { name, text };
        },
        { timeout: 15_000 },
      );
      // Else the next of this name would get a number.
      rmSync(join(downloads, file.name));
      return file;
    },
    close: async () => {
      for (const browser of running.values()) await (await browser).close();
      rmSync(downloads, { recursive: true, force: true });
    },
  };
}
