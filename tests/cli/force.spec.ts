import { describe, expect, it } from 'vitest';
import { fixturePath, fixtureText, PROJECT_FIXTURE, soundProject } from '../helpers/documents.ts';
import { runCli, runHere } from '../helpers/run-cli.ts';

const PROJECT = fixturePath(PROJECT_FIXTURE);

const withTwoBuilds = (): string => {
  const project = soundProject();
  const [first] = project.builds;
  const softer = structuredClone(first);
  softer.valves.pistonCompression.shims[0].count = 1;
  return JSON.stringify({ ...project, builds: [first, { ...softer, id: 'softer', name: 'Softer, 1 face shim' }] });
};

const withNeedle = (): string => {
  const project = soundProject();
  const needle = { coneAngle_deg: 20, travelPerClick_mm: 0.1, clicks: 16, clickCount: 16 };
  project.builds[0].bleed = { count: 1, diameter_mm: 2.5, length_mm: 3, needle };
  return JSON.stringify(project);
};

const forces = (stdout: string): number[] =>
  JSON.parse(stdout).points.map((point: { force_N: number }) => point.force_N);

describe.concurrent('shimwright force', () => {
  it('gives force, flows, opening and pressures at each speed, rebound below 0', async () => {
    const { code, stdout, stderr } = await runCli(['force', PROJECT, '--speeds-m-s', '-0.5,0,0.5', '--json']);
    const { points, ...head } = JSON.parse(stdout);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(head).toEqual({
      format: 'shimwright/force',
      version: 1,
      theory: 'auto',
      project: 'Two-stage rear damper',
      build: { id: 'as-found', name: 'As found' },
      oilTemperature_degC: 40,
      position_mm: 35,
    });
    const [rebound, still, compression] = points;
    expect(points.map((point: { shaftSpeed_m_s: number }) => point.shaftSpeed_m_s)).toEqual([-0.5, 0, 0.5]);
    expect(rebound.force_N).toBeLessThan(still.force_N);
    expect(compression.force_N).toBeGreaterThan(still.force_N);
    for (const point of points) {
      expect(point.status).toBe('converged');
      expect(point.force_N).toBeCloseTo(point.gasForce_N + point.frictionForce_N + point.dampingForce_N, 6);
      // Gauge pressure counts from the standard atmosphere, 1.01325 bar.
      expect(point.compressionPressureAbsolute_bar - point.compressionPressureGauge_bar).toBeCloseTo(1.01325, 8);
      expect(point.reboundPressureAbsolute_bar - point.reboundPressureGauge_bar).toBeCloseTo(1.01325, 8);
      expect(point.gasPressureAbsolute_bar - point.gasPressureGauge_bar).toBeCloseTo(1.01325, 8);
      expect(point.gasPressureNeededAbsolute_bar - point.gasPressureNeededGauge_bar).toBeCloseTo(1.01325, 8);
      expect(point.airRelease).toBe(false);
      // What the piston displaces in compression: (46 mm)^2 - (16 mm)^2 by pi / 4, at 0.5 m/s 43.82 L/min.
      expect(point.portsFlow_L_min + point.bleedFlow_L_min).toBeCloseTo(Math.abs(point.shaftSpeed_m_s) * 87.64, 1);
    }
    expect(compression.seatOpening_mm).toBeGreaterThan(0);
    expect(still).toMatchObject({ dampingForce_N: 0, seatOpening_mm: 0, pistonDrop_bar: 0 });
  });

  it('takes the baseline, or a build by its id or its name', async () => {
    const force = (...words: string[]) =>
      runCli(['force', '-', '--speeds-m-s', '0.5', '--json', ...words], withTwoBuilds());
    const [base, byId, byName, other] = await Promise.all([
      force(),
      force('--build', 'as-found'),
      force('--build', 'Softer, 1 face shim'),
      force('--build', 'softer'),
    ]);
    expect(byId.stdout).toBe(base.stdout);
    expect(other.stdout).toBe(byName.stdout);
    expect(forces(other.stdout)[0]).toBeLessThan(forces(base.stdout)[0]);
    const unknown = await force('--build', 'stiffer');
    expect(unknown).toMatchObject({ code: 2, stdout: '' });
    expect(unknown.stderr).toContain('the builds are as-found (As found), softer (Softer, 1 face shim)');
  });

  it('asks for the id where two builds share a name', async () => {
    const text = withTwoBuilds().replace('Softer, 1 face shim', 'As found');
    const shared = await runCli(['force', '-', '--speeds-m-s', '0.5', '--build', 'As found'], text);
    expect(shared).toMatchObject({ code: 2, stdout: '' });
    expect(shared.stderr).toContain('several builds have that name');
  });

  it('prints the same numbers as CSV, and a table that says gauge', async () => {
    const words = ['force', PROJECT, '--speeds-m-s', '0.1,0.5'];
    const [asJson, asCsv, table] = await Promise.all([
      runCli([...words, '--json']),
      runCli([...words, '--csv']),
      runCli(words),
    ]);
    const [header, ...rows] = asCsv.stdout.trimEnd().split('\r\n');
    const [point] = JSON.parse(asJson.stdout).points;
    expect(header.split(',')).toEqual(Object.keys(point));
    expect(rows[0].split(',')).toEqual(Object.values(point).map(String));
    expect(table.stdout.split('\n')[0]).toContain('compression bar gauge');
    expect(table.stdout.trimEnd().split('\n')).toHaveLength(3);
  });

  it('warns where air comes out of the oil', async () => {
    const text = fixtureText(PROJECT_FIXTURE).replace('"gaugePressure_bar": 10', '"gaugePressure_bar": 0');
    const { code, stdout, stderr } = await runCli(['force', '-', '--speeds-m-s', '2', '--json'], text);
    const [point] = JSON.parse(stdout).points;
    expect({ code, airRelease: point.airRelease }).toEqual({ code: 0, airRelease: true });
    expect(stderr).toContain(`${point.gasPressureNeededGauge_bar.toFixed(1)} bar gauge of gas would prevent it`);
    expect(stderr.match(/gas under pressure can kill.*nitrogen only.*maker's manual comes first/g)).toHaveLength(1);
  });

  it('warns where the bleed cavitates', async () => {
    const { code, stdout, stderr } = await runCli(['force', PROJECT, '--speeds-m-s', '0.1,5', '--json']);
    const marks = JSON.parse(stdout).points.map(({ bleedCavitates }: Record<string, unknown>) => bleedCavitates);
    expect({ code, marks }).toEqual({ code: 0, marks: [false, true] });
    expect(stderr).toMatch(/at 5 m\/s: cavitation at .*the bleed/);
    expect(stderr).not.toContain('at 0.1 m/s');
  });

  it('gives no number where a speed cannot be reached, says why, and exits 1', async () => {
    const { code, stdout, stderr } = await runCli(['force', PROJECT, '--speeds-m-s', '0.1,500', '--json']);
    const [sound, failed] = JSON.parse(stdout).points;
    expect(code).toBe(1);
    expect(sound.status).toBe('converged');
    expect(failed.status).toBe('beyond-table');
    const { shaftSpeed_m_s, status, ...numbers } = failed;
    expect(Object.values(numbers).every((value) => value === null)).toBe(true);
    expect(stderr).toMatch(/^at 500 m\/s: beyond-table: /);
  });

  const rows = async (...words: string[]) => {
    const { code, stdout, stderr } = await runCli(['force', '-', '--json', ...words], withNeedle());
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    return JSON.parse(stdout);
  };

  it('lays the band of the coefficients round every force when asked to', async () => {
    const { points } = await rows('--speeds-m-s', '-0.5,0,0.5', '--band');
    for (const { shaftSpeed_m_s, force_N, bandStatus, forceLow_N, forceHigh_N, bandMostFrom } of points) {
      expect(bandStatus).toBe('converged');
      const moves = shaftSpeed_m_s !== 0;
      expect([force_N - forceLow_N > 0, forceHigh_N - force_N > 0, bandMostFrom !== null]).toEqual([
        moves,
        moves,
        moves,
      ]);
    }
    const [plain] = (await rows('--speeds-m-s', '0.5')).points;
    expect(plain).not.toHaveProperty('bandStatus');
    expect(points[2]).toMatchObject(plain);
  });

  it('tells in words what most of the band comes from, and by its name in CSV', async () => {
    const words = ['force', PROJECT, '--speeds-m-s=0.5', '--band'];
    const [table, csv] = await Promise.all([runHere(words), runHere([...words, '--csv'])]);
    expect(table.result).toMatch(/ shim jet /);
    expect(table.result).not.toContain('jetDischarge');
    expect(csv.result).toMatch(/,jetDischarge,/);
  });

  it('exits 1 and says why where a force has no band', async () => {
    // At this speed the coefficients as they are still find the force; at one end of a range they do not.
    const { code, stdout, stderr } = await runCli(['force', PROJECT, '--speeds-m-s', '20', '--band', '--csv']);
    const [header, row] = stdout.split('\r\n').map((line) => line.split(','));
    const at = (key: string) => row[header.indexOf(key)];
    expect([code, at('status'), at('bandStatus'), at('forceLow_N')]).toEqual([1, 'converged', 'beyond-table', '']);
    expect(stderr).toContain('no band: beyond-table: jetDischarge: ');
  });

  it('sweeps the oil temperature: cold oil pushes back harder', async () => {
    const { points, ...head } = await rows('--speeds-m-s', '-0.5,0.5', '--temperature', '40,70,95');
    expect(head).not.toHaveProperty('oilTemperature_degC');
    const asked = points.map((p: Record<string, number>) => [p.oilTemperature_degC, p.shaftSpeed_m_s]);
    expect(asked).toEqual([
      [40, -0.5],
      [40, 0.5],
      [70, -0.5],
      [70, 0.5],
      [95, -0.5],
      [95, 0.5],
    ]);
    const [cold, warm, hot] = [points[1], points[3], points[5]].map(({ dampingForce_N }) => dampingForce_N);
    expect(cold).toBeGreaterThan(warm);
    expect(warm).toBeGreaterThan(hot);
    const own = (await rows('--speeds-m-s', '0.5')).points[0];
    expect(points[1]).toMatchObject(own);
  });

  it('sweeps the clicks of the needle: further in pushes back harder, closed does not bleed', async () => {
    const { points } = await rows('--speeds-m-s', '0.2', '--clicks', '0,4,16', '--temperature', '40');
    expect(points.map((p: Record<string, number>) => p.clicks)).toEqual([0, 4, 16]);
    expect(points[0].bleedFlow_L_min).toBe(0);
    expect(points[0].force_N).toBeGreaterThan(points[1].force_N);
    expect(points[1].force_N).toBeGreaterThan(points[2].force_N);
    const text = await runCli(['force', '-', '--speeds-m-s', '0.2', '--clicks', '4'], withNeedle());
    expect(text.stdout.split('\n')[0]).toMatch(/^speed m\/s {2}clicks {2}status/);
  });

  it.each([
    ['--clicks', '17', 'a whole number from 0 to 16'],
    ['--clicks', '2.5', 'a whole number from 0 to 16'],
    ['--clicks', '-1', '0 or more'],
    ['--temperature', '-61', '-60 °C or more'],
    ['--temperature', '251', '250 °C or less'],
    ['--temperature', 'warm', 'wanted numbers'],
  ])('refuses %s %s', async (option, list, wanted) => {
    const { code, stdout, stderr } = await runCli(
      ['force', '-', '--speeds-m-s', '0.2', `${option}=${list}`],
      withNeedle(),
    );
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(wanted);
  });

  it('refuses to turn a needle that is not there', async () => {
    const { code, stderr } = await runCli(['force', PROJECT, '--speeds-m-s', '0.2', '--clicks', '3']);
    expect(code).toBe(2);
    expect(stderr).toContain('[bleed.needle.none]');
  });

  it.each(['', 'NaN', '0.1,,0.2', 'fast'])('refuses the speeds %j', async (list) => {
    const { exit, result, talk } = await runHere(['force', PROJECT, `--speeds-m-s=${list}`]);
    expect({ exit, result }).toEqual({ exit: 2, result: '' });
    expect(talk.join()).toContain('--speeds-m-s');
  });
});
