// `npm start`: sets up, builds, and serves the pages with the calculators until it is stopped.
import { spawn } from 'node:child_process';
import { pnpm } from './pnpm.mjs';
import { runNode } from './run.mjs';
import { pagesIn, serve } from './serve.mjs';
import { setup } from './setup.mjs';

const usualPort = 4173;

function portAskedFor() {
  const text = process.env.PORT;
  if (text === undefined || text === '') return usualPort;
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Error(`PORT should be a whole number up to 65535, and it is "${text}".`);
  }
  return port;
}

/**
 * Shows a page in the person's own browser, where there is somebody to see it. Best effort: the
 * address is printed anyway.
 *
 * @param {string} url
 */
function showPage(url) {
  const { CI, DISPLAY, WAYLAND_DISPLAY } = process.env;
  if (!process.stdout.isTTY || CI) return;
  /** @type {readonly [string, readonly string[]]} */
  let opener = ['xdg-open', [url]];
  if (process.platform === 'darwin') opener = ['open', [url]];
  else if (process.platform === 'win32') opener = ['cmd', ['/c', 'start', '""', url]];
  else if (!DISPLAY && !WAYLAND_DISPLAY) return;
  const child = spawn(...opener, {
    stdio: 'ignore',
    detached: true,
    windowsVerbatimArguments: true,
  });
  child.on('error', () => undefined);
  child.unref();
}

async function start() {
  const port = portAskedFor();
  await setup();
  const { code } = await pnpm(['-r', 'build']);
  if (code !== 0) throw new Error('The build failed; the lines above say why.');
  const pages = await pagesIn();
  if (pages.length === 0) throw new Error('There are no pages in docs/pages.');

  const server = await serve({ port });
  const stop = async () => {
    await server.close();
    process.exit(0);
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  // A signal sent to npm alone ends npm and its shell, and never comes here.
  if (process.env.npm_lifecycle_event === 'start') {
    const parent = process.ppid;
    setInterval(() => process.ppid === parent || stop(), 500).unref();
  }
  const addresses = pages.map(({ path, title }) => ({ url: server.url + encodeURI(path), title }));
  const width = Math.max(...addresses.map(({ url }) => url.length));
  console.log(`\nEighths is at ${server.url}/\n`);
  for (const { url, title } of addresses) console.log(`  ${url.padEnd(width)}  ${title}`);
  if (port !== 0 && server.port !== port) console.log(`\nPort ${port} was taken.`);
  console.log('\nPress Ctrl+C to stop.');
  const first = addresses.find(({ url }) => url === `${server.url}/`) ?? addresses[0];
  if (first !== undefined) showPage(first.url);

  // The documentation takes longer than the pages: they are there meanwhile.
  const docs = await runNode(['tools/docs.mjs', '--if-stale']);
  if (docs.code === 0) console.log(`\nThe documentation is at ${server.url}/docs/`);
}

try {
  await start();
} catch (error) {
  console.error(error instanceof Error ? `\n${error.message}` : error);
  process.exitCode = 1;
}
