import { readFileSync } from 'node:fs';

/**
 * @typedef {{ passed: number, failed: number, skipped: number }} Tally
 */

/** @param {readonly Tally[]} tallies @returns {Tally} */
export const sumOf = (tallies) =>
  tallies.reduce(
    (sum, { passed, failed, skipped }) => ({
      passed: sum.passed + passed,
      failed: sum.failed + failed,
      skipped: sum.skipped + skipped,
    }),
    { passed: 0, failed: 0, skipped: 0 },
  );

/**
 * Counts the tests of one run from its JSON report. A file that could not be loaded, and a run that failed without a
 * failed test (an error outside every test, no report at all), count as one failure each, so that no failure is lost.
 * @param {string} reportPath
 * @param {number} exitCode
 * @returns {Tally}
 */
export function tallyOf(reportPath, exitCode) {
  const report = readReport(reportPath);
  const results = report?.testResults ?? [];
  const unloaded = results.filter((file) => file.status === 'failed' && !file.assertionResults.some(isFailed)).length;
  const tests = results.flatMap((file) => file.assertionResults);
  const passed = tests.filter((test) => test.status === 'passed').length;
  const failed = tests.filter(isFailed).length + unloaded;
  const silent = failed === 0 && (exitCode !== 0 || tests.length === 0) ? 1 : 0;
  return { passed, failed: failed + silent, skipped: tests.length - passed - tests.filter(isFailed).length };
}

/** @param {{ status: string }} test */
const isFailed = (test) => test.status === 'failed';

/**
 * @param {string} path
 * @returns {{ testResults: { status: string, assertionResults: { status: string }[] }[] } | undefined}
 */
function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}
