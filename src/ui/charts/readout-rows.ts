/** The rows of the readout: the name of each, how it reads a point, and when it has something to say. */
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { bandsRunning } from '../app/band-solve.ts';
import { bands, gasForce } from '../app/preferences.ts';
import { showBare, showBareSigned, showNumber, showPercent, unitOfShown } from '../app/quantities.ts';
import type { BasePoint, ForceBand, ForcePoint } from '../app/solved.ts';
import { measuredGroups } from '../measured/measured-readout.ts';
import type { StackState } from '../section/shape-at.ts';
import { text } from '../text/en.ts';
import { airMargin } from './air-margin.ts';
import { measure } from './comparison.ts';
import { differenceOf, shareOf } from './difference.ts';
import { PATHS, type PathName, sharesOf, type ValveName, valveFlows } from './path-shares.ts';
import type { ReadoutGroup, ReadoutRow, SolvedReading } from './readout-group.ts';
import { lifeReserve, setNote, yieldReserve } from './reserve.ts';
import { shownForce } from './shown-force.ts';

const r = text.readout;
const withUnit = (name: string, unit: string): string => `${name}, ${unit}`;
const gauge = (absolute_Pa: number): string => showBare('pressure', absolute_Pa - STANDARD_ATMOSPHERE_PA);
const withoutGas = (): boolean => gasForce.value === 'subtracted';

const bandOf = ({ point }: SolvedReading): Extract<ForceBand, { status: 'converged' }> | undefined =>
  point.band?.status === 'converged' ? point.band : undefined;

function bandCell(reading: SolvedReading): string {
  const band = bandOf(reading);
  if (!band) return bandsRunning.value ? r.bandWaits : r.none;
  const taken_N = withoutGas() ? reading.point.gasForce_N : 0;
  return r.bandSpan(showBare('force', band.low_N - taken_N), showBare('force', band.high_N - taken_N));
}

function bandFromCell(reading: SolvedReading): string {
  const from = bandOf(reading)?.mostFrom;
  return from ? r.coefficient[from] : r.none;
}

/** In the unit of the chart of differences, otherwise in per cent. */
const inForce = (): boolean => measure.value === 'difference';
const differenceName = (): string => (inForce() ? r.difference.difference(unitOfShown('force')) : r.difference.share);

function differenceCell({ point, isBaseline, against }: SolvedReading): string {
  if (isBaseline) return text.builds.baseline;
  if (!against) return r.none;
  if (inForce()) return showBareSigned('force', differenceOf(point, against.point, withoutGas()));
  const share = shareOf(point, against.point, against.largest_N, withoutGas());
  return share === undefined ? r.notComparable : showPercent(share, true);
}

function forceRows(): ReadoutRow[] {
  const unit = unitOfShown('force');
  return [
    {
      id: 'force',
      name: withUnit(withoutGas() ? r.forceWithoutGas : r.force, unit),
      cell: ({ point }) => showBare('force', shownForce(point, withoutGas())),
    },
    { id: 'difference', name: differenceName(), cell: differenceCell },
    { id: 'band', name: withUnit(r.band, unit), cell: bandCell, when: () => bands.value === 'shown' },
    { id: 'band-from', name: r.bandFrom, cell: bandFromCell, when: () => bands.value === 'shown' },
    { id: 'damping', name: withUnit(r.ofDamping, unit), cell: ({ point }) => showBare('force', point.dampingForce_N) },
    { id: 'gas-force', name: withUnit(r.gasForce, unit), cell: ({ point }) => showBare('force', point.gasForce_N) },
    {
      id: 'stop',
      name: withUnit(r.stopForce, unit),
      cell: ({ point }) => showBare('force', point.stopForce_N),
      when: ({ point }) => point.stopForce_N !== 0,
    },
  ];
}

/** The shims take what the other paths leave: their share is told only where there are several others. */
function shareRows(valve: ValveName, told: readonly PathName[]): ReadoutRow[] {
  const share = (point: ForcePoint, path: PathName): number => sharesOf(valveFlows(point, valve))[path] ?? 0;
  return told.map((path) => ({
    id: `${valve}-${path}`,
    name: r.share[path],
    cell: ({ point }) => showPercent(share(point, path)),
    when: ({ point }) => (valve === 'piston' && path === 'bleed') || share(point, path) > 0,
  }));
}

const stressCell = (state: StackState | undefined): string =>
  state ? showBare('stress', Math.max(...state.shimStress_Pa)) : r.none;

function pistonRows(): ReadoutRow[] {
  return [
    {
      id: 'opening',
      name: withUnit(r.opening, unitOfShown('lift')),
      cell: ({ point }) => showBare('lift', point.seatOpening_m),
    },
    ...shareRows('piston', ['bleed', 'leakage']),
    {
      id: 'shims',
      name: withUnit(r.shimPressure, unitOfShown('pressure')),
      cell: ({ point }) => showBare('pressure', point.shimPressure_Pa),
    },
    { id: 'stress', name: withUnit(r.stress, unitOfShown('stress')), cell: ({ state }) => stressCell(state) },
    { id: 'life', name: r.lifeReserve, cell: ({ point }) => lifeReserve(point, showNumber) },
    yieldRow(
      { id: 'yield', name: r.yieldReserve, cell: ({ point }) => yieldReserve(point, showNumber) },
      ({ point }) => point,
    ),
  ];
}

/** Of a stack that will take a set that is told under the number, and both are a caution. */
function yieldRow(
  row: ReadoutRow,
  stackOf: (reading: SolvedReading) => Pick<ForcePoint, 'life'> | undefined,
): ReadoutRow {
  const note = (reading: SolvedReading): string | undefined => setNote(stackOf(reading) ?? {});
  return { ...row, note, tone: (reading) => (note(reading) ? 'caution' : undefined) };
}

type WithBase = (base: BasePoint, reading: SolvedReading) => string;

const baseRow = (id: string, name: string, cell: WithBase): ReadoutRow => ({
  id: `base-${id}`,
  name,
  cell: (reading) => (reading.point.base ? cell(reading.point.base, reading) : r.none),
  when: ({ point }) => point.base !== undefined,
});

function baseRows(way: 1 | -1): ReadoutRow[] {
  const drop = baseRow('drop', withUnit(r.baseDrop, unitOfShown('pressure')), (base) =>
    showBare('pressure', base.drop_Pa),
  );
  const opening = (name: string): ReadoutRow =>
    baseRow('opening', withUnit(name, unitOfShown('lift')), (base) => showBare('lift', base.seatOpening_m));
  if (way === -1) return [drop, opening(r.checkOpening), ...shareRows('base', PATHS)];
  return [
    drop,
    opening(r.opening),
    ...shareRows('base', ['bleed', 'poppet']),
    baseRow('shims', withUnit(r.shimPressure, unitOfShown('pressure')), (base) =>
      showBare('pressure', base.shimPressure_Pa),
    ),
    baseRow('stress', withUnit(r.stress, unitOfShown('stress')), (_base, { baseState }) => stressCell(baseState)),
    baseRow('life', r.lifeReserve, (base) => lifeReserve(base, showNumber)),
    yieldRow(
      baseRow('yield', r.yieldReserve, (base) => yieldReserve(base, showNumber)),
      ({ point }) => point.base,
    ),
  ];
}

/** A chamber that is held says so, with the margin that it would have. */
function marginCell({ point }: SolvedReading): string {
  const margin = showBare('pressure', airMargin(point));
  return point.airRelease ? r.held(margin) : margin;
}

function pressureRows(): ReadoutRow[] {
  const row = (id: string, name: string, read: (point: ForcePoint) => number): ReadoutRow => ({
    id,
    name,
    cell: ({ point }) => gauge(read(point)),
  });
  const tone = ({ point }: SolvedReading): 'caution' | undefined => (point.airRelease ? 'caution' : undefined);
  const needed = ({ point }: SolvedReading): string =>
    point.gasPressureNeeded_Pa > STANDARD_ATMOSPHERE_PA ? gauge(point.gasPressureNeeded_Pa) : r.noneNeeded;
  return [
    row('chamber-c', r.chamberC, (point) => point.compressionPressure_Pa),
    row('chamber-r', r.chamberR, (point) => point.reboundPressure_Pa),
    row('gas', r.gas, (point) => point.gasPressure_Pa),
    { id: 'margin', name: r.margin, cell: marginCell, tone },
    { id: 'gas-needed', name: r.gasNeeded, cell: needed, tone },
  ];
}

export function readoutGroups(way: 1 | -1): ReadoutGroup[] {
  const measured = measuredGroups(way);
  return [
    { id: 'force', rows: forceRows() },
    ...measured,
    // Under the name of a measurement they would pass for measured.
    { id: 'piston', rows: pistonRows(), ...(measured.length > 0 && { title: text.chart.valve.piston }) },
    { id: 'base', title: text.chart.valve.base, rows: baseRows(way) },
    { id: 'pressures', title: r.pressures(unitOfShown('pressure')), rows: pressureRows() },
  ];
}
