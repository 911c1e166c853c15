/**
 * Reads lifts, stresses and axial forces out of a solved stack.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | k, e | 1/m, - | curvature and membrane measure of a plate, see plate/surface-stress.ts |
 *
 * Balance of the stack along z: applied + seat = clamp + plate + spring.
 * Lifts count from the hub plane at rest: they hold the cone of a dished shim and the rise of a floating hub.
 */
import { RIGID } from '../contact/contact-pairs.ts';
import { clampStrain, elementStrains, type RadialStrain, surfaceStress } from '../plate/surface-stress.ts';
import type { ConvergedLift, StackShape } from '../types.ts';
import { gapOf } from './balanced-system.ts';
import type { Equilibrium } from './equilibrate.ts';
import { coneHeight } from './layers.ts';
import { clampForce } from './settle-hub.ts';
import type { StackSystem } from './stack-system.ts';

/** @param system in balance under p with the seat fully raised */
export function readLift(system: StackSystem, p: number, { iterations, residual }: Equilibrium): ConvergedLift {
  const shape = readShape(system);
  const stresses = readStresses(system, p);
  const face = shape.lift_m[0];
  return {
    status: 'converged',
    pressure_Pa: p,
    iterations,
    residual,
    faceEdgeLift_m: face[face.length - 1],
    zoneEdgeLift_m: zoneEdgeLift(system, shape),
    seatOpening_m: seatOpening(system, shape),
    hubRise_m: system.hubRise_m,
    shimEdgeLift_m: shape.lift_m.map((lift) => lift[lift.length - 1]),
    ...stresses,
    ...axialForces(system, p),
    shape,
  };
}

function readShape({ plates, merged, stack, tables, hubRise_m }: StackSystem): StackShape {
  const lift_m: Float64Array[] = [];
  const firstNode: number[] = [];
  for (const [k, plate] of plates.entries()) {
    const { nodes, first, x, d } = plate;
    const base = merged[k].clamped ? hubRise_m : 0;
    const lift = coneHeight(merged[k], tables.radius_m, plate).map((h, i) => base + h + x[i * d]);
    if (lift.length !== nodes) throw new Error('one lift a node');
    for (let s = merged[k].from; s < merged[k].to; s++) {
      lift_m.push(lift);
      firstNode.push(first);
    }
  }
  if (lift_m.length !== stack.shims.length) throw new Error('every shim belongs to one plate');
  return { radius_m: tables.radius_m, lift_m, firstNode };
}

/** Lift of the first shim that covers the outer edge of the pressure zone. */
function zoneEdgeLift({ zoneNode }: StackSystem, { lift_m, firstNode }: StackShape): number {
  const s = lift_m.findIndex((lift, k) => zoneNode >= firstNode[k] && zoneNode < firstNode[k] + lift.length);
  return lift_m[s][zoneNode - firstNode[s]];
}

/** Least clearance over the land; without a seat, the lift over the hub plane at the outer edge of the zone. */
function seatOpening(system: StackSystem, shape: StackShape): number {
  const { pairs, stack } = system;
  if (!stack.seat) return zoneEdgeLift(system, shape);
  let least = Number.POSITIVE_INFINITY;
  for (let c = 0; c < pairs.size; c++) if (pairs.below[c] === RIGID) least = Math.min(least, gapOf(system, c, 1));
  return Math.max(0, least);
}

function readStresses({ plates, merged, stack }: StackSystem, p: number) {
  const shimStress_Pa: number[] = [];
  const shimClampStress_Pa: number[] = [];
  for (const [k, plate] of plates.entries()) {
    // A ring has no clamp, and its bore is free of radial stress.
    const atClamp = merged[k].clamped ? clampStrain(plate, p) : { k: 0, e: 0 };
    const along: RadialStrain[] = [atClamp, ...elementStrains(plate).slice(1)];
    for (let s = merged[k].from; s < merged[k].to; s++) {
      const { thickness_m: t, youngsModulus_Pa: E, poissonsRatio: nu } = stack.shims[s];
      shimClampStress_Pa.push(surfaceStress(atClamp, t, E, nu));
      shimStress_Pa.push(along.reduce((most, strain) => Math.max(most, surfaceStress(strain, t, E, nu)), 0));
    }
  }
  return { shimStress_Pa, shimClampStress_Pa };
}

function axialForces(system: StackSystem, p: number) {
  const { plates, pairs, contact } = system;
  let appliedForce_N = 0;
  let springForce_N = 0;
  for (const { size, d, unitLoad, springs, x } of plates) {
    for (let i = 0; i < size; i += d) appliedForce_N += p * unitLoad[i];
    for (const { node, rate_N_m, preload_N } of springs) springForce_N += preload_N + rate_N_m * x[node * d];
  }
  let seatForce_N = 0;
  let plateForce_N = 0;
  for (let c = 0; c < pairs.size; c++) {
    if (pairs.below[c] === RIGID) seatForce_N += contact.force[c];
    if (pairs.above[c] === RIGID) plateForce_N += contact.force[c];
  }
  return { appliedForce_N, clampForce_N: clampForce(system, p), seatForce_N, plateForce_N, springForce_N };
}
