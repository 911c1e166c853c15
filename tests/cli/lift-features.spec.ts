/** Rings, dishes, floats, coil springs and notches through the command line, against hand calculations. */
import { describe, expect, it } from 'vitest';
import { runCli } from '../helpers/run-cli.ts';

const ZONE = { innerDiameter_mm: 16.5, outerDiameter_mm: 27.6 };
const SHIM = { outerDiameter_mm: 30, thickness_mm: 0.2 };
const stackOf = (parts: object) => ({
  format: 'shimwright/stack',
  version: 1,
  name: 'test',
  clampDiameter_mm: 12,
  shims: [SHIM],
  pressureZone: ZONE,
  ...parts,
});

interface Point {
  readonly status: string;
  readonly faceEdgeLift_mm: number;
  readonly seatOpening_mm: number;
  readonly hubRise_mm?: number | null;
  readonly shimEdgeLift_mm: number[];
  readonly shimClampStress_MPa: number[];
}

const cli = (parts: object, pressures_MPa: string, ...words: string[]) =>
  runCli(['lift', '-', '--pressures-MPa', pressures_MPa, ...words], JSON.stringify(stackOf(parts)));

async function points(parts: object, pressures_MPa: string, theory = 'small-deflection'): Promise<Point[]> {
  const { code, stdout, stderr } = await cli(parts, pressures_MPa, '--theory', theory, '--json');
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  return JSON.parse(stdout).points;
}

const near = (got: number, wanted: number, relative: number) =>
  expect(Math.abs(got / wanted - 1), `got ${got}, wanted ${wanted}`).toBeLessThan(relative);

describe.concurrent('shimwright lift: float', () => {
  const float = { travel_mm: 0.5, rate_N_mm: 10, preload_N: 5 };

  it.each(['small-deflection', 'large-deflection'])(
    'rises as its check spring yields, up to its travel (%s)',
    async (theory) => {
      const [resting, floating, ended] = await points({ float }, '0.01,0.02,0.1', theory);
      // The zone has pi (13.8² - 8.25²) = 384.460 mm²: 3.845 N at 0.01 MPa, below the preload of 5 N; 7.689 N at 0.02 MPa.
      expect(resting.hubRise_mm).toBe(0);
      near(floating.hubRise_mm as number, (384.46025 * 0.02 - 5) / 10, 1e-6);
      expect(ended.hubRise_mm).toBeCloseTo(0.5, 12);
      // Nothing but the hub holds the shim: it bends as it would without a float, and rises on top.
      const still = await points({}, '0.01,0.02,0.1', theory);
      for (const [i, { faceEdgeLift_mm, hubRise_mm }] of [resting, floating, ended].entries())
        near(faceEdgeLift_mm - (hubRise_mm as number), still[i].faceEdgeLift_mm, 1e-6);
    },
  );

  it('is told in every form, and only where there is one', async () => {
    const table = (await cli({ float }, '0.02')).stdout.split('\n');
    expect(table[0]).toMatch(/in shim +hub rise mm +wave margin/);
    const csv = (await cli({ float }, '0.02,1e200', '--csv')).stdout.split('\r\n').map((line) => line.split(','));
    const column = csv[0].indexOf('hubRise_mm');
    near(Number(csv[1][column]), 0.26892, 1e-4);
    expect(csv[2][column]).toBe('');
    const failed = JSON.parse((await cli({ float }, '1e200', '--json')).stdout).points[0];
    expect(failed).toMatchObject({ hubRise_mm: null, faceEdgeLift_mm: null });
    expect((await points({}, '0.02'))[0]).not.toHaveProperty('hubRise_mm');
    expect((await cli({}, '0.02')).stdout).not.toContain('hub rise');
  });
});

describe.concurrent('shimwright lift: coil spring', () => {
  // Roark 7th ed., Table 11.2, b/a = 0.5 (recomputed): under q alone K_ya 0.008589, K_Mrb 0.173569; under a line load w at
  // the rim K_ya 0.050455, K_Mrb 0.788875. One shim 24 x 0.15, E 206 GPa, nu 0.3, q 0.01 MPa: D = 0.0636676 N m.
  const parts = {
    shims: [{ outerDiameter_mm: 24, thickness_mm: 0.15 }],
    pressureZone: { innerDiameter_mm: 12, outerDiameter_mm: 24 },
  };

  it('is a rigid support where its rate is huge', async () => {
    const [point] = await points({ ...parts, coilSpring: { diameter_mm: 24, rate_N_mm: 1e6, preload_N: 0 } }, '0.01');
    // Superposition: the rim stays where w = (0.008589 / 0.050455) q a, 1.54021 N in all, and the spring yields by that
    // over its rate; clamp stress 6 (0.173569 - 0.788875 w/(q a)) q a² / t² = 15.083 MPa. Four digits of K, less where they cancel.
    near(point.faceEdgeLift_mm, 1.54021e-6, 3e-4);
    near(point.shimClampStress_MPa[0], 15.083, 1e-3);
  });

  it('shares the load with the shim where it is as soft', async () => {
    const [point] = await points({ ...parts, coilSpring: { diameter_mm: 24, rate_N_mm: 100, preload_N: 0.5 } }, '0.01');
    // y = (0.0279737 mm - c 0.5 N) / (1 + c k), c = 0.050455 a² / (2 pi D) = 0.01816220 mm/N, k = 100 N/mm: 0.00670848 mm.
    near(point.faceEdgeLift_mm, 0.00670848, 3e-4);
  });
});

describe.concurrent('shimwright lift: dish', () => {
  it.each(['small-deflection', 'large-deflection'])(
    'stays as lift where nothing loads the shim (%s)',
    async (theory) => {
      for (const dish_mm of [0.05, -0.05]) {
        const [point] = await points({ shims: [{ ...SHIM, dish_mm }] }, '0', theory);
        near(point.faceEdgeLift_mm, dish_mm, 1e-9);
        expect(point.shimClampStress_MPa[0]).toBeLessThan(1e-6);
      }
    },
  );

  it('holds the face shim off its seat, as a straight cone does', async () => {
    const seat = { innerDiameter_mm: 27.6, outerDiameter_mm: 28.4, height_mm: 0 };
    const [point] = await points({ shims: [{ ...SHIM, dish_mm: 0.09 }], seat }, '0');
    // 0.09 mm over the 9 mm from clamp to rim; the land begins 7.8 mm out.
    near(point.seatOpening_mm, 0.078, 1e-9);
  });
});

describe.concurrent('shimwright lift: preload ring', () => {
  const rigid = { outerDiameter_mm: 24, thickness_mm: 10, material: { youngsModulus_GPa: 1000, poissonsRatio: 0.3 } };
  const ring = (thickness_mm: number) => ({ outerDiameter_mm: 24, innerDiameter_mm: 18, thickness_mm });
  const pressureZone = { innerDiameter_mm: 13, outerDiameter_mm: 20 };
  const upper = { outerDiameter_mm: 24, thickness_mm: 0.2 };

  it('lifts the shim over it by its thickness at its bore, on a rigid shim', async () => {
    const [{ shimEdgeLift_mm, shimClampStress_MPa }] = await points(
      { shims: [rigid, ring(0.1), upper], pressureZone },
      '0',
    );
    // Roark 7th ed., case 1l, b/a = 0.5, load at r0 = 0.75 a (recomputed): y_a 0.01305983, M_rb 0.32363372; at r0 itself
    // y = M_rb r0² F2 + Q_b r0³ F3 = 0.00570479. So a lift of 0.1 mm at the bore is 0.2289276 mm at the rim, and
    // 6 M_rb / t² = 891.82 MPa at the clamp.
    expect(Math.abs(shimEdgeLift_mm[0])).toBeLessThan(1e-5);
    near(shimEdgeLift_mm[2], 0.2289276, 2e-5);
    near(shimClampStress_MPa[2], 891.82, 5e-5);
    expect(shimClampStress_MPa[1]).toBe(0);
  });

  it('parts its thickness between two equal shims', async () => {
    const [{ shimEdgeLift_mm }] = await points({ shims: [upper, ring(0.1), upper], pressureZone }, '0');
    near(shimEdgeLift_mm[2], 0.2289276 / 2, 2e-5);
    near(shimEdgeLift_mm[0], -0.2289276 / 2, 2e-5);
  });
});

describe('shimwright lift: notches and materials', () => {
  it('bends a notched shim as a whole one', async () => {
    const whole = await points({ shims: [SHIM, SHIM] }, '0.05');
    const notched = await points({ shims: [{ ...SHIM, notches: { count: 4, width_mm: 2 } }, SHIM] }, '0.05');
    expect(notched).toEqual(whole);
  });

  it('lifts in inverse proportion to the moduli of a mixed pack', async () => {
    const soft = { ...SHIM, material: { youngsModulus_GPa: 103, poissonsRatio: 0.3 } };
    const [mixed] = await points({ shims: [SHIM, soft] }, '0.02');
    const [alone] = await points({ shims: [SHIM] }, '0.02');
    near(mixed.faceEdgeLift_mm, alone.faceEdgeLift_mm / 1.5, 1e-6);
    near(mixed.shimClampStress_MPa[1], mixed.shimClampStress_MPa[0] / 2, 1e-6);
  });

  it('refuses what is outside the model, by its field', async () => {
    const text = JSON.stringify(stackOf({ shims: [{ ...SHIM, innerDiameter_mm: 20 }] }));
    const { code, stdout, stderr } = await runCli(['lift', '-', '--pressures-MPa', '0.1'], text);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain('shims: got only rings');
  });
});
