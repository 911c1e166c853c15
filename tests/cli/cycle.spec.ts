import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/model/project.ts';
import { cliJson, csvLines } from '../helpers/cli-json.ts';
import { fixturePath, PROJECT_FIXTURE, soundCartridge, soundProject } from '../helpers/documents.ts';
import { runCli, runHere } from '../helpers/run-cli.ts';

const PROJECT = fixturePath(PROJECT_FIXTURE);

const runs = async (project: Project, ...words: string[]) => (await cliJson(['cycle', ...words], project)).runs;

const SINE = ['--stroke-mm=40', '--frequency-Hz=2'];

const SUMMARY_KEYS = [
  'frequency_Hz',
  'status',
  'compressionPeakSpeed_m_s',
  'compressionPeakForce_N',
  'reboundPeakSpeed_m_s',
  'reboundPeakForce_N',
  'largestForce_N',
  'smallestForce_N',
  'work_J',
  'oilLoss_J',
  'frictionLoss_J',
  'stopLoss_J',
  'separatorLoss_J',
  'stored_J',
  'balanceError_J',
  'hysteresisSpeed_m_s',
  'compressionHysteresis_N',
  'reboundHysteresis_N',
  'heat_W',
  'warming_K_min',
  'compressionLowestAbsolute_bar',
  'compressionLowestGauge_bar',
  'compressionHighestGauge_bar',
  'compressionLargestVoid_mL',
  'reboundLowestAbsolute_bar',
  'reboundLowestGauge_bar',
  'reboundHighestGauge_bar',
  'reboundLargestVoid_mL',
  'settledForce_N',
  'settledWork_J',
  'steps',
  'rejectedSteps',
  'largestStepError_bar',
  'compressionTheory',
  'reboundTheory',
];

const SAMPLE_KEYS = [
  'time_s',
  'position_mm',
  'shaftSpeed_m_s',
  'force_N',
  'frictionForce_N',
  'stopForce_N',
  'gasPressureAbsolute_bar',
  'gasPressureGauge_bar',
  'compressionPressureAbsolute_bar',
  'compressionPressureGauge_bar',
  'reboundPressureAbsolute_bar',
  'reboundPressureGauge_bar',
  'compressionFlow_L_min',
  'reboundFlow_L_min',
  'compressionVoid_mL',
  'reboundVoid_mL',
];

describe.concurrent('shimwright cycle', () => {
  it('tells a sine stroke in full: peaks, energy and where it went', async () => {
    const { runs, ...head } = await cliJson(['cycle', ...SINE], soundProject());
    const [{ samples, ...summary }] = runs;
    expect(head).toEqual({
      format: 'shimwright/cycle',
      version: 1,
      theory: 'auto',
      project: 'Two-stage rear damper',
      build: { id: 'as-found', name: 'As found' },
      oilTemperature_degC: 40,
      position_mm: 35,
      stroke_mm: 40,
    });
    expect(Object.keys(summary)).toEqual(SUMMARY_KEYS);
    // Source: published checks D4, peak speed pi S f: 40 mm at 2 Hz are 0.251327 m/s.
    expect(summary.compressionPeakSpeed_m_s).toBeCloseTo(0.251327, 6);
    expect(summary.reboundPeakSpeed_m_s).toBeCloseTo(-0.251327, 6);
    // Source: published checks D3, Coulomb friction 4 F X a cycle: 30 N over 20 mm are 2.4 J; smooth about 0 it is a trace less.
    expect(summary.frictionLoss_J / 2.4).toBeCloseTo(1, 3);
    const { work_J, oilLoss_J, frictionLoss_J, stopLoss_J, separatorLoss_J, stored_J, balanceError_J } = summary;
    const told = oilLoss_J + frictionLoss_J + stopLoss_J + separatorLoss_J + stored_J + balanceError_J;
    expect(told).toBeCloseTo(work_J, 8);
    expect(Math.abs(balanceError_J)).toBeLessThan(1e-4 * work_J);
    expect(Math.abs(stored_J)).toBeLessThan(1e-3 * work_J);
    // Two cycles a second.
    expect(summary.heat_W).toBeCloseTo(2 * (oilLoss_J + frictionLoss_J), 8);
    expect(summary.largestStepError_bar).toBeGreaterThan(0);
    expect(summary.settledForce_N).toBeLessThan(0.01 * summary.largestForce_N);
    expect(Object.keys(samples[0])).toEqual(SAMPLE_KEYS);
    expect(samples.map((sample: { position_mm: number }) => sample.position_mm).at(0)).toBeCloseTo(15, 9);
    expect(Math.max(...samples.map(({ force_N }: { force_N: number }) => force_N))).toBe(summary.largestForce_N);
  });

  it('meets the static curve where it is slow', async () => {
    // pi 10 mm 0.5 Hz
    const speed = 0.015707963;
    const [[slow], { points }] = await Promise.all([
      runs(soundProject(), '--stroke-mm=10', '--frequency-Hz=0.5'),
      cliJson(['force', `--speeds-m-s=${-speed},${speed}`], soundProject()),
    ]);
    expect(slow.reboundPeakForce_N / points[0].force_N).toBeCloseTo(1, 2);
    expect(slow.compressionPeakForce_N / points[1].force_N).toBeCloseTo(1, 2);
  });

  it('warms less with metal beside the oil: 700 J/K a kilogram', async () => {
    const withMetal = soundProject();
    withMetal.damper.heatedMass_kg = 1;
    const [[bare], [metal]] = await Promise.all([runs(soundProject(), ...SINE), runs(withMetal, ...SINE)]);
    const capacity_J_K = (summary: Record<string, number>) => (60 * summary.heat_W) / summary.warming_K_min;
    // Source: specific heat of steel and aluminium together about 0.7 kJ/(kg K) (from memory).
    expect(capacity_J_K(metal) - capacity_J_K(bare)).toBeCloseTo(700, 6);
    // 119.3 g of oil at 2 kJ/(kg K), see heated-masses.spec.ts.
    expect(capacity_J_K(bare) / 238.6).toBeCloseTo(1, 2);
  });

  it('tells the hysteresis at half the peak speed, or at the speed asked for', async () => {
    const [[own], [asked]] = await Promise.all([
      runs(soundProject(), ...SINE),
      runs(soundProject(), ...SINE, '--hysteresis-m-s=0.1'),
    ]);
    expect(own.hysteresisSpeed_m_s).toBeCloseTo(0.1256637, 6);
    expect(asked.hysteresisSpeed_m_s).toBe(0.1);
    // Gas and compressible oil: the force while the shaft speeds up, at less stroke, is the smaller one in compression.
    expect(asked.compressionHysteresis_N).toBeLessThan(0);
    expect(asked.reboundHysteresis_N).toBeGreaterThan(0);
  });

  it('shows the hysteresis of several runs side by side where its speed was asked for', async () => {
    const words = ['cycle', PROJECT, '--stroke-mm=40', '--frequency-Hz=1,2'];
    const [own, asked] = await Promise.all([runHere(words), runHere([...words, '--hysteresis-m-s=0.1'])]);
    expect(own.result).not.toContain('hysteresis');
    expect(asked.result).toMatch(/ compression hysteresis N +rebound hysteresis N /);
    const rows = (await runs(soundProject(), ...words.slice(2), '--hysteresis-m-s=0.1')) as Record<string, number>[];
    const told = asked.result.split('\n').slice(1, 3);
    expect(rows).toHaveLength(2);
    for (const [i, { compressionHysteresis_N, reboundHysteresis_N }] of rows.entries())
      expect(told[i]).toMatch(new RegExp(` ${compressionHysteresis_N.toFixed(1)} +${reboundHysteresis_N.toFixed(1)} `));
  });

  it('says why there is no hysteresis at a speed that the shaft does not come to', async () => {
    const { code, stdout, stderr } = await runCli(['cycle', PROJECT, ...SINE, '--hysteresis-m-s=9']);
    expect(code).toBe(0);
    expect(stdout).toMatch(/in compression, N +-\n/);
    for (const way of ['compression', 'rebound'])
      expect(stderr).toMatch(
        new RegExp(`no hysteresis in ${way}: the shaft does not pass 9 m/s .* peak is 0\\.2513 m/s`),
      );
  });

  it('counts the last of the cycles asked for, about the middle asked for', async () => {
    const [{ samples }] = await runs(soundProject(), ...SINE, '--cycles=2', '--position=25');
    expect(samples).toHaveLength(241);
    const [first, middle, last] = [0, 120, 240].map((i) => samples[i]);
    expect([first.time_s, last.time_s]).toEqual([0.5, 1]);
    expect(first.position_mm).toBeCloseTo(5, 9);
    expect(middle.position_mm).toBeCloseTo(45, 9);
    // At the peak, 0.251327 m/s, the ring of 1460.841 mm2 takes 22.029 L/min into the rebound chamber, but for the oil that yields.
    expect(Math.abs(samples[60].reboundFlow_L_min / -22.029 - 1)).toBeLessThan(0.01);
  });

  it('says in which chamber oil pulls apart', async () => {
    const project = soundProject();
    project.gas.gaugePressure_bar = 0;
    const words = ['cycle', '-', '--stroke-mm=60', '--frequency-Hz=8', '--json'];
    const { code, stdout, stderr } = await runCli(words, JSON.stringify(project));
    const [{ reboundLowestGauge_bar, reboundLargestVoid_mL }] = JSON.parse(stdout).runs;
    expect({ code, low: reboundLowestGauge_bar < 0.05 }).toEqual({ code: 0, low: true });
    expect(reboundLargestVoid_mL).toBeGreaterThan(0);
    expect(stderr).toContain('at 8 Hz: in the rebound chamber air comes out of the oil and a void opens');
  });
});

describe.concurrent('the forms of shimwright cycle', () => {
  it('prints the summary of one run as a list, and its samples as CSV', async () => {
    const [list, table] = await Promise.all([
      runCli(['cycle', PROJECT, ...SINE]),
      runCli(['cycle', PROJECT, ...SINE, '--csv']),
    ]);
    expect(list).toMatchObject({ code: 0, stderr: '' });
    expect(list.stdout).toMatch(/^status +finished\npeak speed in compression, m\/s +0\.251\n {2}force then, N +\d/);
    const [header, ...rows] = csvLines(table.stdout);
    expect(header).toEqual(SAMPLE_KEYS);
    expect(rows).toHaveLength(241);
    expect(rows.every((row) => row.length === SAMPLE_KEYS.length && row.every((field) => field !== ''))).toBe(true);
  });

  it('puts several frequencies side by side: a peak-velocity plot', async () => {
    const words = ['cycle', PROJECT, '--stroke-mm=40', '--frequency-Hz=0.5,1,2'];
    const [asCsv, table] = await Promise.all([runCli([...words, '--csv']), runCli(words)]);
    const [header, ...rows] = csvLines(asCsv.stdout);
    expect(header).toEqual(SUMMARY_KEYS);
    const column = (key: string) => rows.map((row) => Number(row[header.indexOf(key)]));
    expect(column('frequency_Hz')).toEqual([0.5, 1, 2]);
    // pi S f
    for (const [i, speed] of column('compressionPeakSpeed_m_s').entries())
      expect(speed).toBeCloseTo([0.0628319, 0.1256637, 0.2513274][i], 6);
    const [slow, middle, fast] = column('compressionPeakForce_N');
    expect([slow < middle, middle < fast]).toEqual([true, true]);
    expect(table.stdout).toMatch(/^ *frequency Hz +status +peak speed m\/s +compression N +rebound N +work J/);
    expect(table.stdout.trimEnd().split('\n')).toHaveLength(4);
  });

  it('sweeps temperature and clicks too, each run with its own setting', async () => {
    const words = [...SINE, '--temperature=0,60', '--clicks=needle=0/20'];
    const each = await runs(soundCartridge(), ...words);
    expect(each.map((r: Record<string, number>) => [r.frequency_Hz, r.oilTemperature_degC, r.needleClicks])).toEqual([
      [2, 0, 0],
      [2, 0, 20],
      [2, 60, 0],
      [2, 60, 20],
    ]);
    expect(each[0].work_J).toBeGreaterThan(each[3].work_J);
    expect(each[0]).toHaveProperty('reservoirLowestGauge_bar');
  });

  it('gives a run that fails its status, no number and its reason, and exits 1', async () => {
    const words = ['cycle', PROJECT, '--stroke-mm=60', '--frequency-Hz=1,2000'];
    const [asCsv, asJson] = await Promise.all([runCli([...words, '--csv']), runCli([...words, '--json'])]);
    const [header, sound, failed] = csvLines(asCsv.stdout);
    expect([asCsv.code, sound[1], failed[1]]).toEqual([1, 'finished', 'beyond-table']);
    expect(failed.slice(2)).toEqual(header.slice(2).map(() => ''));
    expect(asCsv.stderr).toMatch(/^at 2000 Hz: beyond-table after [\d.]+ s: /);
    const [, told] = JSON.parse(asJson.stdout).runs;
    expect(told).toMatchObject({ frequency_Hz: 2000, status: 'beyond-table' });
    expect(Object.keys(told)).toEqual(['frequency_Hz', 'status', 'time_s', 'reason']);
    const single = await runCli(['cycle', PROJECT, '--stroke-mm=60', '--frequency-Hz=2000']);
    const none = await runCli(['cycle', PROJECT, '--stroke-mm=60', '--frequency-Hz=2000,3000', '--csv']);
    expect(csvLines(none.stdout)[0]).toEqual(SUMMARY_KEYS);
    expect([single.code, single.stdout]).toEqual([1, 'status  beyond-table\n']);
  });
});
