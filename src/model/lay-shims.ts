/** Where the shims of a stack lie at rest, in millimetres over the hub plane of the piston. */
import { countOf } from './expand-shims.ts';
import type { ShimRow, Valving } from './project.ts';

/** Every single shim with the row it comes from, piston side first. */
export function singleShims(rows: readonly ShimRow[]): { row: number; shim: ShimRow }[] {
  return rows.flatMap((shim, row) => Array.from({ length: countOf(shim) }, () => ({ row, shim })));
}

/** A shim whose bore is larger than the clamp lies free on what is below it. */
export const isRing = (shim: ShimRow, clampDiameter_mm: number): boolean =>
  (shim.innerDiameter_mm ?? 0) > clampDiameter_mm;

/** Thickness of what lies on the clamp. */
export const stackHeight = ({ shims, clampDiameter_mm }: Pick<Valving, 'shims' | 'clampDiameter_mm'>): number =>
  shims.reduce((sum, row) => sum + (isRing(row, clampDiameter_mm) ? 0 : row.thickness_mm * countOf(row)), 0);

export interface LaidShim {
  readonly row: number;
  readonly shim: ShimRow;
  /** Lower surface at the bore, over the hub plane, at rest. */
  readonly base_mm: number;
}

/** Where each shim lies at rest: on the clamped ones before it, or, as a ring, on the highest surface below it. */
export function layShims(valving: Valving): LaidShim[] {
  const laid: LaidShim[] = [];
  let hub = 0;
  for (const { row, shim } of singleShims(valving.shims)) {
    const free = isRing(shim, valving.clampDiameter_mm);
    const below = laid.filter((other) => other.shim.outerDiameter_mm > (shim.innerDiameter_mm ?? 0));
    const tops = below.map((other) => other.base_mm + other.shim.thickness_mm);
    laid.push({ row, shim, base_mm: free ? Math.max(...(tops.length > 0 ? tops : [valving.seatHeight_mm])) : hub });
    if (!free) hub += shim.thickness_mm;
  }
  return laid;
}
