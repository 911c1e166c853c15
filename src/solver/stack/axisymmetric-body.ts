/** An axisymmetric plate as the balance of a stack sees it: one place of contact a node. */
import { assembleBand, assembleInternal, strainEnergy } from '../plate/assemble.ts';
import type { Plate } from '../plate/plate.ts';
import type { Body } from './balanced-system.ts';

/** @param clamped whether the hub holds its inner edge */
export function axisymmetricBody(plate: Plate, clamped: boolean): Body {
  const { nodes, d, size, b, band, x, unitLoad, internal, fixed } = plate;
  return {
    nodes,
    d,
    size,
    b,
    band,
    x,
    unitLoad,
    internal,
    fixed,
    held: clamped ? [0] : [],
    // Value and slope of a field follow one another.
    isTurn: Uint8Array.from({ length: size }, (_, i) => i % 2),
    assembleInternal: () => assembleInternal(plate),
    assembleBand: (push) => assembleBand(plate, push === 1 ? 'exact' : 'stiffened'),
    pushHalvings: 0,
    energy: () => strainEnergy(plate),
  };
}
