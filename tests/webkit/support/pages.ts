import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demo, pagesIn, type Served, serve } from '../../../tools/serve.mjs';

/**
 * What goes wrong on a page, kept by the page itself from its first script on: the driver does not
 * tell of the console.
 */
const watch = `
globalThis.problems = [];
for (const kind of ['error', 'warn']) {
  const say = console[kind];
  console[kind] = (...words) => {
    problems.push(kind + ': ' + words.join(' '));
    say.apply(console, words);
  };
}
addEventListener('error', ({ message, target }) => {
  problems.push('error: ' + (message ?? target.src ?? target.href));
}, true);
addEventListener('unhandledrejection', ({ reason }) => problems.push('rejection: ' + reason));
addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) => {
  problems.push(['refused:', violatedDirective, blockedURI, sample].join(' '));
});
`;

/** The server of the demo pages, as they are but for a first script that keeps their problems. */
export interface WatchedPages extends Served {
  /** Puts a page of our own beside them, and returns its path. */
  readonly write: (name: string, html: string) => string;
}

const watched = (html: string) => html.replace('<head>', '<head><script src="/watch.js"></script>');

export async function servePages(): Promise<WatchedPages> {
  const folder = mkdtempSync(join(tmpdir(), 'eighths-'));
  const write = (name: string, html: string) => {
    writeFileSync(join(folder, name), watched(html));
    return `/${name}`;
  };
  cpSync(demo['/'], folder, { recursive: true });
  for (const { path } of await pagesIn(folder)) {
    const name = path === '/' ? 'index.html' : path.slice(1);
    write(name, readFileSync(join(folder, name), 'utf8'));
  }
  writeFileSync(join(folder, 'watch.js'), watch);
  const server = await serve({ mounts: { ...demo, '/': folder } });
  return {
    ...server,
    write,
    close: async () => {
      await server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
