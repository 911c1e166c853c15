import type { SolverError } from '../../../workers/client.ts';
import type { ForceCurvesRequest, ForceCurvesResult, LiftRequest, Project } from '../../../workers/protocol.ts';

/** A request whose one build names what the fixture's solver does; the fixture reads nothing of the project. */
export const request = (way: string, project: object = {}): ForceCurvesRequest => ({
  project: project as Project,
  buildIds: [way],
  speeds_m_s: [0.1],
  theory: 'small-deflection',
});

export const liftRequest: LiftRequest = {
  stack: { clampRadius_m: 0.006, shims: [], pressureZone: { innerRadius_m: 0.008, outerRadius_m: 0.013 } },
  pressures_Pa: [1e5],
  options: { theory: 'small-deflection' },
};

/** The id of the thread that answered. */
export function threadOf(result: ForceCurvesResult): number {
  const [curve] = Object.values(result.curves);
  if (curve.status !== 'solved') throw new Error(`no curve: ${curve.error.message}`);
  return curve.curve.points[0].shaftSpeed_m_s;
}

/** The error a promise ends with; a promise that resolves fails the test. */
export const failureOf = (promise: Promise<unknown>): Promise<SolverError> =>
  promise.then(
    (value) => {
      throw new Error(`expected a rejection, got ${JSON.stringify(value)}`);
    },
    (error) => error,
  );

/** The codes of requests that all fail, in order. */
export const codesOf = async (promises: Promise<unknown>[]): Promise<string[]> =>
  (await Promise.all(promises.map(failureOf))).map(({ code }) => code);

/** A progress callback, and the moment it is first called: from then on the run is on the worker. */
export function firstProgress() {
  let onProgress: (fraction: number) => void = () => {};
  const started = new Promise<number>((resolve) => {
    onProgress = resolve;
  });
  return { onProgress, started };
}
