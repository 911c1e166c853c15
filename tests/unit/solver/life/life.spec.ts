/** Goodman and yield against hand-worked numbers; rules: Shigley's Mechanical Engineering Design, from memory. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goodmanUse, swingBetween, trescaStress } from '../../../../src/solver/life/goodman.ts';
import { shimUse, shimUses } from '../../../../src/solver/life/shim-use.ts';
import { STRENGTH_TABLE, strengthOf } from '../../../../src/solver/life/strength.ts';
import { solveLift } from '../../../../src/solver/stack/solve-lift.ts';
import type { ShimStress, StackInput } from '../../../../src/solver/types.ts';
import { converged, shim } from '../../../helpers/stacks.ts';

const MPa = 1e6;
const STRENGTH = { yield_Pa: 1300 * MPa, tensile_Pa: 1500 * MPa, endurance_Pa: 600 * MPa };
const stress = fc.double({ min: -3000 * MPa, max: 3000 * MPa, noNaN: true });

describe('modified Goodman', () => {
  const use = (one_MPa: number, other_MPa: number) =>
    goodmanUse(swingBetween(one_MPa * MPa, other_MPa * MPa), STRENGTH);

  it.each([
    // mean 500, amplitude 300: 300/600 + 500/1500 = 5/6, reserve 1.2
    [200, 800, 5 / 6],
    // mean 400, amplitude 400: 400/600 + 400/1500 = 14/15
    [0, 800, 14 / 15],
    // no amplitude: what is left is the tensile strength, 500/1500
    [500, 500, 1 / 3],
    // no mean: what is left is the endurance limit, 300/600
    [-300, 300, 1 / 2],
    // mean -400 counts as 0: 200/600
    [-600, -200, 1 / 3],
    [0, 0, 0],
  ])('between %d and %d MPa uses %d', (one, other, wanted) => {
    expect(use(one, other)).toBeCloseTo(wanted, 12);
    expect(use(other, one)).toBeCloseTo(wanted, 12);
  });

  it('never falls as a swing from rest into tension grows, and the reserve is the factor to the limit', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 2000, noNaN: true }), fc.double({ min: 1, max: 3, noNaN: true }), (s, k) => {
        expect(use(0, k * s)).toBeGreaterThanOrEqual(use(0, s));
        expect(use(0, s / use(0, s))).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('Tresca stress', () => {
  it.each([
    [900, 270, 900],
    [-900, -270, 900],
    [500, -300, 800],
    [0, -400, 400],
  ])('of %d and %d MPa is %d', (radial, hoop, wanted) => {
    expect(trescaStress(radial, hoop)).toBe(wanted);
  });

  it('is never below the von Mises stress', () => {
    fc.assert(
      fc.property(stress, stress, (r, h) => {
        expect(trescaStress(r, h)).toBeGreaterThanOrEqual(Math.sqrt(r * r - r * h + h * h) * (1 - 1e-12));
      }),
    );
  });
});

describe('strength of a shim', () => {
  const steel = shim(12, 0.15);
  const bronze = shim(12, 0.15, 110e9);

  it('is assumed for spring steel: 1500, 0.85 and 0.4 of it', () => {
    expect(strengthOf(steel)).toEqual({ tensile_Pa: 1500 * MPa, yield_Pa: 1275 * MPa, endurance_Pa: 600 * MPa });
  });

  it('says of every assumed number that it is common practice or from memory', () => {
    for (const { source } of Object.values(STRENGTH_TABLE)) expect(source).toMatch(/common practice|from memory/);
    expect(STRENGTH_TABLE.tensile.source).toMatch(/common practice, no source/);
  });

  it('keeps what is given and lets the rest follow from it', () => {
    expect(strengthOf({ ...steel, strength: { tensile_Pa: 1900 * MPa } })).toEqual({
      tensile_Pa: 1900 * MPa,
      yield_Pa: 1615 * MPa,
      // 0.4 of 1900 MPa would be 760: the endurance limit of steels stops at 700 MPa.
      endurance_Pa: 700 * MPa,
    });
    expect(strengthOf({ ...steel, strength: { yield_Pa: 1700 * MPa } })?.tensile_Pa).toBeCloseTo(2000 * MPa, 0);
    expect(strengthOf({ ...steel, strength: { endurance_Pa: 500 * MPa } })).toMatchObject({ endurance_Pa: 500 * MPa });
    expect(strengthOf({ ...bronze, strength: STRENGTH })).toEqual(STRENGTH);
  });

  it('is not known of another metal without all three', () => {
    expect(strengthOf(bronze)).toBeUndefined();
    const { yield_Pa, tensile_Pa } = STRENGTH;
    expect(strengthOf({ ...bronze, strength: { yield_Pa, tensile_Pa } })).toBeUndefined();
  });
});

/** Stresses at two nodes, made up [MPa]; the far face bears nothing. */
const made = (radial: readonly number[], hoop: readonly number[]): ShimStress => ({
  radius_m: Float64Array.of(5e-3, 9e-3),
  piston: { radial_Pa: Float64Array.from(radial, (s) => s * MPa), hoop_Pa: Float64Array.from(hoop, (s) => s * MPa) },
  far: { radial_Pa: new Float64Array(2), hoop_Pa: new Float64Array(2) },
  peak: { stress_Pa: 0, radius_m: 5e-3, face: 'piston', direction: 'radial' },
});

describe('use of a shim', () => {
  it('takes both stresses of a swing at one place, not the peaks of the two states', () => {
    // Each node swings 0 to 600 or 600 to 0: 300/600 + 300/1500 = 0.7. Peak against peak would see no swing at all.
    const use = shimUse(made([600, 0], [0, 0]), made([0, 600], [0, 0]), STRENGTH);
    expect(use.fatigue).toBeCloseTo(0.7, 12);
    expect(use.yield).toBeCloseTo(600 / 1300, 12);
  });

  it('counts the yield of the closed state too, and opposite stresses together', () => {
    expect(shimUse(made([1000, 0], [-560, 0]), made([0, 0], [0, 0]), STRENGTH).yield).toBeCloseTo(1560 / 1300, 12);
  });

  it('finds the worst in the hoop stress where that is greater', () => {
    expect(shimUse(made([0, 0], [0, 0]), made([0, 100], [0, 900]), STRENGTH).fatigue).toBeCloseTo(
      450 / 600 + 450 / 1500,
      12,
    );
  });
});

describe('use of a solved stack', () => {
  const stack: StackInput = {
    clampRadius_m: 6e-3,
    shims: [shim(12, 0.15), shim(9, 0.2, 110e9)],
    pressureZone: { innerRadius_m: 7e-3, outerRadius_m: 10.5e-3 },
    seat: { innerRadius_m: 10.5e-3, outerRadius_m: 11e-3, height_m: 0.1e-3 },
  };
  const pressures = [0, 1e5, 3e5, 5e5, 8e5];
  const stresses = solveLift(stack, pressures, { theory: 'large-deflection', profiles: true }).points.map((point) => {
    const { stress } = converged(point);
    if (!stress) throw new Error('no stress');
    return stress;
  });
  const uses = stresses.map((open) => shimUses(stack.shims, stresses[0], open));

  it('at rest is that of the preload alone: its greatest tension over the tensile strength', () => {
    const { peak, piston, far } = stresses[0][0];
    expect(Math.abs(peak.stress_Pa)).toBeGreaterThan(10 * MPa);
    const tension = Math.max(...[piston, far].flatMap(({ radial_Pa, hoop_Pa }) => [...radial_Pa, ...hoop_Pa]));
    expect(uses[0][0]?.fatigue).toBeCloseTo(tension / (1500 * MPa), 9);
  });

  it('rises with the pressure', () => {
    const fatigue = uses.map(([face]) => face?.fatigue ?? Number.NaN);
    for (let i = 1; i < fatigue.length; i++) expect(fatigue[i]).toBeGreaterThan(fatigue[i - 1]);
  });

  it('is null for the shim whose strength is not known', () => {
    expect(uses.map(([, second]) => second)).toEqual(pressures.map(() => null));
  });
});
