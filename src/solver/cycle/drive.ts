/**
 * What moves the shaft: a sine stroke from rest at the extended end,
 *   x = x_m - (S/2) cos 2 pi f t,   v = pi S f sin 2 pi f t,
 * so the peak speed is pi S f and v > 0 first; or a trace through given positions, a monotone cubic between them.
 *
 * symbol  unit  meaning
 * S, f    m,Hz  stroke from end to end, frequency
 * x, x_m  m     stroke from full extension, middle of the motion
 * v       m/s   shaft speed, positive in compression
 */
import { InputError } from '../../units/fault.ts';
import { pchipTable } from '../numeric/hermite-table.ts';
import type { Drive } from './types.ts';

export interface SineDrive {
  readonly kind: 'sine';
  /** From end to end [m]. */
  readonly stroke_m: number;
  readonly frequency_Hz: number;
  /** Middle of the motion, from full extension [m]. */
  readonly middle_m: number;
  /** Out and back, how often; 3 when absent. */
  readonly cycles?: number;
}

export interface TraceDrive {
  readonly kind: 'trace';
  /** Rising [s]. */
  readonly time_s: ArrayLike<number>;
  /** From full extension [m]. */
  readonly position_m: ArrayLike<number>;
}

const DEFAULT_CYCLES = 3;
const MAX_CYCLES = 1000;
/** At a speed between two breaks: a sine is fastest half way, a cubic at an end or about half way. */
const LOOKS = 8;

/** pi S f [m/s]. */
export const peakSpeed = ({ stroke_m, frequency_Hz }: Pick<SineDrive, 'stroke_m' | 'frequency_Hz'>): number =>
  Math.PI * stroke_m * frequency_Hz;

/** The fastest the drive moves, in compression and in rebound, both >= 0 [m/s]. */
export function fastest(drive: Drive): { readonly compression: number; readonly rebound: number } {
  const { period_s: period = drive.end_s - drive.start_s, start_s, breaks_s } = drive;
  const ends = [start_s, ...breaks_s.filter((t) => t > start_s && t < start_s + period), start_s + period];
  let [compression, rebound] = [0, 0];
  for (let i = 1; i < ends.length; i++) {
    for (let k = 0; k <= LOOKS; k++) {
      const v = drive.speed(ends[i - 1] + ((ends[i] - ends[i - 1]) * k) / LOOKS);
      compression = Math.max(compression, v);
      rebound = Math.max(rebound, 0 - v);
    }
  }
  return { compression, rebound };
}

/**
 * @throws InputError `cycle.drive.stroke`, `cycle.drive.frequency`, `cycle.drive.cycles` for what no motion has, `cycle.drive.travel` where
 *   it leaves the travel; for a trace `cycle.trace.short`, `cycle.trace.length`, `cycle.trace.number`, `cycle.trace.time`, `cycle.trace.travel`
 */
export function driveFor(input: SineDrive | TraceDrive, travel_m: number): Drive {
  return input.kind === 'sine' ? sineDrive(input, travel_m) : traceDrive(input, travel_m);
}

function sineDrive(input: SineDrive, travel_m: number): Drive {
  const { stroke_m: S, frequency_Hz: f, middle_m: x_m, cycles = DEFAULT_CYCLES } = input;
  requirePositive('stroke', S, 'm');
  requirePositive('frequency', f, 'Hz');
  if (!(Number.isInteger(cycles) && cycles >= 1 && cycles <= MAX_CYCLES)) {
    throw fault('drive.cycles', 'drive.cycles', cycles, `a whole number from 1 to ${MAX_CYCLES}`);
  }
  requireWithin('drive', 'drive.middle_m', x_m - S / 2, travel_m);
  requireWithin('drive', 'drive.middle_m', x_m + S / 2, travel_m);
  const w = 2 * Math.PI * f;
  const breaks_s = Array.from({ length: 2 * cycles + 1 }, (_, k) => k / (2 * f));
  return {
    start_s: 0,
    end_s: breaks_s[2 * cycles],
    position: (t) => x_m - (S / 2) * Math.cos(w * t),
    speed: (t) => (S / 2) * w * Math.sin(w * t),
    breaks_s,
    period_s: 1 / f,
  };
}

function traceDrive({ time_s, position_m }: TraceDrive, travel_m: number): Drive {
  const [times, positions] = [Array.from(time_s), Array.from(position_m)];
  if (times.length < 2) throw fault('trace.short', 'trace.time_s', times.length, 'at least two moments');
  if (times.length !== positions.length) {
    throw fault('trace.length', 'trace.position_m', positions.length, `as many positions as times, ${times.length}`);
  }
  for (const [i, t] of times.entries()) {
    requireNumber(`trace.time_s[${i}]`, t, 's');
    requireNumber(`trace.position_m[${i}]`, positions[i], 'm');
    if (i > 0 && !(t > times[i - 1]))
      throw fault('trace.time', `trace.time_s[${i}]`, t, `more than ${times[i - 1]}`, 's');
    requireWithin('trace', `trace.position_m[${i}]`, positions[i], travel_m);
  }
  const table = pchipTable(times, positions);
  // The last moment of a step may miss the end by a rounding.
  const within = (t: number) => Math.min(Math.max(t, table.first), table.last);
  return {
    start_s: table.first,
    end_s: table.last,
    position: (t) => table.at(within(t)),
    speed: (t) => table.slope(within(t)),
    breaks_s: times,
  };
}

function requirePositive(name: 'stroke' | 'frequency', value: number, unit: string): void {
  if (value > 0 && Number.isFinite(value)) return;
  throw fault(`drive.${name}`, `drive.${name}_${unit}`, value, 'a number above 0', unit);
}

function requireNumber(path: string, value: number, unit: string): void {
  if (!Number.isFinite(value)) throw fault('trace.number', path, value, 'a number', unit);
}

function requireWithin(kind: 'drive' | 'trace', path: string, x: number, travel_m: number): void {
  // A motion over the whole travel may miss its ends by a rounding.
  const play = 1e-12 * travel_m;
  if (x >= -play && x <= travel_m + play) return;
  throw fault(`${kind}.travel`, path, x, `a motion within the travel, 0 to ${travel_m}`, 'm');
}

const fault = (code: string, path: string, got: number, wanted: string, unit?: string) =>
  new InputError({ code: `cycle.${code}`, path, got: String(got), wanted, ...(unit && { unit }) });
