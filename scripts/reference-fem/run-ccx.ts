/** Runs CalculiX on one input deck in a folder of its own, which is removed afterwards. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface CcxRun {
  /** Text of the print file. */
  readonly printFile: string;
  /** Version that the program states, such as `2.20`. */
  readonly version: string;
}

const NOT_INSTALLED = `CalculiX is not installed: the command "ccx" was not found.
On Debian or Ubuntu: sudo apt-get install calculix-ccx`;

/**
 * @param command the program, `ccx` unless a test stands something else in for it
 * @throws Error when it is not installed, or ends with an error (with the end of what it said)
 */
export function runCcx(deck: string, command = 'ccx'): CcxRun {
  const folder = mkdtempSync(join(tmpdir(), 'shimwright-fem-'));
  try {
    writeFileSync(join(folder, 'stack.inp'), deck);
    const options = { cwd: folder, encoding: 'utf8', env: { ...process.env, OMP_NUM_THREADS: '1' } } as const;
    const { error, status, stdout } = spawnSync(command, ['-i', 'stack'], { ...options, maxBuffer: 1 << 30 });
    if (error) throw (error as NodeJS.ErrnoException).code === 'ENOENT' ? new Error(NOT_INSTALLED) : error;
    if (status !== 0 || stdout.includes('*ERROR'))
      throw new Error(`CalculiX failed (exit ${status}):\n${lastWords(stdout)}`);
    return { printFile: readFileSync(join(folder, 'stack.dat'), 'utf8'), version: versionIn(stdout) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const lastWords = (text: string): string => {
  const lines = text.split('\n').filter((line) => line.trim() !== '');
  const errors = lines.filter((line) => line.includes('*ERROR'));
  return [...errors.slice(0, 5), ...lines.slice(-15)].join('\n');
};

const versionIn = (text: string): string => /CalculiX Version (\d+\.\d+)/.exec(text)?.[1] ?? 'of unknown version';
