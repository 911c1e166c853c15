/** Hysteresis of the loops on show at a speed of the person's choice; at half of what both ways reach it comes with each loop. */

import { effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import { type CycleReading, cycleOf } from './cycle-solve.ts';
import { hysteresisSpeed_m_s } from './preferences.ts';
import type { Failure } from './reasons.ts';
import { sideSolver } from './side-solver.ts';
import { visibleBuilds } from './store.ts';

type Hysteresis = CycleReading['hysteresis'];

/** Of the loops on show, each at the speed that was asked for last. */
const answers = signal<ReadonlyMap<CycleReading, Hysteresis>>(new Map());
/** Why the last question had no answer. */
export const hysteresisFailure = signal<Failure | undefined>(undefined);

/** Undefined until it is read. */
export function hysteresisOf(reading: CycleReading): Hysteresis | undefined {
  const wanted = hysteresisSpeed_m_s.value;
  if (wanted === undefined) return reading.hysteresis;
  const found = answers.value.get(reading);
  return found?.speed_m_s === wanted ? found : undefined;
}

const onShow = (): CycleReading[] => visibleBuilds.value.flatMap((build) => cycleOf(build).reading ?? []);

async function read(readings: readonly CycleReading[], speed_m_s: number): Promise<void> {
  const loops = readings.map(({ loop }) => ({ speed_m_s: loop.speed_m_s, force_N: loop.force_N }));
  try {
    const found = await sideSolver().hysteresis({ loops, speed_m_s }, { channel: 'hysteresis' });
    answers.value = new Map(readings.map((reading, i) => [reading, found.read[i]]));
    hysteresisFailure.value = undefined;
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'superseded') hysteresisFailure.value = error;
  }
}

function follow(): void {
  const speed_m_s = hysteresisSpeed_m_s.value;
  const readings = onShow();
  if (speed_m_s === undefined || readings.every((reading) => untracked(() => hysteresisOf(reading)))) return;
  void untracked(() => read(readings, speed_m_s));
}

/** Starts following loops and speed; ends with the view. */
export const startHysteresis = (): (() => void) => effect(follow);
