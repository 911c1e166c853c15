import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { SECURITY_HEADERS } from './security-headers.mjs';

const WORKER = 'service-worker.js';

/** Not needed to use the bench. */
const LEFT_OUT = new Set([WORKER, 'third-party-licences.txt']);

/** @param {string | Buffer} content */
const hashOf = (content) => createHash('sha256').update(content).digest('hex');

/**
 * Every file that the bench needs without a network, with the hash of its content, and a version that is another whenever
 * one of them is, or the headers that they are sent with.
 * @param {string} folder
 */
export function listOfflineFiles(folder) {
  const files = filesBelow(folder)
    .map((file) => ({ path: relative(folder, file).split(sep).join('/'), hash: hashOf(readFileSync(file)) }))
    .filter(({ path }) => !LEFT_OUT.has(path))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
  return { version: hashOf(JSON.stringify([files, SECURITY_HEADERS])).slice(0, 16), files };
}

/**
 * @param {string} folder
 * @returns {string[]}
 */
function filesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? filesBelow(path) : [path];
  });
}

/**
 * Writes the list of the built files into the service worker, once all of them are there.
 * @returns {import('vite').Plugin}
 */
export function offlineFiles() {
  let folder = '';
  return {
    name: 'offline-files',
    apply: 'build',
    configResolved(config) {
      folder = resolve(config.root, config.build.outDir);
    },
    writeBundle: {
      order: 'post',
      sequential: true,
      handler() {
        const worker = join(folder, WORKER);
        const list = `const FILES = ${JSON.stringify(listOfflineFiles(folder))};`;
        writeFileSync(worker, `${list}\n${readFileSync(worker, 'utf8')}`);
      },
    },
  };
}
