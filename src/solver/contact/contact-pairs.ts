/**
 * Which surfaces can touch: at every mesh node, the neighbours among the plates that cover it, the seat and the
 * backing plate.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | z | m | height of a plate's lower surface over the hub plane when nothing is loaded or pressed |
 * | gap0 | m | distance of the two surfaces in that state; below 0 they interfere, which is what a preload is |
 * | ramp | - | share 0…1 of the interference that has been enforced so far |
 *
 * gap = gap0 + (1 - ramp) max(0, -gap0) + w_above - w_below; never below nothing in a solved state with ramp 1.
 */

/** What a contact needs to know of a plate: which nodes it covers, and where its surfaces are. */
export interface Layer {
  readonly first: number;
  readonly nodes: number;
  readonly thickness_m: number;
  /** Height z of the lower surface at each of its nodes, length nodes [m]. */
  readonly lower_m: Float64Array;
}

/** Marks the rigid side of a pair in `below` (seat) or `above` (backing plate). */
export const RIGID = -1;

export interface ContactPairs {
  readonly size: number;
  /** Mesh node of the pair. */
  readonly node: Int32Array;
  /** Plate under the gap, or RIGID for the seat, and the node in that plate's own numbers. */
  readonly below: Int32Array;
  readonly belowNode: Int32Array;
  /** Plate over the gap, or RIGID for the backing plate, and the node in that plate's own numbers. */
  readonly above: Int32Array;
  readonly aboveNode: Int32Array;
  readonly gap0_m: Float64Array;
}

/** A rigid face over the mesh nodes `first` to `last`, at height z [m]. */
export interface RigidFace {
  readonly first: number;
  readonly last: number;
  readonly z_m: number;
}

export interface RigidFaces {
  readonly seat?: RigidFace;
  readonly backing?: RigidFace;
}

interface Pair {
  readonly node: number;
  readonly below: number;
  readonly above: number;
  readonly gap0: number;
}

/** @param layers plates from the piston on @param nodes nodes of the mesh; node 0 is the clamp and never a contact */
export function listContactPairs(layers: readonly Layer[], nodes: number, rigid: RigidFaces): ContactPairs {
  const pairs: Pair[] = [];
  for (let node = 1; node < nodes; node++) {
    const covering = layers.map((_, k) => k).filter((k) => covers(layers[k], node));
    if (covering.length === 0) continue;
    const lower = (k: number) => layers[k].lower_m[node - layers[k].first];
    const upper = (k: number) => lower(k) + layers[k].thickness_m;
    const first = covering[0];
    const last = covering[covering.length - 1];
    if (isUnder(rigid.seat, node))
      pairs.push({ node, below: RIGID, above: first, gap0: lower(first) - rigid.seat.z_m });
    for (let i = 1; i < covering.length; i++) {
      const [below, above] = [covering[i - 1], covering[i]];
      pairs.push({ node, below, above, gap0: lower(above) - upper(below) });
    }
    if (isUnder(rigid.backing, node)) {
      pairs.push({ node, below: last, above: RIGID, gap0: rigid.backing.z_m - upper(last) });
    }
  }
  return packPairs(pairs, layers);
}

function covers({ first, nodes }: Layer, node: number): boolean {
  return node >= first && node < first + nodes;
}

function isUnder(face: RigidFace | undefined, node: number): face is RigidFace {
  return face !== undefined && node >= face.first && node <= face.last;
}

function packPairs(pairs: readonly Pair[], layers: readonly Layer[]): ContactPairs {
  const own = (k: number, node: number) => (k === RIGID ? RIGID : node - layers[k].first);
  return {
    size: pairs.length,
    node: Int32Array.from(pairs, (r) => r.node),
    below: Int32Array.from(pairs, (r) => r.below),
    belowNode: Int32Array.from(pairs, (r) => own(r.below, r.node)),
    above: Int32Array.from(pairs, (r) => r.above),
    aboveNode: Int32Array.from(pairs, (r) => own(r.above, r.node)),
    // A gap smaller than this is a sum of thicknesses that differs from nothing by rounding only.
    gap0_m: Float64Array.from(pairs, (r) => (Math.abs(r.gap0) < 1e-12 ? 0 : r.gap0)),
  };
}

/**
 * Least room that the plates have between seat and backing plate, over the nodes that lie under both.
 * @returns below 0 where the two faces press more than the plates' thickness; no state can then keep all gaps [m]
 */
export function leastRoom(pairs: ContactPairs): number {
  let least = Number.POSITIVE_INFINITY;
  let room = 0;
  let seated = false;
  for (let c = 0; c < pairs.size; c++) {
    if (c === 0 || pairs.node[c] !== pairs.node[c - 1]) {
      room = 0;
      seated = false;
    }
    room += pairs.gap0_m[c];
    if (pairs.below[c] === RIGID) seated = true;
    if (pairs.above[c] === RIGID && seated) least = Math.min(least, room);
  }
  return least;
}
