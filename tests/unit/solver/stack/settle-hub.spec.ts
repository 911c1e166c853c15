/** A floating hub against the balance of one spring: rise = (force - preload)/rate, held between stop and travel. */
import { describe, expect, it } from 'vitest';
import { equilibrate } from '../../../../src/solver/stack/equilibrate.ts';
import { createLoadedStack } from '../../../../src/solver/stack/loaded-stack.ts';
import { clampForce, settleHub } from '../../../../src/solver/stack/settle-hub.ts';
import { createStackSystem } from '../../../../src/solver/stack/stack-system.ts';
import type { AxisymmetricTheory, ConvergedLift, FloatInput, StackInput } from '../../../../src/solver/types.ts';
import { SEAT, stackOf, steel } from './steel.ts';

const float: FloatInput = { travel_m: 0.4e-3, rate_N_m: 1e4, preload_N: 10 };
const AREA_M2 = Math.PI * (13.8e-3 ** 2 - 8.25e-3 ** 2);
const free = stackOf([steel(30, 0.3), steel(20, 0.3)], { float });

function settled(stack: StackInput, p: number, theory: AxisymmetricTheory, { ...spring } = float) {
  const system = createStackSystem(stack, { theory });
  equilibrate(system, p, 1);
  return { end: settleHub(system, p, spring), system };
}

describe.each<AxisymmetricTheory>(['small-deflection', 'large-deflection'])('%s: a floating hub', (theory) => {
  it.each([
    ['stays on its stop until the shims overcome the preload', 0.9 * 10, 0],
    ['rises by what its spring gives', 10 + 1.7, 0.17e-3],
    ['stops at its travel', 10 + 5, 0.4e-3],
  ])('%s', (_, force_N, rise_m) => {
    const { end, system } = settled(free, force_N / AREA_M2, theory);
    expect(end.status).toBe('converged');
    expect(Math.abs(system.hubRise_m - rise_m)).toBeLessThan(1e-9);
    expect(clampForce(system, force_N / AREA_M2)).toBeCloseTo(force_N, 5);
  });

  it('leaves the shims bent as they were: without a seat a rise changes nothing else', () => {
    const p = 12 / AREA_M2;
    const held = createStackSystem(free, { theory });
    equilibrate(held, p, 1);
    const { system } = settled(free, p, theory);
    const [before, after] = [held, system].map(({ plates: [{ x, size, d }] }) => x[size - d]);
    expect(after / before).toBeCloseTo(1, 6);
  });

  it('balances a seat as well: pressure + seat = check spring', () => {
    const seated = { ...free, seat: { ...SEAT, height_m: 0.2e-3 } };
    for (const force_N of [2, 8, 12, 20]) {
      const p = force_N / AREA_M2;
      const { end, system } = settled(seated, p, theory);
      expect(end.status).toBe('converged');
      const seat_N = [...system.contact.force].reduce((sum, f, c) => sum + (system.pairs.below[c] < 0 ? f : 0), 0);
      const onHub = force_N + seat_N;
      expect(clampForce(system, p)).toBeCloseTo(onHub, 4);
      const { hubRise_m: rise } = system;
      const spring_N = float.preload_N + float.rate_N_m * rise;
      if (rise === 0) expect(onHub).toBeLessThanOrEqual(spring_N);
      else if (rise === float.travel_m) expect(onHub).toBeGreaterThanOrEqual(spring_N);
      else expect(onHub / spring_N).toBeCloseTo(1, 5);
    }
  });

  it('settles at the very pressure at which the seat lets go, where the force on the hub is known no better than its contact', () => {
    const shims = [steel(22, 0.15), steel(22, 0.15), steel(17, 0.15), steel(13, 0.15)];
    const stack: StackInput = {
      clampRadius_m: 4.5e-3,
      shims,
      pressureZone: { innerRadius_m: 6.5e-3, outerRadius_m: 10e-3 },
      seat: { innerRadius_m: 10e-3, outerRadius_m: 10.5e-3, height_m: 0.02e-3 },
      float: { travel_m: 0.25e-3, rate_N_m: 2000, preload_N: 1.5 },
    };
    const loaded = createLoadedStack(stack, { theory, landPressure: 'falling' });
    const at = (p: number) => loaded.at(p) as ConvergedLift;
    const [high, , rest, low] = [1e5, 10138.6, 0, 5069.3].map(at);
    expect(high.hubRise_m).toBe(0.25e-3);
    const letsGo = low.pressure_Pa / (1 - low.seatForce_N / rest.seatForce_N);
    for (const share of [1 - 1e-9, 1, 1 + 1e-9]) {
      const point = at(share * letsGo);
      expect(point.status).toBe('converged');
      expect(point.clampForce_N / (1.5 + 2000 * point.hubRise_m)).toBeCloseTo(1, 4);
      expect(point.seatOpening_m).toBeLessThan(1e-8);
    }
  });

  it('goes straight to its travel against no spring at all, and rests without load', () => {
    const loose = { ...float, rate_N_m: 0, preload_N: 0 };
    expect(settled(free, 1e4, theory, loose).system.hubRise_m).toBe(float.travel_m);
    expect(settled(free, 0, theory, loose).system.hubRise_m).toBe(0);
  });

  it('hands on the failure of the shims', () => {
    const { end } = settled({ ...free, shims: [steel(30, 1e-117)] }, 1e4, theory);
    expect(end.status).toBe('singular');
  });
});
