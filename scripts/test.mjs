/**
 * `npm test`: installs what is missing, then runs every check in order and ends with one line, `N passed, N failed`.
 * A failed step does not keep the later ones from running. A failed step that is no test counts as one failure.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildBench } from './lib/build.mjs';
import { ensureChromium, NO_CHROMIUM } from './lib/chromium.mjs';
import { ensureInstalled } from './lib/install.mjs';
import { runTool } from './lib/run.mjs';
import { sumOf, tallyOf } from './lib/test-steps.mjs';

/** Chosen once; any other gives other random cases, and FC_SEED sets it. */
const DEFAULT_SEED = '20260611';

const NOTHING = { passed: 0, failed: 0, skipped: 0 };
const FAILURE = { passed: 0, failed: 1, skipped: 0 };
const reports = mkdtempSync(join(tmpdir(), 'shimwright-test-'));

/** @type {NodeJS.ProcessEnv} */
let env = { ...process.env, FC_SEED: process.env.FC_SEED || DEFAULT_SEED };

try {
  const tally = sumOf(await runAll());
  if (tally.skipped > 0) console.log(`${tally.skipped} skipped`);
  console.log(`${tally.passed} passed, ${tally.failed} failed`);
  process.exitCode = tally.failed === 0 ? 0 : 1;
} finally {
  rmSync(reports, { recursive: true, force: true });
}

async function runAll() {
  if (await failed(ensureInstalled)) return [FAILURE];
  console.log(`Seed of the random cases: FC_SEED=${env.FC_SEED}`);
  return [
    await check('Lint and format', '@biomejs/biome/bin/biome', ['check', '--error-on-warnings']),
    await check('Types', 'typescript/bin/tsc', ['-p', 'tsconfig.json']),
    await check('Types of the core, without a page', 'typescript/bin/tsc', ['-p', 'tsconfig.core.json']),
    await tests('Tests', 'vitest.config.ts'),
    await browserTests(),
  ];
}

async function browserTests() {
  heading('Build');
  if (await failed(buildBench)) return FAILURE;
  if (process.env.SHIMWRIGHT_SKIP_BROWSER === '1') {
    console.log('Browser tests skipped: SHIMWRIGHT_SKIP_BROWSER=1');
    return NOTHING;
  }
  const chromium = await ensureChromium();
  if (!chromium) {
    console.error(NO_CHROMIUM);
    return FAILURE;
  }
  env = { ...env, CHROMIUM_PATH: chromium };
  return tests('Browser tests', 'vitest.browser.config.ts');
}

/**
 * @param {string} title
 * @param {string} tool
 * @param {string[]} args
 */
async function check(title, tool, args) {
  heading(title);
  return (await runTool(tool, args, { env })) === 0 ? NOTHING : FAILURE;
}

/**
 * @param {string} title
 * @param {string} config
 */
async function tests(title, config) {
  heading(title);
  const report = join(reports, `${config}.json`);
  const args = ['run', '--config', config, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  return tallyOf(report, await runTool('vitest/vitest.mjs', args, { env }));
}

/** @param {() => Promise<unknown>} step */
async function failed(step) {
  try {
    await step();
    return false;
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return true;
  }
}

/** @param {string} title */
function heading(title) {
  console.log(`\n== ${title}`);
}
