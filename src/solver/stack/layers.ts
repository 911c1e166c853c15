/**
 * Where the surfaces of an unloaded stack are: the heights from which gaps and interferences follow.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | z | m | height of a lower surface over the hub plane |
 * | dish | m | height of a coned shim's rim over its own hub plane |
 *
 * On the clamp a shim lies on the thickness of all clamped shims before it. A ring is not on the clamp: it is put on
 * the highest surface below it, and what is over it may then interfere, which is the preload that it gives.
 */
import type { Layer } from '../contact/contact-pairs.ts';
import type { MergedPlate } from './merge-neighbours.ts';

export interface NodeRange {
  readonly first: number;
  readonly nodes: number;
}

/**
 * @param ranges mesh nodes that each plate covers
 * @param seatHeight_m height of the seat on which a ring may lie when no plate is below it [m]
 */
export function layLayers(
  merged: readonly MergedPlate[],
  ranges: readonly NodeRange[],
  radius_m: Float64Array,
  seatHeight_m: number,
): Layer[] {
  const layers: Layer[] = [];
  let hub = 0;
  merged.forEach((plate, k) => {
    const { first, nodes } = ranges[k];
    const cone = coneHeight(plate, radius_m, ranges[k]);
    const base = plate.clamped ? hub : restingHeight(layers, ranges[k], cone, seatHeight_m);
    layers.push({ first, nodes, thickness_m: plate.thickness_m, lower_m: cone.map((h) => base + h) });
    if (plate.clamped) hub += plate.thickness_m;
  });
  return layers;
}

/** Thickness of all shims on the clamp [m]. */
export function clampedThickness(merged: readonly MergedPlate[]): number {
  return merged.reduce((sum, plate) => sum + (plate.clamped ? plate.thickness_m : 0), 0);
}

/** Height of the mid-surface of a coned plate over that of its inner edge, node by node [m]. */
export function coneHeight({ dish_m }: MergedPlate, radius_m: Float64Array, { first, nodes }: NodeRange): Float64Array {
  const inner = radius_m[first];
  const span = radius_m[first + nodes - 1] - inner;
  return Float64Array.from({ length: nodes }, (_, i) => (dish_m * (radius_m[first + i] - inner)) / span);
}

function restingHeight(layers: readonly Layer[], range: NodeRange, cone: Float64Array, seatHeight_m: number): number {
  let highest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < range.nodes; i++) {
    const node = range.first + i;
    const under = layers.findLast((layer) => node >= layer.first && node < layer.first + layer.nodes);
    if (under) highest = Math.max(highest, under.lower_m[node - under.first] + under.thickness_m - cone[i]);
  }
  return Number.isFinite(highest) ? highest : seatHeight_m;
}
