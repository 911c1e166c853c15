/**
 * Reads lifts, stresses and axial forces out of a solved periodic stack.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | φ | rad | n times the angle round the circle; 0 at a port or crest |
 * | k, e | 1/m, - | kr + ν kt and er + ν et, see plate/surface-stress.ts |
 *
 * Balance of the stack along z: applied + seat = clamp + plate + spring. Lifts count from the hub plane at rest.
 */
import { RIGID } from '../../contact/contact-pairs.ts';
import { liftAround } from '../../plate/periodic/circle-basis.ts';
import { meanLift } from '../../plate/periodic/periodic-force.ts';
import { loadShares } from '../../plate/periodic/periodic-load.ts';
import type { PeriodicPlate } from '../../plate/periodic/periodic-plate.ts';
import { type PeriodicCuts, periodicCuts, strainsAlong } from '../../plate/periodic/periodic-strains.ts';
import type { SectionStrains } from '../../plate/section-strains.ts';
import { stressProfile } from '../../plate/stress-profile.ts';
import { surfaceStress } from '../../plate/surface-stress.ts';
import type { ConvergedLift, ShimInput, ShimStress, StackShape, Wave } from '../../types.ts';
import { gapOf } from '../balanced-system.ts';
import type { Equilibrium } from '../equilibrate.ts';
import { loadedPlate } from '../laid-stack.ts';
import { coneHeight } from '../layers.ts';
import { clampForce } from '../settle-hub.ts';
import type { PeriodicSystem } from './periodic-system.ts';

/** Parts of half a period at which opening and stress are looked at. */
const PARTS = 12;
const ANGLES = Array.from({ length: PARTS + 1 }, (_, i) => (i * Math.PI) / PARTS);

/** @param system in balance under p with the seat fully raised @param profiles whether to read the stress along the crest */
export function readPeriodic(
  system: PeriodicSystem,
  p: number,
  { iterations, residual }: Equilibrium,
  profiles: boolean,
): ConvergedLift {
  const shape = readShape(system);
  const { wave, zoneEdgeLift_m } = readRims(system, shape);
  const { stress, ...largest } = readStresses(system, p);
  const face = shape.lift_m[0];
  return {
    status: 'converged',
    pressure_Pa: p,
    iterations,
    residual,
    faceEdgeLift_m: face[face.length - 1],
    zoneEdgeLift_m,
    seatOpening_m: system.stack.seat ? meanOpening(system) : Math.max(0, zoneEdgeLift_m),
    hubRise_m: system.hubRise_m,
    shimEdgeLift_m: shape.lift_m.map((lift) => lift[lift.length - 1]),
    ...largest,
    ...axialForces(system, p),
    wave,
    ...(profiles && { stress }),
    shape,
  };
}

function readShape({ plates, merged, tables, hubRise_m }: PeriodicSystem): StackShape {
  const lift_m: Float64Array[] = [];
  const firstNode: number[] = [];
  const harmonics_m: Float64Array[][] = [];
  for (const [k, plate] of plates.entries()) {
    const base = merged[k].clamped ? hubRise_m : 0;
    const lift = coneHeight(merged[k], tables.radius_m, plate).map((h, i) => base + h + meanLift(plate, i));
    const harmonics = Array.from({ length: plate.basis.M }, (_, h) => harmonicAlong(plate, h + 1));
    for (let s = merged[k].from; s < merged[k].to; s++) {
      lift_m.push(lift);
      firstNode.push(plate.first);
      harmonics_m.push(harmonics);
    }
  }
  return { radius_m: tables.radius_m, lift_m, firstNode, harmonics_m };
}

const harmonicAlong = ({ nodes, basis, layout, x }: PeriodicPlate, h: number): Float64Array =>
  Float64Array.from({ length: nodes }, (_, n) => {
    let sum = 0;
    for (let j = 0; j < basis.lifts; j++) {
      sum += basis.harmonics[j * (basis.M + 1) + h] * x[n * layout.perNode + j * layout.d];
    }
    return sum;
  });

function readRims(system: PeriodicSystem, { lift_m, harmonics_m, firstNode }: StackShape) {
  const { zoneNode, basis } = system;
  const rim = lift_m[0].length - 1;
  const around = ANGLES.map((phi) =>
    (harmonics_m?.[0] ?? []).reduce((w, h, i) => w + h[rim] * Math.cos((i + 1) * phi), lift_m[0][rim]),
  );
  const wave: Wave = {
    waves: basis.waves,
    minEdgeLift_m: Math.min(...around),
    maxEdgeLift_m: Math.max(...around),
  };
  const s = lift_m.findIndex((lift, k) => zoneNode >= firstNode[k] && zoneNode < firstNode[k] + lift.length);
  return { wave, zoneEdgeLift_m: lift_m[s][zoneNode - firstNode[s]] };
}

/** Mean round the circle of the least clearance over the land at each angle [m]. */
function meanOpening(system: PeriodicSystem): number {
  const { pairs, basis } = system;
  const circles: number[][] = [];
  for (let c = 0; c < pairs.size; c += basis.lifts) {
    if (pairs.below[c] !== RIGID) continue;
    circles.push(Array.from({ length: basis.lifts }, (_, j) => gapOf(system, c + j, 1)));
  }
  return meanRound((phi) => Math.max(0, Math.min(...circles.map((gaps) => liftAround(basis, gaps, phi)))));
}

/** Trapezoids over half a period. */
function meanRound(f: (phi: number) => number): number {
  const ends = (f(0) + f(Math.PI)) / 2;
  return ANGLES.slice(1, -1).reduce((sum, phi) => sum + f(phi), ends) / PARTS;
}

function readStresses(system: PeriodicSystem, p: number) {
  const { plates, merged, stack, ring, tables, basis, load } = system;
  const shares = loadShares(basis, load);
  const shimStress_Pa: number[] = [];
  const shimClampStress_Pa: number[] = [];
  const stress: ShimStress[] = [];
  for (const [k, plate] of plates.entries()) {
    const cuts = periodicCuts(plate, p, ring, shares, (element) => loadedPlate(plates, element) === plate);
    const radii = tables.radius_m.slice(plate.first, plate.first + plate.nodes);
    const around = strainsRound(plate, cuts);
    for (let s = merged[k].from; s < merged[k].to; s++) {
      const shim = stack.shims[s];
      const from = merged[k].clamped ? 0 : 1;
      shimClampStress_Pa.push(merged[k].clamped ? largestAt(around, shim, 0, 1) : 0);
      shimStress_Pa.push(largestAt(around, shim, from, plate.nodes));
      stress.push(stressProfile(radii, around[0], shim));
    }
  }
  return { shimStress_Pa, shimClampStress_Pa, stress };
}

const strainsRound = (plate: PeriodicPlate, cuts: PeriodicCuts): SectionStrains[] =>
  ANGLES.map((phi) => strainsAlong(plate, cuts, phi));

/** Largest radial surface stress over the nodes from `from` to before `to`, at any angle [Pa]. */
function largestAt(around: readonly SectionStrains[], shim: ShimInput, from: number, to: number): number {
  const { thickness_m: t, youngsModulus_Pa: E, poissonsRatio: nu } = shim;
  let most = 0;
  for (const { kr, kt, er, et } of around) {
    for (let n = from; n < to; n++) {
      most = Math.max(most, surfaceStress({ k: kr[n] + nu * kt[n], e: er[n] + nu * et[n] }, t, E, nu));
    }
  }
  return most;
}

function axialForces(system: PeriodicSystem, p: number) {
  const { plates, pairs, contact } = system;
  let appliedForce_N = 0;
  let springForce_N = 0;
  for (const plate of plates) {
    const { nodes, layout, basis, unitLoad, springs } = plate;
    for (let i = 0; i < nodes * basis.lifts; i++) appliedForce_N += p * unitLoad[i * layout.d];
    for (const { node, rate_N_m, preload_N } of springs) springForce_N += preload_N + rate_N_m * meanLift(plate, node);
  }
  let seatForce_N = 0;
  let plateForce_N = 0;
  for (let c = 0; c < pairs.size; c++) {
    if (pairs.below[c] === RIGID) seatForce_N += contact.force[c];
    if (pairs.above[c] === RIGID) plateForce_N += contact.force[c];
  }
  return { appliedForce_N, clampForce_N: clampForce(system, p), seatForce_N, plateForce_N, springForce_N };
}
