/** The band between the 5th and the 95th of 100 dampers as areas: one for each unbroken run of speeds that have one. */
import type { Direction } from '../app/places.ts';
import { type BandArea, unbroken } from '../charts/force-bands.ts';
import { anyPiece, type Study } from './scatter-study.ts';

/** @param taken_N  taken off every force, such as that of the gas */
export function toleranceAreas(study: Study, way: Direction, taken_N: number): BandArea[] {
  const piece = anyPiece(study);
  if (!study.read || !piece) return [];
  const { spreads } = study.read.reading;
  const slices = piece.speeds_m_s.flatMap((v, i) => {
    if (v * way <= 0) return [];
    const spread = spreads[i];
    if (!spread) return [{ speed_m_s: Math.abs(v) }];
    return [{ speed_m_s: Math.abs(v), low_N: spread.p5 - taken_N, high_N: spread.p95 - taken_N }];
  });
  return unbroken(slices.sort((p, q) => p.speed_m_s - q.speed_m_s));
}
