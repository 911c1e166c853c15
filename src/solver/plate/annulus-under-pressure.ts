/**
 * Closed form of an annulus clamped inside, free outside, under pressure on a ring of it.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | q | Pa | pressure, + away from the piston |
 * | r0 | m | radius from which the pressure acts, out to the rim |
 * | L11, L14, L17 | - | see annulus-constants.ts |
 *
 * Qb = q (a² - r0²) / 2b;  load terms -q r⁴ L11, -q r³ L14, -q r² L17 in Roark's sign. A ring r1…r2 is the pressure
 * from r1 less the same pressure from r2.
 * Source: Roark's Formulas for Stress and Strain, 7th ed. 2002, Table 11.2, case 2l (recomputed exactly).
 * Range: as annulus-closed-form.ts.
 */
import type { Annulus, AnnulusBending } from './annulus-closed-form.ts';
import { bendAnnulus, checkLoad, checkWithin, superpose } from './annulus-closed-form.ts';
import { pressureConstants } from './annulus-constants.ts';

export interface PressureFrom {
  readonly innerRadius_m: number;
  /** + away from the piston. */
  readonly pressure_Pa: number;
}

export interface PressureRing extends PressureFrom {
  readonly outerRadius_m: number;
}

/** Roark case 2l: pressure from a radius out to the rim. @throws InputError `plate.annulus.radius`, `plate.annulus.load` */
export function annulusUnderPressure(annulus: Annulus, load: PressureFrom): AnnulusBending {
  const { clampRadius_m: b, outerRadius_m: a, poissonsRatio: nu } = annulus;
  const { innerRadius_m: r0, pressure_Pa: q } = load;
  checkWithin('load.innerRadius_m', r0, b, a);
  checkLoad('load.pressure_Pa', q, 'Pa');
  const termsAt = (r: number) => {
    const L = pressureConstants(r0 / r, nu);
    return { deflection: q * r ** 4 * L.deflection, slope: q * r ** 3 * L.slope, moment: q * r ** 2 * L.moment };
  };
  return bendAnnulus(annulus, { clampShear_N_m: (q * (a ** 2 - r0 ** 2)) / (2 * b), termsAt });
}

/** Pressure between two radii, by superposition. @throws InputError `plate.annulus.radius` when r1 > r2 or off the plate */
export function annulusUnderPressureRing(annulus: Annulus, load: PressureRing): AnnulusBending {
  const { innerRadius_m: r1, outerRadius_m: r2, pressure_Pa: q } = load;
  checkWithin('load.outerRadius_m', r2, r1, annulus.outerRadius_m);
  const fromInner = annulusUnderPressure(annulus, { innerRadius_m: r1, pressure_Pa: q });
  const beyondOuter = annulusUnderPressure(annulus, { innerRadius_m: r2, pressure_Pa: -q });
  return superpose(fromInner, beyondOuter);
}
