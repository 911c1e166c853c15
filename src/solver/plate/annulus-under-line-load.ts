/**
 * Closed form of an annulus clamped inside, free outside, pushed along a circle.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | w | N/m | line load per length of its circle, + away from the piston |
 * | r0 | m | radius of the circle |
 * | L3, L6, L9 | - | see annulus-constants.ts |
 *
 * Qb = w r0 / b;  load terms -w r³ L3, -w r² L6, -w r L9 in Roark's sign.
 * Source: Roark's Formulas for Stress and Strain, 7th ed. 2002, Table 11.2, case 1l (recomputed exactly).
 * Range: as annulus-closed-form.ts.
 */
import type { Annulus, AnnulusBending } from './annulus-closed-form.ts';
import { bendAnnulus, checkLoad, checkWithin } from './annulus-closed-form.ts';
import { lineLoadConstants } from './annulus-constants.ts';

export interface LineLoad {
  readonly radius_m: number;
  /** Per length of the circle, + away from the piston. */
  readonly load_N_m: number;
}

/** Roark case 1l. @throws InputError `plate.annulus.radius` when the circle is off the plate, `plate.annulus.load` */
export function annulusUnderLineLoad(annulus: Annulus, { radius_m: r0, load_N_m: w }: LineLoad): AnnulusBending {
  const { clampRadius_m: b, outerRadius_m: a, poissonsRatio: nu } = annulus;
  checkWithin('load.radius_m', r0, b, a);
  checkLoad('load.load_N_m', w, 'N/m');
  const termsAt = (r: number) => {
    const L = lineLoadConstants(r0 / r, nu);
    return { deflection: w * r ** 3 * L.deflection, slope: w * r ** 2 * L.slope, moment: w * r * L.moment };
  };
  return bendAnnulus(annulus, { clampShear_N_m: (w * r0) / b, termsAt });
}
