/**
 * Peak-velocity plot: one stroke at rising frequencies, and of each run the force at its peak speed pi S f.
 * Source: common practice of damper tests.
 */
import type { SolveHooks } from '../types.ts';
import { driveFor, type SineDrive } from './drive.ts';
import { type PeakForces, peakForces } from './read-cycle.ts';
import { runCycle } from './run-cycle.ts';
import type { CycleEnergy, CycleModel, CycleOptions, FailedCycle } from './types.ts';

export interface PvpPoint extends PeakForces {
  readonly status: 'finished';
  readonly frequency_Hz: number;
  readonly energy: CycleEnergy;
}

export type FailedPvpPoint = FailedCycle & { readonly frequency_Hz: number };

/** @throws InputError as `driveFor` and `runCycle` do; SolveStopped when the caller stops the run */
export function pvpSweep(
  model: CycleModel,
  stroke: Omit<SineDrive, 'frequency_Hz'>,
  frequencies_Hz: readonly number[],
  options: CycleOptions = {},
  hooks: SolveHooks = {},
): (PvpPoint | FailedPvpPoint)[] {
  return frequencies_Hz.map((frequency_Hz, done) => {
    const drive = driveFor({ ...stroke, frequency_Hz }, model.travel_m);
    const run = runCycle(model, drive, options, { shouldStop: hooks.shouldStop });
    hooks.onProgress?.(done + 1, frequencies_Hz.length);
    if (run.status !== 'finished') return { ...run, frequency_Hz };
    return { status: 'finished', frequency_Hz, ...peakForces(run), energy: run.energy };
  });
}
