/** What a test bench reads off a cycle, row by row. */
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { motion } from '../app/cycle-motion.ts';
import type { CycleReading } from '../app/cycle-solve.ts';
import { showBare, showNumber, unitOfShown } from '../app/quantities.ts';
import { text } from '../text/en.ts';

export interface CycleRow {
  readonly id: string;
  readonly name: string;
  readonly cell: (reading: CycleReading) => string;
  /** Left out where it holds for no build. */
  readonly when?: (reading: CycleReading) => boolean;
  readonly tone?: (reading: CycleReading) => 'caution' | undefined;
}

const words = text.cycle;
const withUnit = (name: string, unit: string): string => `${name}, ${unit}`;

type EnergyPart = keyof CycleReading['energy'];

const energy = (part: EnergyPart, name: string): CycleRow => ({
  id: part,
  name: withUnit(name, unitOfShown('energy')),
  cell: (reading) => showBare('energy', reading.energy[part]),
});

/** Parts that a damper does not have lose nothing. */
const lossOf = (part: EnergyPart, name: string): CycleRow => ({
  ...energy(part, name),
  when: (reading) => reading.energy[part] !== 0,
});

function forceRows(): CycleRow[] {
  const unit = unitOfShown('force');
  const force = (id: string, name: string, read: (reading: CycleReading) => number): CycleRow => ({
    id,
    name: withUnit(name, unit),
    cell: (reading) => showBare('force', read(reading)),
  });
  return [
    force('compression-peak', words.compressionPeak, ({ peaks }) => peaks.compression.force_N),
    force('rebound-peak', words.reboundPeak, ({ peaks }) => peaks.rebound.force_N),
    force('largest', words.largest, ({ loop }) => loop.force_N.reduce((a, b) => Math.max(a, b))),
    force('smallest', words.smallest, ({ loop }) => loop.force_N.reduce((a, b) => Math.min(a, b))),
  ];
}

function lowest({ chambers }: CycleReading): { readonly name: string; readonly pressure_Pa: number } {
  const all = Object.entries(chambers).map(([name, { lowest_Pa }]) => ({ name, pressure_Pa: lowest_Pa }));
  return all.reduce((a, b) => (b.pressure_Pa < a.pressure_Pa ? b : a));
}

const largestVoid = ({ chambers }: CycleReading): number =>
  Math.max(...Object.values(chambers).map(({ largestVoid_m3 }) => largestVoid_m3));

const chamberName = (name: string): string => (words.chambers as Readonly<Record<string, string>>)[name] ?? name;

function pressureRows(): CycleRow[] {
  const tone = (reading: CycleReading): 'caution' | undefined => (largestVoid(reading) > 0 ? 'caution' : undefined);
  return [
    {
      id: 'lowest-pressure',
      name: withUnit(words.lowestPressure, unitOfShown('pressure')),
      cell: (reading) => {
        const { name, pressure_Pa } = lowest(reading);
        const gauge = showBare('pressure', pressure_Pa - STANDARD_ATMOSPHERE_PA);
        return words.inChamber(gauge, chamberName(name));
      },
      tone,
    },
    {
      id: 'void',
      name: withUnit(words.largestVoid, unitOfShown('volume')),
      cell: (reading) => showBare('volume', largestVoid(reading)),
      when: (reading) => largestVoid(reading) > 0,
      tone,
    },
  ];
}

const heatRows = (): CycleRow[] => [
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
];

const settledRow = (): CycleRow => ({
  id: 'settled',
  name: withUnit(words.settled, unitOfShown('force')),
  cell: ({ settling }) => (settling ? showBare('force', settling.force_N) : text.readout.none),
  when: ({ settling }) => settling !== undefined,
});

export const cycleRows = (): CycleRow[] => [
  ...forceRows(),
  energy('work_J', words.work[motion.value]),
  lossOf('oil_J', words.oil),
  lossOf('friction_J', words.friction),
  lossOf('stop_J', words.stop),
  lossOf('separator_J', words.separator),
  ...heatRows(),
  ...pressureRows(),
  settledRow(),
];
