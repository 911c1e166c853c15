/** Runs a command of the command line that must succeed, and reads the JSON that it prints. */
import { expect } from 'vitest';
import { runCli } from './run-cli.ts';

export async function cliJson(words: readonly string[], document: unknown) {
  const { code, stdout, stderr } = await runCli([words[0], '-', ...words.slice(1), '--json'], JSON.stringify(document));
  expect({ code, stderr: code === 0 ? '' : stderr }).toEqual({ code: 0, stderr: '' });
  return JSON.parse(stdout);
}

/** The header and the rows of a CSV without quoted fields. */
export const csvLines = (stdout: string): string[][] =>
  stdout
    .trimEnd()
    .split('\r\n')
    .map((line) => line.split(','));
