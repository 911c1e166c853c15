import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { SECURITY_HEADERS } from './security-headers.mjs';

const HOST = '127.0.0.1';

/** @type {Readonly<Record<string, string>>} */
const MEDIA_TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

/** Built files carry a hash of their content in their name, so they never change; every other file is asked for anew. */
const HASHED = /^\/assets\/.+-[\w-]{8}\.\w+$/;

/**
 * A server of the files below `folder`, for this machine only.
 * @param {string} folder
 */
export function createStaticServer(folder) {
  return createServer((request, response) => {
    for (const [name, value] of Object.entries(SECURITY_HEADERS)) response.setHeader(name, value);
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.setHeader('Allow', 'GET, HEAD');
      return refuse(response, 405, 'Only GET and HEAD are answered here.');
    }
    const path = pathOf(request.url ?? '/');
    const file = path === undefined ? undefined : fileBelow(folder, path);
    if (path === undefined || file === undefined) return refuse(response, 404, 'There is no such file.');
    sendFile(request, response, { path, ...file });
  });
}

/**
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 * @param {{ path: string, file: string, size: number, changed: Date }} found
 */
function sendFile(request, response, { path, file, size, changed }) {
  response.setHeader('Content-Type', MEDIA_TYPES[extname(file)] ?? 'application/octet-stream');
  response.setHeader('Cache-Control', HASHED.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache');
  response.setHeader('ETag', `"${size.toString(36)}-${changed.getTime().toString(36)}"`);
  if (request.headers['if-none-match'] === response.getHeader('ETag')) {
    response.statusCode = 304;
    response.end();
    return;
  }
  response.setHeader('Content-Length', size);
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  createReadStream(file)
    .on('error', () => response.destroy())
    .pipe(response);
}

/**
 * @param {import('node:http').ServerResponse} response
 * @param {number} code
 * @param {string} text
 */
function refuse(response, code, text) {
  response.statusCode = code;
  response.setHeader('Content-Type', 'text/plain; charset=utf-8');
  response.end(`${text}\n`);
}

/**
 * The path part of a request, decoded; undefined when it cannot be read.
 * @param {string} url
 */
function pathOf(url) {
  try {
    const path = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? '/');
    return path.startsWith('/') && !path.includes('\0') ? path : undefined;
  } catch {
    return undefined;
  }
}

/**
 * @param {string} folder
 * @param {string} path
 * @returns {{ file: string, size: number, changed: Date } | undefined}
 */
function fileBelow(folder, path) {
  const full = normalize(join(folder, path));
  if (full !== normalize(folder) && !full.startsWith(normalize(folder + sep))) return undefined;
  const status = statSync(full, { throwIfNoEntry: false });
  if (status?.isDirectory()) return path.endsWith('/') ? fileBelow(folder, `${path}index.html`) : undefined;
  return status?.isFile() ? { file: full, size: status.size, changed: status.mtime } : undefined;
}

/**
 * Listens on `port`, or on the next free one after it, and returns the address.
 * @param {import('node:http').Server} server
 * @param {number} port 0 lets the system choose
 * @param {number} [tries]
 * @returns {Promise<string>}
 */
export function listenFrom(server, port, tries = 100) {
  return new Promise((resolve, reject) => {
    const onError = (/** @type {NodeJS.ErrnoException} */ error) => {
      const canMove = port !== 0 && tries > 1 && port < 65535;
      if (error.code !== 'EADDRINUSE' || !canMove) return reject(error);
      resolve(listenFrom(server, port + 1, tries - 1));
    };
    server.once('error', onError);
    server.listen(port, HOST, () => {
      server.off('error', onError);
      const address = server.address();
      resolve(`http://${HOST}:${typeof address === 'object' && address ? address.port : port}/`);
    });
  });
}
