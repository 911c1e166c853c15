import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chamber, type ChamberState, networkState } from '../../../../src/solver/damper/network.ts';
import type { Valve } from '../../../../src/solver/valve/explicit-valve.ts';
import { failingValve, linearValve, powerValve } from '../../../helpers/plain-valves.ts';

const GAS_PA = 1e6;
const FLOOR_PA = 1e5;
/** Piston and annulus [m2], shaft speed [m/s]; linear valves, so that every state is a line of arithmetic. */
const [PISTON, ANNULUS, SPEED] = [1.2e-3, 1e-3, 0.5];

const through = (k: number) => ({ outward: linearValve(k), inward: linearValve(k) });

const rebound = (k: number): Chamber<string> => ({ name: 'r', sweptArea_m2: -ANNULUS, ...through(k), behind: [] });
const compression = (k: number, behind: Chamber<string>): Chamber<string> => ({
  name: 'c',
  sweptArea_m2: PISTON,
  ...through(k),
  behind: [behind],
});

function chambersOf(chambers: readonly Chamber<string>[], v: number): Readonly<Record<string, ChamberState>> {
  const state = networkState({ chambers }, v, GAS_PA, FLOOR_PA);
  if (state.status !== 'converged') throw new Error(state.reason);
  return state.chambers;
}

describe('the chambers of a damper', () => {
  // Source of every number here: own arithmetic with Q = k dp.
  it('one behind the gas: its pressure follows from its flow', () => {
    const { r } = chambersOf([rebound(1e-9)], SPEED);
    expect(r.flow_m3_s).toBeCloseTo(-0.5e-3, 15);
    expect(r.pressure_Pa).toBeCloseTo(1e6 - 0.5e6, 6);
    expect(chambersOf([rebound(1e-9)], -SPEED).r.pressure_Pa).toBeCloseTo(1.5e6, 6);
  });

  it('two: the valve towards the gas passes what the rod displaces, and lifts both', () => {
    const { c, r } = chambersOf([compression(2e-10, rebound(1e-9))], SPEED);
    expect(c.flow_m3_s).toBeCloseTo(0.1e-3, 15);
    expect(c.pressure_Pa).toBeCloseTo(1e6 + 0.5e6, 6);
    expect(r.pressure_Pa).toBeCloseTo(1.5e6 - 0.5e6, 6);
    const back = chambersOf([compression(2e-10, rebound(1e-9))], -SPEED);
    expect(back.c.pressure_Pa).toBeCloseTo(0.5e6, 6);
    expect(back.r.pressure_Pa).toBeCloseTo(0.5e6 + 0.5e6, 6);
  });

  it('holds the rebound chamber at the floor; the valve to the gas passes what it does not take', () => {
    // A_p v = k_p (p_c - floor) + k_b (p_c - p_gas) with k_p 2e-10, k_b 1e-9: p_c = (6e-4 + 2e-5 + 1e-3) / 1.2e-9 = 1.35 MPa;
    // through the piston 2e-10 * 1.25e6 = 0.25 L/s of 0.5 L/s, so a void opens at 0.25 L/s.
    const { c, r } = chambersOf([compression(1e-9, rebound(2e-10))], SPEED);
    expect(c.pressure_Pa).toBeCloseTo(1.35e6, 4);
    expect(c.flow_m3_s).toBeCloseTo(0.35e-3, 12);
    expect(r.pressure_Pa).toBe(FLOOR_PA);
    expect(r.voidRate_m3_s).toBeCloseTo(0.25e-3, 12);
    expect(c.voidRate_m3_s).toBe(0);
  });

  it('holds the compression chamber at the floor when the way back from the gas is too narrow', () => {
    // Refill k 0.5e-10 * 0.9e6 = 0.045 L/s of the 0.1 L/s that the rod leaves; the rebound chamber stands 0.5 MPa over the floor.
    const { c, r } = chambersOf([compression(0.5e-10, rebound(1e-9))], -SPEED);
    expect(c.pressure_Pa).toBe(FLOOR_PA);
    expect(c.flow_m3_s).toBeCloseTo(-0.045e-3, 12);
    expect(c.voidRate_m3_s).toBeCloseTo(0.055e-3, 12);
    expect(r.pressure_Pa).toBeCloseTo(FLOOR_PA + 0.5e6, 4);
  });

  it('passes on what another chamber presses in where a void takes no oil', () => {
    // The chamber itself presses nothing; 0.6 L/s come in from b (k 1e-9, so 0.6 MPa above) and the void in r takes a part, as above.
    const pressing: Chamber<string> = { name: 'b', sweptArea_m2: PISTON, ...through(1e-9), behind: [] };
    const between = { ...compression(1e-9, rebound(2e-10)), sweptArea_m2: 0, behind: [rebound(2e-10), pressing] };
    const { b, c, r } = chambersOf([between], SPEED);
    expect(c.pressure_Pa).toBeCloseTo(1.35e6, 4);
    expect(b.pressure_Pa).toBeCloseTo(1.95e6, 4);
    expect(r.voidRate_m3_s).toBeCloseTo(0.25e-3, 12);
  });

  it('says how far the lowest chamber would lie below the gas without the floor', () => {
    const state = networkState({ chambers: [compression(1e-9, rebound(2e-10))] }, SPEED, GAS_PA, FLOOR_PA);
    // p_c - p_gas = 0.1 MPa, p_c - p_r = 2.5 MPa.
    expect(state).toMatchObject({ status: 'converged' });
    expect('deepest_Pa' in state && state.deepest_Pa).toBeCloseTo(2.4e6, 4);
  });

  it('rests at the pressure of the gas', () => {
    const { c, r } = chambersOf([compression(1e-9, rebound(2e-10))], 0);
    expect([c.pressure_Pa, r.pressure_Pa, c.flow_m3_s, c.voidRate_m3_s]).toEqual([GAS_PA, GAS_PA, 0, 0]);
  });

  it('names the chamber whose flows balance nowhere, and between which pressures', () => {
    // A void opens behind, so the chamber takes the pressure at which its own valve passes the rest; that valve gives no number there.
    const sound = linearValve(2e-10);
    const holed: Valve = {
      ...sound,
      atDrop: (dp) => {
        const point = sound.atDrop(dp);
        if (point.status !== 'converged' || dp < 1e4 || dp > 2.9e6) return point;
        return { ...point, flows: { ...point.flows, ports_m3_s: Number.NaN } };
      },
    };
    const chamber = { ...compression(2e-10, rebound(1e-10)), outward: holed };
    expect(networkState({ chambers: [chamber] }, SPEED, GAS_PA, FLOOR_PA)).toMatchObject({
      status: 'not-converged',
      reason: expect.stringMatching(
        /^the flows of the c chamber balance at no pressure between 0.1 MPa and 4 MPa absolute/,
      ),
    });
  });

  it('hands on why a valve has no state', () => {
    const chamber: Chamber<string> = { ...rebound(1e-9), inward: failingValve('too much') };
    expect(networkState({ chambers: [chamber] }, SPEED, GAS_PA, FLOOR_PA)).toEqual({
      status: 'beyond-table',
      reason: 'too much',
    });
  });
});

describe('laws of every network', () => {
  const k = fc.double({ min: 1e-11, max: 1e-8, noNaN: true });
  const n = fc.double({ min: 0.5, max: 1, noNaN: true });
  const valve = fc.record({ k, n }).map((law) => powerValve(law.k * 1e6 ** (1 - law.n), law.n));
  const leaf = fc.record({
    sweptArea_m2: fc.double({ min: -2e-3, max: 2e-3, noNaN: true }),
    outward: valve,
    inward: valve,
  });
  const tree = fc.array(fc.record({ own: leaf, behind: fc.array(leaf, { maxLength: 2 }) }), {
    minLength: 1,
    maxLength: 2,
  });
  const networks = tree.map((branches) =>
    branches.map(
      ({ own, behind }, i): Chamber<string> => ({
        name: `${i}`,
        ...own,
        behind: behind.map((b, j): Chamber<string> => ({ name: `${i}.${j}`, ...b, behind: [] })),
      }),
    ),
  );
  const speeds = fc.double({ min: -3, max: 3, noNaN: true });
  const all = (chambers: readonly Chamber<string>[]): Chamber<string>[] =>
    chambers.flatMap((c) => [c, ...all(c.behind)]);

  it('no oil is lost: what leaves a chamber is what is pressed into it, with what a void gives', () => {
    fc.assert(
      fc.property(networks, speeds, (chambers, v) => {
        const states = chambersOf(chambers, v);
        for (const { name, sweptArea_m2, behind } of all(chambers)) {
          const { flow_m3_s, voidRate_m3_s } = states[name];
          const supply = sweptArea_m2 * v + behind.reduce((sum, b) => sum + states[b.name].flow_m3_s, 0);
          expect(Math.abs(supply + voidRate_m3_s - flow_m3_s)).toBeLessThan(1e-9 * (Math.abs(supply) + 1e-6));
        }
      }),
    );
  });

  it('no chamber falls below the floor, and a void opens only there', () => {
    fc.assert(
      fc.property(networks, speeds, (chambers, v) => {
        for (const { pressure_Pa, voidRate_m3_s } of Object.values(chambersOf(chambers, v))) {
          expect(pressure_Pa).toBeGreaterThanOrEqual(FLOOR_PA);
          if (voidRate_m3_s > 0) expect(pressure_Pa).toBe(FLOOR_PA);
        }
      }),
    );
  });

  it('the work at the shaft is what the valves and the voids take', () => {
    fc.assert(
      fc.property(networks, speeds, (chambers, v) => {
        const states = chambersOf(chambers, v);
        const sum = (
          value: (c: Chamber<string>, parent_Pa: number) => number,
          list: readonly Chamber<string>[] = chambers,
          parent = GAS_PA,
        ): number => list.reduce((s, c) => s + value(c, parent) + sum(value, c.behind, states[c.name].pressure_Pa), 0);
        const shaft = sum((c) => (states[c.name].pressure_Pa - GAS_PA) * c.sweptArea_m2 * v);
        const lost = sum((c, parent) => (states[c.name].pressure_Pa - parent) * states[c.name].flow_m3_s);
        const voids = sum((c) => (states[c.name].pressure_Pa - GAS_PA) * states[c.name].voidRate_m3_s);
        expect(Math.abs(shaft + voids - lost)).toBeLessThan(1e-8 * (Math.abs(lost) + 1));
      }),
    );
  });
});
