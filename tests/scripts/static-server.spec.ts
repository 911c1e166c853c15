import { createServer, request } from 'node:http';
import { describe, expect, it, onTestFinished } from 'vitest';
import { createStaticServer, listenFrom } from '../../scripts/lib/static-server.mjs';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const FILES = {
  'secret.txt': 'outside',
  'site/index.html': '<title>here</title>',
  'site/assets/chart-Ab3_x-9Z.js': 'export const a = 1;',
  'site/assets/plain.js': 'export const b = 1;',
  'site/mark.svg': '<svg/>',
  'site/inner/index.html': 'inner',
  'site/two words.txt': 'two words',
};

async function serve(): Promise<string> {
  const server = createStaticServer(`${temporaryFolder(FILES)}/site`);
  onTestFinished(() => void server.close());
  return listenFrom(server, 0);
}

/** fetch tidies paths before it asks; this asks with the path as it is. */
const statusOf = (address: string, path: string, method = 'GET'): Promise<number | undefined> =>
  new Promise((resolve, reject) => {
    request(new URL(address), { path, method }, (response) => resolve(response.resume().statusCode))
      .on('error', reject)
      .end();
  });

describe('the static server', () => {
  it.each([
    ['', 'text/html; charset=utf-8', '<title>here</title>'],
    ['assets/plain.js', 'text/javascript; charset=utf-8', 'export const b = 1;'],
    ['mark.svg?v=2', 'image/svg+xml', '<svg/>'],
    ['inner/', 'text/html; charset=utf-8', 'inner'],
    ['two%20words.txt', 'text/plain; charset=utf-8', 'two words'],
  ])('sends "%s" as %s', async (path, type, text) => {
    const answer = await fetch((await serve()) + path);
    expect(answer.headers.get('Content-Type')).toBe(type);
    expect(answer.headers.get('Content-Length')).toBe(String(text.length));
    expect(await answer.text()).toBe(text);
  });

  it.each(['/no-such-file', '/inner', '/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/%zz', '/%00'])(
    'has nothing at %s',
    async (path) => expect(await statusOf(await serve(), path)).toBe(404),
  );

  it('answers HEAD without a body and refuses what would change something', async () => {
    const address = await serve();
    const head = await fetch(address, { method: 'HEAD' });
    expect([head.status, await head.text()]).toEqual([200, '']);
    expect(await statusOf(address, '/', 'POST')).toBe(405);
  });

  it('lets only files keep that carry the hash of their content', async () => {
    const address = await serve();
    const cache = async (path: string) => (await fetch(address + path)).headers.get('Cache-Control');
    expect(await cache('assets/chart-Ab3_x-9Z.js')).toBe('public, max-age=31536000, immutable');
    expect(await cache('assets/plain.js')).toBe('no-cache');
    expect(await cache('')).toBe('no-cache');
  });

  it('spares a file that the page has already', async () => {
    const address = await serve();
    const tag = (await fetch(address)).headers.get('ETag') ?? '';
    expect((await fetch(address, { headers: { 'If-None-Match': tag } })).status).toBe(304);
    expect((await fetch(address, { headers: { 'If-None-Match': '"other"' } })).status).toBe(200);
  });

  it('shuts the page in, refusals too', async () => {
    for (const path of ['', 'no-such-file']) {
      const { headers } = await fetch((await serve()) + path);
      expect(headers.get('Content-Security-Policy')).toMatch(
        /default-src 'none'; script-src 'self'; worker-src 'self'/,
      );
      expect(headers.get('X-Content-Type-Options')).toBe('nosniff');
      expect(headers.get('Cross-Origin-Opener-Policy')).toBe('same-origin');
      expect(headers.get('Cross-Origin-Embedder-Policy')).toBe('require-corp');
    }
  });

  it('takes the next free port, on this machine only', async () => {
    const taken = createServer();
    onTestFinished(() => void taken.close());
    const port = Number(new URL(await listenFrom(taken, 0)).port);
    const server = createStaticServer(temporaryFolder());
    onTestFinished(() => void server.close());
    const address = new URL(await listenFrom(server, port));
    expect(address.hostname).toBe('127.0.0.1');
    expect(Number(address.port)).toBeGreaterThan(port);
  });

  it('says so when no port is left to try', async () => {
    const taken = createServer();
    onTestFinished(() => void taken.close());
    const port = Number(new URL(await listenFrom(taken, 0)).port);
    await expect(listenFrom(createStaticServer(temporaryFolder()), port, 1)).rejects.toMatchObject({
      code: 'EADDRINUSE',
    });
  });
});
