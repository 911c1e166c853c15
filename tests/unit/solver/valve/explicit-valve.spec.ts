import { describe, expect, it } from 'vitest';
import { closedPath } from '../../../../src/solver/restriction/closed.ts';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { drilledHole } from '../../../../src/solver/restriction/drilled-hole.ts';
import { poppet } from '../../../../src/solver/restriction/poppet.ts';
import {
  type FailedValve,
  tableReaching,
  type ValvePoint,
  type ValveSetting,
  valveOn,
} from '../../../../src/solver/valve/explicit-valve.ts';
import type { LiftSolver } from '../../../../src/solver/valve/stack-samples.ts';
import { type LinearStack, linearStack } from '../../../helpers/linear-stack.ts';
import { SETTING, STACK } from '../../../helpers/valve-setting.ts';

const { bleed, fluid, valve } = SETTING;

/** Mean pressure on the zone per square of the flow by half the momentum of the port jets, k rho / (A_p A_z) [Pa s2/m6]. */
const JETS = (0.5 * 844) / (88e-6 * Math.PI * (13.8e-3 ** 2 - 8.25e-3 ** 2));

const build = (setting: Partial<ValveSetting> = {}, stack: Partial<LinearStack> = {}, largestFlow = 1e-3) => {
  const changed = { ...SETTING, ...setting };
  const solveLift = linearStack({ ...STACK, ...stack });
  return valveOn(tableReaching(solveLift, [changed], 'small-deflection', largestFlow), changed);
};

const solvedAt = (flow: number, ...rest: Parameters<typeof build>): ValvePoint => {
  const point = build(...rest).atFlow(flow);
  expect(point.status).toBe('converged');
  return point as ValvePoint;
};

describe('a valve on the table of its stack', () => {
  it('agrees with a calculation done by hand at 0.4 MPa on the shims', () => {
    // Source: own arithmetic with the printed formulas (docs/theory-dampers.md, worked point): opening 0.15 mm.
    const point = solvedAt(2.546046767651983e-4 + 4.848368722632135e-5);
    expect(point.shimPressure_Pa).toBeCloseTo(4e5, -1);
    expect(point.seatOpening_m).toBeCloseTo(0.15e-3, 8);
    expect(point.drop_Pa / 405722.50037567026).toBeCloseTo(1, 5);
    expect(point.flows.ports_m3_s / 2.546046767651983e-4).toBeCloseTo(1, 5);
    expect(point.flows.bleed_m3_s / 4.848368722632135e-5).toBeCloseTo(1, 5);
  });

  it('sends everything through the bleed until the stack cracks', () => {
    const point = solvedAt(2e-5);
    expect(point.flows.ports_m3_s).toBe(0);
    expect(point.seatOpening_m).toBe(0);
    const alone = bleed.drop(2e-5) as { value: number };
    expect(point.drop_Pa / alone.value).toBeCloseTo(1, 9);
  });

  it('needs the cracking pressure for the first drop of flow when there is no bleed', () => {
    const { drop_Pa } = solvedAt(1e-9, { bleed: closedPath });
    expect(drop_Pa).toBeGreaterThan(99e3);
    expect(drop_Pa).toBeLessThan(110e3);
  });

  it('is the bleed alone when the stack cannot open', () => {
    const point = solvedAt(1e-4, {}, { crackingPressure_Pa: 1e12 });
    expect(point.drop_Pa / (bleed.drop(1e-4) as { value: number }).value).toBeCloseTo(1, 9);
  });

  it('is its notches behind its ports when a notched stack cannot open', () => {
    const notches = { count: 3, width_m: 1.5e-3 };
    const rigid = { crackingPressure_Pa: 1e12 };
    const notched = { valve: { ...valve, notches }, bleed: closedPath };
    const Q = 3e-5;
    const point = solvedAt(Q, notched, rigid, Q);
    // Slots of 1.5 x 0.15 mm over a land from 13.8 to 14.2 mm; their hydraulic diameter is 4 A / perimeter.
    const slots = { count: 3, area_m2: 0.225e-6, hydraulicDiameter_m: 0.9e-6 / 3.3e-3, length_m: 0.4e-3 };
    const slot = drilledHole(slots, fluid, DEFAULT_COEFFICIENTS).drop(Q) as { value: number };
    const ports = drilledHole(valve.ports, fluid, DEFAULT_COEFFICIENTS).drop(Q) as { value: number };
    expect(point.seatOpening_m).toBe(0);
    expect((point.shimPressure_Pa - JETS * Q * Q) / slot.value).toBeCloseTo(1, 9);
    expect(point.drop_Pa / (slot.value + ports.value)).toBeCloseTo(1, 9);
    expect(point.flows.ports_m3_s / Q).toBeCloseTo(1, 9);
  });

  it('adds what its notches pass at the pressure across the shims to what passes under them', () => {
    const notches = { count: 2, width_m: 2e-3 };
    const slots = { count: 2, area_m2: 0.3e-6, hydraulicDiameter_m: 1.2e-6 / 4.3e-3, length_m: 0.4e-3 };
    // Source: own arithmetic, the worked point without jets of ports: 2.548868e-4 m3/s pass under the shims at 0.4 MPa across them.
    const through = drilledHole(slots, fluid, DEFAULT_COEFFICIENTS).flow(4e5) as { value: number };
    const wanted = 2.548868410331577e-4 + through.value;
    const coefficients = { ...DEFAULT_COEFFICIENTS, portMomentum: 0 };
    const point = solvedAt(wanted, { valve: { ...valve, notches }, bleed: closedPath, coefficients });
    expect(point.shimPressure_Pa / 4e5).toBeCloseTo(1, 4);
    expect(point.seatOpening_m).toBeCloseTo(0.15e-3, 8);
  });

  it('needs less pressure the more notches it has, at every flow', () => {
    const dropWith = (count: number, flow: number) => {
      const notched = count === 0 ? valve : { ...valve, notches: { count, width_m: 1e-3 } };
      return solvedAt(flow, { valve: notched, bleed: closedPath }).drop_Pa;
    };
    for (const flow of [1e-6, 1e-5, 1e-4, 5e-4]) {
      const drops = [0, 1, 2, 6].map((count) => dropWith(count, flow));
      expect(drops).toEqual([...drops].sort((a, b) => b - a));
      expect(new Set(drops).size).toBe(4);
    }
  });

  it('is limited by its ports when the shims open wide', () => {
    const wide = solvedAt(1e-3, { bleed: closedPath }, { compliance_m_Pa: 1e-5, crackingPressure_Pa: 0 });
    const ports = drilledHole(valve.ports, fluid, DEFAULT_COEFFICIENTS).drop(1e-3) as { value: number };
    expect(wide.drop_Pa / ports.value).toBeGreaterThan(1);
    expect(wide.drop_Pa / ports.value).toBeLessThan(1.05);
  });

  it('is at rest at no flow', () => {
    expect(solvedAt(0)).toMatchObject({
      drop_Pa: 0,
      shimPressure_Pa: 0,
      flows: { ports_m3_s: 0, bleed_m3_s: 0, leakage_m3_s: 0 },
    });
  });

  it('gives the flows of a drop, and the drop of those flows', () => {
    const valves = build();
    const point = valves.atDrop(5e5) as ValvePoint;
    expect(point.drop_Pa / 5e5).toBeCloseTo(1, 9);
    const back = valves.atFlow(point.flows.ports_m3_s + point.flows.bleed_m3_s) as ValvePoint;
    expect(back.drop_Pa / 5e5).toBeCloseTo(1, 9);
  });

  it('says why it has no answer beyond its table', () => {
    expect(build({}, { failsAbove_Pa: 5e5 }).atFlow(1e-2)).toMatchObject({
      status: 'not-converged',
      reason: expect.stringContaining('asked to fail'),
    });
    expect(build({}, { failsAbove_Pa: -1 }).atFlow(0)).toMatchObject({ status: 'not-converged' });
    // What it was built for, by the flow it reaches and the drop there.
    const far = build().atFlow(1);
    expect(far).toMatchObject({
      status: 'beyond-table',
      reason: expect.stringMatching(/more was wanted.*known up to/),
    });
    const [, reach, drop] = /up to ([\d.]+) L\/s at a drop of ([\d.]+) MPa/.exec((far as FailedValve).reason) ?? [];
    expect(Number(reach)).toBeGreaterThan(1);
    expect((solvedAt(Number(reach) * 0.999e-3).drop_Pa / 1e6) * 1.002).toBeCloseTo(Number(drop), 2);
    const tooMuch = build({ bleed: closedPath }, { compliance_m_Pa: 1e-15 }, 1).atFlow(1);
    expect(tooMuch).toMatchObject({ status: 'beyond-table', reason: expect.stringContaining('does not pass') });
  });

  it('fails, not guesses, when a path gives no number', () => {
    const broken = {
      flow: () => ({ status: 'not-converged', iterations: 0, residual: 1, reason: 'x' }) as const,
      drop: bleed.drop,
    };
    const reason = expect.stringContaining('the bleed gave no number at 0 MPa on the shims');
    expect(build({ bleed: broken }).atFlow(1e-4)).toMatchObject({ status: 'not-converged', reason });
    const poppetless = build({ poppet: broken }).atFlow(1e-4);
    expect(poppetless).toMatchObject({
      status: 'not-converged',
      reason: expect.stringContaining('the poppet gave no'),
    });
  });

  it('fails, not guesses, where its table has an opening that is no number', () => {
    const holed: LiftSolver = (stack, pressures, theory) => {
      const { points } = linearStack(STACK)(stack, pressures, theory);
      const without = (p: (typeof points)[number]) => (p.pressure_Pa > 5e5 ? { ...p, seatOpening_m: Number.NaN } : p);
      return { theory, points: points.map(without) };
    };
    const on = valveOn(tableReaching(holed, [SETTING], 'small-deflection', 1e-2), SETTING);
    expect(on.atFlow(5e-3)).toMatchObject({ status: 'not-converged', reason: expect.stringContaining('shims') });
    expect(on.atFlow(1e-5)).toMatchObject({ status: 'converged' });
  });

  it('takes the land only as far as the face shim reaches', () => {
    const narrow = { ...valve.stack, shims: [{ ...valve.stack.shims[0], outerRadius_m: 13.9e-3 }] };
    const thick = { density_kg_m3: 844, dynamicViscosity_Pa_s: 0.5 };
    const common = { bleed: closedPath, fluid: thick };
    const [short, long] = [narrow, valve.stack].map(
      (stack) => solvedAt(1e-5, { ...common, valve: { ...valve, stack } }).drop_Pa,
    );
    expect(short).toBeLessThan(long);
  });

  it('cracks at twice the drop when its ports open half of the circumference', () => {
    // Source: own arithmetic. The stack leaves its seat at a mean of 0.1 MPa on the zone.
    const ports = { ...valve.ports, coveredFraction: 0.5 };
    const half = build({ valve: { ...valve, ports }, bleed: closedPath });
    expect(half.crackingPressure_Pa).toBeCloseTo(1e5, 0);
    expect(half.atDrop(1.99e5)).toMatchObject({ seatOpening_m: 0, flows: { ports_m3_s: 0 } });
    const open = half.atDrop(2.2e5) as ValvePoint;
    expect(open.seatOpening_m).toBeGreaterThan(0);
    // Half of what is left across the shims, and the jets of the little that flows: the opening law gives it back.
    expect(open.shimPressure_Pa / 1.1e5).toBeCloseTo(1, 2);
    expect(open.seatOpening_m).toBeCloseTo(0.5e-9 * (open.shimPressure_Pa - 1e5), 12);
  });

  it('is the same valve with its ports open all round', () => {
    const round = { ...valve, ports: { ...valve.ports, coveredFraction: 1 } };
    for (const flow of [1e-5, 1e-4, 9e-4]) expect(build({ valve: round }).atFlow(flow)).toEqual(build().atFlow(flow));
  });

  it('opens a little further for the jets of its ports', () => {
    const [none, half, all] = [0, 0.5, 1].map((portMomentum) =>
      solvedAt(1e-3, { bleed: closedPath, coefficients: { ...DEFAULT_COEFFICIENTS, portMomentum } }),
    );
    expect(half.drop_Pa).toBeLessThan(none.drop_Pa);
    expect(all.drop_Pa).toBeLessThan(half.drop_Pa);
    expect(none.drop_Pa / all.drop_Pa).toBeLessThan(1.05);
  });

  it('lets a poppet beside it pass oil at the same drop', () => {
    const cone = { seatDiameter_m: 6e-3, coneAngle_rad: Math.PI / 2, rate_N_m: 20e3, preload_N: 10, travel_m: 1e-3 };
    const relief = poppet(cone, fluid, DEFAULT_COEFFICIENTS);
    const point = solvedAt(8e-4, { poppet: relief });
    const { ports_m3_s, bleed_m3_s, poppet_m3_s = 0 } = point.flows;
    expect(poppet_m3_s / (relief.flow(point.drop_Pa) as { value: number }).value).toBeCloseTo(1, 9);
    expect(poppet_m3_s).toBeGreaterThan(1e-5);
    expect((ports_m3_s + bleed_m3_s + poppet_m3_s) / 8e-4).toBeCloseTo(1, 9);
    expect(point.drop_Pa).toBeLessThan(solvedAt(8e-4).drop_Pa);
    expect(solvedAt(8e-4).flows).not.toHaveProperty('poppet_m3_s');
  });
});
