/**
 * A stack turned into what the equations need: one mesh, merged plates, contact pairs, loads and storage.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 * | ramp | - | share 0…1 of every interference that is enforced so far (preload is applied in steps) |
 * | rise | m | rise of the hub on its float |
 */

import { InputError } from '../../units/fault.ts';
import { type ContactProblem, createContactProblem } from '../contact/complementarity.ts';
import { type Compliance, createCompliance } from '../contact/compliance.ts';
import { type ContactPairs, leastRoom, listContactPairs, RIGID, type RigidFaces } from '../contact/contact-pairs.ts';
import { buildHermiteTables, type HermiteTables } from '../plate/hermite-tables.ts';
import { clampedInnerEdge, createPlate, type Plate, type PlateSpring } from '../plate/plate.ts';
import { addElementPressure, type PressureRing } from '../plate/pressure-load.ts';
import { buildRadialMesh, DEFAULT_ELEMENTS, nodeAt } from '../plate/radial-mesh.ts';
import type { LandPressure, StackInput, Theory } from '../types.ts';
import { clampedThickness, layLayers, type NodeRange } from './layers.ts';
import { type MergedPlate, mergeNeighbours } from './merge-neighbours.ts';

/**
 * Share of the stack's bending stiffness that holds a free ring while contact is sought. It slows the last digits of
 * a ring's position down, by this factor an iteration, and has no part in the balance itself.
 */
const TETHER = 1e-3;

export interface StackSystem {
  readonly stack: StackInput;
  readonly theory: Theory;
  readonly tables: HermiteTables;
  readonly merged: readonly MergedPlate[];
  readonly plates: readonly Plate[];
  readonly compliances: readonly Compliance[];
  readonly pairs: ContactPairs;
  readonly contact: ContactProblem;
  /** Direction of the present step, one array a plate. */
  readonly steps: readonly Float64Array[];
  /** Where the pressure acts. */
  readonly ring: PressureRing;
  readonly zoneNode: number;
  /** Change of each pair's gap for a unit rise of the hub: 1, 0 or -1. */
  readonly riseShare: Int8Array;
  /** Rise of the hub on its float [m]. */
  hubRise_m: number;
  /** Whether the factors in the plates belong to the (constant) tangent of small deflection. */
  factored: boolean;
}

export interface SystemOptions {
  readonly theory: Theory;
  readonly landPressure?: LandPressure;
  /** Least number of elements from clamp to the largest rim. */
  readonly elements?: number;
}

/**
 * @param stack already validated (see validate-stack.ts)
 * @throws InputError `stack.no-room` when seat and backing plate leave less than the thickness of the shims
 */
export function createStackSystem(stack: StackInput, options: SystemOptions): StackSystem {
  const { theory, elements = DEFAULT_ELEMENTS } = options;
  const merged = mergeNeighbours(stack.shims, stack.clampRadius_m);
  const radius_m = buildRadialMesh(breakPoints(stack, merged), elements);
  const tables = buildHermiteTables(radius_m);
  const ranges = merged.map((m) => nodeRange(m, radius_m));
  const plates = createPlates(stack, merged, ranges, tables, theory);
  const layers = layLayers(merged, ranges, radius_m, stack.seat?.height_m ?? 0);
  const pairs = listContactPairs(layers, radius_m.length, rigidFaces(stack, merged, radius_m));
  requireRoom(pairs);
  const compliances = plates.map(createCompliance);
  const ring = pressureRing(stack, options.landPressure ?? 'none');
  loadFirstPlates(plates, tables, ring);
  return {
    stack,
    theory,
    tables,
    merged,
    plates,
    compliances,
    pairs,
    contact: createContactProblem(pairs, compliances),
    steps: plates.map((p) => new Float64Array(p.size)),
    ring,
    zoneNode: nodeAt(radius_m, stack.pressureZone.outerRadius_m),
    riseShare: riseShares(pairs, merged),
    hubRise_m: 0,
    factored: false,
  };
}

/** Rounding of a sum of thicknesses, below which a want of room is none [m]. */
const NO_ROOM = -1e-10;

function requireRoom(pairs: ContactPairs): void {
  const room = leastRoom(pairs);
  if (room >= NO_ROOM) return;
  throw new InputError({
    code: 'stack.no-room',
    path: 'backingPlate.gap_m',
    got: `${(room * 1e3).toPrecision(3)} mm of room between seat and backing plate`,
    wanted: '0 or more: a wider gap, a lower seat or thinner shims',
    unit: 'mm',
  });
}

function breakPoints(stack: StackInput, merged: readonly MergedPlate[]): number[] {
  const { clampRadius_m, pressureZone: zone, seat, backingPlate, coilSpring } = stack;
  const rim = merged.reduce((most, m) => Math.max(most, m.outerRadius_m), 0);
  const breaks = [clampRadius_m, zone.innerRadius_m, zone.outerRadius_m];
  for (const m of merged) breaks.push(m.innerRadius_m, m.outerRadius_m);
  if (seat) breaks.push(seat.innerRadius_m, seat.outerRadius_m);
  if (backingPlate?.outerRadius_m !== undefined) breaks.push(backingPlate.outerRadius_m);
  if (coilSpring) breaks.push(coilSpring.radius_m);
  return breaks.filter((r) => r >= clampRadius_m && r <= rim);
}

function nodeRange(m: MergedPlate, radius_m: Float64Array): NodeRange {
  const first = nodeAt(radius_m, m.innerRadius_m);
  return { first, nodes: nodeAt(radius_m, m.outerRadius_m) - first + 1 };
}

function createPlates(
  stack: StackInput,
  merged: readonly MergedPlate[],
  ranges: readonly NodeRange[],
  tables: HermiteTables,
  theory: Theory,
): Plate[] {
  const { radius_m } = tables;
  const span = radius_m[radius_m.length - 1] - radius_m[0];
  const clampedRigidity = merged.reduce((sum, m) => sum + (m.clamped ? m.D : 0), 0);
  const tether_N_m = (TETHER * 2 * Math.PI * clampedRigidity) / span ** 2;
  return merged.map((m, k) =>
    createPlate(tables, theory, {
      ...ranges[k],
      D: m.D,
      C: m.C,
      nu: m.poissonsRatio,
      fixed: m.clamped ? clampedInnerEdge(theory) : [],
      initialSlope: m.dish_m / (m.outerRadius_m - m.innerRadius_m),
      springs: k === merged.length - 1 ? coilSprings(stack, radius_m, ranges[k]) : [],
      tether_N_m: m.clamped ? 0 : tether_N_m,
    }),
  );
}

function coilSprings({ coilSpring }: StackInput, radius_m: Float64Array, { first }: NodeRange): PlateSpring[] {
  if (!coilSpring) return [];
  return [{ ...coilSpring, node: nodeAt(radius_m, coilSpring.radius_m) - first }];
}

function rigidFaces(stack: StackInput, merged: readonly MergedPlate[], radius_m: Float64Array): RigidFaces {
  const { seat, backingPlate } = stack;
  const end = radius_m.length - 1;
  const backingEdge = backingPlate?.outerRadius_m;
  return {
    seat: seat && {
      first: nodeAt(radius_m, seat.innerRadius_m),
      last: nodeAt(radius_m, seat.outerRadius_m),
      z_m: seat.height_m,
    },
    backing: backingPlate && {
      first: 0,
      last: backingEdge === undefined || backingEdge >= radius_m[end] ? end : nodeAt(radius_m, backingEdge),
      z_m: clampedThickness(merged) + backingPlate.gap_m,
    },
  };
}

function riseShares({ size, above, below }: ContactPairs, merged: readonly MergedPlate[]): Int8Array {
  const rises = (k: number) => (k !== RIGID && merged[k].clamped ? 1 : 0);
  return Int8Array.from({ length: size }, (_, c) => rises(above[c]) - rises(below[c]));
}

function pressureRing({ pressureZone: zone, seat }: StackInput, land: LandPressure): PressureRing {
  const falls = land === 'falling' && seat !== undefined && seat.outerRadius_m > zone.outerRadius_m;
  return {
    inner_m: zone.innerRadius_m,
    outer_m: zone.outerRadius_m,
    end_m: falls ? seat.outerRadius_m : zone.outerRadius_m,
  };
}

/** The pressure acts on the first plate, from the piston on, that covers an element. */
function loadFirstPlates(plates: readonly Plate[], tables: HermiteTables, ring: PressureRing): void {
  for (let e = 0; e < tables.elements; e++) {
    const plate = loadedPlate(plates, e);
    if (plate) addElementPressure(tables, ring, e, plate.d, plate.unitLoad, plate.first);
  }
}

/** The first plate, from the piston on, that covers an element of the mesh: the one that the pressure reaches there. */
export function loadedPlate(plates: readonly Plate[], element: number): Plate | undefined {
  return plates.find((p) => element >= p.first && element < p.first + p.nodes - 1);
}

/** Gap of pair c at the present state of the plates [m]. */
export function gapOf({ pairs, plates, riseShare, hubRise_m }: StackSystem, c: number, ramp: number): number {
  const above = pairs.above[c];
  const below = pairs.below[c];
  let gap = pairs.gap0_m[c];
  if (gap < 0) gap *= ramp;
  if (above !== RIGID) gap += plates[above].x[pairs.aboveNode[c] * plates[above].d];
  if (below !== RIGID) gap -= plates[below].x[pairs.belowNode[c] * plates[below].d];
  return gap + riseShare[c] * hubRise_m;
}
