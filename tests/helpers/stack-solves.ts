/** What the laws of solved stacks share: how to solve one, how near is near, how to scale one. */
import fc from 'fast-check';
import { expect } from 'vitest';
import { solveLift } from '../../src/solver/stack/solve-lift.ts';
import type { StackInput, Theory } from '../../src/solver/types.ts';
import { converged } from './stacks.ts';

export const THEORIES: readonly Theory[] = ['small-deflection', 'large-deflection'];
/** Far above rounding and the surfaces' own compliance, far below any lift of interest [m]. */
export const TOUCHING_M = 2e-9;
export const RUNS = { numRuns: 100 };

export const solve = (stack: StackInput, pressure_Pa: number, theory: Theory) =>
  converged(solveLift(stack, [pressure_Pa], { theory }).points[0]);

export const solveMany = (stack: StackInput, pressures_Pa: readonly number[], theory: Theory) =>
  solveLift(stack, pressures_Pa, { theory }).points.map(converged);

export const near = (got: number, wanted: number, relative: number, absolute = 0) =>
  expect(Math.abs(got - wanted), `got ${got}, wanted ${wanted}`).toBeLessThanOrEqual(
    relative * Math.abs(wanted) + absolute,
  );

export const lifts = fc.double({ min: 0.05, max: 1.5, noNaN: true });

/** All lengths times k, all moduli times m. */
export function scaled(stack: StackInput, k: number, m: number): StackInput {
  const { clampRadius_m, shims, pressureZone, seat, backingPlate } = stack;
  const ring = ({ innerRadius_m, outerRadius_m }: { innerRadius_m: number; outerRadius_m: number }) => ({
    innerRadius_m: k * innerRadius_m,
    outerRadius_m: k * outerRadius_m,
  });
  return {
    clampRadius_m: k * clampRadius_m,
    shims: shims.map((s) => ({
      ...s,
      outerRadius_m: k * s.outerRadius_m,
      thickness_m: k * s.thickness_m,
      youngsModulus_Pa: m * s.youngsModulus_Pa,
    })),
    pressureZone: ring(pressureZone),
    ...(seat && { seat: { ...ring(seat), height_m: k * seat.height_m } }),
    ...(backingPlate && { backingPlate: { gap_m: k * backingPlate.gap_m } }),
  };
}
