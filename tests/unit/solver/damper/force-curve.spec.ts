import { describe, expect, it } from 'vitest';
import { type ForceCurveOptions, forceCurve, forceCurveWith } from '../../../../src/solver/damper/force-curve.ts';
import type { DamperInput, ForcePoint } from '../../../../src/solver/damper/types.ts';
import { solveLift } from '../../../../src/solver/stack/solve-lift.ts';
import type { ConvergedLift } from '../../../../src/solver/types.ts';
import { InputError } from '../../../../src/units/fault.ts';
import { type LinearStack, linearStacks, solverOf } from '../../../helpers/linear-stack.ts';
import { MONOTUBE } from '../../../helpers/monotube.ts';

const STACK: LinearStack = { compliance_m_Pa: 0.5e-9, crackingPressure_Pa: 100e3 };
const OPTIONS: ForceCurveOptions = { theory: 'small-deflection' };

const curve = (
  speeds: number[],
  damper: Partial<DamperInput> = {},
  stack: Partial<LinearStack> = {},
  options = OPTIONS,
) => forceCurveWith(linearStacks({ ...STACK, ...stack }), { ...MONOTUBE, ...damper }, speeds, options);

const pointAt = (
  speed: number,
  ...rest: [Partial<DamperInput>?, Partial<LinearStack>?, ForceCurveOptions?]
): ForcePoint => {
  const [point] = curve([speed], ...rest).points;
  expect(point.status).toBe('converged');
  return point as ForcePoint;
};

const relative = (got: number, wanted: number) => Math.abs(got / wanted - 1);

/** Speed of the worked point of docs/theory-dampers.md [m/s]. */
const WORKED_SPEED = 0.22178395992567793;

describe('forceCurve', () => {
  it('agrees with a calculation done by hand, both directions', () => {
    // Source: own arithmetic with the printed formulas (docs/theory-dampers.md, worked point).
    expect(relative(pointAt(WORKED_SPEED).force_N, 738.1915217)).toBeLessThan(1e-5);
    expect(relative(pointAt(-WORKED_SPEED).force_N, -430.7233774)).toBeLessThan(1e-5);
  });

  it('tells the mean speed of each jet: flow over the area of its passage', () => {
    // Source: continuity. 4 ports of 22 mm2; the opening stands over 2 pi 13.8 mm.
    const { jets = [], flows, seatOpening_m } = pointAt(0.5);
    const speed = (path: string) => jets.find((jet) => jet.path === path)?.speed_m_s ?? Number.NaN;
    expect(relative(speed('ports'), flows.ports_m3_s / 88e-6)).toBeLessThan(1e-12);
    expect(relative(speed('shims'), flows.ports_m3_s / (2 * Math.PI * 13.8e-3 * seatOpening_m))).toBeLessThan(1e-9);
    expect(jets.map(({ path }) => path)).toEqual(['ports', 'shims', 'bleed']);
    expect(pointAt(0)).not.toHaveProperty('jets');
  });

  it('displaces 87.65 L/min over an annulus of 1460.84 mm2 at 1 m/s, bore 46, rod 16', () => {
    // Source: any hydraulics text, Q = (A_p - A_r) v; computed independently.
    const { flows } = pointAt(1, {
      boreDiameter_m: 46e-3,
      rodDiameter_m: 16e-3,
      gas: { ...MONOTUBE.gas, absolutePressure_Pa: 1e8 },
    });
    expect(relative((flows.ports_m3_s + flows.bleed_m3_s) * 60e3, 87.65)).toBeLessThan(5e-5);
    expect(relative(flows.ports_m3_s + flows.bleed_m3_s, 1460.84e-6)).toBeLessThan(1e-5);
  });

  it('at rest pushes with the gas alone: 301.6 N at 1.5 MPa gauge on a 16 mm rod', () => {
    // Source: (p_gas,abs - p_atm) A_rod; computed independently.
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 1.5e6 + 101325 };
    const rest = pointAt(0, { rodDiameter_m: 16e-3, gas });
    expect(relative(rest.force_N, 301.6)).toBeLessThan(1e-4);
    expect(rest).toMatchObject({
      frictionForce_N: 0,
      pistonDrop_Pa: 0,
      reboundPressure_Pa: rest.compressionPressure_Pa,
    });
  });

  it('has no gas force at 0 bar gauge: the atmosphere is subtracted once', () => {
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 101325 };
    expect(pointAt(0, { gas }).gasForce_N).toBe(0);
  });

  it('adds up: force = chamber pressures on their areas + friction', () => {
    const [Ap, Ar] = [44e-3, 14e-3].map((d) => (Math.PI / 4) * d * d);
    for (const v of [-1.5, -0.3, 0, 0.02, 0.4]) {
      const p = pointAt(v);
      const wanted = p.compressionPressure_Pa * Ap - p.reboundPressure_Pa * (Ap - Ar) - 101325 * Ar + p.frictionForce_N;
      expect(p.force_N).toBeCloseTo(wanted, 6);
      expect(p.force_N - p.gasForce_N - p.frictionForce_N).toBeCloseTo(p.dampingForce_N, 9);
      expect(p.frictionForce_N).toBe(30 * Math.sign(v));
    }
  });

  it('holds the rebound chamber at the air-release pressure and says what gas would do', () => {
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 5e5 };
    const limited = pointAt(0.5, { gas });
    expect(limited.airRelease).toBe(true);
    expect(limited.reboundPressure_Pa).toBeCloseTo(101325, 3);
    expect(limited.pistonDrop_Pa).toBeCloseTo(5e5 - 101325, 3);
    const displaced = (Math.PI / 4) * (44e-3 ** 2 - 14e-3 ** 2) * 0.5;
    expect(limited.flows.ports_m3_s + limited.flows.bleed_m3_s).toBeLessThan(displaced);
    const needed = limited.gasPressureNeeded_Pa;
    const justEnough = pointAt(0.5, { gas: { ...gas, absolutePressure_Pa: needed * (1 + 1e-9) } });
    expect(justEnough.airRelease).toBe(false);
    expect(justEnough.pistonDrop_Pa).toBeCloseTo(needed - 101325, 0);
    expect(pointAt(0.5, { gas: { ...gas, absolutePressure_Pa: needed * 0.999 } }).airRelease).toBe(true);
  });

  it('starves no chamber in rebound', () => {
    const point = pointAt(-2, { gas: { ...MONOTUBE.gas, absolutePressure_Pa: 2e5 } });
    expect(point).toMatchObject({ airRelease: false, gasPressureNeeded_Pa: 101325 });
  });

  it('takes coefficients from outside: force falls as 1/Cd^2 where the jet decides', () => {
    const inviscid: Partial<DamperInput> = {
      fluid: { density_kg_m3: 844, dynamicViscosity_Pa_s: 1e-9 },
      bleed: { count: 0, diameter_m: 0, length_m: 0 },
    };
    const plate = { compliance_m_Pa: 1, crackingPressure_Pa: 0, largestOpening_m: 1e-4 };
    const shimPressure = (jetDischarge: number) =>
      pointAt(-0.5, inviscid, plate, { ...OPTIONS, coefficients: { jetDischarge, portMomentum: 0 } }).shimPressure_Pa;
    expect(relative(shimPressure(0.6) / shimPressure(0.8), (0.8 / 0.6) ** 2)).toBeLessThan(1e-4);
  });

  it('gives a failed point its reason and the other points their numbers', () => {
    const { points, stacks } = curve([-3, -0.1, 0.1, 3], {}, { failsAbove_Pa: 5e5 });
    const [pulled, , , pushed] = points;
    expect(points.map(({ status }) => status)).toEqual(['not-converged', 'converged', 'converged', 'not-converged']);
    expect(pulled).toMatchObject({
      reason: expect.stringMatching(/^rebound valve: .* MPa across its shims: asked to/),
    });
    expect(pushed).toMatchObject({ reason: expect.stringMatching(/^compression valve: .*; the valve is known up to/) });
    expect(pushed).toMatchObject({ shaftSpeed_m_s: 3 });
    expect(pushed).not.toHaveProperty('force_N');
    expect(stacks.compression.failures).not.toEqual([]);
  });

  it('loads the shims with the pressure that falls across the seat land', () => {
    const { compression } = forceCurve(MONOTUBE, [0.3], OPTIONS).stacks;
    const loaded = solveLift(MONOTUBE.compression.stack, compression.pressure_Pa, {
      ...OPTIONS,
      landPressure: 'falling',
    });
    const openings = loaded.points.map((point) => (point as ConvergedLift).seatOpening_m);
    expect(openings.at(-1)).toBeGreaterThan(0.1e-3);
    for (const [i, { seatOpening_m }] of compression.points.entries())
      expect(seatOpening_m).toBeCloseTo(openings[i], 9);
  });

  const notched = (count: number, width_m: number) => ({ ...MONOTUBE.compression, notches: { count, width_m } });

  it('pushes back less where the face shim has notches, in the direction of that valve alone', () => {
    const plain = curve([-0.1, 0.1]).points as ForcePoint[];
    const points = curve([-0.1, 0.1], { compression: notched(4, 2e-3) }).points as ForcePoint[];
    expect(points[0].dampingForce_N).toBe(plain[0].dampingForce_N);
    expect(points[1].dampingForce_N).toBeLessThan(0.95 * plain[1].dampingForce_N);
  });

  it('reports progress and stops when asked', () => {
    const seen: [number, number][] = [];
    forceCurveWith(linearStacks(STACK), MONOTUBE, [0.1], OPTIONS, { onProgress: (...at) => seen.push(at) });
    expect(seen).toEqual([
      [1, 3],
      [2, 3],
      [3, 3],
    ]);
    const stopped = () => forceCurveWith(linearStacks(STACK), MONOTUBE, [0.1], OPTIONS, { shouldStop: () => true });
    expect(stopped).toThrow(expect.objectContaining({ name: 'SolveStopped' }));
  });

  const withoutPorts = { ...MONOTUBE.rebound, ports: { ...MONOTUBE.rebound.ports, area_m2: 0 } };
  const small = {
    ...MONOTUBE.compression.stack,
    shims: [{ ...MONOTUBE.compression.stack.shims[0], outerRadius_m: 13e-3 }],
  };
  it.each<[string, string, Partial<DamperInput>, number]>([
    ['damper.not-positive', 'boreDiameter_m', { boreDiameter_m: -1 }, 0.1],
    ['damper.not-positive', 'rodDiameter_m', { rodDiameter_m: Number.NaN }, 0.1],
    ['damper.rod.beyond-bore', 'rodDiameter_m', { rodDiameter_m: 44e-3 }, 0.1],
    ['damper.negative', 'friction.sliding_N', { friction: { ...MONOTUBE.friction, sliding_N: -5 } }, 0.1],
    ['damper.not-positive', 'gas.absolutePressure_Pa', { gas: { ...MONOTUBE.gas, absolutePressure_Pa: 0 } }, 0.1],
    ['damper.not-positive', 'rebound.ports.area_m2', { rebound: withoutPorts }, 0.1],
    ['bleed.count', 'bleed.count', { bleed: { ...MONOTUBE.bleed, count: 1.5 } }, 0.1],
    ['damper.not-positive', 'bleed.diameter_m', { bleed: { ...MONOTUBE.bleed, diameter_m: 0 } }, 0.1],
    [
      'valve.shim.below-seat',
      'compression.stack.shims[0].outerRadius_m',
      { compression: { ...MONOTUBE.compression, stack: small } },
      0.1,
    ],
    ['valve.notches.count', 'compression.notches.count', { compression: notched(0, 1e-3) }, 0.1],
    ['damper.not-positive', 'compression.notches.width_m', { compression: notched(2, 0) }, 0.1],
    // A quarter of the rim of 30 mm is 23.562 mm, two notches may have 11.781 mm each.
    ['valve.notches.too-wide', 'rebound.notches.width_m', { rebound: notched(2, 11.79e-3) }, 0.1],
    ['damper.speed.not-finite', 'speeds_m_s[0]', {}, Number.NaN],
  ])('refuses with %s at %s', (code, path, damper, speed) => {
    expect(() => curve([speed], damper)).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code, path }) }),
    );
  });

  it('names the valve in a refusal of its stack', () => {
    const refusing = () => {
      throw new InputError({ code: 'stack.empty', path: 'shims', got: 'no shim', wanted: 'at least one shim' });
    };
    expect(() => forceCurveWith(solverOf(refusing), MONOTUBE, [0.1], OPTIONS)).toThrow(
      expect.objectContaining({
        fault: expect.objectContaining({ code: 'stack.empty', path: 'compression.stack.shims' }),
      }),
    );
  });
});
