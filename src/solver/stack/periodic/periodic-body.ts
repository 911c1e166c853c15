/** A periodic plate as the balance of a stack sees it: a place of contact at every lift of every node. */
import { assemblePeriodicForce, periodicEnergy } from '../../plate/periodic/periodic-force.ts';
import type { PeriodicPlate } from '../../plate/periodic/periodic-plate.ts';
import { assemblePeriodicTangent } from '../../plate/periodic/periodic-tangent.ts';
import type { Body } from '../balanced-system.ts';

/** Near the onset of waves the tangent that just stands up finds the way down soonest. */
const PUSH_HALVINGS = 3;

/** @param clamped whether the hub holds its inner edge */
export function periodicBody(plate: PeriodicPlate, clamped: boolean): Body {
  const { nodes, layout, basis, size, band, x, unitLoad, internal, fixed } = plate;
  const isTurn = new Uint8Array(size);
  for (let n = 0; n < nodes; n++) {
    for (let i = 0; i < layout.fields; i++) isTurn[n * layout.perNode + layout.slots[2 * i + 1]] = 1;
  }
  return {
    nodes: nodes * basis.lifts,
    d: layout.d,
    size,
    b: layout.b,
    band,
    x,
    unitLoad,
    internal,
    fixed,
    held: clamped ? Array.from({ length: basis.lifts }, (_, j) => j * layout.d) : [],
    isTurn,
    assembleInternal: () => assemblePeriodicForce(plate),
    assembleBand: (push) => assemblePeriodicTangent(plate, push),
    pushHalvings: PUSH_HALVINGS,
    energy: () => periodicEnergy(plate),
  };
}
