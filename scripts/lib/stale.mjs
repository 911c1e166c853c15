import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/**
 * True when `product` is not there, or older than any of the sources. Folders count too: their time moves when a file is
 * removed from them.
 * @param {string} product
 * @param {readonly string[]} sources files or folders; one that is not there is passed over
 */
export function isStale(product, sources) {
  const made = timeOf(product);
  return made === undefined || sources.some((source) => isNewer(source, made));
}

/**
 * @param {string} path
 * @param {number} made
 * @returns {boolean}
 */
function isNewer(path, made) {
  const status = statSync(path, { throwIfNoEntry: false });
  if (!status) return false;
  if (status.mtimeMs > made) return true;
  return status.isDirectory() && readdirSync(path).some((name) => isNewer(join(path, name), made));
}

/** @param {string} path */
const timeOf = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs;
