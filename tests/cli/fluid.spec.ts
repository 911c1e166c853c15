import { describe, expect, it } from 'vitest';
import { soundProject } from '../helpers/documents.ts';
import { runCli } from '../helpers/run-cli.ts';

const projectWith = (viscosity: object, stiffness: object = {}): string => {
  const project = soundProject();
  return JSON.stringify({ ...project, fluid: { ...project.fluid, viscosity, densityAt15_kg_m3: 860, ...stiffness } });
};

/** Source: public worked example of D341, 32 at 40 °C and 5.4 at 100 °C give 8.533 at 80 °C. */
const TWO_POINTS = {
  kind: 'two-point',
  points: [
    { temperature_degC: 40, kinematicViscosity_cSt: 32 },
    { temperature_degC: 100, kinematicViscosity_cSt: 5.4 },
  ],
};

describe.concurrent('shimwright fluid', () => {
  it('gives viscosity and density of the oil at each temperature', async () => {
    const { code, stdout, stderr } = await runCli(
      ['fluid', '-', '--temperature', '40,80', '--json'],
      projectWith(TWO_POINTS),
    );
    const { points, ...head } = JSON.parse(stdout);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(head).toEqual({ format: 'shimwright/fluid', version: 1, name: 'Invented damper oil' });
    const [warm, hot] = points;
    expect(hot.kinematicViscosity_cSt).toBeCloseTo(8.5332, 2);
    // Source: D1250 for lubricating oils, 860 kg/m3 at 15 °C is 844.22 at 40 °C.
    expect(warm.density_kg_m3).toBeCloseTo(844.22, 2);
    expect(warm.dynamicViscosity_mPa_s / (32e-3 * 844.22)).toBeCloseTo(1, 3);
    expect(warm).toMatchObject({ oilTemperature_degC: 40, gradeLow_cSt: null, gradeHigh_cSt: null });
  });

  it('shows the limits of a grade: 10 % to both sides of its midpoint at 40 °C', async () => {
    const grade = projectWith({ kind: 'iso-grade', isoGrade: 22, viscosityIndex: 120 });
    const { stdout } = await runCli(['fluid', '-', '--csv'], grade);
    const [keys, row] = stdout.split('\r\n').map((line) => line.split(','));
    // Source: ISO 3448, grade 22 is 19.8 to 24.2 mm2/s; the project's oil has 40 °C.
    const found = ['gradeLow_cSt', 'kinematicViscosity_cSt', 'gradeHigh_cSt'].map((key) =>
      Number(row[keys.indexOf(key)]),
    );
    for (const [i, wanted] of [19.8, 22, 24.2].entries()) expect(found[i] / wanted).toBeCloseTo(1, 3);
  });

  it('says what a weight number is worth, beside the result', async () => {
    const { code, stdout, stderr } = await runCli(['fluid', '-', '--weight', '5,10'], projectWith(TWO_POINTS));
    expect(code).toBe(0);
    expect(stdout.trimEnd().split('\n')).toHaveLength(2);
    const [five, ten] = stderr.trimEnd().split('\n');
    expect(five).toMatch(/weight 5 .* no standard/);
    expect(ten).toMatch(/weight 10 .* no standard/);
  });

  it('refuses a weight that is not sold, and a temperature that no damper has', async () => {
    const weight = await runCli(['fluid', '-', '--weight', '6'], projectWith(TWO_POINTS));
    expect(weight).toMatchObject({ code: 2, stdout: '' });
    expect(weight.stderr).toContain('wanted weights of 2.5, 5, 7.5, 10, 15, 20');
    const hot = await runCli(['fluid', '-', '--temperature', '300'], projectWith(TWO_POINTS));
    expect(hot).toMatchObject({ code: 2, stdout: '' });
    expect(hot.stderr).toContain('250 °C or less');
  });

  it('gives the stiffness of the oil at each pressure, for each share of air', async () => {
    const asked = ['--temperature', '15', '--pressures-bar', '4.98675,13.98675', '--air-percent', '0,0.5,2'];
    const project = projectWith(TWO_POINTS, { bulkModulus_GPa: 1.7 });
    const { code, stdout, stderr } = await runCli(['fluid', '-', ...asked, '--json'], project);
    expect(code).toBe(0);
    expect(stderr).toContain('at 15 °C the viscosity is extrapolated');
    const { points } = JSON.parse(stdout);
    // Source: the reference case fluid/bulk-modulus-isothermal, computed independently: 0.6 and 1.5 MPa, absolute.
    const expected = [
      [0, 4.98675, 1.7, 0, 1],
      [0, 13.98675, 1.7, 0, 1],
      [0.5, 4.98675, 0.4996714971, 0.0848147095, 0.995 / 0.99555254626],
      [0.5, 13.98675, 1.227832969, 0.03396112563, 0.995 / 0.994519450424],
      [2, 4.98675, 0.158423191, 0.343559568, 0.98 / 0.983090070688],
      [2, 13.98675, 0.6640275616, 0.1377805149, 0.98 / 0.980545036599],
    ];
    expect(points).toHaveLength(expected.length);
    for (const [i, [air, gauge, modulus, there, density]] of expected.entries()) {
      expect(points[i]).toMatchObject({ freeAir_percent: air, pressureGauge_bar: gauge });
      expect(points[i].bulkModulus_GPa / modulus).toBeCloseTo(1, 8);
      expect(points[i].airThere_percent).toBeCloseTo(there, 8);
      // Oil alone is pressed by (p - p0)/1.7 GPa, less than 0.1 %.
      if (air > 0) expect(points[i].densityThere_kg_m3 / (860 * density)).toBeCloseTo(1, 8);
      else expect(points[i].densityThere_kg_m3).toBeCloseTo(860 * Math.exp((gauge * 1e5) / 1.7e9), 6);
    }
  });

  it('takes air and stiffness of the project, and keeps its table as it was without pressures', async () => {
    const project = projectWith(TWO_POINTS, { bulkModulus_GPa: 1.7, entrainedAir_percent: 2 });
    const [squeezed, plain] = await Promise.all([
      runCli(['fluid', '-', '--pressures-bar', '4.98675', '--csv'], project),
      runCli(['fluid', '-', '--csv'], project),
    ]);
    const [keys, row] = squeezed.stdout.split('\r\n').map((line) => line.split(','));
    expect(Number(row[keys.indexOf('freeAir_percent')])).toBe(2);
    expect(Number(row[keys.indexOf('bulkModulus_GPa')]) / 0.158423191).toBeCloseTo(1, 8);
    expect(plain.stdout.split('\r\n')[0]).toBe(keys.slice(0, 6).join(','));
  });

  it('names temperature, pressure and air before the rest in the table, and in each of its blocks', async () => {
    const words = ['fluid', '-', '--temperature', '20,60', '--pressures-bar', '5', '--air-percent', '7'];
    const [whole, narrow] = await Promise.all([
      runCli(words, projectWith(TWO_POINTS)),
      runCli(words, projectWith(TWO_POINTS), '60'),
    ]);
    expect(whole.stdout).toMatch(/^oil °C +pressure bar gauge +free air vol % +viscosity cSt/);
    expect(whole.stdout).toMatch(/bulk modulus GPa +density there kg\/m3\n +20 +5 +7 /);
    const blocks = narrow.stdout.split('\n\n');
    expect(blocks.length).toBeGreaterThan(1);
    for (const block of blocks) expect(block).toMatch(/\n +20 +5 +7 .*\n +60 +5 +7 /);
  });

  it('refuses air without a pressure, and a pressure below none', async () => {
    const [air, vacuum] = await Promise.all([
      runCli(['fluid', '-', '--air-percent', '1'], projectWith(TWO_POINTS)),
      runCli(['fluid', '-', '--pressures-bar', '-1.1'], projectWith(TWO_POINTS)),
    ]);
    expect(air).toMatchObject({ code: 2, stdout: '' });
    expect(air.stderr).toContain('--air-percent needs --pressures-bar');
    expect(vacuum).toMatchObject({ code: 2, stdout: '' });
    expect(vacuum.stderr).toContain('-1 bar or more');
  });

  it('says where it is further from the data sheet than one may think', async () => {
    const [cold, index, usual] = await Promise.all([
      runCli(['fluid', '-', '--temperature', '-20,40,100,120'], projectWith(TWO_POINTS)),
      runCli(
        ['fluid', '-', '--temperature', '70'],
        projectWith({ kind: 'viscosity-index', kinematicViscosity40_cSt: 15, viscosityIndex: 900 }),
      ),
      runCli(
        ['fluid', '-', '--temperature', '40,100'],
        projectWith({ kind: 'iso-grade', isoGrade: 15, viscosityIndex: 150 }),
      ),
    ]);
    expect(cold.stderr).toBe('at -20, 120 °C the viscosity is extrapolated: it is known from 40 to 100 °C\n');
    expect(index.stderr).toContain('a viscosity index of 900 is unusual: oils for dampers have 0 to 450');
    expect(usual.stderr).toBe('');
    expect([cold.code, index.code, usual.code]).toEqual([0, 0, 0]);
  });

  it('refuses a cold at which the oil is no liquid any more, and says so of the cold', async () => {
    const thick = projectWith({ kind: 'viscosity-index', kinematicViscosity40_cSt: 680, viscosityIndex: 50 });
    const { code, stdout, stderr } = await runCli(['fluid', '-', '--temperature', '-60'], thick);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain(
      'got -60 °C, wanted a temperature at which the oil, by its law, has at most 20000000 mm2/s',
    );
  });
});
