import { describe, expect, it } from 'vitest';
import { quantile, spreadOf } from '../../../scripts/page-speed/statistics.mjs';
import { tableOf } from '../../../scripts/page-speed/table.mjs';
import { longestOf } from '../../../scripts/page-speed/trace-tasks.mjs';

describe('the statistics of times', () => {
  it('take the value that the share does not exceed, in whatever order they came', () => {
    const values = [5, 1, 4, 2, 3, 10, 9, 8, 7, 6];
    expect([quantile(values, 0.5), quantile(values, 0.95), quantile(values, 0.1)]).toEqual([5, 10, 1]);
    expect(spreadOf([7])).toEqual({ median_ms: 7, p95_ms: 7, most_ms: 7, runs: 1 });
  });
});

describe('a trace', () => {
  const TASK = 'ThreadControllerImpl::RunTask';
  const thread = (name: string, tid: number) => ({ name: 'thread_name', ph: 'M', pid: 1, tid, args: { name } });
  const task = (tid: number, tdur: number) => ({ name: TASK, ph: 'X', pid: 1, tid, tdur });

  it('gives the longest task of the page, not that of another thread', () => {
    const events = [
      thread('CrRendererMain', 1),
      thread('DedicatedWorker', 2),
      task(1, 9000),
      task(1, 30_000),
      task(2, 90_000),
    ];
    expect(longestOf(events)).toBe(30);
  });

  it('without a task of the page is refused: no figure is not a good figure', () => {
    expect(() => longestOf([thread('CrRendererMain', 1), task(2, 1)])).toThrow(/no ThreadControllerImpl::RunTask/);
  });
});

it('the table says of each figure what is wanted, and flags what is not met', () => {
  const spread = { median_ms: 31.2, p95_ms: 48.9, most_ms: 70, runs: 60 };
  const tab = { tab: 'Force', longest_ms: 0, over50: 0, busy_ms: 12.4, edits: 8 };
  const table = tableOf({
    editToRedraw: { oneBuild: spread, bothBuilds: spread },
    longestTask: { withoutBands: [tab], withBands: [{ ...tab, longest_ms: 81, over50: 3 }] },
    firstPaint: spread,
    chartsLibraryBeforeFirstPaint: true,
    load: 1.5,
  });
  expect(table).toMatch(/one build changed +31 ms median, 49 ms p95, 70 ms most of 60 \(wanted: 50 ms p95\)/);
  expect(table).toMatch(/Force, without bands +12 ms of the processor; by the clock under 50 ms/);
  expect(table).toMatch(/Force, with bands +12 ms of the processor; by the clock 81 ms, 3 of 50 ms or more/);
  expect(table).toContain('yes (wanted: no)');
});
