/** Closed forms of a clamped-free annulus against Roark's Table 11.2 (printed and recomputed digits) and against their own equations. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Annulus, AnnulusBending } from '../../../../src/solver/plate/annulus-closed-form.ts';
import { bendingRigidity } from '../../../../src/solver/plate/annulus-closed-form.ts';
import {
  clampConstants,
  lineLoadConstants,
  pressureConstants,
} from '../../../../src/solver/plate/annulus-constants.ts';
import { annulusUnderLineLoad } from '../../../../src/solver/plate/annulus-under-line-load.ts';
import { annulusUnderPressure, annulusUnderPressureRing } from '../../../../src/solver/plate/annulus-under-pressure.ts';
import { InputError } from '../../../../src/units/fault.ts';

const annulus = (b: number, a = 1, nu = 0.3, D = 1): Annulus => ({
  clampRadius_m: b,
  outerRadius_m: a,
  bendingRigidity_Nm: D,
  poissonsRatio: nu,
});

const half = annulus(0.5);

function faultOf(run: () => unknown) {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.fault;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('plate constants of Table 11.2', () => {
  // Source: Roark 7th ed. Table 11.2; digits at b/a 0.5 and 0.3 recomputed, printed to six places.
  it.each([
    [0.5, { C2: 0.100857, C3: 0.014554, C5: 0.375, C6: 0.079537, C8: 0.7375, C9: 0.290898 }],
    [0.3, { C2: 0.173321, C3: 0.030175, C5: 0.455, C6: 0.112346, C8: 0.6815, C9: 0.28255 }],
  ])('C at b/a = %s', (k, expected) => {
    for (const [name, value] of Object.entries(clampConstants(k, 0.3))) {
      expect(value).toBeCloseTo(expected[name as keyof typeof expected], 6);
    }
  });

  it.each([
    [0.5, { deflection: 0.001999, slope: 0.015272, moment: 0.090166 }],
    [0.3, { deflection: 0.006463, slope: 0.034904, moment: 0.148888 }],
  ])('L11, L14, L17 at r0/a = %s', (s, expected) => {
    const L = pressureConstants(s, 0.3);
    expect(L.deflection).toBeCloseTo(expected.deflection, 6);
    expect(L.slope).toBeCloseTo(expected.slope, 6);
    expect(L.moment).toBeCloseTo(expected.moment, 6);
  });

  it('L3, L6, L9 equal C3, C6, C9 when the load sits at the clamp', () => {
    const { C3, C6, C9 } = clampConstants(0.5, 0.3);
    expect(lineLoadConstants(0.5, 0.3)).toEqual({ deflection: C3, slope: C6, moment: C9 });
  });

  it('L vanish when the load sits at the rim', () => {
    expect(lineLoadConstants(1, 0.3)).toEqual({ deflection: 0, slope: 0, moment: 0 });
    expect(pressureConstants(1, 0.3)).toEqual({ deflection: 0, slope: 0, moment: 0 });
  });
});

describe('case 2l, pressure from the clamp outwards', () => {
  // Source: Roark 7th ed. Table 11.2 case 2l, nu = 0.3; exact digits recomputed, the printed row agrees to its rounding.
  it.each([
    [0.1, 0.075693, 0.086821, 0.964567],
    [0.3, 0.031818, 0.051217, 0.410338],
    [0.5, 0.008589, 0.020708, 0.173569],
    [0.7, 0.001096, 0.004627, 0.054076],
    [0.9, 0.000013, 0.00017, 0.005299],
  ])('b/a = %s', (k, lift, slope, moment) => {
    const { edge, clampMoment_N } = annulusUnderPressure(annulus(k), { innerRadius_m: k, pressure_Pa: 1 });
    expect(Math.abs(edge.lift_m - lift)).toBeLessThan(6e-7);
    expect(Math.abs(edge.slope - slope)).toBeLessThan(6e-7);
    expect(Math.abs(clampMoment_N - moment)).toBeLessThan(6e-7);
  });

  it('partial load from r0 = 0.75 a (recomputed)', () => {
    const { edge, clampMoment_N, clampShear_N_m } = annulusUnderPressure(half, { innerRadius_m: 0.75, pressure_Pa: 1 });
    expect(edge.lift_m).toBeCloseTo(0.00750692, 8);
    expect(edge.slope).toBeCloseTo(0.0185187, 8);
    expect(clampMoment_N).toBeCloseTo(0.13612462, 8);
    expect(clampShear_N_m).toBe(0.4375);
  });
});

describe('case 1l, line load', () => {
  // Source: Roark 7th ed. Table 11.2 case 1l, nu = 0.3; recomputed (the printed row was not seen).
  it.each([
    [0.1, 0.26913, 0.361113, 2.555364],
    [0.3, 0.138947, 0.254323, 1.381999],
    [0.5, 0.050455, 0.136755, 0.788875],
    [0.7, 0.010318, 0.048831, 0.390857],
    [0.9, 0.000351, 0.005173, 0.108982],
  ])('at the rim, b/a = %s', (k, lift, slope, moment) => {
    const { edge, clampMoment_N } = annulusUnderLineLoad(annulus(k), { radius_m: 1, load_N_m: 1 });
    expect(Math.abs(edge.lift_m - lift)).toBeLessThan(6e-7);
    expect(Math.abs(edge.slope - slope)).toBeLessThan(6e-7);
    expect(Math.abs(clampMoment_N - moment)).toBeLessThan(6e-7);
  });

  it('at r0 = 0.75 a (recomputed)', () => {
    const { edge, clampMoment_N, clampShear_N_m } = annulusUnderLineLoad(half, { radius_m: 0.75, load_N_m: 1 });
    expect(edge.lift_m).toBeCloseTo(0.01305983, 8);
    expect(edge.slope).toBeCloseTo(0.02790698, 8);
    expect(clampMoment_N).toBeCloseTo(0.32363372, 8);
    expect(clampShear_N_m).toBe(1.5);
  });
});

describe('pressure ring', () => {
  it('is the pressure from its inner edge less that from its outer edge', () => {
    const ring = annulusUnderPressureRing(half, { innerRadius_m: 0.5, outerRadius_m: 0.75, pressure_Pa: 1 });
    // Recomputed exact 2l values at r0 = b less those at r0 = 0.75 a.
    expect(ring.edge.lift_m).toBeCloseTo(0.008589 - 0.00750692, 6);
    expect(ring.clampMoment_N).toBeCloseTo(0.173569 - 0.13612462, 6);
    expect(ring.clampShear_N_m).toBeCloseTo(0.75 - 0.4375, 12);
  });

  it('tends to a line load when it is narrow', () => {
    const width = 1e-4;
    const edges = { innerRadius_m: 0.8 - width / 2, outerRadius_m: 0.8 + width / 2 };
    const ring = annulusUnderPressureRing(half, { ...edges, pressure_Pa: 1 / width });
    const line = annulusUnderLineLoad(half, { radius_m: 0.8, load_N_m: 1 });
    expect(ring.edge.lift_m / line.edge.lift_m).toBeCloseTo(1, 7);
    expect(ring.at(0.6).lift_m / line.at(0.6).lift_m).toBeCloseTo(1, 7);
  });

  it('bends nothing when it has no width', () => {
    const ring = annulusUnderPressureRing(half, { innerRadius_m: 0.7, outerRadius_m: 0.7, pressure_Pa: 1 });
    expect(ring.edge.lift_m).toBe(0);
    expect(ring.clampMoment_N).toBe(0);
  });
});

describe('the shape between clamp and rim', () => {
  const fraction = fc.double({ min: 0.02, max: 0.98, noNaN: true });
  const plates = fc
    .record({
      k: fc.double({ min: 0.1, max: 0.8, noNaN: true }),
      nu: fc.double({ min: 0, max: 0.45, noNaN: true }),
      f: fraction,
      g: fraction,
    })
    .map(({ k, nu, f, g }) => {
      const plate = annulus(k, 1, nu);
      const r0 = k + (1 - k) * f;
      const bendings: AnnulusBending[] = [
        annulusUnderLineLoad(plate, { radius_m: r0, load_N_m: 1 }),
        annulusUnderPressure(plate, { innerRadius_m: r0, pressure_Pa: 1 }),
      ];
      return { plate, bendings, r: k + (1 - k) * g, r0, nu };
    });

  it('is held at the clamp and free of moment at the rim', () => {
    fc.assert(
      fc.property(plates, ({ plate, bendings }) => {
        for (const { at, edge, clampMoment_N } of bendings) {
          const clamp = at(plate.clampRadius_m);
          expect(clamp.lift_m).toBe(0);
          expect(clamp.slope).toBeCloseTo(0, 15);
          expect(clamp.radialMoment_N).toBeCloseTo(clampMoment_N, 12);
          expect(Math.abs(edge.radialMoment_N)).toBeLessThan(1e-12);
        }
      }),
    );
  });

  it('has the slope and the moment that its deflection says: w′ by differences, D (w″ + ν w′/r)', () => {
    fc.assert(
      fc.property(plates, ({ bendings, r, r0, nu, plate }) => {
        const h = 1e-5;
        fc.pre(Math.abs(r - r0) > 2 * h && r - h > plate.clampRadius_m && r + h < 1);
        for (const { at } of bendings) {
          const [before, here, after] = [at(r - h), at(r), at(r + h)];
          expect(here.slope).toBeCloseTo((after.lift_m - before.lift_m) / (2 * h), 8);
          const curvature = (after.slope - before.slope) / (2 * h);
          expect(here.radialMoment_N).toBeCloseTo(curvature + (nu * here.slope) / r, 7);
        }
      }),
    );
  });

  it('obeys reciprocity: the lift at p from a force at q is the lift at q from the same force at p (Betti)', () => {
    fc.assert(
      fc.property(plates, ({ plate, r, r0 }) => {
        const force = (radius: number) => ({ radius_m: radius, load_N_m: 1 / (2 * Math.PI * radius) });
        const there = annulusUnderLineLoad(plate, force(r0)).at(r).lift_m;
        const back = annulusUnderLineLoad(plate, force(r)).at(r0).lift_m;
        expect(Math.abs(there - back)).toBeLessThan(1e-14 + 1e-9 * there);
      }),
    );
  });

  it('scales with load, rigidity and size', () => {
    const lift = (a: number, D: number, q: number) =>
      annulusUnderPressure(annulus(0.5 * a, a, 0.3, D), { innerRadius_m: 0.6 * a, pressure_Pa: q }).edge.lift_m;
    expect(lift(2, 1, 1) / lift(1, 1, 1)).toBeCloseTo(16, 10);
    expect(lift(1, 4, 1) / lift(1, 1, 1)).toBeCloseTo(0.25, 12);
    expect(lift(1, 1, -3) / lift(1, 1, 1)).toBeCloseTo(-3, 12);
  });
});

describe('bending rigidity', () => {
  it('is E t³ / 12 (1 - ν²)', () => {
    // Roark ch. 11 example 1 (from memory): 0.2 in steel, E 30e6 psi, nu 0.285 gives D = 21768 lb·in.
    expect(bendingRigidity(30e6, 0.2, 0.285)).toBeCloseTo(21768, 0);
  });
});

describe('what is refused', () => {
  const line = (plate: Annulus, radius_m = 1, load_N_m = 1) => annulusUnderLineLoad(plate, { radius_m, load_N_m });
  const refusals: [string, string, () => unknown][] = [
    ['plate.annulus.clamp-radius', 'clampRadius_m', () => line(annulus(0))],
    ['plate.annulus.outer-radius', 'outerRadius_m', () => line(annulus(1), 1)],
    ['plate.annulus.rigidity', 'bendingRigidity_Nm', () => line(annulus(0.5, 1, 0.3, 0))],
    ['plate.annulus.poissons-ratio', 'poissonsRatio', () => line(annulus(0.5, 1, 0.51))],
    ['plate.annulus.radius', 'load.radius_m', () => line(half, 0.4)],
    ['plate.annulus.radius', 'load.radius_m', () => line(half, Number.NaN)],
    ['plate.annulus.load', 'load.load_N_m', () => line(half, 1, Number.NaN)],
    [
      'plate.annulus.load',
      'load.pressure_Pa',
      () => annulusUnderPressure(half, { innerRadius_m: 0.5, pressure_Pa: Number.POSITIVE_INFINITY }),
    ],
    [
      'plate.annulus.radius',
      'load.innerRadius_m',
      () => annulusUnderPressure(half, { innerRadius_m: 1.1, pressure_Pa: 1 }),
    ],
    [
      'plate.annulus.radius',
      'load.outerRadius_m',
      () => annulusUnderPressureRing(half, { innerRadius_m: 0.8, outerRadius_m: 0.7, pressure_Pa: 1 }),
    ],
    ['plate.annulus.radius', 'radius_m', () => line(half).at(1.01)],
  ];
  it.each(refusals)('%s at %s', (code, path, run) => {
    expect(faultOf(run)).toMatchObject({ code, path });
  });
});
