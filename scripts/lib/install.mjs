import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './root.mjs';
import { run } from './run.mjs';

/**
 * The packages of package-lock.json that are not installed in the locked version. Packages for another kind of machine
 * (`optional`) do not count. npm keeps its own record of what it installed in node_modules/.package-lock.json.
 * @param {string} [root]
 * @returns {string[]}
 */
export function missingPackages(root = ROOT) {
  const locked = packagesOf(join(root, 'package-lock.json')) ?? {};
  const installed = packagesOf(join(root, 'node_modules/.package-lock.json')) ?? {};
  return Object.keys(locked).filter(
    (path) => path !== '' && !locked[path].optional && installed[path]?.version !== locked[path].version,
  );
}

/**
 * @param {string} path
 * @returns {Record<string, { version: string, optional?: boolean }> | undefined}
 */
function packagesOf(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/**
 * Installs the locked packages when one is missing. Development packages are named, because the build needs them even
 * where NODE_ENV says production.
 * @throws Error when npm fails.
 */
export async function ensureInstalled() {
  const missing = missingPackages();
  if (missing.length === 0) return;
  console.error(`Installing ${missing.length} missing packages (npm ci) …`);
  const code = await run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'], { quiet: true });
  if (code !== 0) throw new Error(`npm ci ended with code ${code}: is the package registry within reach?`);
}
