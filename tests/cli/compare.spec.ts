import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/model/project.ts';
import { cliJson, csvLines } from '../helpers/cli-json.ts';
import { soundProject } from '../helpers/documents.ts';
import { runCli } from '../helpers/run-cli.ts';

/** Beside the baseline a copy of it, and one with a rebound stack of thicker shims. */
function threeBuilds(): Project {
  const project = soundProject();
  const [baseline] = project.builds;
  const { pistonRebound } = baseline.valves;
  const shims = pistonRebound.shims.map((shim) => ({ ...shim, thickness_mm: shim.thickness_mm * 1.3 }));
  project.builds.push(
    { ...baseline, id: 'same', name: 'The same' },
    {
      ...baseline,
      id: 'slower',
      name: 'Slower',
      valves: { ...baseline.valves, pistonRebound: { ...pistonRebound, shims } },
    },
  );
  return project;
}

const SPEEDS = '--speeds-m-s=-0.5,0,0.5';

type Point = Record<string, number> & { build: string; status: string };

describe.concurrent('shimwright compare', () => {
  it('measures every build from the baseline at every speed: nothing for a copy, more for thicker shims', async () => {
    const { baseline, points } = await cliJson(['compare', SPEEDS], threeBuilds());
    expect(baseline).toEqual({ id: 'as-found', name: 'As found' });
    expect(points.map(({ shaftSpeed_m_s, build }: Point) => [shaftSpeed_m_s, build])).toEqual(
      [-0.5, 0, 0.5].flatMap((speed) => ['same', 'slower'].map((build) => [speed, build])),
    );
    const of = (build: string): Point[] => points.filter((point: Point) => point.build === build);
    expect(of('same').map(({ firmer_N, firmer_percent }) => [firmer_N, firmer_percent])).toEqual([
      [0, 0],
      [0, null],
      [0, 0],
    ]);
    const [rebound, rest, compression] = of('slower');
    expect(rebound.firmer_N).toBeGreaterThan(50);
    expect([rest.firmer_N, rest.firmer_percent, compression.firmer_N]).toEqual([0, null, 0]);
  });

  it('is the difference of the forces, against the motion, and its share of that without the gas', async () => {
    const project = threeBuilds();
    const forces = async (build: string) => (await cliJson(['force', '--build', build, SPEEDS], project)).points[0];
    const [before, after] = await Promise.all([forces('as-found'), forces('slower')]);
    const [point] = (await cliJson(['compare', '--build', 'slower', SPEEDS], project)).points;
    expect([point.baselineForce_N, point.force_N]).toEqual([before.force_N, after.force_N]);
    expect(point.firmer_N).toBeCloseTo(before.force_N - after.force_N, 8);
    const share = (before.force_N - after.force_N) / (before.gasForce_N - before.force_N);
    expect(point.firmer_percent).toBeCloseTo(100 * share, 8);
  });

  it('prints the same numbers as CSV, and a line for each build in the table', async () => {
    const text = JSON.stringify(threeBuilds());
    const [asCsv, table] = await Promise.all([
      runCli(['compare', '-', SPEEDS, '--temperature=40', '--csv'], text),
      runCli(['compare', '-', SPEEDS, '--temperature=40'], text),
    ]);
    expect([asCsv.code, table.code]).toEqual([0, 0]);
    const [header, ...rows] = csvLines(asCsv.stdout);
    expect(header.slice(0, 8)).toEqual([
      ...['shaftSpeed_m_s', 'oilTemperature_degC', 'build', 'status'],
      ...['baselineForce_N', 'force_N', 'firmer_N', 'firmer_percent'],
    ]);
    expect(rows).toHaveLength(6);
    expect(table.stdout).toMatch(/^speed m\/s +oil °C +build +status +baseline N +force N +firmer N +firmer %/);
    expect(table.stdout).toMatch(/\n +-0\.5 +40 +same +converged .* 0 +0 /);
  });

  it('says of which build a point failed, and has no number there', async () => {
    const { code, stdout, stderr } = await runCli(
      ['compare', '-', '--speeds-m-s=500', '--csv'],
      JSON.stringify(threeBuilds()),
    );
    expect(code).toBe(1);
    for (const build of ['as-found', 'same', 'slower'])
      expect(stderr).toContain(`at 500 m/s, build ${build}: beyond-table: `);
    expect(stdout).toContain('500,same,beyond-table,,,,,,');
  });

  it('has no number where the baseline alone has no force', async () => {
    // The thicker shims of the other build bend less, so its table ends at a higher speed.
    const words = ['compare', '-', '--speeds-m-s=-10', '--theory=small-deflection', '--build=slower', '--csv'];
    const { code, stdout, stderr } = await runCli(words, JSON.stringify(threeBuilds()));
    expect(code).toBe(1);
    expect(stderr).toContain('at -10 m/s, build as-found: beyond-table: ');
    expect(stderr).not.toContain('build slower: beyond-table');
    expect(stdout).toContain('-10,slower,beyond-table,,,,,,');
  });

  it('refuses where there is nothing beside the baseline', async () => {
    const alone = await runCli(['compare', '-', SPEEDS], JSON.stringify(soundProject()));
    const itself = await runCli(['compare', '-', SPEEDS, '--build=as-found'], JSON.stringify(threeBuilds()));
    for (const { code, stderr } of [alone, itself]) {
      expect(code).toBe(2);
      expect(stderr).toContain('compare needs a build beside the baseline, which is as-found (As found)');
    }
  });
});
