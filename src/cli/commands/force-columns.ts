/** What `shimwright force` prints of one point, in the order of the output. */
import type { FailedForce, ForceBand, ForcePoint } from '../../solver/index.ts';
import { absolutePressure, toGauge } from '../../units/brands.ts';
import { fromSI } from '../../units/convert.ts';
import type { Cell } from '../render/text-table.ts';

export interface Column {
  readonly key: string;
  /** Heading in the table for people; the others are in JSON and CSV only. */
  readonly heading?: string;
  readonly read: (point: ForcePoint) => Cell;
}

const bar = (pressure_Pa: number): number => fromSI(pressure_Pa, 'pressure', 'bar');
export const gauge_bar = (pressure_Pa: number): number => bar(toGauge(absolutePressure(pressure_Pa)));
const litresPerMinute = (flow_m3_s: number): number => fromSI(flow_m3_s, 'flow', 'L/min');

/** One row a quantity, in the order of the output. Pressures are written twice: absolute, and above the atmosphere. */
export const COLUMNS: readonly Column[] = [
  { key: 'force_N', heading: 'force N', read: (p) => p.force_N },
  { key: 'gasForce_N', heading: 'gas N', read: (p) => p.gasForce_N },
  { key: 'frictionForce_N', heading: 'friction N', read: (p) => p.frictionForce_N },
  { key: 'dampingForce_N', heading: 'damping N', read: (p) => p.dampingForce_N },
  { key: 'compressionPressureAbsolute_bar', read: (p) => bar(p.compressionPressure_Pa) },
  {
    key: 'compressionPressureGauge_bar',
    heading: 'compression bar gauge',
    read: (p) => gauge_bar(p.compressionPressure_Pa),
  },
  { key: 'reboundPressureAbsolute_bar', read: (p) => bar(p.reboundPressure_Pa) },
  { key: 'reboundPressureGauge_bar', heading: 'rebound bar gauge', read: (p) => gauge_bar(p.reboundPressure_Pa) },
  { key: 'gasPressureAbsolute_bar', read: (p) => bar(p.gasPressure_Pa) },
  { key: 'gasPressureGauge_bar', read: (p) => gauge_bar(p.gasPressure_Pa) },
  { key: 'pistonDrop_bar', heading: 'piston drop bar', read: (p) => bar(p.pistonDrop_Pa) },
  { key: 'shimPressure_bar', read: (p) => bar(p.shimPressure_Pa) },
  { key: 'seatOpening_mm', heading: 'opening mm', read: (p) => fromSI(p.seatOpening_m, 'length', 'mm') },
  { key: 'portsFlow_L_min', heading: 'ports L/min', read: (p) => litresPerMinute(p.flows.ports_m3_s) },
  { key: 'bleedFlow_L_min', heading: 'bleed L/min', read: (p) => litresPerMinute(p.flows.bleed_m3_s) },
  { key: 'leakageFlow_L_min', read: (p) => litresPerMinute(p.flows.leakage_m3_s) },
  { key: 'airRelease', heading: 'air release', read: (p) => p.airRelease },
  { key: 'bleedCavitates', read: ({ bleedCavitates }) => bleedCavitates ?? null },
  { key: 'gasPressureNeededAbsolute_bar', read: (p) => bar(p.gasPressureNeeded_Pa) },
  { key: 'gasPressureNeededGauge_bar', read: (p) => gauge_bar(p.gasPressureNeeded_Pa) },
];

const fromBand =
  (read: (band: ForceBand) => Cell) =>
  ({ band }: ForcePoint): Cell =>
    band?.status === 'converged' ? read(band) : null;

/** With --band. */
export const BAND_COLUMNS: readonly Column[] = [
  { key: 'bandStatus', read: ({ band }) => band?.status ?? null },
  { key: 'forceLow_N', heading: 'low N', read: fromBand(({ low_N }) => low_N) },
  { key: 'forceHigh_N', heading: 'high N', read: fromBand(({ high_N }) => high_N) },
  { key: 'bandMostFrom', heading: 'band most from', read: fromBand(({ mostFrom }) => mostFrom ?? null) },
];

export type Point = ForcePoint | FailedForce;

export const cell = (point: Point, { read }: Column): Cell => (point.status === 'converged' ? read(point) : null);
