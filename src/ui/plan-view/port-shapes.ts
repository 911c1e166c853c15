/** The ports as they lie under the shims, seen from above: what the document says of them, and no more. */
import type { ValveBody } from '../../model/project.ts';
import type { RingPoint } from './level-lines.ts';

export type PortShape =
  /** A port opens this part of the ring to the shims. */
  | { readonly kind: 'sector'; readonly outline: readonly RingPoint[] }
  /** A hole below a groove that opens the whole ring. */
  | { readonly kind: 'hole'; readonly middle: RingPoint; readonly radius_mm: number };

/** Points along each side of a sector. */
const ALONG = 24;

function sector(middle: number, half: number, inner_mm: number, outer_mm: number): RingPoint[] {
  const angles = Array.from({ length: ALONG + 1 }, (_, i) => middle - half + (2 * half * i) / ALONG);
  return [
    ...angles.map((theta) => ({ r: outer_mm, theta })),
    ...[...angles].reverse().map((theta) => ({ r: inner_mm, theta })),
  ];
}

/** Equal ports evenly spaced, the first at θ = 0. A hole is drawn round, of its area, as far as the ring and its neighbours let it. */
export function portShapes({ ports, pressureZone }: ValveBody): PortShape[] {
  const [inner, outer] = [pressureZone.innerDiameter_mm / 2, pressureZone.outerDiameter_mm / 2];
  const { count, coveredFraction } = ports;
  const middles = Array.from({ length: count }, (_, k) => (2 * Math.PI * k) / count);
  if (coveredFraction !== undefined && coveredFraction < 1) {
    const half = (coveredFraction * Math.PI) / count;
    return middles.map((middle) => ({ kind: 'sector', outline: sector(middle, half, inner, outer) }));
  }
  const r = (inner + outer) / 2;
  const own = ports.diameter_mm === undefined ? Math.sqrt((ports.area_mm2 ?? 0) / Math.PI) : ports.diameter_mm / 2;
  const besides = count > 1 ? r * Math.sin(Math.PI / count) : Number.POSITIVE_INFINITY;
  const radius_mm = Math.min(own, (outer - inner) / 2, besides);
  return middles.map((theta) => ({ kind: 'hole', middle: { r, theta }, radius_mm }));
}
