/**
 * Solves how the force of the build on show scatters, on all cores, while it is looked at. Curves go first: an edit ends the workers
 * at once, and they start again when the curves stand. What was solved of a study is kept, so that it goes on where it was.
 */
import { batch, computed, effect, signal, untracked } from '@preact/signals';
import { createSolverClient, type SolverClient, SolverError } from '../../../workers/client.ts';
import type { ToleranceSamples } from '../../../workers/protocol.ts';
import { projectOfBuild } from '../../model/link-form.ts';
import { position_m } from '../app/conditions.ts';
import { CORES, type RunPiece, runPieces } from '../app/pool.ts';
import { sideSolver } from '../app/side-solver.ts';
import { keyNow, solverState } from '../app/solve.ts';
import { speedsUpTo } from '../app/speeds.ts';
import { project, selectedBuild, theory, topSpeed } from '../app/store.ts';
import { inOrder, missingPieces, newStudy, PIECE, type Study, samplesOf, withPiece } from './scatter-study.ts';

export const SAMPLE_CHOICES = ['32', '64', '128', '256'] as const;
export type SampleChoice = (typeof SAMPLE_CHOICES)[number];

/** Of the speeds of a curve every so many: a band is smoother than its curve. */
const EVERY = 2;
/** Longer than the pauses of a person who types or turns a number [ms]. */
const PATIENCE_MS = 400;
/** Studies kept for undo and for going back and forth between builds. */
const KEPT = 8;

/** How many samples there are to be. */
export const sampleGoal = signal<SampleChoice>('128');
export const seed = signal(1);
/** Whether the person has stopped it; it stays so until they let it go on. */
export const isPaused = signal(false);

const studies = signal<readonly Study[]>([]);
/** From 0 to 1, of the pieces that are under way. */
const underWay = signal<ReadonlyMap<number, number>>(new Map());
export const isRunning = signal(false);

export const goal = computed(() => Number(sampleGoal.value));
const keyWanted = computed(() =>
  JSON.stringify([keyNow(selectedBuild.value), project.value.tolerances ?? {}, seed.value]),
);
const curvesComeFirst = computed(() => ['loading', 'solving'].includes(solverState.value.phase));

/** As the document is now, as far as it is solved. */
const studyNow = computed(() => studies.value.find(({ key }) => key === keyWanted.value));

export interface ShownStudy {
  readonly study?: Study;
  /** Of the build as it was. */
  readonly stale: boolean;
}

/** With a reading: of the build as it is, or else as it was last. */
export const shownStudy = computed<ShownStudy>(() => {
  if (studyNow.value?.read) return { study: studyNow.value, stale: false };
  const last = studies.value.findLast(({ buildId, read }) => read && buildId === selectedBuild.value.id);
  return { ...(last && { study: last }), stale: true };
});

export const failure = computed(() => studyNow.value?.failure);
export const samplesDone = computed(() => (studyNow.value ? samplesOf(studyNow.value) : 0));
/** From 0 to 1, parts of pieces included. */
export const share = computed(() => {
  const parts = [...underWay.value.values()].reduce((sum, fraction) => sum + fraction * PIECE, 0);
  return Math.min(1, (samplesDone.value + parts) / goal.value);
});

function put(key: string, change: (study: Study) => Study): void {
  const study = studies.peek().find((each) => each.key === key);
  if (!study) return;
  studies.value = [...studies.peek().filter((each) => each.key !== key), change(study)].slice(-KEPT);
}

const toleranceSpeeds = (): number[] => {
  const speeds = speedsUpTo(topSpeed.peek()).filter((_, i) => i === 0 || i % EVERY === 1);
  return [...speeds.map((speed) => -speed).reverse(), ...speeds];
};

function runner(client: SolverClient): RunPiece<ToleranceSamples> {
  const buildId = selectedBuild.peek().id;
  const asked = {
    project: projectOfBuild(project.peek(), buildId),
    buildId,
    speeds_m_s: toleranceSpeeds(),
    theory: theory.peek(),
    ...(position_m.peek() !== undefined && { stroke_m: position_m.peek() }),
    seed: seed.peek(),
  };
  return (piece, options) =>
    client.toleranceSamples({ ...asked, from: piece * PIECE, to: (piece + 1) * PIECE }, options);
}

/** Reads what has come since, again and again until nothing more has. */
async function readAll(key: string, signal: AbortSignal): Promise<void> {
  for (;;) {
    const study = studies.peek().find((each) => each.key === key);
    if (!study || signal.aborted || samplesOf(study) === (study.read?.samples ?? 0)) return;
    const [{ speeds_m_s }] = study.pieces.values();
    const asked = { speeds_m_s, solved: inOrder(study), seed: seed.peek() };
    const reading = await sideSolver().toleranceReading(asked, { signal });
    put(key, (now) => ({ ...now, read: { reading, samples: samplesOf(study) } }));
  }
}

/** One reading at a time; whoever asks meanwhile waits for it, since it goes on to what has come by then. */
function reader(key: string, signal: AbortSignal): () => Promise<void> {
  let reading: Promise<void> | undefined;
  return () => {
    reading ??= readAll(key, signal)
      .catch((error: unknown) => onFailed(key, error))
      .finally(() => {
        reading = undefined;
      });
    return reading;
  };
}

function onFailed(key: string, error: unknown): void {
  if (!(error instanceof SolverError)) throw error;
  if (error.code !== 'cancelled' && error.code !== 'superseded') put(key, (now) => ({ ...now, failure: error }));
}

async function run(key: string, stop: AbortController): Promise<void> {
  const { signal: stopped } = stop;
  const buildId = selectedBuild.peek().id;
  if (!studyNow.peek()) studies.value = [...studies.peek(), newStudy(key, buildId)].slice(-KEPT);
  const missing = missingPieces(studyNow.peek() as Study, goal.peek());
  const clients = Array.from({ length: Math.min(CORES, missing.length) }, () => createSolverClient());
  const close = () => clients.forEach((client) => void client.close());
  stopped.addEventListener('abort', close);
  isRunning.value = true;
  const read = reader(key, stopped);
  await runPieces(clients.map(runner), missing, stopped, {
    onProgress: (piece, fraction) => {
      if (!stopped.aborted) underWay.value = new Map([...underWay.peek(), [piece, fraction]]);
    },
    onDone: (solved, piece) => {
      batch(() => {
        put(key, (study) => withPiece(study, piece, solved));
        underWay.value = new Map([...underWay.peek()].filter(([other]) => other !== piece));
      });
      void read();
    },
    onFailed: (_, error) => {
      onFailed(key, error);
      stop.abort();
    },
  });
  close();
  if (!stopped.aborted) await read();
  if (!stopped.aborted) isRunning.value = false;
}

export function pause(): void {
  isPaused.value = true;
}

/** Also tries again what failed. */
export function goOn(): void {
  batch(() => {
    put(keyWanted.peek(), ({ failure: _failure, ...study }) => study);
    isPaused.value = false;
  });
}

/**
 * Starts following the build on show.
 * @param isLookedAt  whether anything on the page shows what is solved; read as a signal
 * @returns ends it
 */
export function startTolerance(isLookedAt: () => boolean): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stop = new AbortController();
  const quit = (): void => {
    clearTimeout(timer);
    stop.abort();
    batch(() => {
      isRunning.value = false;
      underWay.value = new Map();
    });
  };
  const dispose = effect(() => {
    const key = keyWanted.value;
    const samples = goal.value;
    const mayRun = isLookedAt() && !isPaused.value && !curvesComeFirst.value && failure.value === undefined;
    untracked(() => {
      quit();
      const study = studyNow.peek();
      if (!mayRun || (study && missingPieces(study, samples).length === 0)) return;
      stop = new AbortController();
      const own = stop;
      timer = setTimeout(() => void run(key, own), PATIENCE_MS);
    });
  });
  return () => {
    dispose();
    quit();
  };
}
