import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run } from './run.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const OTHER_PLACES = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  '/snap/bin/chromium',
];

export const NO_CHROMIUM = `No Chromium was found for the browser tests. Do one of these:
  - install it: \`apt-get install chromium\` (Debian), \`brew install --cask chromium\` (macOS), or Google Chrome anywhere;
  - set CHROMIUM_PATH to the program of a Chromium or Chrome that is already there;
  - set SHIMWRIGHT_SKIP_BROWSER=1 to leave the browser tests out.`;

/**
 * The program of a Chromium on this machine: CHROMIUM_PATH, then the PATH, then the usual places.
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {string | undefined}
 */
export function findChromium(env = process.env) {
  if (env.CHROMIUM_PATH) return isProgram(env.CHROMIUM_PATH) ? env.CHROMIUM_PATH : undefined;
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = NAMES.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...onPath, ...OTHER_PLACES].find(isProgram);
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * Finds a Chromium or, as root on a machine with apt, installs one.
 * @returns {Promise<string | undefined>}
 */
export async function ensureChromium() {
  const found = findChromium();
  if (found || process.env.CHROMIUM_PATH || !canInstall()) return found;
  console.error('Installing Chromium (apt-get) …');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  await run('apt-get', ['update'], { env, quiet: true });
  await run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], { env, quiet: true });
  return findChromium();
}

const canInstall = () => process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
