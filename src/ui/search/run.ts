/** The search of the open project as it goes: begun, paused, stopped, gone on with after a reload. */
import { batch, computed, effect, signal, untracked } from '@preact/signals';
import { createSolverClient, type SolverClient, SolverError } from '../../../workers/client.ts';
import type { FoundByStart } from '../../../workers/protocol.ts';
import { rankFound } from '../../model/rank-found.ts';
import { type RunPiece, runPieces } from '../app/pool.ts';
import { openId, project, readOnly, theory, topSpeed } from '../app/store.ts';
import { withDb } from '../storage/connection.ts';
import { keepSearch, keepStart, readSearch } from '../storage/searches.ts';
import { askedStudy, NoQuestion } from './ask.ts';
import { form, setForm, workerCount } from './form.ts';
import { questionOf, type Study } from './study.ts';

export type Phase = 'idle' | 'asking' | 'running' | 'paused' | 'stopped' | 'finished' | 'refused';

/** Stacks in the list on show. */
const SHOWN = 12;

export interface FailedStart {
  readonly start: number;
  readonly message: string;
}

export const study = signal<Study | undefined>(undefined);
export const phase = signal<Phase>('idle');
export const done = signal<readonly FoundByStart[]>([]);
export const failed = signal<readonly FailedStart[]>([]);
/** From 0 to 1, of the starts that are under way. */
export const underWay = signal<ReadonlyMap<number, number>>(new Map());
/** Why there is no search, where there is none. */
export const refusal = signal<string | undefined>(undefined);

/** Best first; the same whatever order the starts end in. */
export const ranked = computed(() => rankFound(done.value, SHOWN));
/** From 0 to 1, parts of starts included. */
export const share = computed(() => {
  const all = study.value?.starts ?? 0;
  const parts = [...underWay.value.values()].reduce((sum, fraction) => sum + fraction, 0);
  return all === 0 ? 0 : Math.min(1, (done.value.length + failed.value.length + parts) / all);
});

let shownFor: string | undefined;
let stop: AbortController | undefined;

/** Ends what runs: its workers go at once, what was under way is done again when the search goes on. */
function halt(): void {
  stop?.abort();
  stop = undefined;
  underWay.value = new Map();
}

async function keep(): Promise<void> {
  const [of, now] = [study.peek(), phase.peek()];
  const at = shownFor;
  if (!of || at === undefined || now === 'asking' || now === 'idle') return;
  await withDb((db) => keepSearch(db, { project: at, study: of.id, phase: now, content: of }));
}

function onFound(of: Study, found: FoundByStart): void {
  batch(() => {
    done.value = [...done.value, found];
    forget(found.start);
  });
  const at = shownFor;
  if (at !== undefined) void withDb((db) => keepStart(db, { project: at, start: found.start, study: of.id, found }));
}

function forget(start: number): void {
  const left = new Map(underWay.value);
  left.delete(start);
  underWay.value = left;
}

function onFailed(start: number, error: unknown): void {
  if (!(error instanceof SolverError)) throw error;
  // Refused input is refused by every start.
  if (error.code === 'invalid-input') {
    halt();
    refusal.value = error.message;
    phase.value = 'refused';
    return;
  }
  failed.value = [...failed.value, { start, message: error.message }];
  forget(start);
}

const starter =
  ({ project: of, request, settings }: Study, client: SolverClient): RunPiece<FoundByStart> =>
  (start, options) =>
    client.searchStart({ project: of, request, settings, start }, options);

/** Runs every start that is not done; those that failed are tried again. */
async function goOn(): Promise<void> {
  const of = study.peek();
  if (!of) return;
  const own = new AbortController();
  batch(() => {
    halt();
    stop = own;
    failed.value = [];
    refusal.value = undefined;
    phase.value = 'running';
  });
  const have = new Set(done.peek().map(({ start }) => start));
  const left = Array.from({ length: of.starts }, (_, start) => start).filter((start) => !have.has(start));
  const clients = Array.from({ length: Math.min(workerCount.peek(), left.length) }, () => createSolverClient());
  own.signal.addEventListener('abort', () => clients.forEach((client) => void client.close()));
  const kept = keep();
  await runPieces(
    clients.map((client) => starter(of, client)),
    left,
    own.signal,
    {
      onDone: (found) => onFound(of, found),
      onFailed,
      onProgress: (start, fraction) => {
        if (!own.signal.aborted) underWay.value = new Map([...underWay.peek(), [start, fraction]]);
      },
    },
  );
  await kept;
  if (own.signal.aborted) return;
  halt();
  phase.value = 'finished';
  await keep();
}

/** Begins what the page is set to. Starts that an equal question has found already are not run again. */
export async function begin(): Promise<void> {
  halt();
  const at = openId.peek();
  batch(() => {
    refusal.value = undefined;
    phase.value = 'asking';
  });
  try {
    const asked = await askedStudy(project.peek(), form.peek(), theory.peek(), topSpeed.peek());
    if (openId.peek() !== at || phase.peek() !== 'asking') return;
    const before = study.peek();
    const isSame = before !== undefined && questionOf(before) === questionOf(asked);
    batch(() => {
      study.value = { ...asked, id: isSame ? before.id : crypto.randomUUID() };
      done.value = isSame ? done.peek().filter(({ start }) => start < asked.starts) : [];
    });
    await goOn();
  } catch (error) {
    if (!(error instanceof NoQuestion || error instanceof SolverError)) throw error;
    if (openId.peek() !== at || (error instanceof SolverError && error.code === 'superseded')) return;
    refusal.value = error.message;
    phase.value = 'refused';
  }
}

function end(as: 'paused' | 'stopped'): void {
  halt();
  phase.value = as;
  void keep();
}
export const pause = (): void => end('paused');
export const stopSearch = (): void => end('stopped');
export const resume = (): void => void goOn();

/** Shows the search of another project; one that was running when the page went away goes on. */
async function show(id: string): Promise<void> {
  if (shownFor === id) return;
  halt();
  shownFor = id;
  batch(() => {
    study.value = undefined;
    done.value = [];
    failed.value = [];
    refusal.value = undefined;
    phase.value = 'idle';
  });
  const kept = await withDb((db) => readSearch(db, id));
  if (!kept || shownFor !== id || phase.peek() !== 'idle') return;
  const of = kept.record.content as Study;
  batch(() => {
    study.value = of;
    done.value = kept.starts;
    phase.value = kept.record.phase === 'running' ? 'paused' : kept.record.phase;
    setForm(of.form);
  });
  if (kept.record.phase === 'running' && !readOnly.peek()) await goOn();
}

let isFollowing = false;

/** Follows the open project from the first time that the page is shown. */
export function followProject(): void {
  if (isFollowing) return;
  isFollowing = true;
  effect(() => {
    const id = openId.value;
    untracked(() => void show(id));
  });
}
