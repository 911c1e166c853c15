/**
 * Oil that warms with a damper: what its chambers hold, and in a layout with a base valve as much beyond it as the bore sweeps, the same
 * that damper-model.ts takes.
 *   V = A_p (L - x + e) + (A_p - A_r)(x + e) [+ A_p L]
 * Source: geometry; what a reservoir holds no document says.
 *
 * symbol    unit  meaning
 * V         m3    volume of oil
 * A_p, A_r  m2    bore and rod cross-sections
 * L, x, e   m     travel, stroke from full extension, length of oil left in each chamber at its end of the stroke
 */
import { pistonAreas } from '../damper/piston-areas.ts';
import type { DamperInput } from '../damper/types.ts';

type Oiled = Pick<
  DamperInput,
  'boreDiameter_m' | 'rodDiameter_m' | 'travel_m' | 'stroke_m' | 'endClearance_m' | 'base' | 'fluid'
>;

/** At the stroke position of the damper [kg]. */
export function oilMass(damper: Oiled): number {
  const { travel_m: L, stroke_m: x, endClearance_m: e, base, fluid } = damper;
  const { piston_m2: A_p, annulus_m2: A_a } = pistonAreas(damper);
  const beyondBase_m3 = base ? A_p * L : 0;
  return fluid.density_kg_m3 * (A_p * (L - x + e) + A_a * (x + e) + beyondBase_m3);
}
