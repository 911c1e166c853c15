import { describe, expect, it } from 'vitest';
import { fixturePath, fixtureText, STACK_FIXTURE } from '../helpers/documents.ts';
import { runCli, runHere } from '../helpers/run-cli.ts';

const STACK = fixturePath(STACK_FIXTURE);

const POINT_KEYS = [
  'pressure_MPa',
  'status',
  'faceEdgeLift_mm',
  'zoneEdgeLift_mm',
  'seatOpening_mm',
  'shimEdgeLift_mm',
  'shimStress_MPa',
  'shimClampStress_MPa',
];

describe.concurrent('shimwright lift', () => {
  it('prints the JSON of the contract, keys in their order, one entry a single shim', async () => {
    const words = ['lift', STACK, '--pressures-MPa', '0.2,0.1', '--theory', 'large-deflection', '--json'];
    const { code, stdout, stderr } = await runCli(words);
    const result = JSON.parse(stdout);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(Object.keys(result)).toEqual(['format', 'version', 'theory', 'points']);
    expect(result).toMatchObject({ format: 'shimwright/lift', version: 1, theory: 'large-deflection' });
    for (const point of result.points) {
      expect(Object.keys(point)).toEqual([...POINT_KEYS, 'waviness']);
      expect(point.status).toBe('converged');
      for (const list of POINT_KEYS.slice(5)) expect(point[list]).toHaveLength(4);
    }
    expect(result.points.map((point: { pressure_MPa: number }) => point.pressure_MPa)).toEqual([0.2, 0.1]);
    expect(result.points[0].faceEdgeLift_mm).toBeGreaterThan(result.points[1].faceEdgeLift_mm);
  });

  it('agrees with the closed form of one shim under uniform pressure', async () => {
    const stack = {
      format: 'shimwright/stack',
      version: 1,
      name: 'one shim',
      clampDiameter_mm: 12,
      shims: [{ outerDiameter_mm: 24, thickness_mm: 0.15 }],
      pressureZone: { innerDiameter_mm: 12, outerDiameter_mm: 24 },
    };
    const words = ['lift', '-', '--pressures-MPa', '0.01', '--theory', 'small-deflection', '--json'];
    const [point] = JSON.parse((await runCli(words, JSON.stringify(stack))).stdout).points;
    // Roark 7th ed., Table 11.2 case 2l, b/a = 0.5: K_ya -0.008589, K_Mrb -0.173569 (recomputed); D = E t^3 / 12 (1 - nu^2),
    // E 206 GPa, nu 0.3, t 0.15 mm, a 12 mm, q 0.01 MPa: lift 0.027974 mm, stress 6 M / t^2 = 66.650 MPa.
    expect(point.faceEdgeLift_mm / 0.027974).toBeCloseTo(1, 3);
    expect(point.shimClampStress_MPa[0] / 66.65).toBeCloseTo(1, 2);
    expect(point.shimEdgeLift_mm).toEqual([point.faceEdgeLift_mm]);
  });

  it('gives the margin against waves under large deflection, and says where the rim ruffles', async () => {
    const stack = {
      format: 'shimwright/stack',
      version: 1,
      name: 'one shim',
      material: { youngsModulus_GPa: 206, poissonsRatio: 0.3 },
      clampDiameter_mm: 10,
      shims: [{ outerDiameter_mm: 24, thickness_mm: 0.15 }],
      pressureZone: { innerDiameter_mm: 13.2, outerDiameter_mm: 22.08 },
    };
    const lift = (...words: string[]) =>
      runCli(['lift', '-', '--pressures-MPa', '0.1,0.22', '--theory', ...words], JSON.stringify(stack));
    const { code, stdout, stderr } = await lift('large-deflection', '--json');
    // Our own runs of a general finite-element program in three dimensions: round at 0.1 MPa, wavy at 0.22 MPa.
    const [round, wavy] = JSON.parse(stdout).points;
    expect(code).toBe(0);
    expect(round.waviness.margin).toBeGreaterThan(0);
    expect(wavy.waviness.margin).toBeLessThan(0);
    expect(wavy.waviness.waves).toBe(3);
    expect(stderr).toMatch(/^at 0\.22 MPa: the rim ruffles in 3 waves; .*outside the proven range/);
    const small = await lift('small-deflection', '--json');
    expect(Object.keys(JSON.parse(small.stdout).points[1])).toEqual(POINT_KEYS);
    expect(small.stderr).toBe('');
    const table = (await lift('large-deflection')).stdout.split('\n');
    expect(table[0]).toMatch(/wave margin +waves$/);
    expect(table[2]).toMatch(/ -0\.\d+ +3$/);
    const csv = (await lift('large-deflection', '--csv')).stdout.split('\r\n').map((line) => line.split(','));
    expect(csv[0].slice(-2)).toEqual(['waviness.margin', 'waviness.waves']);
    expect(csv[2].slice(-2)).toEqual([String(wavy.waviness.margin), '3']);
  });

  it('takes option names in lower case and values behind =', async () => {
    const words = ['lift', STACK, '--pressures-mpa=0.1', '--JSON'];
    const { code, stdout } = await runCli(words);
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ theory: 'large-deflection', points: [{ pressure_MPa: 0.1 }] });
  });

  it('says why a point failed, gives it no number, and exits 1 with the others printed', async () => {
    const { code, stdout, stderr } = await runCli(['lift', STACK, '--pressures-MPa', '0.1,1e200', '--json']);
    const [sound, failed] = JSON.parse(stdout).points;
    expect(code).toBe(1);
    expect(sound.status).toBe('converged');
    expect(Object.keys(failed)).toEqual(POINT_KEYS);
    expect(['not-converged', 'contact-not-resolved', 'singular']).toContain(failed.status);
    expect(POINT_KEYS.slice(2).map((key) => failed[key])).toEqual(POINT_KEYS.slice(2).map(() => null));
    expect(stderr).toMatch(/^at 1e\+200 MPa: /m);
    const table = await runCli(['lift', STACK, '--pressures-MPa', '1e200']);
    expect(table.code).toBe(1);
    expect(table.stdout.split('\n')[1]).toMatch(/^ *1e\+200 {2}[a-z-]+( +-){5}$/);
  });

  it('prints a table for people and CSV for spreadsheets', async () => {
    const table = (await runCli(['lift', STACK, '--pressures-MPa', '0.1,0.2'])).stdout.trimEnd().split('\n');
    expect(table).toHaveLength(3);
    expect(table[0]).toMatch(/^pressure MPa +status +face edge mm/);
    expect(table[1]).toMatch(/^ +0\.1 {2}converged +0\.\d+/);
    const csv = (await runCli(['lift', STACK, '--pressures-MPa', '0.1', '--csv'])).stdout.split('\r\n');
    expect(csv[0].split(',').slice(0, 3)).toEqual(['pressure_MPa', 'status', 'faceEdgeLift_mm']);
    expect(csv[0]).toContain('shimStress_MPa[3]');
    expect(csv[1].split(',')).toHaveLength(csv[0].split(',').length);
    expect(csv[2]).toBe('');
  });

  it.each([
    ['', 'needs a value'],
    [',', 'got ""'],
    ['0.1,', 'got ""'],
    ['NaN', 'got "NaN"'],
    ['0.1,NaN', 'got "NaN"'],
    ['Infinity', 'got "Infinity"'],
    ['1e999', 'got "1e999"'],
    ['0x10', 'got "0x10"'],
    ['-0.1', 'wanted 0 MPa or more'],
    ['0.1;0.2', 'got "0.1;0.2"'],
    ['0.1 MPa', 'got "0.1 MPa"'],
  ])('refuses the pressures %j', async (list, message) => {
    const { exit, result, talk } = await runHere(['lift', STACK, `--pressures-MPa=${list}`]);
    expect({ exit, result }).toEqual({ exit: 2, result: '' });
    expect(talk.join()).toContain('--pressures-MPa');
    expect(talk.join()).toContain(message);
  });

  it.each([
    [fixtureText(STACK_FIXTURE).replace('0.15', '-0.15'), 'shims[0].thickness_mm: got -0.15 mm'],
    [fixtureText(STACK_FIXTURE).replace('16, "thickness', '6, "thickness'), '[stack.shim.below-clamp]'],
    [fixtureText(STACK_FIXTURE).slice(0, 200), '[document.json]'],
    [fixtureText(STACK_FIXTURE).padEnd(5_000_000), '[document.too-large]'],
    ['{ "format": "shimwright/other", "version": 1 }', 'wanted "shimwright/project" or "shimwright/stack"'],
  ])('refuses a broken stack file (%#)', async (text, message) => {
    const { code, stdout, stderr } = await runCli(['lift', '-', '--pressures-MPa', '0.1'], text);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toMatch(/^shimwright: stdin: /);
    expect(stderr).toContain(message);
  });
});
