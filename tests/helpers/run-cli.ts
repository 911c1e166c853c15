/** Runs the command line as a person does: another process, its two streams and its exit code. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Outcome } from '../../src/cli/command.ts';
import { run } from '../../src/cli/run.ts';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface CliRun {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** What runs the command line out of the sources, in the folder of the project. */
export const CLI = [process.execPath, '--import', 'tsx', 'src/cli/main.ts'] as const;

/** @param columns what the environment says of the width of the screen */
export function runCli(words: readonly string[], input: string | Buffer = '', columns = ''): Promise<CliRun> {
  const [node, ...before] = CLI;
  const env = { ...process.env, COLUMNS: columns };
  const child = spawn(node, [...before, ...words], { cwd: ROOT, env });
  let [stdout, stderr] = ['', ''];
  child.stdout.setEncoding('utf8').on('data', (text) => {
    stdout += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text) => {
    stderr += text;
  });
  // A command that ends before it has read all of its input closes the pipe: that is its right.
  child.stdin.on('error', () => {});
  child.stdin.end(input);
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, stdout, stderr }));
  });
}

/** The same in this process, its parts and its result as one text. */
export async function runHere(words: readonly string[], width = Number.POSITIVE_INFINITY): Promise<Outcome> {
  const parts: string[] = [];
  const outcome = await run(words, { emit: (part) => parts.push(part), width });
  return { ...outcome, result: `${parts.join('')}${outcome.result}` };
}
