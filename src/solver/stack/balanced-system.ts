/**
 * What the search for balance needs of a stack, whatever theory its plates follow.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | x | m, - | unknowns of a plate |
 * | f | N, N·m | generalised internal force dE/dx |
 * | ramp | - | share 0…1 of every interference that is enforced so far (preload is applied in steps) |
 */
import type { ContactProblem } from '../contact/complementarity.ts';
import type { Compliance } from '../contact/compliance.ts';
import type { ContactBody } from '../contact/contact-body.ts';
import { type ContactPairs, RIGID } from '../contact/contact-pairs.ts';

/** A plate as the balance sees it. */
export interface Body extends ContactBody {
  readonly x: Float64Array;
  /** Generalised force of a unit pressure. */
  readonly unitLoad: Float64Array;
  readonly internal: Float64Array;
  /** Unknowns that an edge holds at nothing. */
  readonly fixed: Int32Array;
  /** Lifts that the clamp holds; what it takes to hold them is the force on the hub. None for a ring. */
  readonly held: readonly number[];
  /** 1 where the generalised force of an unknown is a moment, 0 where it is a force. */
  readonly isTurn: Uint8Array;
  /** Fills `internal` from `x`. */
  readonly assembleInternal: () => void;
  /**
   * Fills `band` at the state of the last `assembleInternal`, fixed unknowns uncoupled.
   * @param push share of the compressive membrane forces that is kept: 1 for the exact tangent, 0 for one that is
   *   always positive definite
   */
  readonly assembleBand: (push: number) => void;
  /** Halvings in the search for the greatest share that leaves the tangent positive definite; with 0 it is 1 or 0. */
  readonly pushHalvings: number;
  /** Strain energy at `x` [J]. */
  readonly energy: () => number;
}

/**
 * A last correction this small also ends the iteration: in fine meshes rounding alone leaves an out-of-balance force
 * over the tolerance, one that moves nothing.
 */
export interface Noise {
  /** Largest correction, as a share of the largest lift. */
  readonly correction: number;
  /** Largest out-of-balance force, as a share of the largest load or contact force, that may be taken for rounding. */
  readonly residual: number;
}

export interface BalancedSystem {
  readonly bodies: readonly Body[];
  /** Whether the tangent never changes, so that its first factor serves for ever. */
  readonly isLinear: boolean;
  readonly compliances: readonly Compliance[];
  readonly pairs: ContactPairs;
  readonly contact: ContactProblem;
  /** Direction of the present step, one array a plate. */
  readonly steps: readonly Float64Array[];
  /** Change of each pair's gap for a unit rise of the hub: 1, 0 or -1. */
  readonly riseShare: Int8Array;
  readonly noise: Noise;
  /** From clamp to the largest rim [m]. */
  readonly span_m: number;
  readonly thinnest_m: number;
  /** Rise of the hub on its float [m]. */
  hubRise_m: number;
  /** Whether the factors in the bodies belong to the (constant) tangent of small deflection. */
  factored: boolean;
}

/** Gap of pair c at the present state of the plates [m]. */
export function gapOf({ pairs, bodies, riseShare, hubRise_m }: BalancedSystem, c: number, ramp: number): number {
  const above = pairs.above[c];
  const below = pairs.below[c];
  let gap = pairs.gap0_m[c];
  if (gap < 0) gap *= ramp;
  if (above !== RIGID) gap += bodies[above].x[pairs.aboveNode[c] * bodies[above].d];
  if (below !== RIGID) gap -= bodies[below].x[pairs.belowNode[c] * bodies[below].d];
  return gap + riseShare[c] * hubRise_m;
}
