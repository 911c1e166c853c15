import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sumOf, tallyOf } from '../../scripts/lib/test-steps.mjs';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const file = (status: string, ...tests: string[]) => ({
  status,
  assertionResults: tests.map((test) => ({ status: test })),
});

const tally = (testResults: object[] | undefined, exitCode: number) => {
  const folder = temporaryFolder(testResults && { 'report.json': JSON.stringify({ testResults }) });
  return tallyOf(join(folder, 'report.json'), exitCode);
};

describe('the closing line', () => {
  it('counts what passed, failed and was skipped', () => {
    const files = [file('passed', 'passed', 'passed', 'skipped'), file('failed', 'failed', 'passed', 'todo')];
    expect(tally(files, 1)).toEqual({ passed: 3, failed: 1, skipped: 2 });
  });

  it('counts a file that could not be loaded as one failure', () => {
    expect(tally([file('passed', 'passed'), file('failed')], 1)).toEqual({ passed: 1, failed: 1, skipped: 0 });
  });

  it('counts a failure outside every test', () => {
    expect(tally([file('passed', 'passed')], 1)).toEqual({ passed: 1, failed: 1, skipped: 0 });
  });

  it('counts a run without a report, or without a test, as a failure', () => {
    expect(tally(undefined, 0)).toEqual({ passed: 0, failed: 1, skipped: 0 });
    expect(tally([], 0)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });

  it('adds the runs up', () => {
    const runs = [tally([file('passed', 'passed')], 0), tally([file('failed', 'failed', 'skipped')], 1)];
    expect(sumOf(runs)).toEqual({ passed: 1, failed: 1, skipped: 1 });
  });
});
