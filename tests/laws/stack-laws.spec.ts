/** Laws of pressure, scale and packs that every solved stack obeys. Elementary mechanics: no number comes from the solver. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stackFromFile } from '../../src/solver/from-model.ts';
import type { StackInput } from '../../src/solver/types.ts';
import { lifts, near, RUNS, scaled, solve, solveMany, THEORIES, TOUCHING_M } from '../helpers/stack-solves.ts';
import { pressureFor, seatedStacks, shim, stacks } from '../helpers/stacks.ts';

describe.each(THEORIES)('%s: pressure', (theory) => {
  const ladder = fc.array(fc.double({ min: 0.02, max: 1.5, noNaN: true }), { minLength: 3, maxLength: 6 });

  const rising = (stack: StackInput, rungs: readonly number[]) =>
    solveMany(
      stack,
      [...rungs].sort((p, q) => p - q).map((lift) => pressureFor(stack, lift)),
      theory,
    );

  it('more of it never lowers a stack that only its clamp holds', () => {
    fc.assert(
      fc.property(stacks, ladder, (stack, rungs) => {
        const points = rising(stack, rungs);
        for (let i = 1; i < points.length; i++) {
          const [before, after] = [points[i - 1], points[i]];
          expect(after.faceEdgeLift_m).toBeGreaterThanOrEqual(before.faceEdgeLift_m - TOUCHING_M);
          expect(after.zoneEdgeLift_m).toBeGreaterThanOrEqual(before.zoneEdgeLift_m - TOUCHING_M);
        }
      }),
      RUNS,
    );
  });

  // Not so with a backing plate: where the plate stops the zone, the edge beyond is levered down.
  it('more of it never closes a seat', () => {
    fc.assert(
      fc.property(seatedStacks, ladder, ({ backingPlate: _, ...stack }, rungs) => {
        const openings = rising(stack, rungs).map(({ seatOpening_m }) => seatOpening_m);
        for (let i = 1; i < openings.length; i++) {
          expect(openings[i]).toBeGreaterThanOrEqual(openings[i - 1] - TOUCHING_M);
        }
      }),
      RUNS,
    );
  });

  it('a point does not depend on the others asked for, nor on their order', () => {
    fc.assert(
      fc.property(seatedStacks, ladder, (stack, rungs) => {
        const pressures = rungs.map((lift) => pressureFor(stack, lift));
        const together = solveMany(stack, pressures, theory);
        const [alone] = solveMany(stack, [pressures[0]], theory);
        near(together[0].faceEdgeLift_m, alone.faceEdgeLift_m, 1e-6, TOUCHING_M);
        expect(together.map(({ pressure_Pa }) => pressure_Pa)).toEqual(pressures);
      }),
      RUNS,
    );
  });
});

describe.each(THEORIES)('%s: scale', (theory) => {
  const factor = fc.double({ min: 0.2, max: 5, noNaN: true });

  it('all lengths times k under the same pressure: lift times k, force times k², stress the same', () => {
    fc.assert(
      fc.property(seatedStacks, lifts, factor, (stack, lift, k) => {
        const pressure = pressureFor(stack, lift);
        const one = solve(stack, pressure, theory);
        const other = solve(scaled(stack, k, 1), pressure, theory);
        near(other.faceEdgeLift_m, k * one.faceEdgeLift_m, 1e-5, k * TOUCHING_M);
        near(other.clampForce_N, k * k * one.clampForce_N, 1e-5, 1e-5 * k * k * one.appliedForce_N);
        near(other.shimClampStress_Pa[0], one.shimClampStress_Pa[0], 1e-4, 1e-6 * stack.shims[0].youngsModulus_Pa);
      }),
      RUNS,
    );
  });

  it('modulus and pressure times k: the same lift, stress times k', () => {
    fc.assert(
      fc.property(seatedStacks, lifts, factor, (stack, lift, k) => {
        const pressure = pressureFor(stack, lift);
        const one = solve(stack, pressure, theory);
        const other = solve(scaled(stack, 1, k), k * pressure, theory);
        near(other.faceEdgeLift_m, one.faceEdgeLift_m, 1e-5, TOUCHING_M);
        near(
          other.shimClampStress_Pa[0],
          k * one.shimClampStress_Pa[0],
          1e-4,
          1e-6 * k * stack.shims[0].youngsModulus_Pa,
        );
      }),
      RUNS,
    );
  });
});

describe.each(THEORIES)('%s: packs', (theory) => {
  const count = fc.integer({ min: 2, max: 12 });

  it('n equal shims at n times the pressure bend as one alone', () => {
    fc.assert(
      fc.property(stacks, lifts, count, (stack, lift, n) => {
        const pressure = pressureFor(stack, lift);
        const [face] = stack.shims;
        const one = solve({ ...stack, shims: [face] }, pressure, theory);
        const pack = solve({ ...stack, shims: new Array(n).fill(face) }, n * pressure, theory);
        near(pack.faceEdgeLift_m, one.faceEdgeLift_m, 1e-6);
        for (const lift_m of pack.shimEdgeLift_m) near(lift_m, one.faceEdgeLift_m, 1e-6);
        for (const stress of pack.shimClampStress_Pa) near(stress, one.shimClampStress_Pa[0], 1e-6);
      }),
      RUNS,
    );
  });

  it('the order of shims of one diameter does not matter to the lift, and their stresses go with them', () => {
    fc.assert(
      fc.property(
        stacks,
        lifts,
        fc.array(fc.constantFrom(0.1, 0.15, 0.2, 0.3), { minLength: 2, maxLength: 5 }),
        (stack, lift, ts) => {
          const radius_mm = stack.shims[0].outerRadius_m * 1e3;
          const pack = ts.map((t) => shim(radius_mm, t));
          const rest = stack.shims.slice(1);
          const pressure = pressureFor(stack, lift);
          const one = solve({ ...stack, shims: [...pack, ...rest] }, pressure, theory);
          const turned = solve({ ...stack, shims: [...[...pack].reverse(), ...rest] }, pressure, theory);
          near(turned.faceEdgeLift_m, one.faceEdgeLift_m, 1e-6, TOUCHING_M);
          const n = pack.length;
          const stresses = [...turned.shimClampStress_Pa.slice(0, n)].reverse();
          for (const [i, stress] of stresses.entries()) near(stress, one.shimClampStress_Pa[i], 1e-4, 1e4);
        },
      ),
      RUNS,
    );
  });

  it('one row of n shims is the same as n rows of one', () => {
    const shims = [
      { outerDiameter_mm: 30, thickness_mm: 0.15, count: 3 },
      { outerDiameter_mm: 16, thickness_mm: 0.1 },
      { outerDiameter_mm: 26, thickness_mm: 0.2, count: 2 },
    ];
    const rows = shims.flatMap(({ count = 1, ...row }) => Array.from({ length: count }, () => ({ ...row, count: 1 })));
    const file = {
      format: 'shimwright/stack' as const,
      version: 1 as const,
      name: 'rows',
      clampDiameter_mm: 12,
      pressureZone: { innerDiameter_mm: 16.5, outerDiameter_mm: 27.6 },
    };
    const together = solve(stackFromFile({ ...file, shims }), 3e5, theory);
    const apart = solve(stackFromFile({ ...file, shims: rows }), 3e5, theory);
    expect(apart).toEqual(together);
    expect(apart.shimEdgeLift_m).toHaveLength(6);
  });
});

describe('small-deflection: linearity of one shim', () => {
  it('lift and stress are proportional to pressure', () => {
    fc.assert(
      fc.property(stacks, fc.double({ min: 0.1, max: 10, noNaN: true }), (stack, k) => {
        const single = { ...stack, shims: [stack.shims[0]] };
        const pressure = pressureFor(stack, 0.3);
        const one = solve(single, pressure, 'small-deflection');
        const other = solve(single, k * pressure, 'small-deflection');
        near(other.faceEdgeLift_m, k * one.faceEdgeLift_m, 1e-9);
        near(other.shimStress_Pa[0], k * one.shimStress_Pa[0], 1e-9);
      }),
      RUNS,
    );
  });

  it('pressure on two rings side by side adds up to pressure on both', () => {
    fc.assert(
      fc.property(stacks, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (stack, share) => {
        const single = { ...stack, shims: [stack.shims[0]] };
        const { innerRadius_m: r1, outerRadius_m: r3 } = stack.pressureZone;
        const r2 = r1 + share * (r3 - r1);
        const pressure = pressureFor(stack, 0.3);
        const ring = (innerRadius_m: number, outerRadius_m: number) =>
          solve({ ...single, pressureZone: { innerRadius_m, outerRadius_m } }, pressure, 'small-deflection');
        const [inner, outer, both] = [ring(r1, r2), ring(r2, r3), ring(r1, r3)];
        // The three meshes differ; what is left is their discretisation error.
        near(inner.faceEdgeLift_m + outer.faceEdgeLift_m, both.faceEdgeLift_m, 1e-4);
        near(inner.appliedForce_N + outer.appliedForce_N, both.appliedForce_N, 1e-9);
      }),
      RUNS,
    );
  });
});

describe('small-deflection: more support', () => {
  it('one more shim on top, of a size already there, never raises the edge lift', () => {
    fc.assert(
      fc.property(stacks, fc.nat(5), (stack, pick) => {
        const pressure = pressureFor(stack, 0.5);
        const more = { ...stack, shims: [...stack.shims, stack.shims[pick % stack.shims.length]] };
        const before = solve(stack, pressure, 'small-deflection').faceEdgeLift_m;
        expect(solve(more, pressure, 'small-deflection').faceEdgeLift_m).toBeLessThanOrEqual(before + TOUCHING_M);
      }),
      RUNS,
    );
  });

  it('a backing plate and a seat that nothing reaches change nothing', () => {
    fc.assert(
      fc.property(stacks, lifts, (stack, lift) => {
        const pressure = pressureFor(stack, lift);
        const inner = stack.pressureZone.outerRadius_m;
        const seat = { innerRadius_m: inner, outerRadius_m: stack.shims[0].outerRadius_m, height_m: -1 };
        const free = solve(stack, pressure, 'small-deflection');
        const far = solve({ ...stack, seat, backingPlate: { gap_m: 1 } }, pressure, 'small-deflection');
        near(far.faceEdgeLift_m, free.faceEdgeLift_m, 1e-6, TOUCHING_M);
        expect([far.seatForce_N, far.plateForce_N]).toEqual([0, 0]);
      }),
      RUNS,
    );
  });
});
