import { readFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';
import { ensureBrowser } from '../../../tools/browser.mjs';
import type { Engine } from './engine.js';

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

export async function startChromium(): Promise<Engine> {
  const browser = await chromium.launch({ executablePath: await ensureBrowser(), args });
  return {
    open: (options) => browser.newContext(options),
    saved: async (page, act) => {
      const [download] = await Promise.all([page.waitForEvent('download'), act()]);
      return {
        name: download.suggestedFilename(),
        text: await readFile(await download.path(), 'utf8'),
      };
    },
    close: () => browser.close(),
  };
}
