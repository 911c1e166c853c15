/**
 * Reads lifts, stresses and axial forces out of a solved stack.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | k, e | 1/m, - | curvature and membrane measure of a plate, see plate/surface-stress.ts |
 *
 * Balance of the stack along z: applied + seat = clamp + plate.
 */
import { RIGID } from '../contact/contact-pairs.ts';
import { clampStrain, elementStrains, type RadialStrain, surfaceStress } from '../plate/surface-stress.ts';
import type { ConvergedLift, StackShape } from '../types.ts';
import type { Equilibrium } from './equilibrate.ts';
import { gapOf, type StackSystem } from './stack-system.ts';

/** @param system in balance under p with the seat fully raised */
export function readLift(system: StackSystem, p: number, { iterations, residual }: Equilibrium): ConvergedLift {
  const shape = readShape(system);
  const stresses = readStresses(system, p);
  const face = shape.lift_m[0];
  const zone = system.plates.find((plate) => plate.nodes > system.zoneNode);
  return {
    status: 'converged',
    pressure_Pa: p,
    iterations,
    residual,
    faceEdgeLift_m: face[face.length - 1],
    zoneEdgeLift_m: zone ? zone.x[system.zoneNode * zone.d] : Number.NaN,
    seatOpening_m: seatOpening(system),
    shimEdgeLift_m: shape.lift_m.map((lift) => lift[lift.length - 1]),
    ...stresses,
    ...axialForces(system, p),
    shape,
  };
}

function readShape({ plates, merged, stack, tables }: StackSystem): StackShape {
  const lift_m: Float64Array[] = [];
  for (const [k, plate] of plates.entries()) {
    const lift = Float64Array.from({ length: plate.nodes }, (_, i) => plate.x[i * plate.d]);
    for (let s = merged[k].from; s < merged[k].to; s++) lift_m.push(lift);
  }
  if (lift_m.length !== stack.shims.length) throw new Error('every shim belongs to one plate');
  return { radius_m: tables.radius_m, lift_m };
}

/** Least clearance over the land; without a seat, the lift over the hub plane at the outer edge of the zone. */
function seatOpening(system: StackSystem): number {
  const { pairs, stack, zoneNode, plates } = system;
  if (!stack.seat) {
    const plate = plates.find((q) => q.nodes > zoneNode);
    return plate ? plate.x[zoneNode * plate.d] : Number.NaN;
  }
  let least = Number.POSITIVE_INFINITY;
  for (let c = 0; c < pairs.size; c++) {
    if (pairs.below[c] === RIGID) least = Math.min(least, gapOf(system, c, stack.seat.height_m));
  }
  return Math.max(0, least);
}

function readStresses({ plates, merged, stack }: StackSystem, p: number) {
  const shimStress_Pa: number[] = [];
  const shimClampStress_Pa: number[] = [];
  for (const [k, plate] of plates.entries()) {
    const atClamp = clampStrain(plate, p);
    const along: RadialStrain[] = [atClamp, ...elementStrains(plate).slice(1)];
    for (let s = merged[k].from; s < merged[k].to; s++) {
      const { thickness_m: t, youngsModulus_Pa: E, poissonsRatio: nu } = stack.shims[s];
      shimClampStress_Pa.push(surfaceStress(atClamp, t, E, nu));
      shimStress_Pa.push(along.reduce((most, strain) => Math.max(most, surfaceStress(strain, t, E, nu)), 0));
    }
  }
  return { shimStress_Pa, shimClampStress_Pa };
}

function axialForces({ plates, pairs, contact }: StackSystem, p: number) {
  let appliedForce_N = 0;
  let clampForce_N = 0;
  for (const plate of plates) {
    for (let i = 0; i < plate.size; i += plate.d) appliedForce_N += p * plate.unitLoad[i];
    clampForce_N += p * plate.unitLoad[0] - plate.internal[0];
  }
  let seatForce_N = 0;
  let plateForce_N = 0;
  for (let c = 0; c < pairs.size; c++) {
    if (pairs.below[c] === RIGID) seatForce_N += contact.force[c];
    if (pairs.above[c] === RIGID) plateForce_N += contact.force[c];
  }
  return { appliedForce_N, clampForce_N, seatForce_N, plateForce_N };
}
