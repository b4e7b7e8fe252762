import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { findBrowser } from '../../tools/browser.mjs';
import { type Demo, startDemo } from '../browser/support/launch.js';

let folder = '';
let demo: Demo;

const page = (script: string) =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>A page</title><h1>½</h1><script>${script}</script></html>`;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'eighths-'));
  writeFileSync(join(folder, 'quiet.html'), page(`console.log('nothing amiss')`));
  writeFileSync(
    join(folder, 'loud.html'),
    page(`console.warn('mind this'); console.error('and this'); throw new Error('and that')`),
  );
  writeFileSync(join(folder, 'torn.html'), page(`</script><script src="/gone.js">`));
  demo = await startDemo({ '/': folder });
});

afterAll(async () => {
  await demo?.close();
  rmSync(folder, { recursive: true, force: true });
});

describe('a visit', () => {
  test('to a page in order has no problems', async () => {
    const { page: visited, problems, close } = await demo.open('/quiet.html');
    expect(await visited.textContent('h1')).toBe('½');
    expect(problems).toEqual([]);
    await close();
  });

  test('collects warnings, errors and exceptions', async () => {
    const { problems, close } = await demo.open('/loud.html');
    expect(problems.map((one) => one.split(/[(\n]/)[0]?.trim())).toEqual([
      'warning: mind this',
      'error: and this',
      'exception: Error: and that',
    ]);
    await close();
  });

  test('notices a script that is not there', async () => {
    const { problems, close } = await demo.open('/torn.html');
    expect(problems.join()).toContain('404');
    await close();
  });

  test('has the size and the colors asked for', async () => {
    const viewport = { width: 320, height: 500 };
    const { page: visited, close } = await demo.open('/quiet.html', {
      viewport,
      colorScheme: 'dark',
    });
    expect(await visited.evaluate(() => window.innerWidth)).toBe(320);
    expect(await visited.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches)).toBe(
      true,
    );
    await close();
  });

  test('can be looked at', async () => {
    const { screenshot, close } = await demo.open('/quiet.html');
    const file = await screenshot('house-test');
    expect(readFileSync(file).subarray(1, 4).toString()).toBe('PNG');
    rmSync(file);
    await close();
  });
});

describe('looking for a browser', () => {
  const here = (name: string) => {
    const file = join(folder, name);
    mkdirSync(join(file, '..'), { recursive: true });
    writeFileSync(file, '');
    chmodSync(file, 0o755);
    return file;
  };

  test('CHROMIUM_PATH comes first', () => {
    const file = here('mine');
    expect(findBrowser({ CHROMIUM_PATH: file, PATH: '/usr/bin' }, 'linux')).toBe(file);
  });

  test('a CHROMIUM_PATH that is wrong is not passed over', () => {
    expect(() => findBrowser({ CHROMIUM_PATH: '/nowhere' }, 'linux')).toThrow(
      'CHROMIUM_PATH is "/nowhere", and there is no such file.',
    );
  });

  test.each([
    ['linux', 'a/google-chrome', 'PATH', 'a'],
    ['darwin', 'Applications/Chromium.app/Contents/MacOS/Chromium', 'HOME', ''],
    ['win32', 'Google/Chrome/Application/chrome.exe', 'LOCALAPPDATA', ''],
  ] as const)('on %s', (platform, name, variable, below) => {
    const file = here(name);
    expect(findBrowser({ [variable]: join(folder, below) }, platform)).toBe(file);
  });
});
