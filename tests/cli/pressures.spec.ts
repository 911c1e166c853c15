import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/model/project.ts';
import { cliJson, csvLines } from '../helpers/cli-json.ts';
import { CARTRIDGE_FIXTURE, fixturePath, PROJECT_FIXTURE, soundCartridge, soundProject } from '../helpers/documents.ts';
import { runCli } from '../helpers/run-cli.ts';

/** Standard atmosphere, 101 325 Pa by definition [bar]. */
const ATMOSPHERE_BAR = 1.01325;

const pressures = async (project: Project, ...words: string[]) =>
  (await cliJson(['pressures', ...words], project)).points;

const charged = (gaugePressure_bar: number): Project => {
  const project = soundProject();
  return { ...project, gas: { ...project.gas, gaugePressure_bar } };
};

const MONOTUBE_KEYS = [
  'shaftSpeed_m_s',
  'status',
  'compressionPressureAbsolute_bar',
  'compressionPressureGauge_bar',
  'reboundPressureAbsolute_bar',
  'reboundPressureGauge_bar',
  'gasPressureAbsolute_bar',
  'gasPressureGauge_bar',
  'lowestChamber',
  'airReleaseMargin_bar',
  'airRelease',
  'gasPressureNeededAbsolute_bar',
  'gasPressureNeededGauge_bar',
  'compressionVoid_L_min',
  'reboundVoid_L_min',
  'theory',
];

describe.concurrent('shimwright pressures', () => {
  it('gives every chamber absolute and above the atmosphere, and says which is the lowest', async () => {
    const [rebound, still, compression] = await pressures(soundCartridge(), '--speeds-m-s=-0.05,0,0.05');
    for (const point of [rebound, still, compression]) {
      for (const chamber of ['compressionPressure', 'reboundPressure', 'reservoirPressure', 'gasPressure']) {
        const difference = point[`${chamber}Absolute_bar`] - point[`${chamber}Gauge_bar`];
        expect(difference, chamber).toBeCloseTo(ATMOSPHERE_BAR, 8);
      }
    }
    // Oil runs from the pressed chamber through the piston, and from the compression chamber through the base.
    expect(compression.compressionPressureGauge_bar).toBeGreaterThan(compression.reservoirPressureGauge_bar);
    expect(compression.compressionPressureGauge_bar).toBeGreaterThan(compression.reboundPressureGauge_bar);
    expect(rebound.reboundPressureGauge_bar).toBeGreaterThan(rebound.compressionPressureGauge_bar);
    expect(rebound.reservoirPressureGauge_bar).toBeGreaterThan(rebound.compressionPressureGauge_bar);
    expect([rebound.lowestChamber, still.lowestChamber]).toEqual(['compression', null]);
  });

  it('holds what the friction of a floating piston adds: 12 N on 30 mm are 0.1698 bar', async () => {
    const [rebound, compression] = await pressures(soundCartridge(), '--speeds-m-s=-0.05,0.05');
    // 12 N / (pi / 4 * (30 mm)^2) = 16 977 Pa, against the motion.
    const held = (point: Record<string, number>) => point.reservoirPressureAbsolute_bar - point.gasPressureAbsolute_bar;
    expect(held(compression)).toBeCloseTo(0.16977, 5);
    expect(held(rebound)).toBeCloseTo(-0.16977, 5);
  });

  it('tells of a floating piston that its friction keeps standing: the void is beside it', async () => {
    const cartridge = soundCartridge();
    const separator = { kind: 'floating-piston', diameter_mm: 30, friction_N: 300 } as const;
    const stuck = { ...cartridge, gas: { ...cartridge.gas, gaugePressure_bar: 0, separator } };
    const words = ['pressures', '-', '--speeds-m-s=-0.05', '--position=0', '--json'];
    const { stdout, stderr } = await runCli(words, JSON.stringify(stuck));
    const [point] = JSON.parse(stdout).points;
    expect(point.reservoirPressureAbsolute_bar).toBeCloseTo(ATMOSPHERE_BAR, 9);
    // Source: the leg leaves the air by A v, pi/4 * D^2 * 0.05 m/s, and no void opens elsewhere.
    const leg_mm = stuck.damper.legDiameter_mm ?? stuck.damper.rodDiameter_mm;
    const all_L_min = (Math.PI / 4) * leg_mm ** 2 * 0.05 * 0.06;
    expect(point.reservoirVoid_L_min + point.compressionVoid_L_min + point.reboundVoid_L_min).toBeCloseTo(all_L_min, 9);
    expect(stderr).toContain(`in the reservoir chamber a void opens at ${point.reservoirVoid_L_min.toFixed(2)} L/min`);
  });

  it('follows the gas through the stroke: p V^n with absolute p', async () => {
    const points = await pressures(soundProject(), '--speeds-m-s=0', '--position', '0,35,70');
    // By hand: 11.01325 bar and 90 mL at full extension, rod 16 mm (201.062 mm2), n 1.2: 82.963 and 75.926 mL left.
    const wanted = [11.01325, 11.01325 * (90 / 82.9628) ** 1.2, 11.01325 * (90 / 75.9257) ** 1.2];
    for (const [i, point] of points.entries()) {
      expect(point.position_mm).toBe([0, 35, 70][i]);
      expect(point.gasPressureAbsolute_bar / wanted[i]).toBeCloseTo(1, 5);
    }
  });

  it('puts the oil next to the gas of a monotube at its pressure, and the rebound chamber below it', async () => {
    const [point] = await pressures(soundProject(), '--speeds-m-s=0.5');
    expect(Object.keys(point)).toEqual(MONOTUBE_KEYS);
    expect(point.compressionPressureGauge_bar).toBeCloseTo(point.gasPressureGauge_bar, 9);
    expect(point).toMatchObject({ lowestChamber: 'rebound', airRelease: false, reboundVoid_L_min: 0 });
    // Air release at the atmosphere: the margin of the lowest chamber is its gauge pressure.
    expect(point.airReleaseMargin_bar).toBeCloseTo(point.reboundPressureGauge_bar, 9);
  });

  it('names the gas that just keeps the oil together: a little more does, a little less does not', async () => {
    const at = (gauge_bar: number) => pressures(charged(gauge_bar), '--speeds-m-s=3', '--position=0');
    const [{ gasPressureNeededGauge_bar: needed, airRelease, airReleaseMargin_bar: margin }] = await at(0);
    expect({ airRelease, short: needed > 0.5 }).toEqual({ airRelease: true, short: true });
    expect(margin).toBeCloseTo(0 - needed, 9);
    const [[more], [less]] = await Promise.all([at(needed + 0.01), at(needed - 0.01)]);
    expect([more.airRelease, less.airRelease]).toEqual([false, true]);
    expect(more.airReleaseMargin_bar).toBeCloseTo(0.01, 6);
    expect([more.reboundVoid_L_min, less.reboundVoid_L_min > 0]).toEqual([0, true]);
  });

  it('says where oil pulls apart and how fast: what the piston does not pass on is the void', async () => {
    const [asPressures, asFlow] = await Promise.all([
      runCli(['pressures', '-', '--speeds-m-s=3', '--json'], JSON.stringify(charged(0))),
      cliJson(['flow', '--speeds-m-s=3'], charged(0)),
    ]);
    const [point] = JSON.parse(asPressures.stdout).points;
    // ((46 mm)^2 - (16 mm)^2) pi / 4 is 1460.841 mm2; at 3 m/s the rebound chamber grows by 262.951 L/min.
    expect(point.reboundVoid_L_min + asFlow.points[0].totalFlow_L_min).toBeCloseTo(262.951, 2);
    expect(point.reboundVoid_L_min).toBeGreaterThan(0);
    expect(point.reboundPressureGauge_bar).toBe(0);
    expect(asPressures.stderr).toContain(
      `at 3 m/s: air comes out of the oil; in the rebound chamber a void opens at ${point.reboundVoid_L_min.toFixed(2)} L/min; ` +
        `${point.gasPressureNeededGauge_bar.toFixed(1)} bar gauge of gas would prevent it`,
    );
    expect(asPressures.stderr).toContain("never above the maker's pressure");
  });

  it('prints the same numbers as CSV, and a table that says gauge', async () => {
    const words = ['pressures', fixturePath(CARTRIDGE_FIXTURE), '--speeds-m-s=-0.02,0.02'];
    const [asJson, asCsv, table] = await Promise.all([
      runCli([...words, '--json']),
      runCli([...words, '--csv']),
      runCli(words),
    ]);
    const { points, ...head } = JSON.parse(asJson.stdout);
    const [header, ...rows] = csvLines(asCsv.stdout);
    expect(head).toMatchObject({
      format: 'shimwright/pressures',
      version: 1,
      position_mm: 125,
      oilTemperature_degC: 30,
    });
    expect(header).toEqual([
      ...MONOTUBE_KEYS.slice(0, 6),
      'reservoirPressureAbsolute_bar',
      'reservoirPressureGauge_bar',
      ...MONOTUBE_KEYS.slice(6, 13),
      'reservoirVoid_L_min',
      'compressionVoid_L_min',
      'reboundVoid_L_min',
      'theory',
      'baseTheory',
    ]);
    expect(rows[0]).toEqual(Object.values(points[0]).map((value) => (value === null ? '' : String(value))));
    expect(table.stdout.split('\n')[0]).toMatch(/compression bar gauge .* reservoir bar gauge .* gas needed bar gauge/);
    expect(table.stdout.trimEnd().split('\n')).toHaveLength(3);
  });

  it('gives no number where a speed cannot be reached, says why, and exits 1', async () => {
    const { code, stdout, stderr } = await runCli([
      'pressures',
      fixturePath(PROJECT_FIXTURE),
      '--speeds-m-s=500',
      '--csv',
    ]);
    const [header, row] = csvLines(stdout);
    expect({ code, status: row[1] }).toEqual({ code: 1, status: 'beyond-table' });
    expect(row.slice(2)).toEqual(header.slice(2).map(() => ''));
    expect(stderr).toMatch(/^at 500 m\/s: beyond-table: /);
  });
});
