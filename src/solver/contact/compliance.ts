/**
 * Lift of a plate's nodes under a unit axial force at one of its nodes, column by column and only where asked for.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | c_ij | m/N | lift of node i for a unit force spread over the circle of node j |
 *
 * c comes from the plate's factored tangent, so under large deflection it is the compliance at the present state.
 */
import { solveBandedLdl } from '../linalg/banded-ldl.ts';
import type { ContactBody } from './contact-body.ts';

export interface Compliance {
  readonly plate: ContactBody;
  /** Column j at j nodes, valid where `known[j]` is 1. */
  readonly columns: Float64Array;
  readonly known: Uint8Array;
  readonly scratch: Float64Array;
}

export function createCompliance(plate: ContactBody): Compliance {
  return {
    plate,
    columns: new Float64Array(plate.nodes * plate.nodes),
    known: new Uint8Array(plate.nodes),
    scratch: new Float64Array(plate.size),
  };
}

/** To be called whenever the plate has been factored anew. */
export function forgetColumns(compliance: Compliance): void {
  compliance.known.fill(0);
}

/** Makes sure that column j is there. @returns where it starts in `columns` */
export function columnOf(compliance: Compliance, j: number): number {
  const { plate, columns, known, scratch } = compliance;
  const { nodes, d, size, b, band } = plate;
  if (known[j] === 0) {
    scratch.fill(0);
    scratch[j * d] = 1;
    solveBandedLdl(band, size, b, scratch, j * d, d);
    for (let i = 0; i < nodes; i++) columns[j * nodes + i] = scratch[i * d];
    known[j] = 1;
  }
  return j * nodes;
}
