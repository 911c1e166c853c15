/** Runs a fit of the build on show, with its progress and a way to stop it, and keeps what comes out with the build. */

import { signal } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { FitDone } from '../../../workers/protocol.ts';
import type { Fit, FitCoefficientName } from '../../model/fit.ts';
import type { Build } from '../../model/project.ts';
import { editProject } from '../app/apply.ts';
import { tell } from '../app/notices.ts';
import { inReaderUnits } from '../app/quantities.ts';
import { errorInWords } from '../app/reasons.ts';
import { sideSolver } from '../app/side-solver.ts';
import { project, theory, withBuild } from '../app/store.ts';
import { undoAct } from '../app/undo-act.ts';
import { measuredWords } from '../text/measured.ts';

const words = measuredWords.fit;

export interface FitRun {
  readonly buildId: string;
  /** From 0 to 1. */
  readonly progress: number;
  readonly stop: AbortController;
}

export const fitRun = signal<FitRun | undefined>(undefined);

export const keptFit = (done: FitDone, measurements: string[]): Fit => ({
  measurements,
  theory: done.theory,
  coefficients: done.coefficients.map(({ name, physical, value, low, high, leftOpen }) => ({
    ...{ name, physical, value, low, high },
    leftOpen: Math.max(0, leftOpen),
  })),
  untold: done.untold.map(({ parts }) => parts.map(({ name }) => name)),
  scatter_N: done.scatter_N,
  pointCount: done.pointCount,
});

const keepFit = (buildId: string, fit: Fit | undefined, label: string) =>
  editProject(
    () =>
      withBuild(buildId, (build) => {
        const { fit: _before, ...parts } = build;
        return fit ? { ...parts, fit } : parts;
      }),
    { label },
  );

export function removeFit(build: Build): void {
  const fault = keepFit(build.id, undefined, words.remove);
  if (!fault) tell(words.removed, { action: undoAct() });
}

/** @param names  coefficients that may change; without them the usual ones */
export async function startFit(build: Build, names?: readonly FitCoefficientName[]): Promise<void> {
  const measurementIds = (build.measurements ?? []).map(({ id }) => id);
  const run: FitRun = { buildId: build.id, progress: 0, stop: new AbortController() };
  fitRun.value = run;
  const onProgress = (progress: number): void => {
    if (fitRun.value?.stop === run.stop) fitRun.value = { ...run, progress };
  };
  try {
    const asked = { measurementIds, theory: theory.value, ...(names && { names }) };
    const request = { project: project.value, buildId: build.id, ...asked };
    const outcome = await sideSolver().fit(request, { signal: run.stop.signal, onProgress });
    if (outcome.status !== 'fitted') return tell(words.failed(inReaderUnits(outcome.reason)), { tone: 'problem' });
    const fault = keepFit(build.id, keptFit(outcome, measurementIds), words.label);
    if (fault) return tell(fault.message, { tone: 'problem' });
    tell(words.done(outcome.pointCount), { action: undoAct() });
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded')
      tell(words.failed(errorInWords(error)), { tone: 'problem' });
  } finally {
    if (fitRun.value?.stop === run.stop) fitRun.value = undefined;
  }
}
