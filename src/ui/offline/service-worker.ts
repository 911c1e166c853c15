/**
 * The bench without a network. The built files are put into a cache under one version; each is let in only if its content
 * has the hash that it was built with, so that two versions never mix. A new version waits until the person takes it.
 * The list of files takes the place of FILES when the bench is built (scripts/lib/offline-files.mjs).
 */
import type { UpdateMessage } from './update-message.ts';

interface BuiltFile {
  /** From the folder of the bench. */
  readonly path: string;
  /** SHA-256 of the content, in hexadecimal digits. */
  readonly hash: string;
}
declare const FILES: { readonly version: string; readonly files: readonly BuiltFile[] };

const { version, files } = FILES;
const worker = self as unknown as ServiceWorkerGlobalScope;
const CACHES = 'shimwright-files-';
const OWN_CACHE = CACHES + version;

const addressOf = (path: string): string => new URL(path, worker.registration.scope).href;

async function hashOf(response: Response): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', await response.clone().arrayBuffer());
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * What the version before has already, or else what the server has. The page itself is always fetched, because the headers
 * that shut it in come with it.
 */
async function obtain({ path, hash }: BuiltFile): Promise<Response> {
  const address = addressOf(path);
  const known = path.startsWith('assets/') ? await caches.match(address) : undefined;
  if (known && (await hashOf(known)) === hash) return known;
  const fetched = await fetch(address, { cache: 'no-cache' });
  if (!fetched.ok) throw new Error(`${path}: the server answered ${fetched.status}`);
  if ((await hashOf(fetched)) !== hash) throw new Error(`${path}: the server has another version of it`);
  return fetched;
}

async function install(): Promise<void> {
  const cache = await caches.open(OWN_CACHE);
  for (const file of files) await cache.put(addressOf(file.path), await obtain(file));
}

/** The version before stays: a page that was opened with it may still fetch its parts. */
async function clearOld(): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(CACHES));
  const older = names.slice(0, Math.max(0, names.indexOf(OWN_CACHE) - 1));
  await Promise.all(older.map((name) => caches.delete(name)));
}

async function answer(request: Request): Promise<Response> {
  const { origin, pathname } = new URL(request.url);
  const address = addressOf(origin + pathname);
  const wanted = address === worker.registration.scope ? addressOf('index.html') : address;
  const own = await caches.open(OWN_CACHE);
  return (await own.match(wanted)) ?? (await caches.match(wanted)) ?? fetch(request);
}

const isOurs = ({ method, url }: Request): boolean =>
  method === 'GET' && url.startsWith(worker.registration.scope) && !url.endsWith('/service-worker.js');

worker.addEventListener('install', (event) => event.waitUntil(install()));
worker.addEventListener('activate', (event) => event.waitUntil(clearOld()));
worker.addEventListener('fetch', (event) => {
  if (isOurs(event.request)) event.respondWith(answer(event.request));
});
worker.addEventListener('message', ({ data }: ExtendableMessageEvent & { data: UpdateMessage }) => {
  if (data === 'take-the-new-version') void worker.skipWaiting();
});
