/**
 * One thin annulus clamped at its inner edge and free at its rim: what its closed forms give, and what they refuse.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | a, b | m | rim and clamp radius |
 * | r | m | radius looked at |
 * | D | N·m | bending rigidity E t³ / 12 (1 - ν²) |
 * | nu | - | Poisson's ratio |
 * | Mb | N | bending moment per length at the clamp |
 * | Qb | N/m | force per length at the clamp |
 *
 * w = Mb r² F2 / D - Qb r³ F3 / D + (load term), with the load term given by the case.
 * Sign: lift w, slope w′ and loads are positive away from the piston; the moment D (w″ + ν w′/r) is positive when the
 * piston side is in tension. Roark counts y up and loads down, so that w = -y, w′ = -θ and M = -M(Roark) at equal load.
 * Source: Roark's Formulas for Stress and Strain, 7th ed. 2002, Table 11.2, general expressions and cases 1l, 2l.
 * Range: small deflection (lift below about half a thickness), thin (t below about (a - b) / 20: shear left out).
 */
import { InputError } from '../../units/fault.ts';
import type { LoadConstants } from './annulus-constants.ts';
import { clampConstants } from './annulus-constants.ts';

export interface Annulus {
  readonly clampRadius_m: number;
  readonly outerRadius_m: number;
  readonly bendingRigidity_Nm: number;
  readonly poissonsRatio: number;
}

/** The state of the plate at one radius. */
export interface AnnulusSection {
  readonly lift_m: number;
  readonly slope: number;
  /** Radial bending moment per length, + with the piston side in tension [N]. */
  readonly radialMoment_N: number;
}

export interface AnnulusBending {
  /** Radial bending moment per length at the clamp, + with the piston side in tension [N]. */
  readonly clampMoment_N: number;
  /** Force per length that the plate puts on the clamp, + away from the piston [N/m]. */
  readonly clampShear_N_m: number;
  readonly edge: AnnulusSection;
  /** @throws InputError `plate.annulus.radius` outside clamp and rim */
  readonly at: (radius_m: number) => AnnulusSection;
}

/** D = E t³ / 12 (1 - ν²) [N·m]. Source: Timoshenko & Woinowsky-Krieger 1959, eq. 3 (number from memory). */
export function bendingRigidity(youngsModulus_Pa: number, thickness_m: number, poissonsRatio: number): number {
  return (youngsModulus_Pa * thickness_m ** 3) / (12 * (1 - poissonsRatio ** 2));
}

/** A load given by its force on the clamp and by the terms it adds beyond its own radius, already in N/m and N. */
export interface AnnulusLoad {
  readonly clampShear_N_m: number;
  /** w D, w′ D and M that the load itself adds at radius r (Roark's G terms times the load), + as in the header. */
  readonly termsAt: (r: number) => LoadConstants;
}

/**
 * The free rim fixes the clamp moment (M = 0 at r = a), and that fixes the whole shape.
 * @returns moment and force at the clamp, the rim, and any radius between
 * @throws InputError `plate.annulus.*` when radii do not rise, D is not positive or ν is outside -1…0.5
 */
export function bendAnnulus(annulus: Annulus, load: AnnulusLoad): AnnulusBending {
  checkAnnulus(annulus);
  const { clampRadius_m: b, outerRadius_m: a, bendingRigidity_Nm: D, poissonsRatio: nu } = annulus;
  const { clampShear_N_m: Qb, termsAt } = load;
  const rim = clampConstants(b / a, nu);
  const Mb = (Qb * a * rim.C9 - termsAt(a).moment) / rim.C8;

  const at = (r: number): AnnulusSection => {
    checkWithin('radius_m', r, b, a);
    const { C2, C3, C5, C6, C8, C9 } = clampConstants(b / r, nu);
    const own = termsAt(r);
    return {
      lift_m: (Mb * r ** 2 * C2 - Qb * r ** 3 * C3 + own.deflection) / D,
      slope: (Mb * r * C5 - Qb * r ** 2 * C6 + own.slope) / D,
      radialMoment_N: Mb * C8 - Qb * r * C9 + own.moment,
    };
  };
  return { clampMoment_N: Mb, clampShear_N_m: Qb, edge: at(a), at };
}

/** The shapes, moments and forces of two loads on one annulus, added. */
export function superpose(p: AnnulusBending, q: AnnulusBending): AnnulusBending {
  const at = (r: number): AnnulusSection => addSections(p.at(r), q.at(r));
  return {
    clampMoment_N: p.clampMoment_N + q.clampMoment_N,
    clampShear_N_m: p.clampShear_N_m + q.clampShear_N_m,
    edge: addSections(p.edge, q.edge),
    at,
  };
}

const addSections = (p: AnnulusSection, q: AnnulusSection): AnnulusSection => ({
  lift_m: p.lift_m + q.lift_m,
  slope: p.slope + q.slope,
  radialMoment_N: p.radialMoment_N + q.radialMoment_N,
});

function checkAnnulus({ clampRadius_m: b, outerRadius_m: a, bendingRigidity_Nm: D, poissonsRatio: nu }: Annulus): void {
  if (!(b > 0 && Number.isFinite(b))) refuse('clamp-radius', 'clampRadius_m', b, 'more than 0', 'm');
  if (!(a > b && Number.isFinite(a)))
    refuse('outer-radius', 'outerRadius_m', a, `more than the clamp radius ${b}`, 'm');
  if (!(D > 0 && Number.isFinite(D))) refuse('rigidity', 'bendingRigidity_Nm', D, 'more than 0', 'N·m');
  if (!(nu > -1 && nu <= 0.5)) refuse('poissons-ratio', 'poissonsRatio', nu, 'between -1 and 0.5');
}

/** @throws InputError `plate.annulus.radius` when r is outside from…to */
export function checkWithin(path: string, r: number, from: number, to: number): void {
  if (!(r >= from && r <= to)) refuse('radius', path, r, `between ${from} and ${to}`, 'm');
}

/** @throws InputError `plate.annulus.load` when a load is not a number */
export function checkLoad(path: string, load: number, unit: string): void {
  if (!Number.isFinite(load)) refuse('load', path, load, 'a finite number', unit);
}

function refuse(code: string, path: string, got: number, wanted: string, unit?: string): never {
  throw new InputError({ code: `plate.annulus.${code}`, path, got: String(got), wanted, unit });
}
