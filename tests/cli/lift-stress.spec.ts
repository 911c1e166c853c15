import { describe, expect, it } from 'vitest';
import { fixturePath, STACK_FIXTURE } from '../helpers/documents.ts';
import { runCli } from '../helpers/run-cli.ts';

const STACK = fixturePath(STACK_FIXTURE);

/** One shim 12 x 24 x 0.15 whose numbers Roark gives; see tests/cli/lift.spec.ts. */
const oneShim = (more: object = {}) =>
  JSON.stringify({
    format: 'shimwright/stack',
    version: 1,
    name: 'one shim',
    clampDiameter_mm: 12,
    shims: [{ outerDiameter_mm: 24, thickness_mm: 0.15 }],
    pressureZone: { innerDiameter_mm: 12, outerDiameter_mm: 24 },
    ...more,
  });
const STEEL = { youngsModulus_GPa: 206, poissonsRatio: 0.3 };
const at = (pressures: string) => [
  'lift',
  '-',
  '--pressures-MPa',
  pressures,
  '--theory',
  'small-deflection',
  '--stress',
];

describe.concurrent('shimwright lift --stress', () => {
  it('gives peak, place and reserves of every shim', async () => {
    const limits = { yieldStrength_MPa: 600, tensileStrength_MPa: 800, enduranceLimit_MPa: 400 };
    const file = oneShim({ material: { ...STEEL, ...limits } });
    const { code, stdout, stderr } = await runCli([...at('0.1,0.01'), '--json'], file);
    expect({ code }).toEqual({ code: 0 });
    const [high, low] = JSON.parse(stdout).points;
    // Roark 7th ed., Table 11.2 case 2l: 66.650 MPa at 0.01 MPa, 666.50 at 0.1. From rest: mean = amplitude = half, so
    // 1/n = 333.25/400 + 333.25/800 = 1.24969 and n = 0.80020; yield 600/666.5 = 0.90023.
    const [peak] = high.shimPeak;
    expect(Object.keys(peak)).toEqual([
      'stress_MPa',
      'radius_mm',
      'face',
      'direction',
      'lifeReserve',
      'yieldReserve',
      'takesSet',
    ]);
    expect(peak).toMatchObject({ face: 'piston', direction: 'radial', takesSet: true });
    expect(peak.radius_mm).toBeCloseTo(6, 9);
    expect(peak.stress_MPa / 666.5).toBeCloseTo(1, 3);
    expect(peak.lifeReserve).toBeCloseTo(0.8002, 3);
    expect(peak.yieldReserve).toBeCloseTo(0.90023, 3);
    expect(low.shimPeak[0]).toMatchObject({ takesSet: false });
    expect(low.shimPeak[0].lifeReserve).toBeCloseTo(8.002, 2);
    expect(stderr).toBe('at 0.1 MPa: shim 1 will take a set: stressed beyond yield\n');
  });

  it('has no reserve for a stack that bears nothing, nor for a metal of unknown strength', async () => {
    const unloaded = JSON.parse((await runCli([...at('0'), '--json'], oneShim())).stdout).points[0].shimPeak[0];
    expect(unloaded).toMatchObject({ stress_MPa: 0, lifeReserve: null, yieldReserve: null, takesSet: false });
    const brass = oneShim({ material: { youngsModulus_GPa: 100, poissonsRatio: 0.34 } });
    const { stdout, stderr } = await runCli([...at('0.01'), '--json'], brass);
    const [unknown] = JSON.parse(stdout).points[0].shimPeak;
    expect(unknown).toMatchObject({ lifeReserve: null, yieldReserve: null, takesSet: null });
    expect(unknown.stress_MPa).toBeGreaterThan(1);
    expect(stderr).toBe('no reserve for shim 1: the strength of its metal is not given\n');
  });

  it('adds a table with the worst shim of each pressure, and says which limits are assumed', async () => {
    const { stdout, stderr } = await runCli(['lift', STACK, '--pressures-MPa', '0.1,0.2', '--stress']);
    const [plain, peaks] = stdout.split('\n\n');
    expect(plain.split('\n')).toHaveLength(3);
    const [header, ...lines] = peaks.trimEnd().split('\n');
    expect(header).toMatch(/pressure MPa +peak MPa +in shim +face +direction +radius mm +life reserve +in shim/);
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/^ +0\.2 .*(piston|far) +(radial|hoop) /);
    expect(stderr).toContain('assumed (common practice): yield 1275, tensile 1500, endurance 600 MPa');
  });

  it('adds columns of each shim to the CSV', async () => {
    const words = ['lift', STACK, '--pressures-MPa', '0.1', '--csv'];
    const [header, line] = (await runCli([...words, '--stress'])).stdout.split('\n').map((row) => row.split(','));
    expect(header).toHaveLength(line.length);
    expect(header.filter((name) => name.startsWith('shimPeak['))).toHaveLength(4 * 7);
    expect(['piston', 'far']).toContain(line[header.indexOf('shimPeak[3].face')]);
    const [plain] = (await runCli(words)).stdout.split('\n');
    expect(plain).not.toContain('shimPeak');
  });
});
