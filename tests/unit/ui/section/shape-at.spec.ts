import { describe, expect, it } from 'vitest';
import type { ConvergedLift, FailedForce, ForceCurve, ForcePoint, StackTable } from '../../../../src/ui/app/solved.ts';
import { bracket, isSolved, pointAt, pointsOf, stackAt } from '../../../../src/ui/section/shape-at.ts';

const lift = (pressure_Pa: number): ConvergedLift => ({
  status: 'converged',
  pressure_Pa,
  iterations: 1,
  residual: 0,
  faceEdgeLift_m: pressure_Pa * 1e-9,
  zoneEdgeLift_m: 0,
  seatOpening_m: pressure_Pa * 2e-9,
  shimEdgeLift_m: [pressure_Pa * 1e-9, pressure_Pa * 5e-10],
  shimStress_Pa: [pressure_Pa * 100, pressure_Pa * 50],
  shimClampStress_Pa: [0, 0],
  hubRise_m: 0,
  springForce_N: 0,
  appliedForce_N: 0,
  clampForce_N: 0,
  seatForce_N: 0,
  plateForce_N: 0,
  shape: {
    radius_m: Float64Array.of(0.006, 0.01, 0.015),
    firstNode: [0, 0],
    lift_m: [Float64Array.of(0, pressure_Pa * 4e-10, pressure_Pa * 1e-9), Float64Array.of(0, pressure_Pa * 5e-10)],
  },
});

const table = (...pressures: number[]): StackTable => ({
  theory: 'small-deflection',
  pressure_Pa: pressures,
  points: pressures.map(lift),
  failures: [],
});

const point = (shaftSpeed_m_s: number): ForcePoint => ({
  status: 'converged',
  shaftSpeed_m_s,
  force_N: shaftSpeed_m_s * 1000,
  gasForce_N: 200,
  stopForce_N: 0,
  frictionForce_N: 20,
  dampingForce_N: shaftSpeed_m_s * 1000 - 220,
  compressionPressure_Pa: 1e6,
  reboundPressure_Pa: 1e6,
  gasPressure_Pa: 1e6,
  pistonDrop_Pa: 0,
  shimPressure_Pa: Math.abs(shaftSpeed_m_s) * 1e6,
  seatOpening_m: 0,
  flows: { ports_m3_s: Math.abs(shaftSpeed_m_s), bleed_m3_s: 0, leakage_m3_s: 0 },
  airRelease: shaftSpeed_m_s >= 1,
  gasPressureNeeded_Pa: 0,
});
const failed = (shaftSpeed_m_s: number): FailedForce => ({ status: 'beyond-table', shaftSpeed_m_s, reason: 'no' });
const curve = (...points: (ForcePoint | FailedForce)[]): ForceCurve => ({
  theory: 'small-deflection',
  points,
  stacks: { compression: table(0, 1e6), rebound: table(0, 1e6) },
});

describe('looking up a place between two computed ones', () => {
  it('brackets: inside, at a point, outside at both ends', () => {
    expect(bracket([0, 1, 3], 2)).toEqual({ low: 1, high: 2, share: 0.5 });
    expect(bracket([0, 1, 3], 1)).toEqual({ low: 0, high: 1, share: 1 });
    expect(bracket([0, 1, 3], -1).share).toBe(0);
    expect(bracket([0, 1, 3], 9)).toEqual({ low: 2, high: 2, share: 0 });
  });

  it('takes a computed point as it is and the middle as the middle, shape and numbers', () => {
    const at = stackAt(table(0, 1e6, 3e6), 2e6);
    expect(at?.shape.lift_m[0][2]).toBeCloseTo(2e-3, 12);
    expect(at?.shape.lift_m[1]).toHaveLength(2);
    expect(at?.seatOpening_m).toBeCloseTo(4e-3, 12);
    expect(at?.shimStress_Pa).toEqual([2e8, 1e8]);
    expect(stackAt(table(0, 1e6, 3e6), 3e6)?.shimEdgeLift_m[0]).toBe(3e-3);
  });

  it('has forces and stresses along the shims between those of its neighbours', () => {
    const forces = (seatForce_N: number) => ({
      seatForce_N,
      plateForce_N: 2 * seatForce_N,
      clampForce_N: 3 * seatForce_N,
    });
    const stressed: StackTable = {
      ...table(0, 1e6),
      points: [
        { ...lift(0), ...forces(100) },
        { ...lift(1e6), ...forces(300) },
      ],
      stresses: { equivalent_Pa: [[Float64Array.of(0, 4)], [Float64Array.of(8, 8)]], yield_Pa: [9] },
    };
    const state = stackAt(stressed, 0.25e6);
    expect(state).toMatchObject({ seatForce_N: 150, plateForce_N: 300, clampForce_N: 450 });
    expect(state?.stresses).toEqual({ equivalent_Pa: [Float64Array.of(2, 5)], yield_Pa: [9] });
    expect(stackAt(table(0, 1e6), 0)).not.toHaveProperty('stresses');
  });

  it('invents nothing beyond the end of the table', () => {
    expect(stackAt(table(0, 1e6), 1.1e6)).toBeUndefined();
    expect(stackAt(table(), 1)).toBeUndefined();
  });

  it('keeps the directions apart', () => {
    const both = curve(point(-2), point(-1), point(1), point(2));
    expect(pointsOf(both, -1).map((p) => p.shaftSpeed_m_s)).toEqual([-1, -2]);
    expect(pointAt(both, -1, 1.5)).toMatchObject({ force_N: -1500 });
    expect(pointAt(both, 1, 1.5)).toMatchObject({ force_N: 1500, airRelease: true });
  });

  it('a speed beside one that did not solve has no number', () => {
    const holed = curve(point(1), failed(2), point(3));
    expect(isSolved(pointAt(holed, 1, 1.5) as ForcePoint | FailedForce)).toBe(false);
    expect(isSolved(pointAt(holed, 1, 2.5) as ForcePoint | FailedForce)).toBe(false);
    expect(isSolved(pointAt(holed, 1, 1) as ForcePoint | FailedForce)).toBe(true);
    expect(pointAt(curve(), 1, 1)).toBeUndefined();
  });
});
