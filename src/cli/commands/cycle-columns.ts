/** What `shimwright cycle` tells of one run, in the order of the output. */
import {
  type CycleRun,
  chamberExtremes,
  type DrivenDamper,
  forceLoop,
  type HeatedMasses,
  type HysteresisBothWays,
  heatingPower,
  hysteresisBothWays,
  type PeakForces,
  peakForces,
  temperatureRise,
} from '../../solver/index.ts';
import { fromSI } from '../../units/convert.ts';
import { bar, gauge_bar } from '../quantities.ts';
import type { Column } from '../render/rows.ts';
import type { Cell, Heading } from '../render/text-table.ts';

/** One run, and what a test bench reads off it. */
export interface RunReading {
  readonly run: DrivenDamper;
  readonly peaks: PeakForces;
  readonly hysteresis: HysteresisBothWays;
  readonly heated: HeatedMasses;
}

/** @param speed_m_s at which to tell the hysteresis; when absent, half of what both directions reach */
export function readRun(run: DrivenDamper, heated: HeatedMasses, speed_m_s?: number): RunReading {
  const peaks = peakForces(run);
  return { run, peaks, hysteresis: hysteresisBothWays(forceLoop(run), speed_m_s), heated };
}

/** With the words of the summary of a single run. */
export interface RunColumn extends Column<RunReading> {
  readonly label: Heading;
}

const FORCES: readonly RunColumn[] = [
  {
    key: 'compressionPeakSpeed_m_s',
    heading: ['peak speed', 'm/s'],
    label: ['peak speed in compression', 'm/s'],
    read: ({ peaks }) => peaks.compression.speed_m_s,
  },
  {
    key: 'compressionPeakForce_N',
    heading: ['compression', 'N'],
    label: ['  force then', 'N'],
    read: ({ peaks }) => peaks.compression.force_N,
  },
  {
    key: 'reboundPeakSpeed_m_s',
    label: ['peak speed in rebound', 'm/s'],
    read: ({ peaks }) => peaks.rebound.speed_m_s,
  },
  {
    key: 'reboundPeakForce_N',
    heading: ['rebound', 'N'],
    label: ['  force then', 'N'],
    read: ({ peaks }) => peaks.rebound.force_N,
  },
  {
    key: 'largestForce_N',
    label: ['largest force', 'N'],
    read: ({ run }) => forceLoop(run).force_N.reduce((a, b) => Math.max(a, b)),
  },
  {
    key: 'smallestForce_N',
    label: ['smallest force', 'N'],
    read: ({ run }) => forceLoop(run).force_N.reduce((a, b) => Math.min(a, b)),
  },
];

const energy = (part: keyof CycleRun['energy'], key: string, label: string, heading?: string): RunColumn => ({
  key,
  label: [label, 'J'],
  ...(heading && { heading: [heading, 'J'] }),
  read: ({ run }) => run.energy[part],
});

const ENERGY: readonly RunColumn[] = [
  energy('work_J', 'work_J', 'work put in', 'work'),
  energy('oil_J', 'oilLoss_J', '  lost in the valves', 'valves'),
  energy('friction_J', 'frictionLoss_J', '  lost by friction', 'friction'),
  energy('stop_J', 'stopLoss_J', '  lost in the hydraulic stop'),
  energy('separator_J', 'separatorLoss_J', '  lost by the floating piston'),
  energy('stored_J', 'stored_J', '  left in gas and oil'),
  energy('balanceError_J', 'balanceError_J', '  not accounted for'),
];

/** @param shown  beside other runs too */
const hysteresisColumns = (shown: boolean): RunColumn[] => [
  {
    key: 'hysteresisSpeed_m_s',
    label: ['hysteresis (speeding up less slowing down): shaft speed', 'm/s'],
    read: ({ hysteresis }) => hysteresis.speed_m_s,
  },
  ...(['compression', 'rebound'] as const).map(
    (way): RunColumn => ({
      key: `${way}Hysteresis_N`,
      ...(shown && { heading: [`${way} hysteresis`, 'N'] }),
      label: [`  in ${way}`, 'N'],
      read: ({ hysteresis }) => hysteresis[way]?.difference_N ?? null,
    }),
  ),
];

const HEAT: readonly RunColumn[] = [
  { key: 'heat_W', label: ['heat', 'W'], read: ({ run }) => heatingPower(run) },
  {
    key: 'warming_K_min',
    heading: ['warms', 'K/min'],
    label: ['warms by, without cooling', 'K/min'],
    read: ({ run, heated }) => 60 * temperatureRise(heatingPower(run), heated),
  },
];

const INTEGRATION: readonly RunColumn[] = [
  {
    key: 'settledForce_N',
    label: ['largest change of force from the cycle before', 'N'],
    read: ({ run }) => run.settling?.force_N ?? null,
  },
  {
    key: 'settledWork_J',
    label: ['change of work from the cycle before', 'J'],
    read: ({ run }) => run.settling?.work_J ?? null,
  },
  { key: 'steps', label: 'steps of the integration', read: ({ run }) => run.integration.steps },
  { key: 'rejectedSteps', label: '  taken back', read: ({ run }) => run.integration.rejections },
  {
    key: 'largestStepError_bar',
    label: ['  largest error of one in a pressure', 'bar'],
    read: ({ run }) => bar(run.integration.largestPressureError_Pa),
  },
];

const theory = (place: keyof DrivenDamper['theories'], label: string): RunColumn => ({
  key: `${place}Theory`,
  heading: `${place} theory`,
  label,
  read: ({ run }) => run.theories[place] ?? null,
});

function chamberColumns(name: string): RunColumn[] {
  const of = (read: (chamber: ReturnType<typeof chamberExtremes>[string]) => Cell) => (reading: RunReading) =>
    read(chamberExtremes(reading.run)[name]);
  return [
    {
      key: `${name}LowestAbsolute_bar`,
      label: [`lowest in ${name}`, 'bar absolute'],
      read: of((c) => bar(c.lowest_Pa)),
    },
    {
      key: `${name}LowestGauge_bar`,
      heading: [`${name} lowest`, 'bar gauge'],
      label: ['  the same', 'bar gauge'],
      read: of((c) => gauge_bar(c.lowest_Pa)),
    },
    { key: `${name}HighestGauge_bar`, label: ['  highest', 'bar gauge'], read: of((c) => gauge_bar(c.highest_Pa)) },
    {
      key: `${name}LargestVoid_mL`,
      heading: [`${name} void`, 'mL'],
      label: ['  largest void', 'mL'],
      read: of((c) => fromSI(c.largestVoid_m3, 'volume', 'mL')),
    },
  ];
}

/**
 * @param chambers names of the chambers of the damper
 * @param hysteresis whether its speed was asked for: several runs are told with it then
 */
export const runColumns = (chambers: readonly string[], hysteresis: boolean): RunColumn[] => [
  ...FORCES,
  ...ENERGY,
  ...hysteresisColumns(hysteresis),
  ...HEAT,
  ...chambers.flatMap(chamberColumns),
  ...INTEGRATION,
  theory('compression', 'plate theory of the compression stack'),
  theory('rebound', '  of the rebound stack'),
  ...(chambers.length > 2 ? [theory('base', '  of the base valve')] : []),
];
