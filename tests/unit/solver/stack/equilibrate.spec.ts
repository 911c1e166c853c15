import { describe, expect, it } from 'vitest';
import { annulusUnderLineLoad } from '../../../../src/solver/plate/annulus-under-line-load.ts';
import { gapOf } from '../../../../src/solver/stack/balanced-system.ts';
import { equilibrate, ITERATION_LIMIT, RESIDUAL_TOLERANCE } from '../../../../src/solver/stack/equilibrate.ts';
import { CORRECTION_TOLERANCE, createStackSystem } from '../../../../src/solver/stack/stack-system.ts';
import type { AxisymmetricTheory } from '../../../../src/solver/types.ts';
import { SEAT, stackOf, steel } from './steel.ts';

const THEORIES: readonly AxisymmetricTheory[] = ['small-deflection', 'large-deflection'];
const half = stackOf([steel(24, 0.2)], { pressureZone: { innerRadius_m: 6e-3, outerRadius_m: 12e-3 } });
/** E t³/12(1 - ν²) of 0.2 mm of spring steel, by hand [N·m]. */
const D = 0.150916;

const systemOf = (stack: Parameters<typeof createStackSystem>[0], theory: AxisymmetricTheory, elements = 16) =>
  createStackSystem(stack, { theory, elements });
const rimLift = ({ plates: [{ x, size, d }] }: ReturnType<typeof systemOf>) => x[size - d];
const seatForce = ({ contact }: ReturnType<typeof systemOf>) => contact.force.reduce((sum, f) => sum + f, 0);

describe('balance', () => {
  // Roark, 7th ed., table 11.2, case 2l, b/a = 0.5, nu = 0.3: K_ya = 0.008589 (published check A2: recomputed).
  it('of one shim under small deflection lifts its rim as Roark says', () => {
    const system = systemOf(half, 'small-deflection');
    expect(equilibrate(system, 1e5, 1).status).toBe('converged');
    const exact = (0.008589 * 1e5 * 12e-3 ** 4) / D;
    expect(rimLift(system) / exact).toBeCloseTo(1, 4);
  });

  // Published check A4 (own, two methods): b/a = 0.5, W_lin = 2 t: lift 1.5029 t; E a⁴ load 2 / 0.09379.
  it('of one shim under large deflection lifts its rim as the shooting solution does', () => {
    const system = systemOf(half, 'large-deflection');
    const p = ((2 / 0.09379) * 206e9 * 0.2e-3 ** 4) / 12e-3 ** 4;
    const { status, iterations } = equilibrate(system, p, 1);
    expect(status).toBe('converged');
    expect(iterations).toBeGreaterThan(2);
    expect(rimLift(system) / 0.2e-3 / 1.5029).toBeCloseTo(1, 3);
  });

  it('of a shim on a high seat takes the force of Roark 1l at the inner edge of the land', () => {
    const height_m = 0.1e-3;
    const [face] = half.shims;
    const seat = { innerRadius_m: 10e-3, outerRadius_m: 11e-3, height_m };
    const annulus = { clampRadius_m: 6e-3, outerRadius_m: 12e-3, bendingRigidity_Nm: D, poissonsRatio: 0.3 };
    const unit = annulusUnderLineLoad(annulus, { radius_m: 10e-3, load_N_m: 1 });
    const exact = (height_m / unit.at(10e-3).lift_m) * 2 * Math.PI * 10e-3;
    const system = systemOf({ ...half, shims: [face], seat }, 'small-deflection');
    expect(equilibrate(system, 0, 1).status).toBe('converged');
    expect(seatForce(system) / exact).toBeCloseTo(1, 4);
    // Half of the interference, half of the force.
    expect(equilibrate(system, 0, 0.5).status).toBe('converged');
    expect((2 * seatForce(system)) / exact).toBeCloseTo(1, 4);
    expect(equilibrate(system, 0, 0).status).toBe('converged');
    expect(seatForce(system)).toBeLessThan(1e-6 * exact);
  });
});

describe.each(THEORIES)('%s: what converged means', (theory) => {
  const staged = stackOf([steel(30, 0.15), steel(30, 0.15), steel(16, 0.1), steel(28, 0.2), steel(24, 0.2)], {
    seat: { ...SEAT, height_m: 0.05e-3 },
    backingPlate: { gap_m: 0.2e-3, outerRadius_m: 10e-3 },
  });

  it('is balance to 1e-7 of the load, no gap below nothing, no pull, no force across a gap', () => {
    const system = systemOf(staged, theory, 8);
    for (const p of [0, 5e4, 2e5, 6e5]) {
      const { status, residual, iterations } = equilibrate(system, p, 1);
      expect(status).toBe('converged');
      expect(residual).toBeLessThanOrEqual(RESIDUAL_TOLERANCE);
      expect(iterations).toBeLessThanOrEqual(ITERATION_LIMIT);
      let closed = 0;
      for (let c = 0; c < system.pairs.size; c++) {
        const [gap, force] = [gapOf(system, c, 1), system.contact.force[c]];
        expect(gap).toBeGreaterThan(-1e-6 * 0.1e-3);
        expect(force).toBeGreaterThanOrEqual(0);
        if (force > 0) expect(Math.abs(gap)).toBeLessThan(1e-10);
        if (force > 0) closed++;
      }
      expect(closed).toBeGreaterThan(0);
    }
  });

  it('is one step from a state that is already in balance', () => {
    const system = systemOf(staged, theory, 8);
    equilibrate(system, 2e5, 1);
    const before = system.plates.map(({ x }) => x.slice());
    expect(equilibrate(system, 2e5, 1).iterations).toBe(1);
    for (const [k, { x }] of system.plates.entries()) {
      const size = Math.max(...before[k].map(Math.abs));
      for (const [i, value] of x.entries()) {
        expect(Math.abs(value - before[k][i])).toBeLessThanOrEqual(100 * CORRECTION_TOLERANCE * size);
      }
    }
  });
});

describe.each(THEORIES)('%s: failures', (theory) => {
  it('singular: a shim so thin that its stiffness is no number but 0', () => {
    const system = systemOf(stackOf([steel(30, 1e-117)]), theory);
    expect(equilibrate(system, 1e5, 1).status).toBe('singular');
  });

  it('does not call an infinite load balanced', () => {
    const system = systemOf(half, theory);
    expect(equilibrate(system, Number.POSITIVE_INFINITY, 1).status).not.toBe('converged');
  });
});

describe('small-deflection: failures of what the solve is given', () => {
  it('singular: contacts that give no way at all', () => {
    const system = systemOf(
      { ...half, seat: { innerRadius_m: 10e-3, outerRadius_m: 11e-3, height_m: 1e-4 } },
      'small-deflection',
    );
    equilibrate(system, 0, 1);
    for (const { columns, known } of system.compliances) {
      columns.fill(0);
      known.fill(1);
    }
    expect(equilibrate(system, 0, 1).status).toBe('singular');
  });

  it('not-converged: a load that is no number leaves no state in balance', () => {
    const system = systemOf(half, 'small-deflection');
    const { status, iterations, residual } = equilibrate(system, Number.NaN, 1);
    expect([status, iterations, residual]).toEqual(['not-converged', ITERATION_LIMIT, Number.NaN]);
  });
});

describe('large-deflection: far states', () => {
  it('are reached in one go from flat: more than ten thicknesses of lift', () => {
    const system = systemOf(half, 'large-deflection');
    const end = equilibrate(system, 1e9, 1);
    expect(end.status).toBe('converged');
    expect(rimLift(system)).toBeGreaterThan(10 * 0.2e-3);
  });
});
