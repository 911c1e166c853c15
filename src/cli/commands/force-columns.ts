/** What `shimwright force` prints of one point, in the order of the output. */
import type { Damper } from '../../model/project.ts';
import type { BasePoint, ForceBand, ForcePoint } from '../../solver/index.ts';
import { bar, gauge_bar, litresPerMinute, mm } from '../quantities.ts';
import { COEFFICIENT_WORDS } from '../render/coefficient-words.ts';
import type { Column } from '../render/rows.ts';
import type { Cell } from '../render/text-table.ts';

type ForceColumn = Column<ForcePoint>;

const FORCE: ForceColumn = { key: 'force_N', heading: ['force', 'N'], read: (p) => p.force_N };
const FORCE_WITHOUT_GAS: ForceColumn = {
  key: 'forceWithoutGas_N',
  heading: ['force without gas', 'N'],
  read: (p) => p.force_N - p.gasForce_N,
};

/** One row a quantity, in the order of the output. Pressures are written twice: absolute, and above the atmosphere. */
const COLUMNS: readonly ForceColumn[] = [
  { key: 'gasForce_N', heading: ['gas', 'N'], read: (p) => p.gasForce_N },
  { key: 'frictionForce_N', heading: ['friction', 'N'], read: (p) => p.frictionForce_N },
  { key: 'dampingForce_N', heading: ['damping', 'N'], read: (p) => p.dampingForce_N },
  { key: 'compressionPressureAbsolute_bar', read: (p) => bar(p.compressionPressure_Pa) },
  {
    key: 'compressionPressureGauge_bar',
    heading: ['compression', 'bar gauge'],
    read: (p) => gauge_bar(p.compressionPressure_Pa),
  },
  { key: 'reboundPressureAbsolute_bar', read: (p) => bar(p.reboundPressure_Pa) },
  { key: 'reboundPressureGauge_bar', heading: ['rebound', 'bar gauge'], read: (p) => gauge_bar(p.reboundPressure_Pa) },
  { key: 'gasPressureAbsolute_bar', read: (p) => bar(p.gasPressure_Pa) },
  { key: 'gasPressureGauge_bar', read: (p) => gauge_bar(p.gasPressure_Pa) },
  { key: 'pistonDrop_bar', heading: ['piston drop', 'bar'], read: (p) => bar(p.pistonDrop_Pa) },
  { key: 'shimPressure_bar', read: (p) => bar(p.shimPressure_Pa) },
  { key: 'seatOpening_mm', heading: ['opening', 'mm'], read: (p) => mm(p.seatOpening_m) },
  { key: 'portsFlow_L_min', heading: ['stack', 'L/min'], read: (p) => litresPerMinute(p.flows.ports_m3_s) },
  { key: 'bleedFlow_L_min', heading: ['bleed', 'L/min'], read: (p) => litresPerMinute(p.flows.bleed_m3_s) },
  { key: 'leakageFlow_L_min', read: (p) => litresPerMinute(p.flows.leakage_m3_s) },
  { key: 'airRelease', heading: 'air release', read: (p) => p.airRelease },
  { key: 'bleedCavitates', read: ({ bleedCavitates }) => bleedCavitates ?? null },
  { key: 'gasPressureNeededAbsolute_bar', read: (p) => bar(p.gasPressureNeeded_Pa) },
  { key: 'gasPressureNeededGauge_bar', read: (p) => gauge_bar(p.gasPressureNeeded_Pa) },
];

const fromBase =
  (read: (base: BasePoint) => Cell) =>
  ({ base }: ForcePoint): Cell =>
    base ? read(base) : null;

/** Of a layout with a base valve. In rebound the opening is that of its check. */
const BASE_COLUMNS: readonly ForceColumn[] = [
  { key: 'baseDrop_bar', heading: ['base drop', 'bar'], read: fromBase((base) => bar(base.drop_Pa)) },
  { key: 'baseShimPressure_bar', read: fromBase((base) => bar(base.shimPressure_Pa)) },
  { key: 'baseOpening_mm', heading: ['base opening', 'mm'], read: fromBase((base) => mm(base.seatOpening_m)) },
  { key: 'basePortsFlow_L_min', read: fromBase(({ flows }) => litresPerMinute(flows.ports_m3_s)) },
  { key: 'baseBleedFlow_L_min', read: fromBase(({ flows }) => litresPerMinute(flows.bleed_m3_s)) },
  { key: 'basePoppetFlow_L_min', read: fromBase(({ flows }) => litresPerMinute(flows.poppet_m3_s ?? 0)) },
  { key: 'baseCheckFlow_L_min', read: fromBase(({ flows }) => litresPerMinute(flows.check_m3_s ?? 0)) },
];

const STOP_COLUMN: ForceColumn = { key: 'stopForce_N', heading: ['stop', 'N'], read: (p) => p.stopForce_N };

const fromBand =
  (read: (band: ForceBand, point: ForcePoint) => Cell) =>
  (point: ForcePoint): Cell =>
    point.band?.status === 'converged' ? read(point.band, point) : null;

const BAND_ENDS: readonly ForceColumn[] = [
  { key: 'forceLow_N', heading: ['low', 'N'], read: fromBand(({ low_N }) => low_N) },
  { key: 'forceHigh_N', heading: ['high', 'N'], read: fromBand(({ high_N }) => high_N) },
];

const BAND_MOST_FROM: ForceColumn = {
  key: 'bandMostFrom',
  heading: 'band most from',
  read: fromBand(({ mostFrom }) => mostFrom ?? null),
  words: fromBand(({ mostFrom }) => (mostFrom ? COEFFICIENT_WORDS[mostFrom] : null)),
};

/** The gas force depends on no coefficient: without it the band moves as a whole. */
const BAND_ENDS_WITHOUT_GAS: readonly ForceColumn[] = [
  {
    key: 'forceLowWithoutGas_N',
    heading: ['low without gas', 'N'],
    read: fromBand(({ low_N }, { gasForce_N }) => low_N - gasForce_N),
  },
  {
    key: 'forceHighWithoutGas_N',
    heading: ['high without gas', 'N'],
    read: fromBand(({ high_N }, { gasForce_N }) => high_N - gasForce_N),
  },
];

export interface Wanted {
  readonly band: boolean;
  readonly withoutGas: boolean;
}

/** What a damper with these parts has to tell. */
export function forceColumns({ layout, hydraulicStop }: Damper, { band, withoutGas }: Wanted): ForceColumn[] {
  const bandColumns: readonly ForceColumn[] = [
    { key: 'bandStatus', read: ({ band: found }) => found?.status ?? null },
    ...(withoutGas ? BAND_ENDS_WITHOUT_GAS : BAND_ENDS),
    BAND_MOST_FROM,
  ];
  return [
    withoutGas ? FORCE_WITHOUT_GAS : FORCE,
    ...COLUMNS,
    ...(layout === 'monotube' ? [] : BASE_COLUMNS),
    ...(hydraulicStop ? [STOP_COLUMN] : []),
    ...(band ? bandColumns : []),
  ];
}
