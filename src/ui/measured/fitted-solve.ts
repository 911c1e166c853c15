/** Keeps the curve with fitted coefficients of each build on show that has a fit, once its plain curve is there. */

import { effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { Build } from '../../model/project.ts';
import { fittedCurves } from '../app/preferences.ts';
import { errorInWords } from '../app/reasons.ts';
import { sideSolver } from '../app/side-solver.ts';
import { keyNow, outcomes, requestFor } from '../app/solve.ts';
import type { ForceCurve } from '../app/solved.ts';
import { visibleBuilds } from '../app/store.ts';

interface Answer {
  readonly key: string;
  /** Absent where the damper has no state with these values; `why` says so. */
  readonly curve?: ForceCurve;
  readonly why?: string;
}

/** By build id. */
export const fittedAnswers = signal<ReadonlyMap<string, Answer>>(new Map());

let running: { readonly key: string; readonly stop: AbortController } | undefined;

const keyOf = (build: Build): string => `${keyNow(build)} ${JSON.stringify(build.fit?.coefficients)}`;

/** The curve with fitted values as the document is now. */
export const fittedCurve = (build: Build): ForceCurve | undefined => {
  const answer = fittedAnswers.value.get(build.id);
  return build.fit && answer?.key === keyOf(build) ? answer.curve : undefined;
};

function lacking(): Build[] {
  if (fittedCurves.value === 'hidden') return [];
  return visibleBuilds.value.filter((build) => {
    const outcome = outcomes.value.get(build.id);
    if (!build.fit || !outcome?.curve || outcome.stale || outcome.key !== keyNow(build)) return false;
    return fittedAnswers.value.get(build.id)?.key !== keyOf(build);
  });
}

function plan(): void {
  const wanted = lacking();
  if (running) {
    const { key, stop } = running;
    if (!wanted.some((build) => keyOf(build) === key)) stop.abort();
    return;
  }
  const [first] = wanted;
  if (first) void untracked(() => solve(first));
}

async function solve(build: Build): Promise<void> {
  const run = { key: keyOf(build), stop: new AbortController() };
  running = run;
  const keep = (answer: Answer): void => {
    fittedAnswers.value = new Map([...fittedAnswers.value, [build.id, answer]]);
  };
  try {
    const request = { ...requestFor([build]), fitted: true };
    const { curves } = await sideSolver().forceCurves(request, { signal: run.stop.signal, channel: 'fitted' });
    const answer = curves[build.id];
    keep(
      answer.status === 'solved'
        ? { key: run.key, curve: answer.curve }
        : { key: run.key, why: errorInWords(answer.error) },
    );
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded') keep({ key: run.key, why: errorInWords(error) });
  } finally {
    running = undefined;
  }
  untracked(plan);
}

/** Starts following what is on show. */
export const startFitted = (): (() => void) => effect(plan);
