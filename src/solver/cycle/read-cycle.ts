/** What a test bench reads off a run: loops, force at peak speed, hysteresis, power, lowest pressures. */
import type { CycleRun } from './types.ts';

/** The stretch that counts, sample by sample; both ends are there, so a loop closes. Views into the series. */
export interface ForceLoop {
  readonly time_s: Float64Array;
  readonly position_m: Float64Array;
  readonly speed_m_s: Float64Array;
  readonly force_N: Float64Array;
}

/** Speed and force round a loop, sample by sample: of equal length. */
export type SpeedLoop = Pick<ForceLoop, 'speed_m_s' | 'force_N'>;

export interface SpeedForce {
  readonly speed_m_s: number;
  readonly force_N: number;
}

/** Force at the fastest sample each way, but the first, which has no history: one point of a peak-velocity plot. */
export interface PeakForces {
  readonly compression: SpeedForce;
  readonly rebound: SpeedForce;
}

/** Force at one speed while the shaft speeds up, and while it slows down. */
export interface Hysteresis {
  readonly speed_m_s: number;
  readonly accelerating_N: number;
  readonly decelerating_N: number;
  /** accelerating - decelerating. */
  readonly difference_N: number;
}

/** Over the stretch that counts, of one chamber. */
export interface ChamberExtremes {
  readonly lowest_Pa: number;
  readonly highest_Pa: number;
  readonly largestVoid_m3: number;
}

const counts = ({ counted: { first, last } }: CycleRun, values: Float64Array): Float64Array =>
  values.subarray(first, last + 1);

/** Force against position and speed; with the speed it is the continuous-velocity plot. */
export function forceLoop(run: CycleRun): ForceLoop {
  const { time_s, position_m, speed_m_s, force_N } = run.series;
  return {
    time_s: counts(run, time_s),
    position_m: counts(run, position_m),
    speed_m_s: counts(run, speed_m_s),
    force_N: counts(run, force_N),
  };
}

export const peakForces = (run: CycleRun): PeakForces => peaksOf(forceLoop(run));

function peaksOf({ speed_m_s, force_N }: SpeedLoop): PeakForces {
  // A trace may set out at speed, with the damper still at rest.
  let [up, down] = [1, 1];
  for (let k = 2; k < speed_m_s.length; k++) {
    if (speed_m_s[k] > speed_m_s[up]) up = k;
    if (speed_m_s[k] < speed_m_s[down]) down = k;
  }
  const at = (k: number): SpeedForce => ({ speed_m_s: speed_m_s[k], force_N: force_N[k] });
  return { compression: at(up), rebound: at(down) };
}

/**
 * Force at a speed on the way to the peak and on the way back, straight between samples.
 * @param speed_m_s  other than 0; negative in rebound
 * @returns undefined unless the loop passes that speed exactly twice
 */
export function hysteresisAt(loop: SpeedLoop, speed_m_s: number): Hysteresis | undefined {
  const [faster, slower]: [number[], number[]] = [[], []];
  for (let k = 1; k < loop.speed_m_s.length; k++) {
    const [before, after] = [loop.speed_m_s[k - 1] - speed_m_s, loop.speed_m_s[k] - speed_m_s];
    if (before < 0 === after < 0) continue;
    const share = before / (before - after);
    const force = loop.force_N[k - 1] + share * (loop.force_N[k] - loop.force_N[k - 1]);
    (after > before === speed_m_s > 0 ? faster : slower).push(force);
  }
  if (faster.length !== 1 || slower.length !== 1) return undefined;
  const [accelerating_N, decelerating_N] = [faster[0], slower[0]];
  return { speed_m_s, accelerating_N, decelerating_N, difference_N: accelerating_N - decelerating_N };
}

/** At one speed in compression, and at the same in rebound; absent where the loop does not pass it exactly twice. */
export interface HysteresisBothWays {
  readonly speed_m_s: number;
  readonly compression?: Hysteresis;
  readonly rebound?: Hysteresis;
}

/** @param speed_m_s  at least 0; half of what both directions reach when absent */
export function hysteresisBothWays(loop: SpeedLoop, speed_m_s?: number): HysteresisBothWays {
  const { compression, rebound } = peaksOf(loop);
  const speed = speed_m_s ?? Math.max(0, Math.min(compression.speed_m_s, 0 - rebound.speed_m_s) / 2);
  if (speed === 0) return { speed_m_s: 0 };
  return { speed_m_s: speed, compression: hysteresisAt(loop, speed), rebound: hysteresisAt(loop, 0 - speed) };
}

/** Turned into heat a second, over the stretch that counts [W]. */
export function heatingPower(run: CycleRun): number {
  const { oil_J, friction_J, stop_J, separator_J } = run.energy;
  const time = forceLoop(run).time_s;
  return (oil_J + friction_J + stop_J + separator_J) / (time[time.length - 1] - time[0]);
}

/** Rise of temperature a minute without any cooling [K/min]. @param heatCapacity_J_K  of all that warms, above 0 */
export const warmingPerMinute = (run: CycleRun, heatCapacity_J_K: number): number =>
  (60 * heatingPower(run)) / heatCapacity_J_K;

export function chamberExtremes(run: CycleRun): Readonly<Record<string, ChamberExtremes>> {
  const { pressure_Pa, void_m3 } = run.series;
  const of = (name: string): ChamberExtremes => {
    const pressures = counts(run, pressure_Pa[name]);
    return {
      lowest_Pa: pressures.reduce((a, b) => Math.min(a, b)),
      highest_Pa: pressures.reduce((a, b) => Math.max(a, b)),
      largestVoid_m3: counts(run, void_m3[name]).reduce((a, b) => Math.max(a, b)),
    };
  };
  return Object.fromEntries(Object.keys(pressure_Pa).map((name) => [name, of(name)]));
}
