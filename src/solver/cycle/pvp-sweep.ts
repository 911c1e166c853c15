/**
 * Peak-velocity plot of a damper: one stroke at several frequencies, and of each run the force at its peak speed pi S f.
 * Source: common practice of damper tests.
 */
import type { DamperInput } from '../damper/types.ts';
import type { SolveHooks } from '../types.ts';
import { peakSpeed, type SineDrive } from './drive.ts';
import { type DampingCycleOptions, dampingCycles } from './from-damper.ts';
import { type PeakForces, peakForces } from './read-cycle.ts';
import type { CycleEnergy, FailedCycle } from './types.ts';

interface Swept {
  readonly frequency_Hz: number;
  /** pi S f. */
  readonly peakSpeed_m_s: number;
}

export type PvpPoint = Swept &
  ((PeakForces & { readonly status: 'finished'; readonly energy: CycleEnergy }) | FailedCycle);

/** @throws InputError and SolveStopped as `dampingCycles` does */
export function pvpSweep(
  damper: DamperInput,
  stroke: Omit<SineDrive, 'frequency_Hz'>,
  frequencies_Hz: readonly number[],
  options: DampingCycleOptions,
  hooks: SolveHooks = {},
): PvpPoint[] {
  const drives = frequencies_Hz.map((frequency_Hz): SineDrive => ({ ...stroke, frequency_Hz }));
  return dampingCycles(damper, drives, options, hooks).map((run, i) => {
    const swept = { frequency_Hz: frequencies_Hz[i], peakSpeed_m_s: peakSpeed(drives[i]) };
    if (run.status !== 'finished') return { ...swept, ...run };
    return { ...swept, status: 'finished', ...peakForces(run), energy: run.energy };
  });
}
