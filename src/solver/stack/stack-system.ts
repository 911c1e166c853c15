/**
 * A stack turned into what the equations need: one mesh, merged plates, contact pairs, loads and storage.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 * | ramp | - | share 0…1 of the seat height that has been raised so far (preload is applied in steps) |
 */

import { type ContactProblem, createContactProblem } from '../contact/complementarity.ts';
import { type Compliance, createCompliance } from '../contact/compliance.ts';
import { type ContactPairs, listContactPairs, RIGID, type RigidFaces } from '../contact/contact-pairs.ts';
import { buildHermiteTables, type HermiteTables } from '../plate/hermite-tables.ts';
import { clampedInnerEdge, createPlate, type Plate } from '../plate/plate.ts';
import { addElementPressure, type PressureRing } from '../plate/pressure-load.ts';
import { buildRadialMesh, DEFAULT_ELEMENTS, nodeAt } from '../plate/radial-mesh.ts';
import type { LandPressure, StackInput, Theory } from '../types.ts';
import { type MergedPlate, mergeNeighbours } from './merge-neighbours.ts';

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
  readonly zoneNode: number;
  /** First and last node of the seat land, or [nodes, -1] without a seat. */
  readonly seatNodes: readonly [number, number];
  /** Whether the factors in the plates belong to the (constant) tangent of small deflection. */
  factored: boolean;
}

export interface SystemOptions {
  readonly theory: Theory;
  readonly landPressure?: LandPressure;
  /** Least number of elements from clamp to the largest rim. */
  readonly elements?: number;
}

/** @param stack already validated (see validate-stack.ts) */
export function createStackSystem(stack: StackInput, options: SystemOptions): StackSystem {
  const { theory, elements = DEFAULT_ELEMENTS } = options;
  const { seat, pressureZone: zone, clampRadius_m } = stack;
  const merged = mergeNeighbours(stack.shims);
  const breaks = [clampRadius_m, zone.innerRadius_m, zone.outerRadius_m, ...merged.map((m) => m.outerRadius_m)];
  if (seat) breaks.push(seat.innerRadius_m, seat.outerRadius_m);
  const radius_m = buildRadialMesh(
    breaks.filter((r) => r >= clampRadius_m),
    elements,
  );
  const tables = buildHermiteTables(radius_m);
  const plates = merged.map((m) =>
    createPlate(tables, theory, {
      nodes: nodeAt(radius_m, m.outerRadius_m) + 1,
      D: m.D,
      C: m.C,
      nu: m.poissonsRatio,
      fixed: clampedInnerEdge(theory),
    }),
  );
  const seatNodes: [number, number] = seat
    ? [nodeAt(radius_m, seat.innerRadius_m), nodeAt(radius_m, seat.outerRadius_m)]
    : [radius_m.length, -1];
  const rigid: RigidFaces = { seatNodes, backingGap_m: stack.backingPlate?.gap_m };
  const layers = merged.map((m, k) => ({ nodes: plates[k].nodes, thickness_m: m.thickness_m }));
  const pairs = listContactPairs(layers, radius_m.length, rigid);
  const compliances = plates.map(createCompliance);
  loadFirstPlates(plates, tables, pressureRing(stack, options.landPressure ?? 'none'));
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
    zoneNode: nodeAt(radius_m, zone.outerRadius_m),
    seatNodes,
    factored: false,
  };
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
    const plate = plates.find((p) => p.nodes > e + 1);
    if (plate) addElementPressure(tables, ring, e, plate.d, plate.unitLoad);
  }
}

/** Height of the seat over the hub plane at this ramp [m]. */
export function seatRise(system: StackSystem, ramp: number): number {
  return (system.stack.seat?.height_m ?? 0) * ramp;
}

/** Gap of pair c at the present state of the plates [m]. */
export function gapOf(system: StackSystem, c: number, rise: number): number {
  const { pairs, plates } = system;
  const node = pairs.node[c];
  const above = pairs.above[c];
  const below = pairs.below[c];
  let gap = pairs.gap0_m[c];
  if (above !== RIGID) gap += plates[above].x[node * plates[above].d];
  gap -= below === RIGID ? rise : plates[below].x[node * plates[below].d];
  return gap;
}
