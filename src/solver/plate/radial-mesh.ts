/**
 * One radial mesh for every plate of a stack, with nodes at every rim, seat edge and zone edge.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | r | m | node radius, strictly rising from the clamp |
 */

/**
 * Two break points closer than this share of the clamp-to-rim span are one node: some µm, well under what a shim is
 * ground to. Shorter elements would drown the balance in rounding, since their stiffness goes with 1/h³.
 */
const SAME_NODE = 5e-4;

/** Elements that a span from clamp to the largest rim gets at least, see docs/theory.md for the error this leaves. */
export const DEFAULT_ELEMENTS = 8;

/**
 * Lays nodes at all break points and splits the intervals evenly until none is longer than span / elements.
 * @param breaks_m radii that must be nodes, in any order; the least is the clamp, the largest the rim of the mesh [m]
 * @param elements least number of elements over the whole span
 * @returns strictly rising node radii [m]
 */
export function buildRadialMesh(breaks_m: readonly number[], elements: number): Float64Array {
  const sorted = [...breaks_m].sort((p, q) => p - q);
  const span = sorted[sorted.length - 1] - sorted[0];
  const distinct = sorted.filter((r, i) => i === 0 || r - sorted[i - 1] > SAME_NODE * span);
  const nodes = [distinct[0]];
  for (let i = 1; i < distinct.length; i++) {
    const r0 = distinct[i - 1];
    const pieces = Math.max(1, Math.ceil(((distinct[i] - r0) * elements) / span - 1e-9));
    for (let k = 1; k <= pieces; k++) nodes.push(r0 + ((distinct[i] - r0) * k) / pieces);
  }
  return Float64Array.from(nodes);
}

/** Index of the node nearest to radius r. @returns -1 when it is not the node that stands for r */
export function nodeAt(radius_m: Float64Array, r: number): number {
  let nearest = 0;
  for (let i = 1; i < radius_m.length; i++)
    if (Math.abs(radius_m[i] - r) < Math.abs(radius_m[nearest] - r)) nearest = i;
  const span = radius_m[radius_m.length - 1] - radius_m[0];
  return Math.abs(radius_m[nearest] - r) <= SAME_NODE * span * (1 + 1e-9) ? nearest : -1;
}
