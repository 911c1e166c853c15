/**
 * Outlines of a valve in section, in millimetres: r from the axis, z up from the hub plane. Radii, thicknesses, gaps, seat
 * height and lifts are the document's and the solver's; depths of grooves and of the body are schematic and chosen by the
 * drawing, because the document does not hold them.
 */

import { isRing, type LaidShim, layShims, stackHeight } from '../../model/lay-shims.ts';
import type { ValveBody, Valving } from '../../model/project.ts';
import { millimetresFromMetres } from '../../units/si.ts';
import type { StackState } from './shape-at.ts';

export interface Point {
  readonly r: number;
  readonly z: number;
}

export interface ShimOutline {
  /** Row of the shim table this single shim belongs to. */
  readonly row: number;
  /** Single shim, counted from the piston. */
  readonly shim: number;
  readonly outerRadius_mm: number;
  readonly thickness_mm: number;
  /** Lower and upper surface from the bore of the shim to its rim. */
  readonly bottom: readonly Point[];
  readonly top: readonly Point[];
}

/** Bore of the shims and the post through it: schematic, a fixed part of the clamp. */
export const postRadius = (valving: Valving): number => valving.clampDiameter_mm * 0.3;

function lowerSurface(valving: Valving, { shim, base_mm }: LaidShim, index: number, state?: StackState): Point[] {
  const free = isRing(shim, valving.clampDiameter_mm);
  const bore = { r: free ? (shim.innerDiameter_mm ?? 0) / 2 : postRadius(valving), z: base_mm };
  const lifts = state?.shape.lift_m[index];
  if (!state || !lifts) return [bore, { r: shim.outerDiameter_mm / 2, z: base_mm + (shim.dish_mm ?? 0) }];
  const first = state.shape.firstNode[index];
  const curve = Array.from(lifts, (lift, i) => ({
    r: millimetresFromMetres(state.shape.radius_m[first + i]),
    z: base_mm + millimetresFromMetres(lift),
  }));
  return free ? curve : [{ ...bore, z: curve[0].z }, ...curve];
}

/** Shims as they lie, bent by the computed state where there is one; a computed lift holds the cone of a dished shim. */
export function shimOutlines(valving: Valving, state?: StackState): ShimOutline[] {
  return layShims(valving).map((laid, index) => {
    const bottom = lowerSurface(valving, laid, index, state);
    const { outerDiameter_mm, thickness_mm } = laid.shim;
    const top = bottom.map(({ r, z }) => ({ r, z: z + thickness_mm }));
    return { row: laid.row, shim: index, outerRadius_mm: outerDiameter_mm / 2, thickness_mm, bottom, top };
  });
}

export interface Depths {
  readonly recess: number;
  readonly groove: number;
  readonly shoulder: number;
  readonly body: number;
}

export interface PistonOutline {
  /** Inside and outside of the port channel, as closed outlines. */
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
  readonly channel: { readonly inner_mm: number; readonly outer_mm: number };
}

function channelOf(body: ValveBody): { inner_mm: number; outer_mm: number } {
  const { innerDiameter_mm, outerDiameter_mm } = body.pressureZone;
  const middle = (innerDiameter_mm + outerDiameter_mm) / 4;
  const port = body.ports.diameter_mm ?? Math.sqrt(((body.ports.area_mm2 ?? 0) * 4) / Math.PI);
  const half = Math.min(port, (outerDiameter_mm - innerDiameter_mm) / 2) / 2;
  return { inner_mm: middle - half, outer_mm: middle + half };
}

/** Half of the piston, right of the axis: hub, recess, port groove, seat, shoulder. */
export function pistonOutline(valving: Valving, body: ValveBody, pistonRadius: number, depths: Depths): PistonOutline {
  const hub = valving.clampDiameter_mm / 2;
  const zoneIn = Math.max(body.pressureZone.innerDiameter_mm / 2, hub);
  const zoneOut = body.pressureZone.outerDiameter_mm / 2;
  const [seatIn, seatOut] = [body.seat.innerDiameter_mm / 2, body.seat.outerDiameter_mm / 2];
  const channel = channelOf(body);
  const [recess, groove, shoulder, floor] = [-depths.recess, -depths.groove, -depths.shoulder, -depths.body];
  const inner = [
    { r: postRadius(valving), z: 0 },
    { r: hub, z: 0 },
    ...(zoneIn > hub
      ? [
          { r: hub, z: recess },
          { r: zoneIn, z: recess },
        ]
      : []),
    { r: zoneIn, z: groove },
    { r: channel.inner_mm, z: groove },
    { r: channel.inner_mm, z: floor },
    { r: postRadius(valving), z: floor },
  ];
  const outer = [
    { r: channel.outer_mm, z: groove },
    { r: zoneOut, z: groove },
    ...(seatIn > zoneOut
      ? [
          { r: zoneOut, z: recess },
          { r: seatIn, z: recess },
        ]
      : []),
    { r: seatIn, z: valving.seatHeight_mm },
    { r: seatOut, z: valving.seatHeight_mm },
    { r: seatOut, z: shoulder },
    { r: pistonRadius, z: shoulder },
    { r: pistonRadius, z: floor },
    { r: channel.outer_mm, z: floor },
  ];
  return { inner, outer, channel };
}

/** Highest point the drawing must hold: the stack, lifted as far as it goes, and the backing plate. */
export function drawingHeight(valving: Valving, largestLift_mm: number): number {
  const top = stackHeight(valving);
  return top + Math.max(largestLift_mm, valving.backingPlate?.gap_mm ?? 0);
}
