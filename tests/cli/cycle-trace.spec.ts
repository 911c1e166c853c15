import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cliJson } from '../helpers/cli-json.ts';
import { fixturePath, PROJECT_FIXTURE, soundProject } from '../helpers/documents.ts';
import { runHere } from '../helpers/run-cli.ts';
import { temporaryFolder } from '../helpers/temporary-folder.ts';

const PROJECT = fixturePath(PROJECT_FIXTURE);

// One after the other: the folder of a test goes when that test is over.
describe('shimwright cycle along a trace', () => {
  it('follows it: at a steady 0.1 m/s the force is that of the static curve', async () => {
    const moments = Array.from({ length: 51 }, (_, i) => `${i / 100},${10 + i}`);
    const folder = temporaryFolder({ 'ramp.csv': ['time_s,position_mm', ...moments].join('\n') });
    const [{ runs, ...head }, { points }] = await Promise.all([
      cliJson(['cycle', '--trace', join(folder, 'ramp.csv')], soundProject()),
      cliJson(['force', '--speeds-m-s=0.1', '--position=35'], soundProject()),
    ]);
    const [{ samples, ...summary }] = runs;
    expect(head).not.toHaveProperty('position_mm');
    expect(summary).not.toHaveProperty('frequency_Hz');
    expect(summary.compressionPeakSpeed_m_s).toBeCloseTo(0.1, 9);
    expect(summary).toMatchObject({ settledForce_N: null, reboundHysteresis_N: null });
    const there = samples.find(({ position_mm }: { position_mm: number }) => Math.abs(position_mm - 35) < 0.01);
    expect(there.force_N / points[0].force_N).toBeCloseTo(1, 2);
    expect(samples.at(-1).time_s).toBe(0.5);
  });

  it.each([
    ['0,10\n0.1,71', 'trace, line 3, position_mm'],
    ['0,10\n0.1,far', 'trace, line 3, position_mm: got "far"'],
    ['0.1,10\n0.1,20', 'trace, line 3, time_s'],
    ['0,10', 'at least two moments'],
  ])('refuses the trace %j by its line', async (lines, message) => {
    const folder = temporaryFolder({ 'trace.csv': `time_s,position_mm\n${lines}` });
    const { exit, result, talk } = await runHere(['cycle', PROJECT, '--trace', join(folder, 'trace.csv')]);
    expect({ exit, result }).toEqual({ exit: 2, result: '' });
    expect(talk.join()).toContain(message);
  });
});

describe.concurrent('a motion that cannot be', () => {
  it.each([
    [['--stroke-mm=40'], 'cycle needs --stroke-mm MM and --frequency-Hz LIST, or --trace FILE'],
    [[], 'cycle needs --stroke-mm MM'],
    [['--trace=a.csv', '--stroke-mm=40'], '--stroke-mm is of a sine stroke and does not go with --trace'],
    [['--trace=a.csv', '--position=40'], '--position is of a sine stroke and does not go with --trace'],
    [['--trace=no-such.csv'], 'no-such.csv: there is no such file'],
    [['--trace', PROJECT], '[cycle.trace.header]'],
    [['--stroke-mm=71', '--frequency-Hz=1'], '--stroke-mm: got "71", wanted 70 mm or less'],
    [['--stroke-mm=0', '--frequency-Hz=1'], '--stroke-mm: got "0", wanted more than 0 mm'],
    [['--stroke-mm=NaN', '--frequency-Hz=1'], '--stroke-mm: got "NaN", wanted a number in mm'],
    [['--stroke-mm=40', '--frequency-Hz=0'], '--frequency-Hz: got "0", wanted more than 0 Hz'],
    [['--stroke-mm=40,50', '--frequency-Hz=1'], '--stroke-mm takes one number'],
    [
      ['--stroke-mm=40', '--frequency-Hz=1', '--position=10'],
      'got a motion from -10 to 30 mm, wanted one within the travel, 0 to 70 mm',
    ],
    [['--stroke-mm=40', '--frequency-Hz=1', '--cycles=0'], 'a whole number from 1 to 1000'],
    [
      ['--stroke-mm=40', '--frequency-Hz=1', '--hysteresis-m-s=-1'],
      '--hysteresis-m-s: got "-1", wanted more than 0 m/s',
    ],
  ])('refuses %j', async (words, message) => {
    const { exit, result, talk } = await runHere(['cycle', PROJECT, ...words]);
    expect({ exit, result }).toEqual({ exit: 2, result: '' });
    expect(talk.join()).toContain(message);
  });
});
