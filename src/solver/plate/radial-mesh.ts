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

/** Narrowest ring of a plate that the mesh tells from a circle, as a share of the clamp-to-rim span. */
export const LEAST_WIDTH = 2 * SAME_NODE;

/**
 * Lays nodes at all break points and splits the intervals evenly until none is longer than span / elements.
 * @param breaks_m radii that must be nodes, in any order; the least is the clamp, the largest the rim of the mesh [m]
 * @param elements least number of elements over the whole span
 * @returns strictly rising node radii, from the clamp to the rim exactly [m]
 */
export function buildRadialMesh(breaks_m: readonly number[], elements: number): Float64Array {
  const kept = distinctBreaks(breaks_m);
  const span = kept[kept.length - 1] - kept[0];
  const nodes = [kept[0]];
  for (let i = 1; i < kept.length; i++) {
    const [r0, length] = [kept[i - 1], kept[i] - kept[i - 1]];
    const pieces = Math.max(1, Math.ceil((length * elements) / span - 1e-9));
    for (let k = 1; k < pieces; k++) nodes.push(r0 + (length * k) / pieces);
    nodes.push(kept[i]);
  }
  return Float64Array.from(nodes);
}

/** Every break lies within the tolerance of one that is kept; measured from the last kept, so that chains do not drift. */
function distinctBreaks(breaks_m: readonly number[]): number[] {
  const sorted = [...breaks_m].sort((p, q) => p - q);
  const rim = sorted[sorted.length - 1];
  const tolerance = SAME_NODE * (rim - sorted[0]);
  const kept = [sorted[0]];
  for (const r of sorted) if (r - kept[kept.length - 1] > tolerance) kept.push(r);
  // The last one kept stands for the rim, which it may lie short of.
  kept[kept.length - 1] = rim;
  return kept;
}

/** Index of the node nearest to radius r. @returns -1 when it is not the node that stands for r */
export function nodeAt(radius_m: Float64Array, r: number): number {
  const away = (i: number) => Math.abs(radius_m[i] - r);
  let nearest = 0;
  for (let i = 1; i < radius_m.length; i++) if (away(i) < away(nearest)) nearest = i;
  const span = radius_m[radius_m.length - 1] - radius_m[0];
  return away(nearest) <= SAME_NODE * span * (1 + 1e-9) ? nearest : -1;
}
