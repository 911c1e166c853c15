import { describe, expect, it } from 'vitest';
import { forceCurveWith } from '../../../../src/solver/damper/force-curve.ts';
import type { DamperInput, ForcePoint } from '../../../../src/solver/damper/types.ts';
import { type LinearStack, linearStacks } from '../../../helpers/linear-stack.ts';
import { MONOTUBE } from '../../../helpers/monotube.ts';
import { BASE, OPEN_BASE, WITH_RESERVOIR } from '../../../helpers/with-base.ts';

const STACK: LinearStack = { compliance_m_Pa: 0.5e-9, crackingPressure_Pa: 100e3 };
const SPEEDS = [-1, -0.2, -0.01, 0, 0.01, 0.2, 1];

function curve(damper: DamperInput, speeds: readonly number[] = SPEEDS, stack: LinearStack = STACK): ForcePoint[] {
  const { points } = forceCurveWith(linearStacks(stack), damper, speeds, { theory: 'small-deflection' });
  return points.map((point) => {
    if (point.status !== 'converged') throw new Error(point.reason);
    return point;
  });
}

const area = (d: number) => (Math.PI / 4) * d * d;
const relative = (got: number, wanted: number) => Math.abs(got / wanted - 1);

describe('the layouts', () => {
  it.each(['monotube-reservoir', 'twin-tube', 'cartridge'] as const)(
    'a %s whose base valve stands wide open is a monotube',
    (layout) => {
      const monotube = curve(MONOTUBE);
      for (const [i, point] of curve({ ...MONOTUBE, layout, base: OPEN_BASE }).entries()) {
        expect(relative(point.force_N, monotube[i].force_N)).toBeLessThan(1e-6);
        expect(relative(point.reboundPressure_Pa, monotube[i].reboundPressure_Pa)).toBeLessThan(1e-6);
      }
    },
  );

  it('sends the volume of the rod through the base, out by stack and bleed, back by check and bleed', () => {
    // Source: Q = A_r v; 14 mm rod, 153.938 mm2.
    for (const { base, shaftSpeed_m_s: v } of curve(WITH_RESERVOIR)) {
      const { ports_m3_s = Number.NaN, bleed_m3_s = Number.NaN, check_m3_s = 0 } = base?.flows ?? {};
      expect(ports_m3_s + bleed_m3_s + check_m3_s).toBeCloseTo(153.938e-6 * Math.abs(v), 9);
      if (v > 0) expect(check_m3_s).toBe(0);
      if (v < -0.1) expect(check_m3_s).toBeGreaterThan(bleed_m3_s);
    }
  });

  it('adds what the base takes on the whole piston, less what the rebound chamber gives back', () => {
    const monotube = curve(MONOTUBE);
    for (const [i, { base, force_N, shaftSpeed_m_s: v, airRelease }] of curve(WITH_RESERVOIR).entries()) {
      if (airRelease || monotube[i].airRelease || !base) continue;
      // Both chambers rise by the drop of the base: on A_p from one side and A_p - A_r from the other, A_r is left.
      expect(force_N - monotube[i].force_N).toBeCloseTo(Math.sign(v) * base.drop_Pa * area(14e-3), 6);
    }
  });

  it('lets a base valve keep the oil together that falls apart without', () => {
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 3e5 };
    const [alone] = curve({ ...MONOTUBE, gas }, [0.5]);
    const narrow = { ...BASE, bleed: { count: 1, diameter_m: 0.8e-3, length_m: 3e-3 } };
    const [based] = curve({ ...WITH_RESERVOIR, base: narrow, gas }, [0.5], { ...STACK, crackingPressure_Pa: 8e5 });
    const [without] = curve({ ...MONOTUBE, gas }, [0.5], { ...STACK, crackingPressure_Pa: 8e5 });
    expect([alone.airRelease, without.airRelease]).toEqual([true, true]);
    expect(based.gasPressureNeeded_Pa).toBeLessThan(without.gasPressureNeeded_Pa);
    expect(based.compressionPressure_Pa).toBeGreaterThan(without.compressionPressure_Pa);
  });

  it('passes more through the base where a void opens behind the piston', () => {
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 1.5e5 };
    const [{ base, voids_m3_s, reboundPressure_Pa, airRelease }] = curve({ ...WITH_RESERVOIR, gas }, [3]);
    expect(airRelease).toBe(true);
    expect(reboundPressure_Pa).toBe(101325);
    const through = (base?.flows.ports_m3_s ?? 0) + (base?.flows.bleed_m3_s ?? 0);
    expect(voids_m3_s?.rebound).toBeGreaterThan(0);
    expect(relative(through, area(14e-3) * 3 + (voids_m3_s?.rebound ?? 0))).toBeLessThan(1e-9);
  });

  it('carries a fork leg by its air on the area of its seal', () => {
    // Source: (p - p_atm) A; 41 mm, 0.2 MPa over the atmosphere: 264.05 N.
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 101325 + 0.2e6 };
    const leg: DamperInput = { ...WITH_RESERVOIR, layout: 'cartridge', legDiameter_m: 41e-3, gas };
    const [rest] = curve(leg, [0]);
    expect(relative(rest.force_N, 264.05)).toBeLessThan(1e-4);
    expect(rest.gasForce_N).toBe(rest.force_N);
  });

  it('adds the friction of a floating piston to that of the shaft, on the rod alone', () => {
    const gas = { ...MONOTUBE.gas, separatorFriction_Pa: 20e3 };
    const held = curve({ ...MONOTUBE, gas }, [-0.2, 0, 0.2]);
    const free = curve(MONOTUBE, [-0.2, 0, 0.2]);
    for (const [i, { frictionForce_N, dampingForce_N, shaftSpeed_m_s: v }] of held.entries()) {
      expect(frictionForce_N - free[i].frictionForce_N).toBeCloseTo(Math.sign(v) * 20e3 * area(14e-3), 9);
      expect(dampingForce_N).toBeCloseTo(free[i].dampingForce_N, 6);
    }
  });

  it('leaves a floating piston standing where its friction would pull the oil below air release', () => {
    // Source: balance of forces; the gas has 0.5 bar over air release, the seal holds 3 bar: 0.5 bar act, 2.5 bar are short.
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 101325 + 0.5e5, separatorFriction_Pa: 3e5 };
    for (const damper of [MONOTUBE, WITH_RESERVOIR]) {
      const [point] = curve({ ...damper, gas, bleed: { count: 4, diameter_m: 8e-3, length_m: 0 } }, [-0.01]);
      const root = damper.base ? 'reservoir' : 'compression';
      const others = Object.entries(point.voids_m3_s ?? {}).filter(([name]) => name !== root);
      const rest = others.reduce((sum, [, rate]) => sum + rate, 0);
      expect((point.voids_m3_s?.[root] ?? 0) + rest).toBeCloseTo(area(14e-3) * 0.01, 15);
      expect(point.frictionForce_N).toBeCloseTo(-30 - 0.5e5 * area(14e-3), 9);
      expect(point.dampingForce_N).toBeLessThan(0);
      expect(point.airRelease).toBe(true);
      expect(point.compressionPressure_Pa).toBeGreaterThanOrEqual(101325);
      expect(point.gasPressureNeeded_Pa).toBeGreaterThanOrEqual(101325 + 3e5);
    }
    const [enough] = curve({ ...MONOTUBE, gas: { ...gas, absolutePressure_Pa: 101325 + 3.01e5 } }, [-0.01]);
    expect([enough.airRelease, enough.voids_m3_s]).toEqual([false, undefined]);
  });

  it('pushes harder in its hydraulic stop, and only there and on the way in', () => {
    const hydraulicStop = {
      end: 'compression',
      length_m: 10e-3,
      plungerDiameter_m: 20e-3,
      clearance_m: 0.2e-3,
    } as const;
    const at = (stroke_m: number) => curve({ ...MONOTUBE, hydraulicStop, stroke_m }, [-0.5, 0.5]);
    for (const { stopForce_N } of at(30e-3)) expect(Math.abs(stopForce_N)).toBe(0);
    const [out, into] = at(55e-3);
    expect(Math.abs(out.stopForce_N)).toBe(0);
    expect(into.stopForce_N).toBeGreaterThan(50);
    expect(into.force_N - curve({ ...MONOTUBE, stroke_m: 55e-3 }, [0.5])[0].force_N).toBeCloseTo(into.stopForce_N, 9);
  });

  it('tells which paths cavitate, at the piston and at the base', () => {
    // Source: Nurick 1976 (from memory): at most 0.62 A sqrt(2 p1/rho), whatever lies behind.
    const base = { ...BASE, bleed: { count: 1, diameter_m: 0.5e-3, length_m: 2e-3 } };
    const [slow, fast] = curve(
      { ...WITH_RESERVOIR, base, gas: { ...MONOTUBE.gas, absolutePressure_Pa: 1.2e5 } },
      [1e-3, 0.5],
    );
    expect([slow.cavitating, slow.base?.cavitating, slow.bleedCavitates]).toEqual([undefined, undefined, false]);
    const names = fast.base?.cavitating?.map(({ path }) => path);
    expect(names).toContain('bleed');
    for (const { flow_m3_s, chokedFlow_m3_s } of fast.base?.cavitating ?? []) {
      expect(flow_m3_s).toBeGreaterThan(chokedFlow_m3_s);
    }
    const bleed = fast.base?.cavitating?.find(({ path }) => path === 'bleed');
    const most = 0.62 * area(0.5e-3) * Math.sqrt((2 * fast.compressionPressure_Pa) / 844);
    expect(relative(bleed?.chokedFlow_m3_s ?? 0, most)).toBeLessThan(1e-9);
  });

  it('has no state where every way is closed: a reason instead of a number', () => {
    const closed: DamperInput = { ...MONOTUBE, bleed: { count: 0, diameter_m: 0, length_m: 0 } };
    const rigid = linearStacks({ compliance_m_Pa: 1e-9, crackingPressure_Pa: 1e12 });
    const { points } = forceCurveWith(rigid, closed, [-0.1, 0, 0.1], { theory: 'small-deflection' });
    expect(points.map(({ status }) => status)).toEqual(['beyond-table', 'converged', 'beyond-table']);
  });

  it.each<[string, Partial<DamperInput>]>([
    ['damper.base.of-monotube', { base: BASE }],
    ['damper.base.none', { layout: 'twin-tube' }],
    ['damper.stroke', { stroke_m: 61e-3 }],
    [
      'damper.hydraulic-stop.within-rod',
      { hydraulicStop: { end: 'rebound', length_m: 0.01, plungerDiameter_m: 0.014, clearance_m: 2e-4 } },
    ],
    ['damper.not-positive', { layout: 'twin-tube', base: { ...BASE, refill: { ...BASE.refill, travel_m: 0 } } }],
    [
      'valve.check.seat',
      {
        layout: 'twin-tube',
        base: { ...BASE, refill: { ...BASE.refill, seat: { innerRadius_m: 9e-3, outerRadius_m: 8e-3 } } },
      },
    ],
    [
      'valve.poppet.cone',
      {
        layout: 'twin-tube',
        base: {
          ...BASE,
          poppet: { seatDiameter_m: 6e-3, coneAngle_rad: 4, rate_N_m: 1e4, preload_N: 20, travel_m: 1e-3 },
        },
      },
    ],
    [
      'damper.hydraulic-stop.beyond-travel',
      { hydraulicStop: { end: 'rebound', length_m: 0.1, plungerDiameter_m: 0.02, clearance_m: 2e-4 } },
    ],
    [
      'damper.hydraulic-stop.beyond-bore',
      { hydraulicStop: { end: 'rebound', length_m: 0.01, plungerDiameter_m: 0.05, clearance_m: 2e-4 } },
    ],
  ])('refuses with %s', (code, change) => {
    expect(() => curve({ ...MONOTUBE, ...change })).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code }) }),
    );
  });
});
