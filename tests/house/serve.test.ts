import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pagesIn, type Served, serve } from '../../tools/serve.mjs';

let folder = '';
let server: Served;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'eighths-'));
  mkdirSync(join(folder, 'pages', 'blog', '.hidden'), { recursive: true });
  mkdirSync(join(folder, 'built'));
  const files = {
    'secret.txt': 'not yours',
    'pages/index.html': '<title>Home</title>½',
    'pages/blog/index.html': '<title>Scraps &amp; string</title>',
    'pages/blog/.hidden/a.html': '<title>Hidden</title>',
    'pages/look.css': 'p {}',
    'pages/a b.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
    'pages/thing.bin': 'x',
    'built/eighths.js': 'let a;',
    'built/eighths.js.map': '{}',
  };
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  server = await serve({
    mounts: { '/': join(folder, 'pages'), '/eighths/': join(folder, 'built') },
  });
});

afterAll(async () => {
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Asks for a path exactly as it is written: `fetch` would tidy it first. */
const ask = (path: string, { method = 'GET', host = '127.0.0.1' } = {}) =>
  new Promise<{ status: number; type: string; location: string; body: string }>((done, failed) => {
    const asked = request({ host, port: server.port, path, method }, (response) => {
      let body = '';
      response.setEncoding('utf8').on('data', (text) => {
        body += text;
      });
      response.on('end', () => {
        const { 'content-type': type = '', location = '' } = response.headers;
        done({ status: response.statusCode ?? 0, type, location, body });
      });
    });
    asked.on('error', failed).end();
  });

describe('the server of the pages', () => {
  test.each([
    ['/', 'text/html; charset=utf-8', '<title>Home</title>½'],
    ['/index.html?units=cm', 'text/html; charset=utf-8', '<title>Home</title>½'],
    ['/blog/', 'text/html; charset=utf-8', '<title>Scraps &amp; string</title>'],
    ['/look.css', 'text/css; charset=utf-8', 'p {}'],
    ['/a%20b.svg', 'image/svg+xml; charset=utf-8', '<svg xmlns="http://www.w3.org/2000/svg"/>'],
    ['/thing.bin', 'application/octet-stream', 'x'],
    ['/eighths/eighths.js', 'text/javascript; charset=utf-8', 'let a;'],
    ['/eighths/eighths.js.map', 'application/json; charset=utf-8', '{}'],
  ])('answers %s', async (path, type, body) => {
    expect(await ask(path)).toMatchObject({ status: 200, type, body });
  });

  test.each([
    '/gone.html',
    '/eighths/',
    '/index.html/',
    '/../secret.txt',
    '/blog/../../secret.txt',
    '/..%2fsecret.txt',
    '/%2e%2e/secret.txt',
    '/..%5csecret.txt',
    '/eighths/../../secret.txt',
    '/eighths%2f..%2f..%2fsecret.txt',
    '//blog',
    '/blog/.hidden/a.html',
    '/index.html%00.png',
  ])('has nothing at %s', async (path) => {
    const { status, body } = await ask(path);
    expect(status).toBe(404);
    expect(body).not.toContain('not yours');
  });

  test('says which pages there are, and writes nothing of the address as markup', async () => {
    const { type, body } = await ask('/%3Cscript%3E');
    expect(type).toBe('text/html; charset=utf-8');
    expect(body).toContain('There is no page at /&lt;script>');
    expect(body).toContain('<a href="/blog/">Scraps &amp; string</a>');
  });

  test('keeps quiet about an icon that browsers ask for unasked', async () => {
    expect(await ask('/favicon.ico')).toMatchObject({ status: 204, body: '' });
  });

  test('refuses an address that cannot be read', async () => {
    expect((await ask('/%E0%A4%A')).status).toBe(400);
  });

  test('sends a folder to its slash, query and all', async () => {
    expect(await ask('/blog?a=1')).toMatchObject({ status: 301, location: '/blog/?a=1' });
    expect(await ask('/eighths')).toMatchObject({ status: 301, location: '/eighths/' });
  });

  test('only reads', async () => {
    expect(await ask('/', { method: 'HEAD' })).toMatchObject({ status: 200, body: '' });
    expect(await ask('/', { method: 'POST' })).toMatchObject({ status: 405 });
  });

  test('goes on to the next port if one is taken', async () => {
    const next = await serve({ port: server.port, mounts: { '/': folder } });
    expect(next.port).toBeGreaterThan(server.port);
    await next.close();
  });

  test('knows its pages and their titles', async () => {
    expect(await pagesIn(join(folder, 'pages'))).toEqual([
      { path: '/blog/', title: 'Scraps & string' },
      { path: '/', title: 'Home' },
    ]);
    expect(await pagesIn(join(folder, 'nowhere'))).toEqual([]);
  });
});
