/** What a test bench reads off a cycle, row by row, and how well it was solved. */
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { motion } from '../app/cycle-motion.ts';
import type { CycleReading } from '../app/cycle-solve.ts';
import { hysteresisOf } from '../app/hysteresis-solve.ts';
import { hysteresisSpeed_m_s } from '../app/preferences.ts';
import { inLocale, inShown, showBare, showNumber, unitOfShown } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { hysteresisSpeedOf } from './hysteresis-gaps.ts';

export interface CycleRow {
  readonly id: string;
  readonly name: string;
  readonly title?: string;
  readonly cell: (reading: CycleReading) => string;
  /** Left out where it holds for no build. */
  readonly when?: (reading: CycleReading) => boolean;
  readonly tone?: (reading: CycleReading) => 'caution' | undefined;
}

/** Rows in one unit, which stands in the title. */
export interface CycleGroup {
  readonly id: string;
  readonly title: string;
  readonly rows: readonly CycleRow[];
}

const words = text.cycle;
const withUnit = (name: string, unit: string): string => `${name}, ${unit}`;

type Peak = CycleReading['peaks']['compression'];
type Way = 'compression' | 'rebound';

/** A trace may go one way only: then the other has no peak. */
const peakCell = ({ speed_m_s, force_N }: Peak, sign: 1 | -1): string =>
  speed_m_s * sign > 0 ? showBare('force', force_N) : text.readout.none;

function hysteresisCell(reading: CycleReading, way: Way): string {
  const read = hysteresisOf(reading)?.[way];
  return read ? showBare('force', read.difference_N) : text.readout.none;
}

/** @param readings of all builds, which one motion drives */
function hysteresisRows(readings: readonly CycleReading[]): CycleRow[] {
  const at = hysteresisSpeedOf(readings[0]);
  const row = (way: Way): CycleRow => ({
    id: `hysteresis-${way}`,
    name: words.hysteresis[way](at),
    title: words.hysteresisWhy,
    cell: (reading) => hysteresisCell(reading, way),
    // Of a speed that was asked for the row stays, and it is told why it has no number.
    when: (reading) => hysteresisSpeed_m_s.value !== undefined || reading.hysteresis[way] !== undefined,
  });
  return [row('compression'), row('rebound')];
}

function forceGroup(readings: readonly CycleReading[]): CycleGroup {
  const force = (id: string, name: string, cell: CycleRow['cell']): CycleRow => ({ id, name, cell });
  return {
    id: 'force',
    title: withUnit(text.readout.force, unitOfShown('force')),
    rows: [
      force('compression-peak', words.compressionPeak, ({ peaks }) => peakCell(peaks.compression, 1)),
      force('rebound-peak', words.reboundPeak, ({ peaks }) => peakCell(peaks.rebound, -1)),
      force('largest', words.largest, ({ loop }) =>
        showBare(
          'force',
          loop.force_N.reduce((a, b) => Math.max(a, b)),
        ),
      ),
      force('smallest', words.smallest, ({ loop }) =>
        showBare(
          'force',
          loop.force_N.reduce((a, b) => Math.min(a, b)),
        ),
      ),
      ...hysteresisRows(readings),
    ],
  };
}

type EnergyPart = keyof CycleReading['energy'];

const energy = (part: EnergyPart, name: string): CycleRow => ({
  id: part,
  name,
  cell: (reading) => showBare('energy', reading.energy[part]),
});

/** Parts that a damper does not have lose nothing. */
const lossOf = (part: EnergyPart, name: string): CycleRow => ({
  ...energy(part, name),
  when: (reading) => reading.energy[part] !== 0,
});

/** Gas and oil take up nothing over a settled cycle; along a trace they may. */
const storedRow = (): CycleRow => ({
  ...energy('stored_J', words.stored),
  when: () => motion.value === 'trace',
});

const energyGroup = (): CycleGroup => ({
  id: 'energy',
  title: withUnit(words.energy, unitOfShown('energy')),
  rows: [
    energy('work_J', motion.value === 'trace' ? words.work.trace : words.work.sine),
    lossOf('oil_J', words.oil),
    lossOf('friction_J', words.friction),
    lossOf('stop_J', words.stop),
    lossOf('separator_J', words.separator),
    storedRow(),
  ],
});

const heatGroup = (): CycleGroup => ({
  id: 'heat',
  title: words.heatTitle,
  rows: [
    {
      id: 'heat',
      name: withUnit(words.heat, unitOfShown('power')),
      cell: (reading) => showBare('power', reading.heat_W),
    },
    {
      id: 'warming',
      name: withUnit(words.warming, words.kelvinPerMinute),
      cell: (reading) => showNumber(reading.warming_K_min, 1),
    },
  ],
});

type Chamber = CycleReading['chambers'][string];

const gauge = (pressure_Pa: number): string => showBare('pressure', pressure_Pa - STANDARD_ATMOSPHERE_PA);
const largestVoid = ({ chambers }: CycleReading): number =>
  Math.max(...Object.values(chambers).map(({ largestVoid_m3 }) => largestVoid_m3));
const toneOf = (void_m3: number): 'caution' | undefined => (void_m3 > 0 ? 'caution' : undefined);
const chamberName = (name: string): string => (words.chambers as Readonly<Record<string, string>>)[name] ?? name;

function pressureGroup(readings: readonly CycleReading[]): CycleGroup {
  const chamber = (name: string): CycleRow => {
    const of = (reading: CycleReading): Chamber => reading.chambers[name];
    return {
      id: `pressure-${name}`,
      name: chamberName(name),
      cell: (reading) => words.pressureSpan(gauge(of(reading).lowest_Pa), gauge(of(reading).highest_Pa)),
      tone: (reading) => toneOf(of(reading).largestVoid_m3),
    };
  };
  return {
    id: 'pressure',
    title: withUnit(words.pressure, unitOfShown('pressure')),
    rows: [
      ...Object.keys(readings[0]?.chambers ?? {}).map(chamber),
      {
        id: 'void',
        name: withUnit(words.largestVoid, unitOfShown('volume')),
        cell: (reading) => showBare('volume', largestVoid(reading)),
        when: (reading) => largestVoid(reading) > 0,
        tone: (reading) => toneOf(largestVoid(reading)),
      },
    ],
  };
}

/** Digits of an error: its size is meant, not its number. */
const ERROR_DIGITS = 1;
const errorIn = (shown: number): string =>
  shown === 0 ? '0' : inLocale(String(Number(shown.toPrecision(ERROR_DIGITS))));

const solvingGroup = (): CycleGroup => ({
  id: 'solving',
  title: words.solving,
  rows: [
    {
      id: 'settled',
      name: withUnit(words.settled, unitOfShown('force')),
      cell: ({ settling }) => (settling ? errorIn(inShown('force', settling.force_N)) : text.readout.none),
      when: ({ settling }) => settling !== undefined,
    },
    {
      id: 'unaccounted',
      name: withUnit(words.unaccounted, unitOfShown('energy')),
      cell: ({ energy: { balanceError_J } }) => errorIn(inShown('energy', Math.abs(balanceError_J))),
    },
    {
      id: 'step-error',
      name: withUnit(words.stepError, unitOfShown('pressure')),
      cell: ({ integration }) => errorIn(inShown('pressure', integration.largestPressureError_Pa)),
    },
    { id: 'steps', name: words.steps, cell: ({ integration }) => String(integration.steps) },
    { id: 'steps-back', name: words.stepsBack, cell: ({ integration }) => String(integration.rejections) },
  ],
});

export const cycleGroups = (readings: readonly CycleReading[]): CycleGroup[] => [
  forceGroup(readings),
  energyGroup(),
  heatGroup(),
  pressureGroup(readings),
  solvingGroup(),
];
