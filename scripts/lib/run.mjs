import { spawn } from 'node:child_process';
import { ROOT } from './root.mjs';

/**
 * Runs a program to its end and returns its exit code; a program that cannot be started counts as 127.
 * `quiet` sends what it prints to stderr, so that a caller's stdout stays clean.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ env?: NodeJS.ProcessEnv, quiet?: boolean }} [options]
 * @returns {Promise<number>}
 */
export function run(command, args, { env = process.env, quiet = false } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: ROOT,
      env,
      stdio: ['ignore', quiet ? 2 : 'inherit', 'inherit'],
      // npm is a batch file on Windows, which only a shell starts.
      shell: process.platform === 'win32',
    });
    child.on('error', (error) => {
      console.error(`${command}: ${error.message}`);
      resolve(127);
    });
    child.on('close', (code, signal) => resolve(code ?? (signal ? 128 : 1)));
  });
}

/**
 * Runs a package's own program with this Node, without a search of the PATH.
 * @param {string} path below node_modules
 * @param {readonly string[]} args
 * @param {{ env?: NodeJS.ProcessEnv, quiet?: boolean }} [options]
 */
export const runTool = (path, args, options) => run(process.execPath, [`node_modules/${path}`, ...args], options);
