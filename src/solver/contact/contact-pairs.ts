/**
 * Which surfaces can touch: at every mesh node, the neighbours among the plates that reach it, the seat and the
 * backing plate.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | gap0 | m | distance of the two surfaces in the unloaded, unseated stack |
 * | gap | m | gap0 + w_above - w_below - seat rise; never below nothing in a solved state |
 *
 * Two consecutive plates that both reach radius r stand apart there by the thickness of the shorter plates between.
 */

/** What a contact needs to know of a plate: how far it reaches and how thick it is. */
export interface Layer {
  readonly nodes: number;
  readonly thickness_m: number;
  /** Initial mid-surface height at the plate's nodes (coned shims), length nodes [m]. */
  readonly initialHeight_m?: Float64Array;
}

/** Marks the rigid side of a pair in `below` (seat) or `above` (backing plate). */
export const RIGID = -1;

export interface ContactPairs {
  readonly size: number;
  readonly node: Int32Array;
  /** Plate under the gap, or RIGID for the seat. */
  readonly below: Int32Array;
  /** Plate over the gap, or RIGID for the backing plate. */
  readonly above: Int32Array;
  readonly gap0_m: Float64Array;
}

export interface RigidFaces {
  /** Nodes of the seat land, first to last. */
  readonly seatNodes?: readonly [number, number];
  /** Distance of the backing plate over the top of the unloaded stack [m]. */
  readonly backingGap_m?: number;
}

/** @param layers plates from the piston on @param nodes nodes of the mesh; node 0 is the clamp and never a contact */
export function listContactPairs(layers: readonly Layer[], nodes: number, rigid: RigidFaces): ContactPairs {
  const rows: { node: number; below: number; above: number; gap0: number }[] = [];
  for (let node = 1; node < nodes; node++) {
    const reaching = layers.map((_, k) => k).filter((k) => layers[k].nodes > node);
    if (reaching.length === 0) continue;
    const height = (k: number) => layers[k].initialHeight_m?.[node] ?? 0;
    const first = reaching[0];
    const last = reaching[reaching.length - 1];
    const [seatFirst, seatLast] = rigid.seatNodes ?? [nodes, -1];
    if (node >= seatFirst && node <= seatLast) {
      rows.push({ node, below: RIGID, above: first, gap0: thicknessBetween(layers, -1, first) + height(first) });
    }
    for (let i = 1; i < reaching.length; i++) {
      const [below, above] = [reaching[i - 1], reaching[i]];
      rows.push({ node, below, above, gap0: thicknessBetween(layers, below, above) + height(above) - height(below) });
    }
    if (rigid.backingGap_m !== undefined) {
      const gap0 = rigid.backingGap_m + thicknessBetween(layers, last, layers.length) - height(last);
      rows.push({ node, below: last, above: RIGID, gap0 });
    }
  }
  return {
    size: rows.length,
    node: Int32Array.from(rows, (r) => r.node),
    below: Int32Array.from(rows, (r) => r.below),
    above: Int32Array.from(rows, (r) => r.above),
    gap0_m: Float64Array.from(rows, (r) => r.gap0),
  };
}

/** Thickness of the layers strictly between two, all of which are too short to reach the radius in question [m]. */
function thicknessBetween(layers: readonly Layer[], below: number, above: number): number {
  let sum = 0;
  for (let k = below + 1; k < above; k++) sum += layers[k].thickness_m;
  return sum;
}
