/** Which tolerance the scatter of the force comes from: at one speed and over all speeds of a direction. */
import type { Estimate, ShareEstimate, ToleranceName } from '../../../workers/protocol.ts';
import type { Direction } from '../app/places.ts';
import { type PlaceBetween, placeBetween, valueAt } from './place-between.ts';
import { anyPiece, type Study } from './scatter-study.ts';

/** By which of the two columns the rows are sorted. */
export const SORTS = ['cursor', 'range'] as const;
export type Sort = (typeof SORTS)[number];

export interface ToleranceRow {
  readonly name: ToleranceName;
  /** False where the build has no such part. */
  readonly hasPart: boolean;
  /** Nothing where no force is known. */
  readonly cursor?: ShareEstimate;
  readonly range: ShareEstimate;
}

export interface Scatter {
  readonly speed_m_s: number;
  readonly drawn_N?: number;
  readonly p5_N: number;
  readonly p50_N: number;
  readonly p95_N: number;
  /** Samples without a force at a speed beside it. */
  readonly without: number;
}

const estimateAt = (at: PlaceBetween, read: (place: number) => Estimate): Estimate => ({
  value: valueAt(at, (i) => read(i).value) as number,
  low: valueAt(at, (i) => read(i).low) as number,
  high: valueAt(at, (i) => read(i).high) as number,
});

/** Most of the scatter first; parts that the build has not got last. */
export function rowsOf(study: Study, way: Direction, speed_m_s: number, sort: Sort): ToleranceRow[] {
  const piece = anyPiece(study);
  if (!study.read || !piece) return [];
  const { names, shares, spreads, overRange } = study.read.reading;
  const at = placeBetween(piece.speeds_m_s, way, speed_m_s);
  const isKnown = at && spreads[at.low] && spreads[at.high];
  const rows = names.map((name, group): ToleranceRow => {
    const range = overRange[way === 1 ? 'compression' : 'rebound'][group];
    const cursor = isKnown && {
      first: estimateAt(at, (i) => shares[i][group].first),
      total: estimateAt(at, (i) => shares[i][group].total),
    };
    return { name, hasPart: piece.parts.includes(name), range, ...(cursor && { cursor }) };
  });
  const rank = (row: ToleranceRow): number =>
    row.hasPart ? ((sort === 'cursor' && row.cursor) || row.range).total.value : -1;
  return rows.sort((p, q) => rank(q) - rank(p));
}

export function scatterOf(study: Study, way: Direction, speed_m_s: number): Scatter | undefined {
  const piece = anyPiece(study);
  const at = piece && placeBetween(piece.speeds_m_s, way, speed_m_s);
  const spreads = study.read?.reading.spreads;
  if (!at || !spreads) return undefined;
  const [p5_N, p50_N, p95_N] = (['p5', 'p50', 'p95'] as const).map((which) => valueAt(at, (i) => spreads[i]?.[which]));
  if (p5_N === undefined || p50_N === undefined || p95_N === undefined) return undefined;
  const drawn_N = valueAt(at, (i) => piece.drawn_N[i]);
  const without = Math.max(spreads[at.low]?.without ?? 0, spreads[at.high]?.without ?? 0);
  return { speed_m_s, p5_N, p50_N, p95_N, without, ...(drawn_N !== undefined && { drawn_N }) };
}
