import { describe, expect, it } from 'vitest';
import { cavitates } from '../../../../src/solver/restriction/cavitation.ts';
import { checkPlate } from '../../../../src/solver/restriction/check-plate.ts';
import { closedPath } from '../../../../src/solver/restriction/closed.ts';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { drilledHole } from '../../../../src/solver/restriction/drilled-hole.ts';
import { needleGap } from '../../../../src/solver/restriction/needle.ts';
import { poppet } from '../../../../src/solver/restriction/poppet.ts';
import { series } from '../../../../src/solver/restriction/series.ts';
import {
  tableReaching,
  type ValvePoint,
  type ValveSetting,
  valveOn,
} from '../../../../src/solver/valve/explicit-valve.ts';
import { parallelPaths } from '../../../../src/solver/valve/parallel-paths.ts';
import { cavitatingPaths } from '../../../../src/solver/valve/throats.ts';
import { linearStack } from '../../../helpers/linear-stack.ts';
import { MONOTUBE } from '../../../helpers/monotube.ts';

const { fluid, compression: valve } = MONOTUBE;
const RHO = fluid.density_kg_m3;
const bleed = drilledHole(
  { count: 1, area_m2: Math.PI * 0.64e-6, hydraulicDiameter_m: 1.6e-3, length_m: 4.8e-3 },
  fluid,
  DEFAULT_COEFFICIENTS,
);
const SETTING: ValveSetting = { valve, bleed, leakage: closedPath, fluid, coefficients: DEFAULT_COEFFICIENTS };
const STACK = linearStack({ compliance_m_Pa: 0.5e-9, crackingPressure_Pa: 1e5 });

const pointAt = (flow: number, change: Partial<ValveSetting> = {}): ValvePoint => {
  const setting = { ...SETTING, ...change };
  const point = valveOn(tableReaching(STACK, [setting], 'small-deflection', 2e-3), setting).atFlow(flow);
  expect(point.status).toBe('converged');
  return point as ValvePoint;
};
const throat = (point: ValvePoint, name: string) => point.throats?.find(({ path }) => path === name);
const names = (point: ValvePoint, upstream_Pa: number) =>
  cavitatingPaths(point, upstream_Pa, RHO).map(({ path }) => path);
const relative = (got: number, wanted: number) => Math.abs(got / wanted - 1);

describe('the throats of a valve', () => {
  it('are ports, curtain and bleed, with what flows there', () => {
    const point = pointAt(4e-4);
    const { ports_m3_s, bleed_m3_s } = point.flows;
    // Source: own arithmetic. 4 ports of 22 mm2; 2 pi 13.8 mm times the opening; a hole of 1.6 mm.
    expect(throat(point, 'ports')).toEqual({ path: 'ports', area_m2: 88e-6, flow_m3_s: ports_m3_s, dropBefore_Pa: 0 });
    expect(throat(point, 'bleed')).toMatchObject({ flow_m3_s: bleed_m3_s, dropBefore_Pa: 0 });
    expect(relative(throat(point, 'bleed')?.area_m2 ?? 0, 2.0106193e-6)).toBeLessThan(1e-7);
    const shims = throat(point, 'shims');
    expect(relative(shims?.area_m2 ?? 0, 2 * Math.PI * 13.8e-3 * point.seatOpening_m)).toBeLessThan(1e-12);
    expect(shims?.flow_m3_s).toBe(ports_m3_s);
    const ports = drilledHole(valve.ports, fluid, DEFAULT_COEFFICIENTS).drop(ports_m3_s) as { value: number };
    expect(relative(shims?.dropBefore_Pa ?? 0, ports.value)).toBeLessThan(1e-9);
    expect(point.throats?.length).toBe(3);
  });

  it('are those that carry oil only, and notches and poppet where there are any', () => {
    expect(pointAt(2e-5).throats?.map(({ path }) => path)).toEqual(['bleed']);
    const notched = pointAt(4e-4, { valve: { ...valve, notches: { count: 3, width_m: 1e-3 } } });
    expect(relative(throat(notched, 'notches')?.area_m2 ?? 0, 0.45e-6)).toBeLessThan(1e-12);
    expect(throat(notched, 'notches')?.dropBefore_Pa).toBe(throat(notched, 'shims')?.dropBefore_Pa);
    const cone = { seatDiameter_m: 6e-3, coneAngle_rad: 1.5, rate_N_m: 2e4, preload_N: 1, travel_m: 1e-3 };
    const relieved = pointAt(8e-4, { poppet: poppet(cone, fluid, DEFAULT_COEFFICIENTS) });
    expect(throat(relieved, 'poppet')?.flow_m3_s).toBe(relieved.flows.poppet_m3_s);
    expect(throat(relieved, 'poppet')?.area_m2).toBeGreaterThan(0);
  });

  it('narrow to the needle in a bleed, and to the lift of a check', () => {
    const gap = { holeDiameter_m: 1.6e-3, coneAngle_rad: 0.5, travel_m: 0.5e-3 };
    const needled = series(bleed, needleGap(gap, fluid, 0.611));
    // Source: own arithmetic, frustum: s = 0.5 sin 0.25 = 0.1237020 mm, pi s (1.6 - s cos 0.25) = 0.5752152 mm2.
    expect(relative(needled.throat_m2?.(1e-5) ?? 0, 0.5752152e-6)).toBeLessThan(1e-6);
    const seat = { innerRadius_m: 8e-3, outerRadius_m: 12e-3 };
    const check = checkPlate(
      { ports: valve.ports, seat, rate_N_m: 2000, preload_N: 3, travel_m: 0.8e-3 },
      fluid,
      DEFAULT_COEFFICIENTS,
    );
    const point = parallelPaths({ check, bleed }).atFlow(2e-4) as ValvePoint;
    expect(relative(throat(point, 'check')?.area_m2 ?? 0, 2 * Math.PI * 8e-3 * point.seatOpening_m)).toBeLessThan(1e-9);
    expect(throat(point, 'bleed')?.flow_m3_s).toBe(point.flows.bleed_m3_s);
  });
});

describe('cavitatingPaths', () => {
  const one = (flow_m3_s: number, dropBefore_Pa = 0): ValvePoint => ({
    ...({ status: 'converged', drop_Pa: 6e5, shimPressure_Pa: 0, seatOpening_m: 0 } as const),
    flows: { ports_m3_s: 0, bleed_m3_s: flow_m3_s, leakage_m3_s: 0 },
    throats: [{ path: 'bleed', area_m2: 2e-6, flow_m3_s, dropBefore_Pa }],
  });

  it('limits a jet to 0.62 A sqrt(2 p1 / rho), whatever lies behind it', () => {
    // Source: Nurick 1976 (from memory). 2 mm2 before 1 MPa of oil of 860 kg/m3: 5.97979e-5 m3/s, also at Cd 0.8 and K 1.665.
    expect(cavitatingPaths(one(5.97e-5), 1e6, 860)).toEqual([]);
    const [bleed] = cavitatingPaths(one(5.99e-5), 1e6, 860);
    expect(bleed).toMatchObject({ path: 'bleed', flow_m3_s: 5.99e-5 });
    expect(relative(bleed.chokedFlow_m3_s, 5.97979e-5)).toBeLessThan(1e-5);
    const atCritical = 0.8 * 2e-6 * Math.sqrt((2 * 1e6) / 1.6649 / 860);
    expect(relative(bleed.chokedFlow_m3_s, atCritical)).toBeLessThan(1e-4);
  });

  it('counts the pressure that is left before a place that stands behind another', () => {
    const [shims] = cavitatingPaths(one(9e-5, 4e5), 1e6, 860);
    expect(relative(shims.chokedFlow_m3_s, 5.97979e-5 * Math.sqrt(0.6))).toBeLessThan(1e-5);
  });

  it('judges a bleed as its coefficient does: cavitating where 0.62 sqrt(K) is less', () => {
    for (const flow of [2e-5, 1e-4, 4e-4, 1e-3]) {
      const point = pointAt(flow);
      const Cd = point.flows.bleed_m3_s / (Math.PI * 0.64e-6 * Math.sqrt((2 * point.drop_Pa) / RHO));
      for (const factor of [1.001, 1.2, 1.5, 1.6, 1.7, 2, 5]) {
        const upstream_Pa = point.drop_Pa * factor;
        const expected = cavitates(Cd, upstream_Pa, upstream_Pa - point.drop_Pa);
        expect(names(point, upstream_Pa).includes('bleed')).toBe(expected);
      }
    }
  });

  it('finds nothing under a high pressure, and ports and shims under a low one', () => {
    const point = pointAt(1e-3);
    expect(names(point, 1e9)).toEqual([]);
    expect(names(point, point.drop_Pa * 1.0001)).toEqual(['shims', 'bleed']);
    expect(cavitatingPaths({ ...point, throats: undefined }, 1e5, RHO)).toEqual([]);
  });
});
