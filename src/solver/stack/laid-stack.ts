/**
 * A stack laid out for the equations, whatever theory its plates follow: one mesh, merged plates, contact pairs and the
 * ring under pressure.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | D, C | N·m, N/m | bending and stretching rigidity of a plate |
 * | nu | - | Poisson's ratio |
 */
import { InputError } from '../../units/fault.ts';
import { type ContactPairs, leastRoom, listContactPairs, RIGID, type RigidFaces } from '../contact/contact-pairs.ts';
import { buildHermiteTables, type HermiteTables } from '../plate/hermite-tables.ts';
import type { PlateSpring } from '../plate/plate.ts';
import type { PressureRing } from '../plate/pressure-load.ts';
import { buildRadialMesh, DEFAULT_ELEMENTS, nodeAt } from '../plate/radial-mesh.ts';
import type { LandPressure, StackInput } from '../types.ts';
import { clampedThickness, layLayers, type NodeRange } from './layers.ts';
import { type MergedPlate, mergeNeighbours } from './merge-neighbours.ts';

/**
 * Share of the stack's bending stiffness that holds a free ring while contact is sought. It slows the last digits of
 * a ring's position down, by this factor an iteration, and has no part in the balance itself.
 */
const TETHER = 1e-3;

/** What a plate is made of and what holds it, for a plate of any theory. */
export interface LaidPlate extends NodeRange {
  readonly D: number;
  readonly C: number;
  readonly nu: number;
  readonly clamped: boolean;
  readonly initialSlope: number;
  readonly springs: readonly PlateSpring[];
  /** Stiffness that the tangent, but not the force, gets at the inner edge of a plate that nothing clamps [N/m]. */
  readonly tether_N_m: number;
}

export interface LaidStack {
  readonly stack: StackInput;
  readonly tables: HermiteTables;
  readonly merged: readonly MergedPlate[];
  /** As `merged`, on the mesh. */
  readonly laid: readonly LaidPlate[];
  readonly pairs: ContactPairs;
  /** Where the pressure acts. */
  readonly ring: PressureRing;
  readonly zoneNode: number;
  /** Change of each pair's gap for a unit rise of the hub: 1, 0 or -1. */
  readonly riseShare: Int8Array;
  /** From clamp to the largest rim [m]. */
  readonly span_m: number;
  readonly thinnest_m: number;
}

export interface LayOptions {
  readonly landPressure?: LandPressure;
  /** Least number of elements from clamp to the largest rim. */
  readonly elements?: number;
}

/**
 * @param stack already validated (see validate-stack.ts)
 * @throws InputError `stack.no-room` when seat and backing plate leave less than the thickness of the shims
 */
export function layStack(
  stack: StackInput,
  { landPressure = 'none', elements = DEFAULT_ELEMENTS }: LayOptions,
): LaidStack {
  const merged = mergeNeighbours(stack.shims, stack.clampRadius_m);
  const radius_m = buildRadialMesh(breakPoints(stack, merged), elements);
  const ranges = merged.map((m) => nodeRange(m, radius_m));
  const layers = layLayers(merged, ranges, radius_m, stack.seat?.height_m ?? 0);
  const pairs = listContactPairs(layers, radius_m.length, rigidFaces(stack, merged, radius_m));
  requireRoom(pairs);
  return {
    stack,
    tables: buildHermiteTables(radius_m),
    merged,
    laid: layPlates(stack, merged, ranges, radius_m),
    pairs,
    ring: pressureRing(stack, landPressure),
    zoneNode: nodeAt(radius_m, stack.pressureZone.outerRadius_m),
    riseShare: riseShares(pairs, merged),
    span_m: radius_m[radius_m.length - 1] - radius_m[0],
    thinnest_m: stack.shims.reduce((least, s) => Math.min(least, s.thickness_m), Number.POSITIVE_INFINITY),
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

function layPlates(
  stack: StackInput,
  merged: readonly MergedPlate[],
  ranges: readonly NodeRange[],
  radius_m: Float64Array,
): LaidPlate[] {
  const span = radius_m[radius_m.length - 1] - radius_m[0];
  const clampedRigidity = merged.reduce((sum, m) => sum + (m.clamped ? m.D : 0), 0);
  const tether_N_m = (TETHER * 2 * Math.PI * clampedRigidity) / span ** 2;
  return merged.map((m, k) => ({
    ...ranges[k],
    D: m.D,
    C: m.C,
    nu: m.poissonsRatio,
    clamped: m.clamped,
    initialSlope: m.dish_m / (m.outerRadius_m - m.innerRadius_m),
    springs: k === merged.length - 1 ? coilSprings(stack, radius_m, ranges[k]) : [],
    tether_N_m: m.clamped ? 0 : tether_N_m,
  }));
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

function pressureRing({ pressureZone: zone, seat, ports }: StackInput, land: LandPressure): PressureRing {
  const falls = land === 'falling' && seat !== undefined && seat.outerRadius_m > zone.outerRadius_m;
  return {
    inner_m: zone.innerRadius_m,
    outer_m: zone.outerRadius_m,
    end_m: falls ? seat.outerRadius_m : zone.outerRadius_m,
    ...(ports && { covered: ports.coveredFraction }),
  };
}

/** The first plate, from the piston on, that covers an element of the mesh: the one that the pressure reaches there. */
export function loadedPlate<P extends NodeRange>(plates: readonly P[], element: number): P | undefined {
  return plates.find((p) => element >= p.first && element < p.first + p.nodes - 1);
}
