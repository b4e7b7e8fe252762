// The server of the demo pages, for `npm start` and for the browser tests alike.
import { readdir, readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { root } from './run.mjs';

/** The demo pages, the built elements where those pages expect them, and the documentation. */
export const demo = {
  '/': join(root, 'docs', 'pages'),
  '/docs/': join(root, 'docs', 'site'),
  '/eighths/': join(root, 'packages', 'widget', 'dist'),
};

/** @type {Readonly<Record<string, string>>} */
const types = {
  '.css': 'text/css; charset=utf-8',
  '.gif': 'image/gif',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpeg': 'image/jpeg',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.md': 'text/markdown; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.ts': 'text/plain; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

/** The addresses that mean this machine. A machine without IPv6 has only the first. */
const addresses = ['127.0.0.1', '::1'];
const noSuchAddress = new Set(['EADDRNOTAVAIL', 'EAFNOSUPPORT', 'EINVAL', 'ENOTSUP']);

/**
 * @typedef {Readonly<Record<string, string>>} Mounts which folder answers for which beginning of a
 *   path; each beginning ends with a slash, and the longest that fits wins
 * @typedef {{ status: number, headers?: Record<string, string>, body?: string | Buffer }} Answer
 */

/** @param {string} text */
const escaped = (text) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/**
 * Every page in a folder: its path on the server and its title.
 *
 * @param {string} [folder]
 * @returns {Promise<{ path: string, title: string }[]>}
 */
export async function pagesIn(folder = demo['/']) {
  const names = await readdir(folder, { recursive: true }).catch(() => []);
  const pages = [];
  for (const name of names.filter((one) => /^(?!.*(?:^|[\\/])\.).*\.html$/.test(one)).sort()) {
    const html = await readFile(join(folder, name), 'utf8');
    const title = /<title>([^<]*)<\/title>/.exec(html)?.[1]?.trim() ?? name;
    pages.push({
      path: `/${name.split(sep).join('/')}`.replace(/\/index\.html$/, '/'),
      title: title.replaceAll('&amp;', '&'),
    });
  }
  return pages;
}

/**
 * A plain page that says what went wrong and which pages there are.
 *
 * @param {number} status
 * @param {string} sentence
 * @param {Mounts} mounts
 * @returns {Promise<Answer>}
 */
async function sorry(status, sentence, mounts) {
  const pages = mounts['/'] === undefined ? [] : await pagesIn(mounts['/']);
  const list = pages.map(
    ({ path, title }) => `<li><a href="${escaped(encodeURI(path))}">${escaped(title)}</a></li>`,
  );
  return {
    status,
    headers: { 'content-type': types['.html'] ?? '' },
    body: `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${status}</title>
<h1>${escaped(sentence)}</h1>
<ul>${list.join('')}</ul>
</html>
`,
  };
}

/**
 * Answers a request for a path, query and all.
 *
 * @param {string} target as it stands in the request's first line
 * @param {Mounts} mounts
 * @returns {Promise<Answer>}
 */
async function answer(target, mounts) {
  const [rawPath = '/', query] = target.split(/\?(.*)/s);
  let path = '';
  try {
    path = decodeURIComponent(rawPath);
  } catch {
    return sorry(400, 'That address is not written in a way that can be read.', mounts);
  }
  const missing = () => sorry(404, `There is no page at ${path}`, mounts);
  const names = path.split(/[/\\]/).slice(1);
  const plain = names.every(
    (name, at) => !name.startsWith('.') && (name || at === names.length - 1),
  );
  if (!path.startsWith('/') || path.includes('\0') || !plain) return missing();

  const begins = Object.keys(mounts)
    .filter((one) => `${path}/`.startsWith(one))
    .sort((one, other) => other.length - one.length)[0];
  const folder = begins === undefined ? undefined : mounts[begins];
  if (begins === undefined || folder === undefined) return missing();
  const file = resolve(folder, `./${path.slice(begins.length)}`);
  if (file !== resolve(folder) && !file.startsWith(resolve(folder) + sep)) return missing();

  const found = await stat(file).catch(() => undefined);
  if (found?.isDirectory() && !path.endsWith('/')) {
    const location = `${rawPath}/${query === undefined ? '' : `?${query}`}`;
    return { status: 301, headers: { location } };
  }
  if (found?.isFile() && path.endsWith('/')) return missing();
  const wanted = found?.isDirectory() ? join(file, 'index.html') : file;
  const body = await readFile(wanted).catch(() => undefined);
  if (body === undefined) {
    // Browsers ask for this one unasked, and call it an error on the page if it is missing.
    return path === '/favicon.ico' ? { status: 204 } : missing();
  }
  const type = types[extname(wanted).toLowerCase()] ?? 'application/octet-stream';
  return { status: 200, headers: { 'content-type': type }, body };
}

/**
 * @param {Mounts} mounts
 * @returns {import('node:http').RequestListener}
 */
const listener = (mounts) => async (request, response) => {
  const reads = request.method === 'GET' || request.method === 'HEAD';
  /** @type {Answer} */
  const {
    status,
    headers,
    body = '',
  } = reads
    ? await answer(request.url ?? '/', mounts)
    : { status: 405, headers: { allow: 'GET, HEAD' } };
  response.writeHead(status, {
    'cache-control': 'no-store',
    'x-content-type-options': 'nosniff',
    ...(status === 204 ? {} : { 'content-length': Buffer.byteLength(body) }),
    ...headers,
  });
  response.end(request.method === 'HEAD' ? undefined : body);
};

/**
 * @param {import('node:http').RequestListener} listen
 * @param {number} port
 * @param {string} host
 * @returns {Promise<import('node:http').Server>}
 */
const bind = (listen, port, host) =>
  new Promise((done, failed) => {
    const server = createServer(listen);
    server.once('error', failed);
    server.listen({ port, host }, () => done(server));
  });

/** @param {import('node:http').Server} server */
const close = (server) =>
  new Promise((done) => {
    server.close(done);
    server.closeAllConnections();
  });

/**
 * Listens at both addresses that a browser may take `localhost` for, so that no other server can
 * stand at one of them.
 *
 * @param {import('node:http').RequestListener} listen
 * @param {number} port
 */
async function bindAll(listen, port) {
  /** @type {import('node:http').Server[]} */
  const servers = [];
  let taken = port;
  for (const host of addresses) {
    try {
      const server = await bind(listen, taken, host);
      servers.push(server);
      const address = server.address();
      if (address !== null && typeof address === 'object') taken = address.port;
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? String(error.code) : '';
      if (servers.length > 0 && noSuchAddress.has(code)) continue;
      await Promise.all(servers.map(close));
      throw error;
    }
  }
  return { servers, port: taken };
}

/**
 * Serves folders on this machine only, without caching. With a port that is taken, the next free
 * one is used; with port 0, any free one.
 *
 * @typedef {{ url: string, port: number, close: () => Promise<void> }} Served `url` without a slash
 *   at its end
 *
 * @param {{ port?: number, mounts?: Mounts }} [options]
 * @returns {Promise<Served>}
 */
export async function serve({ port = 0, mounts = demo } = {}) {
  for (let tries = 0, wanted = port; ; tries += 1, wanted = port === 0 ? 0 : wanted + 1) {
    try {
      const bound = await bindAll(listener(mounts), wanted);
      return {
        url: `http://localhost:${bound.port}`,
        port: bound.port,
        close: async () => {
          await Promise.all(bound.servers.map(close));
        },
      };
    } catch (error) {
      const inUse = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
      if (!inUse || tries === 20 || wanted === 65_535) throw error;
    }
  }
}
