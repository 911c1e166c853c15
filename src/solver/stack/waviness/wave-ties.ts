/**
 * Which plates a wave must move together: those that press on one another.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | tie | - | W of the upper plate = W of the lower one at a node; against a rigid face W = 0 |
 *
 * A pair that carries force cannot part under a small wave, and one that carries none is taken as free to part. Ties
 * must not repeat one another: where a chain of pressing pairs runs from the seat to the backing plate, the last tie
 * says nothing new and is left out.
 */
import { RIGID } from '../../contact/contact-pairs.ts';
import type { StackSystem } from '../stack-system.ts';

/** Forces below this share of the largest are rounding, not contact. */
const PRESSING = 1e-9;

export interface Tie {
  /** Plate, or RIGID, and the node in that plate's own numbers. */
  readonly below: number;
  readonly belowNode: number;
  readonly above: number;
  readonly aboveNode: number;
}

/** @param system in balance @returns the ties, those between two plates in the order of the plates */
export function listTies({ pairs, contact }: StackSystem): Tie[] {
  const largest = contact.force.reduce((most, force) => Math.max(most, force), 0);
  const ties: Tie[] = [];
  let grounded = RIGID;
  let node = -1;
  // Pairs come node by node, from the seat up.
  for (let c = 0; c < pairs.size; c++) {
    const [below, above] = [pairs.below[c], pairs.above[c]];
    if (pairs.node[c] !== node) grounded = RIGID;
    node = pairs.node[c];
    if (!(contact.force[c] > PRESSING * largest)) continue;
    if (above === RIGID && below === grounded) continue;
    if (below === RIGID || below === grounded) grounded = above;
    ties.push({ below, belowNode: pairs.belowNode[c], above, aboveNode: pairs.aboveNode[c] });
  }
  return ties.sort((p, q) => p.below - q.below);
}
