/** Solves what each shim of the stack on show does, while it is looked at; the last answer stays, marked stale, until the new one is there. */

import { computed, effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { StackSensitivity } from '../../../workers/protocol.ts';
import type { ValvePlace } from '../../model/project.ts';
import { position_m } from './conditions.ts';
import { directionOf, stackOf } from './places.ts';
import type { Failure } from './reasons.ts';
import { sideSolver } from './side-solver.ts';
import { keyNow } from './solve.ts';
import { speedsUpTo } from './speeds.ts';
import { place, project, selectedBuild, theory, topSpeed } from './store.ts';

export type { StackSensitivity };

interface Answer {
  readonly key: string;
  readonly buildId: string;
  readonly place: ValvePlace;
  readonly effects?: StackSensitivity;
  readonly failure?: Failure;
}

/** Of the speeds of a curve every so many: what a shim does changes slowly with speed. */
const EVERY = 4;
/** While a key is being typed, the number before it is not worth its start [ms]. */
const PATIENCE_MS = 250;
/** Answers kept for undo and for going back and forth between stacks. */
const KEPT = 24;

const answers = signal<readonly Answer[]>([]);
/** From 0 to 1 while a run goes on. */
export const effectsProgress = signal<number | undefined>(undefined);

const keyWanted = computed(() => `${place.value} ${keyNow(selectedBuild.value)}`);

export interface ShownEffects {
  readonly effects?: StackSensitivity;
  readonly failure?: Failure;
  readonly stale: boolean;
}

/** As the document is now, or as this stack was solved last. */
export const shownEffects = computed<ShownEffects>(() => {
  const now = answers.value.find(({ key }) => key === keyWanted.value);
  const ofStack = (each: Answer) => each.buildId === selectedBuild.value.id && each.place === place.value;
  const last = answers.value.findLast((each) => ofStack(each) && each.effects);
  if (now) return { effects: now.effects, failure: now.failure, stale: false };
  return { effects: last?.effects, stale: true };
});

const keep = (answer: Answer): void => {
  answers.value = [...answers.value.filter(({ key }) => key !== answer.key), answer].slice(-KEPT);
};

async function solve(key: string, stop: AbortController): Promise<void> {
  const asked = { key, buildId: selectedBuild.value.id, place: place.value };
  const way = directionOf(asked.place);
  const request = {
    project: project.value,
    buildId: asked.buildId,
    place: stackOf(asked.place),
    speeds_m_s: speedsUpTo(topSpeed.value).flatMap((speed, i) =>
      (i + 1) % EVERY === 0 || i === 0 ? [way * speed] : [],
    ),
    // Two tables for each change of each shim: following waves in all of them would take minutes.
    theory: theory.value === 'auto' ? 'large-deflection' : theory.value,
    ...(position_m.value !== undefined && { stroke_m: position_m.value }),
  };
  const onProgress = (share: number): void => {
    if (!stop.signal.aborted) effectsProgress.value = share;
  };
  effectsProgress.value = 0;
  try {
    keep({ ...asked, effects: await sideSolver().sensitivity(request, { signal: stop.signal, onProgress }) });
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded') keep({ ...asked, failure: error });
  } finally {
    if (!stop.signal.aborted) effectsProgress.value = undefined;
  }
}

/** Starts following the stack on show; ends with the view. */
export function startEffects(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stop = new AbortController();
  const quit = () => {
    clearTimeout(timer);
    stop.abort();
    effectsProgress.value = undefined;
  };
  const dispose = effect(() => {
    const key = keyWanted.value;
    untracked(() => {
      quit();
      stop = new AbortController();
      const run = stop;
      if (answers.value.some((answer) => answer.key === key)) return;
      timer = setTimeout(() => void untracked(() => solve(key, run)), PATIENCE_MS);
    });
  });
  return () => {
    dispose();
    quit();
  };
}
