/**
 * Hydraulic stop: over the last length of the stroke a plunger enters a cup and presses the oil in it out through the clearance.
 *   Q = |v| (A + pi D c / 2),   D = d + c,   A = pi d^2/4, at the rebound end less the rod that passes through it
 *   dp = w(L) [12 mu L Q / (pi D c^3) + (54/35) rho/2 (Q / (pi D c))^2],   F = sign(v) dp A
 * Out of the way must go what the plunger displaces, and what its moving side drags into the cup. The loss is that of the annular
 * gap (restriction/annular-gap.ts), over the length L that the plunger is in the cup, which stands for the length of the gap.
 * Only motion into the cup presses: out of it, oil comes back freely.
 *
 * At L = 0 the gap has no length but keeps its exit loss, yet before entry there is none. So that force has no step, the loss
 * comes in by w = 3 t^2 - 2 t^3, t = L / (4 c), over the first four clearances (own: the mouth of the cup is open by more than the
 * clearance until the plunger is a few clearances deep), at most over the whole length.
 *
 * Source: Merritt 1967 (from memory) for the gap; own for the entry. Within c/d of the dashpot of vibration texts,
 * F = 3 pi mu L d^3/(4 c^3) (1 + 2 c/d) v (from memory). Concentric: a plunger that touches lets 2.5 times as much
 * through. Holds for a Reynolds number 2 rho Q/(pi D mu) below about 2000. Left out: shear on the side of the plunger (2 c/d), a
 * tapered plunger, refill and air in the cup, compression of the oil.
 *
 * symbol  unit   meaning
 * d, D    m      diameter of the plunger, mean diameter of the gap
 * A       m2     area of the plunger on which the pressure in the cup acts
 * c       m      clearance: half the difference of the diameters
 * L       m      length of the plunger in the cup
 * v       m/s    shaft speed, positive in compression
 * Q, dp          flow out of the cup [m3/s], pressure in it over that of the chamber [Pa]
 * w, t    -      share of the loss at entry
 */
import { valueOrNaN } from '../numeric/solved.ts';
import { annularGap, wallDrivenArea } from '../restriction/annular-gap.ts';
import type { DamperInput, HydraulicStopInput } from './types.ts';

/** Depth of the plunger, in clearances, from which the whole loss counts. */
const ENTRY_CLEARANCES = 4;

/** What the stop needs to know of its damper, with the stroke position at which it stands. */
export type DamperWithStop = Pick<DamperInput, 'rodDiameter_m' | 'travel_m' | 'stroke_m' | 'fluid' | 'hydraulicStop'>;

/** Force of the stop at the shaft [N], against the motion; 0 without a stop. */
export function hydraulicStopForce(damper: DamperWithStop, v: number): number {
  const { hydraulicStop: stop } = damper;
  return stop ? Math.sign(v) * plungerArea(stop, damper.rodDiameter_m) * hydraulicStopPressure(damper, v) : 0;
}

/**
 * Pressure in the cup over that of its chamber [Pa]: 0 without a stop, outside the cup, at rest and on the way out.
 * Sizes and oil must hold: `checkDamper` refuses others, and here they give NaN.
 */
export function hydraulicStopPressure(
  { hydraulicStop: stop, rodDiameter_m, travel_m, stroke_m, fluid }: DamperWithStop,
  v: number,
): number {
  if (!stop) return 0;
  const { clearance_m: c, plungerDiameter_m: d, length_m } = stop;
  const L = engagedLength(stop, travel_m, stroke_m);
  const intoCup = Math.max(stop.end === 'compression' ? v : -v, 0);
  const gap = { outerDiameter_m: d + 2 * c, clearance_m: c, length_m: L, eccentricity: 0 };
  const Q = intoCup * (plungerArea(stop, rodDiameter_m) + wallDrivenArea(gap));
  const share = entryShare(L / Math.min(ENTRY_CLEARANCES * c, length_m));
  return share * valueOrNaN(annularGap(gap, fluid).drop(Q));
}

/** Length of the plunger in the cup [m] after a stroke from full extension; 0 outside. */
export function engagedLength({ end, length_m }: HydraulicStopInput, travel_m: number, stroke_m: number): number {
  const fromEnd_m = end === 'compression' ? travel_m - stroke_m : stroke_m;
  return Math.min(Math.max(length_m - fromEnd_m, 0), length_m);
}

function plungerArea({ end, plungerDiameter_m: d }: HydraulicStopInput, rodDiameter_m: number): number {
  return (Math.PI / 4) * (d * d - (end === 'rebound' ? rodDiameter_m ** 2 : 0));
}

/** From 0 outside to 1, without a step in the value or the slope. */
function entryShare(t: number): number {
  const x = Math.min(Math.max(t, 0), 1);
  return x * x * (3 - 2 * x);
}
