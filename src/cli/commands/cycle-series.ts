/** The counted samples of a run, one row a sample: the last period, or the whole trace. */
import type { CycleRun } from '../../solver/index.ts';
import { fromSI } from '../../units/convert.ts';
import { bar, gauge_bar, litresPerMinute, mm } from '../quantities.ts';
import type { Cell } from '../render/text-table.ts';

interface SampleColumn {
  readonly key: string;
  readonly values: Float64Array;
  readonly shown: (value: number) => number;
}

const plain = (value: number): number => value;
const millilitres = (volume_m3: number): number => fromSI(volume_m3, 'volume', 'mL');

function columnsOf({ series }: CycleRun): SampleColumn[] {
  const pressure = (name: string, values: Float64Array): SampleColumn[] => [
    { key: `${name}PressureAbsolute_bar`, values, shown: bar },
    { key: `${name}PressureGauge_bar`, values, shown: gauge_bar },
  ];
  const chambers = Object.keys(series.pressure_Pa);
  return [
    { key: 'time_s', values: series.time_s, shown: plain },
    { key: 'position_mm', values: series.position_m, shown: mm },
    { key: 'shaftSpeed_m_s', values: series.speed_m_s, shown: plain },
    { key: 'force_N', values: series.force_N, shown: plain },
    { key: 'frictionForce_N', values: series.frictionForce_N, shown: plain },
    { key: 'stopForce_N', values: series.stopForce_N, shown: plain },
    ...pressure('gas', series.gasPressure_Pa),
    ...chambers.flatMap((name) => pressure(name, series.pressure_Pa[name])),
    ...chambers.map((name) => ({ key: `${name}Flow_L_min`, values: series.flow_m3_s[name], shown: litresPerMinute })),
    ...chambers.map((name) => ({ key: `${name}Void_mL`, values: series.void_m3[name], shown: millilitres })),
  ];
}

export interface Samples {
  readonly keys: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
}

export function samplesOf(run: CycleRun): Samples {
  const columns = columnsOf(run);
  const { first, last } = run.counted;
  return {
    keys: columns.map(({ key }) => key),
    rows: Array.from({ length: last - first + 1 }, (_, i) =>
      columns.map(({ values, shown }) => shown(values[first + i])),
    ),
  };
}
