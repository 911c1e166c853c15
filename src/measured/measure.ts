/** From the table of a file to a measurement: units and signs, speed, gas and friction, outliers, and fewer points. */
import { MAX_POINTS, type Measurement, type MeasurementKind, type MeasurementStep } from '../model/measurement.ts';
import { tidy } from '../units/convert.ts';
import { millimetresFromMetres } from '../units/si.ts';
import { localParabolas, slopeKept } from './local-parabola.ts';
import { isMotion, type Mapping } from './mapping.ts';
import { normalise, type Read, type Samples } from './normalise.ts';
import { outliersOf } from './outliers.ts';
import { type Points, peakPlaces, picked, thinnedPlaces } from './reduce.ts';
import { type Suspicion, suspicionsOf } from './suspicions.ts';
import type { Table } from './table.ts';
import { type Amount, gasForceOf, takeOffFriction, takeOffGas } from './take-off.ts';

export interface MeasureSettings {
  readonly mapping: Mapping;
  /** `kept`: it is in the forces and stays; `bench`: the bench took it off; an amount in N; or half way between the slowest points. */
  readonly gas: 'kept' | 'bench' | 'slowest-points' | number;
  /** Taken off [N]; 0 leaves it in. */
  readonly friction_N: number;
  /** Whole width of the local parabola that gives the speed [s]. */
  readonly window_s: number;
  /** Every sample, or of every half cycle that of greatest speed. */
  readonly keep: 'all' | 'peaks';
  /** Most points that are kept. */
  readonly mostPoints: number;
}

export const DEFAULT_MOST_POINTS = 400;
/** Fewer make no curve. */
const LEAST_POINTS = 3;
/** Digits that are kept: more than a load cell tells. */
const DIGITS = 6;

export interface Measured {
  readonly kind: MeasurementKind;
  readonly rawCount: number;
  readonly steps: readonly MeasurementStep[];
  readonly points: Points;
  /** Places in the lists of points. */
  readonly outliers: readonly number[];
  readonly suspicions: readonly Suspicion[];
  /** How many were found before the points were made fewer. */
  readonly outliersFound: number;
}

/** A fifth of a usual spacing of peaks at 100 samples a stroke: eleven samples, as far as there are any. */
export function usualWindow(time_s: readonly number[]): number {
  const spacing = (time_s[time_s.length - 1] - time_s[0]) / Math.max(1, time_s.length - 1);
  return Number((10 * spacing).toPrecision(3));
}

interface Step {
  readonly points: Points;
  readonly step?: MeasurementStep;
}

function withSpeed({ force_N, speed_m_s, position_m, time_s }: Samples, window_s: number): Step {
  const beside = { ...(position_m && { position_m }), ...(time_s && { time_s }) };
  if (speed_m_s) return { points: { speed_m_s, force_N, ...beside } };
  const [x, t] = [position_m ?? [], time_s ?? []];
  const speed = localParabolas(t, x, window_s).slope;
  // A window that is cut at the ends of the run leans to one side, and its slope is that of another moment.
  const whole = t.flatMap((time, i) =>
    time - t[0] >= window_s / 2 && t[t.length - 1] - time >= window_s / 2 ? [i] : [],
  );
  const amplitude = (Math.max(...x) - Math.min(...x)) / 2;
  const angularFrequency = amplitude > 0 ? Math.max(...speed.map(Math.abs)) / amplitude : 0;
  const loss = 100 * (1 - slopeKept((angularFrequency * window_s) / 2));
  return {
    points: picked({ speed_m_s: speed, force_N, ...beside }, whole),
    step: {
      kind: 'speed-from-position',
      window_s,
      peakLoss_percent: Number(Math.max(0, loss).toPrecision(2)),
      leftOut: t.length - whole.length,
    },
  };
}

function gasAmount({ speed_m_s, force_N }: Points, gas: MeasureSettings['gas']): Amount | undefined {
  if (typeof gas === 'number') return { force_N: gas, from: 'typed' };
  if (gas !== 'slowest-points') return undefined;
  const amount = gasForceOf(speed_m_s, force_N);
  return amount === undefined ? undefined : { force_N: amount, from: 'slowest-points' };
}

/** All outliers stay among the points, as far as there is room for them. */
function fewer(points: Points, outliers: readonly number[], most: number): { places: number[]; thinned: boolean } {
  const count = points.speed_m_s.length;
  if (count <= most) return { places: thinnedPlaces(count, most), thinned: false };
  const kept = outliers.slice(0, Math.floor(most / 2));
  const even = thinnedPlaces(count, most - kept.length);
  return { places: [...new Set([...even, ...kept])].sort((a, b) => a - b), thinned: true };
}

function reduced(points: Points, settings: MeasureSettings, steps: MeasurementStep[]): Points {
  if (settings.keep === 'all') return points;
  steps.push({ kind: 'peak-points' });
  return picked(points, peakPlaces(points.speed_m_s));
}

/** @returns the measurement without its names, or every reason why there is none, each at its line and column */
export function measure(table: Table, settings: MeasureSettings): Read<Measured> {
  const read = normalise(table, settings.mapping);
  if (!read.ok) return read;
  if (table.rows.length < LEAST_POINTS) {
    const got = `${table.rows.length} rows of numbers`;
    return { ok: false, faults: [{ code: 'measured.short', path: 'file', got, wanted: `at least ${LEAST_POINTS}` }] };
  }
  const steps: MeasurementStep[] = [];
  const { points: whole, step } = withSpeed(read.value, settings.window_s);
  if (step) steps.push(step);
  if (whole.speed_m_s.length < LEAST_POINTS) {
    const path = 'window_s';
    const wanted = 'a window shorter than the run';
    return { ok: false, faults: [{ code: 'measured.window', path, got: `${settings.window_s} s`, wanted }] };
  }
  const gas = gasAmount(whole, settings.gas);
  let force_N: readonly number[] = whole.force_N;
  const suspicions = suspicionsOf(whole.speed_m_s, force_N);
  if (gas) {
    const without = takeOffGas(force_N, gas);
    force_N = without.force_N;
    steps.push(without.step);
  }
  if (settings.friction_N !== 0) {
    const without = takeOffFriction(whole.speed_m_s, force_N, { force_N: settings.friction_N, from: 'typed' });
    force_N = without.force_N;
    steps.push(without.step);
  }
  const kept = reduced({ ...whole, force_N }, settings, steps);
  const found = outliersOf(kept.speed_m_s, kept.force_N);
  const { places, thinned } = fewer(kept, found, Math.min(settings.mostPoints, MAX_POINTS));
  if (thinned) steps.push({ kind: 'thinned', fromCount: kept.speed_m_s.length });
  const wrong = new Set(found);
  const outliers = places.flatMap((place, i) => (wrong.has(place) ? [i] : []));
  const kind = isMotion(settings.mapping) ? 'force-position-time' : 'force-speed';
  const points = picked(kept, places);
  return {
    ok: true,
    value: { kind, rawCount: table.rows.length, steps, points, outliers, suspicions, outliersFound: found.length },
  };
}

const short = (values: readonly number[]): number[] => values.map((value) => Number(tidy(value).toPrecision(DIGITS)));

/** The measurement as it is kept; six digits of every number. */
export function asMeasurement(
  { kind, rawCount, steps, points, outliers }: Measured,
  about: Pick<Measurement, 'id' | 'name' | 'notes' | 'sourceFile' | 'conditions'>,
  gasTakenOffByBench: boolean,
): Measurement {
  return {
    ...about,
    kind,
    rawCount,
    ...(gasTakenOffByBench && { gasTakenOffByBench }),
    steps: [...steps],
    points: {
      speed_m_s: short(points.speed_m_s),
      force_N: short(points.force_N),
      ...(points.position_m && { position_mm: short(points.position_m.map(millimetresFromMetres)) }),
      ...(points.time_s && { time_s: short(points.time_s) }),
    },
    outliers: [...outliers],
  };
}
