import { chmodSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './root.mjs';
import { runTool } from './run.mjs';
import { isStale } from './stale.mjs';

export const BENCH_FOLDER = join(ROOT, 'dist/bench');
export const CLI_BUNDLE = join(ROOT, 'dist/cli/shimwright.js');

const SHARED = [
  'package.json',
  'package-lock.json',
  'scripts/lib',
  'src/units',
  'src/model',
  'src/measured',
  'src/sheet',
  'src/solver',
];
/** Files and folders that a build depends on, from the root. */
export const BENCH_SOURCES = [
  ...SHARED,
  'index.html',
  'public',
  'vite.config.ts',
  'src/demo',
  'src/ui',
  'src/proof',
  'workers',
  'reference-cases',
];
export const CLI_SOURCES = [...SHARED, 'vite.cli.config.ts', 'src/cli'];

/** @param {readonly string[]} sources */
const inRoot = (sources) => sources.map((source) => join(ROOT, source));

/** Builds the bench into dist/bench. @throws Error when the build fails. */
export async function buildBench() {
  const code = await runTool('vite/bin/vite.js', ['build', '--logLevel', 'warn'], { quiet: true });
  if (code !== 0) throw new Error(`the bench did not build (code ${code})`);
}

export async function ensureBench() {
  if (!isStale(join(BENCH_FOLDER, 'index.html'), inRoot(BENCH_SOURCES))) return;
  console.error('Building the bench …');
  await buildBench();
}

/**
 * Bundles the command line into one file. It is written beside its place and moved there, so that another command
 * starting meanwhile never reads half a file.
 * @throws Error when the build fails.
 */
export async function buildCli() {
  const draft = join(ROOT, `dist/cli-draft-${process.pid}`);
  try {
    const args = ['build', '--config', 'vite.cli.config.ts', '--outDir', draft, '--logLevel', 'warn'];
    const code = await runTool('vite/bin/vite.js', args, { quiet: true });
    if (code !== 0) throw new Error(`the command line did not build (code ${code})`);
    mkdirSync(join(ROOT, 'dist/cli'), { recursive: true });
    chmodSync(join(draft, 'shimwright.js'), 0o755);
    for (const name of ['third-party-licences.txt', 'shimwright.js']) {
      renameSync(join(draft, name), join(ROOT, 'dist/cli', name));
    }
  } finally {
    rmSync(draft, { recursive: true, force: true });
  }
}

export async function ensureCli() {
  if (isStale(CLI_BUNDLE, inRoot(CLI_SOURCES))) await buildCli();
}
