/** What the command line prints where a person sees it. */
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { fixturePath, PROJECT_FIXTURE } from '../helpers/documents.ts';
import { CLI, ROOT, runCli } from '../helpers/run-cli.ts';

const FORCE = ['force', fixturePath(PROJECT_FIXTURE), '--speeds-m-s=-0.5,0.5'];

const longest = (text: string): number => Math.max(...text.split(/\r?\n/).map((line) => line.length));
const quoted = (words: readonly string[]): string => words.map((word) => `'${word}'`).join(' ');

/** `script` of util-linux gives a command a terminal; those of other systems take other words. */
const hasTerminal = spawnSync('script', ['--version']).stdout?.toString().includes('util-linux') ?? false;

/** In a terminal of 80 columns. */
function inTerminal(words: readonly string[], columns = ''): string {
  const command = `stty cols 80; ${quoted([...CLI, ...words])}`;
  const env = { ...process.env, COLUMNS: columns };
  return spawnSync('script', ['-qec', command, '/dev/null'], { cwd: ROOT, env, encoding: 'utf8' }).stdout;
}

describe.concurrent('the tables', () => {
  it('have one line a row where no width is known, as in a pipe', async () => {
    const { stdout } = await runCli(FORCE);
    expect(longest(stdout)).toBeGreaterThan(120);
    expect(stdout.trimEnd().split('\n')).toHaveLength(3);
  });

  it.each([60, 80, 120])('fit a screen of %d columns that COLUMNS names, speeds in every block', async (columns) => {
    const { stdout } = await runCli(FORCE, '', `${columns}`);
    expect(longest(stdout)).toBeLessThanOrEqual(columns);
    const blocks = stdout.split('\n\n');
    expect(blocks.length).toBeGreaterThan(1);
    for (const block of blocks) expect(block).toMatch(/\n *-0\.5 .*\n *0\.5 /);
  });

  it('leave CSV and JSON alone', async () => {
    for (const form of ['--csv', '--json']) {
      const [whole, narrow] = await Promise.all([runCli([...FORCE, form]), runCli([...FORCE, form], '', '40')]);
      expect(narrow.stdout).toBe(whole.stdout);
    }
  });

  it.runIf(hasTerminal)('fit the terminal that they are printed on, unless COLUMNS says otherwise', () => {
    const [own, told] = [inTerminal(FORCE), inTerminal(FORCE, '100')];
    expect(own).toContain('damping');
    expect(longest(own)).toBeLessThanOrEqual(80);
    expect(longest(told)).toBeGreaterThan(80);
    expect(longest(told)).toBeLessThanOrEqual(100);
  });
});
