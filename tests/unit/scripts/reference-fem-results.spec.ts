/** What is read back from the continuum model, the case made of it, and the command line. */
import { describe, expect, it } from 'vitest';
import { caseFiles } from '../../../scripts/reference-fem/case-files.ts';
import { worstDeviations } from '../../../scripts/reference-fem/check-case.ts';
import { readOptions, UsageError } from '../../../scripts/reference-fem/options.ts';
import { readPrintFile } from '../../../scripts/reference-fem/print-file.ts';
import { readResults } from '../../../scripts/reference-fem/read-results.ts';
import { runCcx } from '../../../scripts/reference-fem/run-ccx.ts';
import { type ModelOptions, writeModel } from '../../../scripts/reference-fem/write-model.ts';
import type { StackFile } from '../../../src/model/project.ts';
import { parseCase, parseExpected } from '../../../src/proof/proof-case.ts';
import { fixtureText } from '../../helpers/documents.ts';
import { ringed, single } from '../../helpers/fem-stacks.ts';

const options: ModelOptions = {
  theory: 'large-deflection',
  pressures_MPa: [0.1, 0.2],
  penalty_MPa_mm: 3e6,
  elementSize_mm: 0.5,
};
const written = (stack: StackFile, changes: Partial<ModelOptions> = {}) =>
  writeModel(stack, { ...options, ...changes });
describe('print file', () => {
  it('is read block by block, exponents of three digits too', () => {
    const text = `
 displacements (vx,vy,vz) for set LIFTS and time  0.1000000E+01

        95 -1.250000E-03  2.500000E-01  1.500000-104

 total force (fx,fy,fz) for set HSEAT and time  0.2000000E+01

        1.000000E+00 -2.000000E+00  0.000000E+00
`;
    expect(readPrintFile(text)).toEqual([
      { quantity: 'displacements', set: 'LIFTS', time: 1, rows: [[95, -0.00125, 0.25, 1.5e-104]] },
      { quantity: 'total force', set: 'HSEAT', time: 2, rows: [[1, -2, 0]] },
    ]);
  });

  it('is refused with the line that is no number', () => {
    const text = ' stresses (elem, integ.pnt.,sxx) for set ATCLAMP and time  0.1000000E+01\n\n 1 1 NaN\n';
    expect(() => readPrintFile(text)).toThrow('"NaN" is no number in "1 1 NaN"');
  });
});

describe('results', () => {
  const zoneArea = (inner_mm: number, outer_mm: number) => (Math.PI / 4) * (outer_mm ** 2 - inner_mm ** 2);
  const recorded = (name: string) => fixtureText(`fem/${name}.dat`);
  const singleOptions: ModelOptions = { ...options, theory: 'small-deflection', pressures_MPa: [0.1] };
  const singleModel = writeModel(single(), singleOptions);
  const ringedModel = written(ringed(), { pressures_MPa: [0.1] });

  it('of a single shim are those of the stored run of a finer mesh, and its load', () => {
    // reference-cases/stack/fem-single-24x015-small at 0.1 MPa, 42 elements along the radius.
    const [point] = readResults(recorded('single'), singleModel);
    expect(point.pressure_MPa).toBe(0.1);
    expect(point.shimEdgeLift_mm[0] / 0.324121).toBeCloseTo(1, 2);
    expect(point.zoneEdgeLift_mm / 0.2736766).toBeCloseTo(1, 2);
    expect((point.clampStress_MPa[0] as number) / 654.9357).toBeCloseTo(1, 2);
    expect(point.clampForce_N / (0.1 * zoneArea(13.2, 22.08))).toBeCloseTo(1, 4);
  });

  it('of a preloaded stack balance: on clamp and plate comes what pressure and seat put in', () => {
    const [preloaded, loaded] = readResults(recorded('ringed'), ringedModel);
    expect([preloaded.pressure_MPa, loaded.pressure_MPa]).toEqual([0, 0.1]);
    expect(preloaded.seatForce_N).toBeGreaterThan(1);
    expect(preloaded.clampForce_N / preloaded.seatForce_N).toBeCloseTo(1, 3);
    // Pressure follows the turned faces, so its axial part is a little less than on the flat shim.
    expect(loaded.clampForce_N / (0.1 * zoneArea(14, 22) + loaded.seatForce_N)).toBeCloseTo(1, 2);
  });

  it('count lifts from the place on the hub, not from where a propped shim began', () => {
    const [preloaded] = readResults(recorded('ringed'), ringedModel);
    const [face, crossover, ring, above] = preloaded.shimEdgeLift_mm;
    expect(Math.abs(crossover)).toBeLessThan(1e-3);
    // The shim above cannot sink into the ring, 0.1 thicker than the room between the flat shims, but may lean off its rim.
    expect(above - ring).toBeGreaterThan(0.0999);
    expect(above - ring).toBeLessThan(0.2);
    expect(face).toBeGreaterThan(0);
    expect(preloaded.clampStress_MPa[2]).toBeUndefined();
    expect(preloaded.clampStress_MPa[3]).toBeGreaterThan(50);
  });

  it('end with the pressure at which the run stopped', () => {
    const half = recorded('ringed')
      .split(/\n displacements/)
      .slice(0, 2)
      .join('\n displacements');
    expect(() => readResults(half, ringedModel)).toThrow('did not converge at 0.1 MPa');
    expect(() => readResults('', singleModel)).toThrow('did not converge at 0.1 MPa');
  });

  it('make a case in the form of the others', () => {
    const results = readResults(recorded('ringed'), ringedModel);
    const stack = ringed();
    const request = { id: 'fem-ringed-large', title: 'a ring', stack, options, model: ringedModel, results };
    const files = caseFiles({ ...request, version: '2.20' });
    const made = parseCase(JSON.parse(files['case.json']));
    expect(made).toMatchObject({ id: 'fem-ringed-large', field: 'stack', kind: 'own', evaluator: 'stack-lift' });
    expect(made.input).toEqual({ theory: 'large-deflection', pressures_MPa: [0, 0.1], stack });
    const { quantities, tolerances } = parseExpected(JSON.parse(files['expected.json']));
    expect(quantities['0.1 MPa shim 4 edgeLift'].value).toBeCloseTo(results[1].shimEdgeLift_mm[3], 6);
    const stresses = [1, 2, 4].map((shim) => quantities[`0.1 MPa shim ${shim} clampStress`].value);
    expect(quantities['0.1 MPa largestClampStress'].value).toBe(Math.max(...stresses));
    expect(quantities['0.1 MPa seatForce'].unit).toBe('N');
    expect(quantities).not.toHaveProperty(['0.1 MPa shim 3 clampStress']);
    expect(tolerances.lift).toMatchObject({ relative: 0.015 });
    // A hundredth of a millimetre and less is held to 1.5 % of a hundredth.
    expect(quantities['0 MPa shim 2 edgeLift'].tolerance).toBe('small lift');
    expect(tolerances['small lift']).toMatchObject({ absolute: 0.00015 });
    expect(files['SOURCE.md']).toContain('CalculiX 2.20');
    expect(files['SOURCE.md']).toContain('preload ring is free');
  });
});

describe('a check against a stored case', () => {
  const tolerance = { relative: 0.01, reason: 'a reason of some length' };
  const stored = parseExpected({
    tolerances: { lift: tolerance },
    quantities: {
      '0.1 MPa faceEdgeLift': { value: 0.1, unit: 'mm', tolerance: 'lift' },
      '0.1 MPa shim 2 edgeLift': { value: 0.002, unit: 'mm', tolerance: 'lift' },
    },
  });
  const lift = (name: string, value: number) => ({ name, value, kind: 'lift', unit: 'mm' }) as const;

  it('gives the worst of each kind, small lifts by the size of a hundredth of a millimetre', () => {
    const run = [lift('0.1 MPa faceEdgeLift', 0.1002), lift('0.1 MPa shim 2 edgeLift', 0.00204)];
    const [worst, ...rest] = worstDeviations(run, stored);
    expect(worst).toMatchObject({ name: '0.1 MPa shim 2 edgeLift', allowed: 0.003 });
    expect(worst.share).toBeCloseTo(0.004, 9);
    expect(rest).toEqual([]);
  });

  it('refuses a case that shares nothing', () => {
    expect(() => worstDeviations([lift('0.9 MPa faceEdgeLift', 1)], stored)).toThrow('shares no quantity');
  });
});

describe('the program', () => {
  it('is told how to get when it is missing', () => {
    expect(() => runCcx('', 'no-such-program-here')).toThrow('apt-get install calculix-ccx');
  });

  it('that fails is quoted', () => {
    expect(() => runCcx('', 'false')).toThrow('CalculiX failed (exit 1)');
  });
});

describe('options', () => {
  const make = ['stack.json', '--id', 'fem-a', '--title', 'a stack', '--pressures-MPa', '0.1,0.2'];

  it('make both theories unless one is named', () => {
    const numbers = { elementSize_mm: 0.2, penalty_MPa_mm: 3e6 };
    const both = {
      kind: 'make',
      file: 'stack.json',
      id: 'fem-a',
      title: 'a stack',
      pressures_MPa: [0.1, 0.2],
      ...numbers,
    };
    expect(readOptions(make)).toEqual({ ...both, theories: ['small-deflection', 'large-deflection'] });
    const one = readOptions([...make, '--theory', 'large-deflection', '--element-size-mm', '0.1']);
    expect(one).toEqual({ ...both, theories: ['large-deflection'], elementSize_mm: 0.1 });
  });

  it('check a folder', () => {
    expect(readOptions(['--check', 'a/b'])).toMatchObject({ kind: 'check', folder: 'a/b' });
  });

  it.each([
    [['stack.json'], '--id is missing'],
    [[], 'one stack file is wanted'],
    [[...make.slice(0, 5), '--pressures-MPa', '0.1,x'], '--pressures-MPa: got "x"'],
    [[...make, '--theory', 'linear'], '--theory: got "linear"'],
    [[...make, '--penalty-MPa-mm', '0'], '--penalty-MPa-mm: got "0"'],
    [[...make.slice(0, 1), '--id', 'A b'], 'small letters'],
    [[...make, '--wavy'], '--wavy'],
  ])('%j are refused', (words, message) => {
    expect(() => readOptions(words)).toThrow(UsageError);
    expect(() => readOptions(words)).toThrow(message);
  });
});
