/** Contact and balance of every solved stack, whatever it is made of. Elementary statics: no number comes from the solver. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StackInput } from '../../src/solver/types.ts';
import { lifts, near, RUNS, solve, THEORIES, TOUCHING_M } from '../helpers/stack-solves.ts';
import { gapsOf, pressureFor, seatedStacks, shim, stacks } from '../helpers/stacks.ts';

const LOOSE = {
  clampRadius_m: 6e-3,
  pressureZone: { innerRadius_m: 8.3e-3, outerRadius_m: 13.8e-3 },
} satisfies Partial<StackInput>;

describe('the stacks drawn', () => {
  it('do touch: shims each other, the seat and the backing plate', () => {
    const points = fc
      .sample(seatedStacks, { numRuns: 100, seed: 1 })
      .map((stack) => ({ stack, point: solve(stack, pressureFor(stack, 0.8), 'small-deflection') }));
    const touching = points.filter(({ stack, point }) =>
      gapsOf(stack, point).some(({ between, gap_m }) => between === 'shims' && gap_m < TOUCHING_M),
    );
    expect(touching.length).toBeGreaterThan(40);
    expect(points.filter(({ point }) => point.seatForce_N > 0).length).toBeGreaterThan(10);
    expect(points.filter(({ point }) => point.plateForce_N > 0).length).toBeGreaterThan(10);
  });

  it('would show a shim that passes through its neighbour', () => {
    const stack = { ...LOOSE, shims: [shim(15, 0.2), shim(15.5, 0.2)] };
    const point = solve(stack, 1e5, 'small-deflection');
    const [face, above] = point.shape.lift_m;
    const flat = { ...point, shape: { ...point.shape, lift_m: [face, new Float64Array(above.length)] } };
    expect(Math.min(...gapsOf(stack, point).map(({ gap_m }) => gap_m))).toBeGreaterThan(-TOUCHING_M);
    expect(Math.min(...gapsOf(stack, flat).map(({ gap_m }) => gap_m))).toBeLessThan(-TOUCHING_M);
  });
});

describe.each(THEORIES)('%s: contact', (theory) => {
  it('no two surfaces pass through one another', () => {
    fc.assert(
      fc.property(seatedStacks, lifts, (stack, lift) => {
        const point = solve(stack, pressureFor(stack, lift), theory);
        for (const gap of gapsOf(stack, point)) expect(gap.gap_m, JSON.stringify(gap)).toBeGreaterThan(-TOUCHING_M);
      }),
      RUNS,
    );
  });

  it('seat and backing plate push, never pull, and only where they touch', () => {
    fc.assert(
      fc.property(seatedStacks, lifts, (stack, lift) => {
        const point = solve(stack, pressureFor(stack, lift), theory);
        const { seatForce_N, plateForce_N } = point;
        const least = (kind: string) =>
          Math.min(...gapsOf(stack, point).flatMap(({ between, gap_m }) => (between === kind ? [gap_m] : [])));
        expect(seatForce_N).toBeGreaterThanOrEqual(0);
        expect(plateForce_N).toBeGreaterThanOrEqual(0);
        if (seatForce_N > 0) expect(Math.abs(least('seat'))).toBeLessThan(TOUCHING_M);
        if (plateForce_N > 0) expect(Math.abs(least('backing plate'))).toBeLessThan(TOUCHING_M);
        if (stack.seat) near(point.seatOpening_m, Math.max(0, least('seat')), 1e-9, 1e-12);
        else expect(seatForce_N).toBe(0);
        if (!stack.backingPlate) expect(plateForce_N).toBe(0);
      }),
      RUNS,
    );
  });
});

describe.each(THEORIES)('%s: balance', (theory) => {
  it('applied force is pressure times area, and applied + seat = clamp + plate', () => {
    fc.assert(
      fc.property(seatedStacks, lifts, (stack, lift) => {
        const pressure = pressureFor(stack, lift);
        const { appliedForce_N, seatForce_N, clampForce_N, plateForce_N } = solve(stack, pressure, theory);
        const { innerRadius_m: r1, outerRadius_m: r2 } = stack.pressureZone;
        near(appliedForce_N, pressure * Math.PI * (r2 ** 2 - r1 ** 2), 1e-9);
        const largest = Math.max(appliedForce_N, seatForce_N, plateForce_N);
        near(appliedForce_N + seatForce_N, clampForce_N + plateForce_N, 0, 1e-6 * largest);
      }),
      RUNS,
    );
  });

  it('a stack without load and preload stays flat', () => {
    fc.assert(
      fc.property(stacks, (stack) => {
        const { faceEdgeLift_m, shimStress_Pa, clampForce_N } = solve(stack, 0, theory);
        expect(faceEdgeLift_m).toBe(0);
        expect(Math.max(...shimStress_Pa)).toBe(0);
        expect(clampForce_N).toBeCloseTo(0, 12);
      }),
      RUNS,
    );
  });
});
