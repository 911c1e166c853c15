import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CheckInput, FluidState } from '../../../../src/solver/damper/types.ts';
import { checkPlate } from '../../../../src/solver/restriction/check-plate.ts';
import { closedPath } from '../../../../src/solver/restriction/closed.ts';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { drilledHole } from '../../../../src/solver/restriction/drilled-hole.ts';
import type { FailedValve, ValvePoint } from '../../../../src/solver/valve/explicit-valve.ts';
import { parallelPaths } from '../../../../src/solver/valve/parallel-paths.ts';

const OIL: FluidState = { density_kg_m3: 860, dynamicViscosity_Pa_s: 0.0129 };
const CHECK: CheckInput = {
  ports: { count: 6, area_m2: 10e-6, hydraulicDiameter_m: 3.5e-3, length_m: 6e-3 },
  seat: { innerRadius_m: 8e-3, outerRadius_m: 12e-3 },
  rate_N_m: 2000,
  preload_N: 6,
  travel_m: 0.8e-3,
};
const checkWith = (change: Partial<CheckInput> = {}) => checkPlate({ ...CHECK, ...change }, OIL, DEFAULT_COEFFICIENTS);
const hole = { count: 1, area_m2: 2e-6, hydraulicDiameter_m: 1.6e-3, length_m: 4e-3 };
const bleed = drilledHole(hole, OIL, DEFAULT_COEFFICIENTS);
const value = (solved: { status: string }) => (solved as unknown as { value: number }).value;

const solved = (point: ValvePoint | FailedValve): ValvePoint => {
  expect(point.status).toBe('converged');
  return point as ValvePoint;
};

describe('a check and a bleed side by side', () => {
  it('send all through the bleed until the check opens', () => {
    const valve = parallelPaths({ check: checkWith(), bleed });
    const point = solved(valve.atFlow(2e-6));
    expect(point).toMatchObject({ shimPressure_Pa: 0, seatOpening_m: 0 });
    expect(point.flows).toMatchObject({ ports_m3_s: 0, leakage_m3_s: 0, check_m3_s: 0 });
    expect(point.flows.bleed_m3_s / 2e-6).toBeCloseTo(1, 9);
    expect(point.drop_Pa / value(bleed.drop(2e-6))).toBeCloseTo(1, 9);
  });

  it('share a larger flow at one drop, with the lift of the check', () => {
    const check = checkWith();
    const point = solved(parallelPaths({ check, bleed }).atFlow(3e-4));
    const { check_m3_s = 0, bleed_m3_s } = point.flows;
    expect((check_m3_s + bleed_m3_s) / 3e-4).toBeCloseTo(1, 9);
    expect(value(bleed.drop(bleed_m3_s)) / point.drop_Pa).toBeCloseTo(1, 9);
    expect(value(check.drop(check_m3_s)) / point.drop_Pa).toBeCloseTo(1, 9);
    expect(point.seatOpening_m).toBe(value(check.lift(check_m3_s)));
    expect(point.seatOpening_m).toBeGreaterThan(0);
  });

  it('are the check alone without a bleed', () => {
    const check = checkWith();
    for (const none of [{}, { bleed: closedPath }]) {
      const point = solved(parallelPaths({ check, ...none }).atFlow(1e-4));
      expect(point.drop_Pa / value(check.drop(1e-4))).toBeCloseTo(1, 9);
      expect(point.flows.bleed_m3_s).toBe(0);
    }
  });

  it('are at rest at no flow and no drop', () => {
    const valve = parallelPaths({ check: checkWith(), bleed });
    for (const point of [valve.atFlow(0), valve.atDrop(0)]) {
      expect(point).toMatchObject({ drop_Pa: 0, seatOpening_m: 0, flows: { check_m3_s: 0, bleed_m3_s: 0 } });
    }
  });

  it('give the flows of a drop, and the drop of those flows', () => {
    const rate = fc.constantFrom(0, 500, 2000, 1e5);
    const preload = fc.constantFrom(0, 1, 6, 60);
    const drop = fc.double({ min: Math.log(100), max: Math.log(3e6), noNaN: true }).map(Math.exp);
    fc.assert(
      fc.property(rate, preload, drop, (rate_N_m, preload_N, drop_Pa) => {
        const valve = parallelPaths({ check: checkWith({ rate_N_m, preload_N }), bleed });
        const point = solved(valve.atDrop(drop_Pa));
        const { check_m3_s = 0, bleed_m3_s } = point.flows;
        const back = solved(valve.atFlow(check_m3_s + bleed_m3_s));
        expect(Math.abs(back.drop_Pa / drop_Pa - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it('fail, not guess, when a path gives no number', () => {
    const broken = {
      flow: () => ({ status: 'not-converged', iterations: 0, residual: 1, reason: 'x' }) as const,
      drop: bleed.drop,
    };
    const valve = parallelPaths({ check: checkWith(), bleed: broken });
    expect(valve.atFlow(1e-4)).toMatchObject({ status: 'not-converged' });
    expect(valve.atDrop(1e5)).toMatchObject({ status: 'not-converged', reason: 'x' });
  });
});
