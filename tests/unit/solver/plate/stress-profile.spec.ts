/** Stress along a shim against printed tables, edge conditions and the balance of a ring cut out of it. */
import { describe, expect, it } from 'vitest';
import { annulusUnderPressureRing } from '../../../../src/solver/plate/annulus-under-pressure.ts';
import { solveLift } from '../../../../src/solver/stack/solve-lift.ts';
import type { ShimStress, StackInput, Theory } from '../../../../src/solver/types.ts';
import { near, THEORIES } from '../../../helpers/stack-solves.ts';
import { converged, pressureFor, shim } from '../../../helpers/stacks.ts';

const MM = 1e-3;

/** One shim on its clamp under a pressure from clamp to rim. */
const alone = (rim_mm: number, clamp_mm: number, t_mm = 0.15): StackInput => ({
  clampRadius_m: clamp_mm * MM,
  shims: [shim(rim_mm, t_mm)],
  pressureZone: { innerRadius_m: clamp_mm * MM, outerRadius_m: rim_mm * MM },
});

function stressOf(stack: StackInput, pressure_Pa: number, theory: Theory, elements?: number): readonly ShimStress[] {
  const point = converged(solveLift(stack, [pressure_Pa], { theory, elements, profiles: true }).points[0]);
  if (!point.stress) throw new Error('no stress');
  return point.stress;
}

/** Timoshenko & Woinowsky-Krieger 1959, Table 3 (recomputed exactly): k1 of rows 7 and 8 at a/b, ν = 0.3. */
const ROW_7 = [
  [1.25, 0.1352],
  [1.5, 0.4097],
  [2, 1.0414],
  [3, 2.1528],
  [4, 3.0064],
  [5, 3.6812],
] as const;
const ROW_8 = [
  [1.25, 0.2273],
  [1.5, 0.4277],
  [2, 0.7533],
  [3, 1.2055],
  [4, 1.5139],
  [5, 1.7461],
] as const;

describe('peak stress of a clamped shim', () => {
  it.each(ROW_7)('under pressure, a/b %d: k1 %d of Table 3 row 7', (ratio, k1) => {
    const [{ peak }] = stressOf(alone(12, 12 / ratio), 1000, 'small-deflection');
    // Four printed digits of k1 carry half a unit of the last: 4e-4 at the smallest.
    near(peak.stress_Pa, k1 * 1000 * (12 / 0.15) ** 2, 4e-4);
    expect(peak).toMatchObject({ face: 'piston', direction: 'radial', radius_m: (12 / ratio) * MM });
  });

  it.each(ROW_8)('under a force at its rim, a/b %d: k1 %d of Table 3 row 8', (ratio, k1) => {
    // A spring too soft to matter pushes the rim towards the piston with 2 N.
    const coilSpring = { radius_m: 12 * MM, rate_N_m: 1e-9, preload_N: 2 };
    const [{ peak }] = stressOf({ ...alone(12, 12 / ratio), coilSpring }, 0, 'small-deflection');
    near(peak.stress_Pa, (k1 * 2) / (0.15 * MM) ** 2, 3e-4);
    // Bent towards the piston, the far face is the one in tension.
    expect(peak).toMatchObject({ face: 'far', direction: 'radial' });
  });
});

describe.each(THEORIES)('edges of a clamped shim, %s', (theory) => {
  const stack = alone(12, 5);
  const [{ piston, far }] = stressOf(stack, pressureFor(stack, 1.5), theory);
  const last = piston.radial_Pa.length - 1;

  it('has ν times the radial stress round the circle at the clamp, where nothing moves', () => {
    for (const face of [piston, far]) near(face.hoop_Pa[0], 0.3 * face.radial_Pa[0], 1e-9);
  });

  it('has no radial stress at the free rim', () => {
    for (const face of [piston, far]) expect(Math.abs(face.radial_Pa[last])).toBeLessThan(1e-6 * piston.radial_Pa[0]);
  });

  it('agrees with the clamp stress that the lift result carries', () => {
    const lift = converged(solveLift(stack, [pressureFor(stack, 1.5)], { theory }).points[0]);
    near(Math.max(piston.radial_Pa[0], far.radial_Pa[0]), lift.shimClampStress_Pa[0], 1e-9);
  });
});

describe('stress in a pack of equal rims', () => {
  it('goes with the thickness of each shim, since all bend to one curvature', () => {
    const stack = { ...alone(12, 5), shims: [shim(12, 0.1), shim(12, 0.1), shim(12, 0.2)] };
    const [first, second, third] = stressOf(stack, 1000, 'small-deflection');
    expect(second.piston).toEqual(first.piston);
    near(third.peak.stress_Pa, 2 * first.peak.stress_Pa, 1e-12);
  });
});

describe('stress between the edges', () => {
  it('follows the closed form of Roark case 2l along the radius', () => {
    const stack: StackInput = { ...alone(12, 6), pressureZone: { innerRadius_m: 7 * MM, outerRadius_m: 10 * MM } };
    const annulus = {
      clampRadius_m: 6 * MM,
      outerRadius_m: 12 * MM,
      poissonsRatio: 0.3,
      bendingRigidity_Nm: (206e9 * (0.15 * MM) ** 3) / (12 * (1 - 0.09)),
    };
    const ring = { innerRadius_m: 7 * MM, outerRadius_m: 10 * MM, pressure_Pa: 1000 };
    const { at, clampMoment_N } = annulusUnderPressureRing(annulus, ring);
    const [{ radius_m, piston, far }] = stressOf(stack, 1000, 'small-deflection');
    radius_m.forEach((r, i) => {
      const { radialMoment_N, slope } = at(Math.min(12 * MM, Math.max(6 * MM, r)));
      // Mt = D (w′/r + ν w″) = ν Mr + (1 - ν²) D w′/r
      const hoopMoment_N = 0.3 * radialMoment_N + (0.91 * annulus.bendingRigidity_Nm * slope) / r;
      const section_m2 = (0.15 * MM) ** 2 / 6;
      near(piston.radial_Pa[i], radialMoment_N / section_m2, 1e-4, (1e-4 * clampMoment_N) / section_m2);
      near(piston.hoop_Pa[i], hoopMoment_N / section_m2, 1e-4, (1e-4 * clampMoment_N) / section_m2);
      near(far.radial_Pa[i], -piston.radial_Pa[i], 1e-9, 1);
    });
  });

  it('balances the membrane force of every ring: r2 Nr2 - r1 Nr1 is the integral of Nt', () => {
    const stack = alone(12, 5);
    const [{ radius_m: r, piston, far }] = stressOf(stack, pressureFor(stack, 2), 'large-deflection', 64);
    const mean = (a: Float64Array, b: Float64Array, i: number) => (a[i] + b[i]) / 2;
    const Nr = (i: number) => mean(piston.radial_Pa, far.radial_Pa, i);
    const Nt = (i: number) => mean(piston.hoop_Pa, far.hoop_Pa, i);
    expect(Nr(0)).toBeGreaterThan(1e6);
    for (let i = 2; i < r.length; i += 2) {
      const h = r[i] - r[i - 1];
      const simpson = (h / 3) * (Nt(i - 2) + 4 * Nt(i - 1) + Nt(i));
      near(r[i] * Nr(i) - r[i - 2] * Nr(i - 2), simpson, 1e-4, 1e-6 * r[0] * Nr(0));
    }
  });

  it('balances the moment of every ring under pressure: d(r Mr)/dr = Mt - (force outside) / 2π', () => {
    const [b, a, q, t] = [5 * MM, 12 * MM, 1000, 0.15 * MM];
    const [{ radius_m: r, piston }] = stressOf(alone(12, 5), q, 'small-deflection', 64);
    const Mr = (i: number) => (piston.radial_Pa[i] * t ** 2) / 6;
    const slopeOfMoment = (i: number) => (piston.hoop_Pa[i] * t ** 2) / 6 - (q * (a ** 2 - r[i] ** 2)) / 2;
    for (let i = 2; i < r.length; i += 2) {
      const h = r[i] - r[i - 1];
      const simpson = (h / 3) * (slopeOfMoment(i - 2) + 4 * slopeOfMoment(i - 1) + slopeOfMoment(i));
      near(r[i] * Mr(i) - r[i - 2] * Mr(i - 2), simpson, 1e-5, 1e-8 * b * Mr(0));
    }
  });
});

describe('shims of a stack', () => {
  it('each get a profile; of two that move together the thicker has the greater stress, in proportion', () => {
    const stack = { ...alone(12, 6), shims: [shim(12, 0.1), shim(12, 0.2), shim(9, 0.2)] };
    const [thin, thick, short] = stressOf(stack, 20_000, 'small-deflection');
    // Equal curvature: the surface stress goes with the thickness.
    near(thick.peak.stress_Pa, 2 * thin.peak.stress_Pa, 1e-12);
    expect(short.radius_m.at(-1)).toBeCloseTo(9 * MM, 12);
  });

  it('a ring has no radial stress at its bore or rim, yet bends', () => {
    // The short shim presses it near its bore; the seat bears the face shim, and so the ring, further out.
    const ring = { ...shim(12, 0.2), innerRadius_m: 8 * MM };
    const stack: StackInput = {
      ...alone(12, 6),
      shims: [shim(12, 0.15), ring, shim(9, 0.15)],
      seat: { innerRadius_m: 11 * MM, outerRadius_m: 11.5 * MM, height_m: 0 },
    };
    const [, { piston, peak }] = stressOf(stack, 50_000, 'small-deflection');
    const most = Math.abs(peak.stress_Pa);
    expect(most).toBeGreaterThan(1e6);
    expect(peak.direction).toBe('hoop');
    for (const i of [0, piston.radial_Pa.length - 1]) expect(Math.abs(piston.radial_Pa[i])).toBeLessThan(1e-5 * most);
  });

  it('is read only when asked for', () => {
    const point = converged(solveLift(alone(12, 6), [1000], { theory: 'small-deflection' }).points[0]);
    expect(point).not.toHaveProperty('stress');
  });
});
