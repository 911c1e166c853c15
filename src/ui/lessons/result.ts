/** The result of the open lesson, kept up with what the solver knows: the start solved apart, the present from the bench. */
import { computed, effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import { position_m } from '../app/conditions.ts';
import { lessonsDone } from '../app/preferences.ts';
import { sideSolver } from '../app/side-solver.ts';
import { keyNow, outcomes, requestFor } from '../app/solve.ts';
import type { ForceCurve } from '../app/solved.ts';
import { project, theory, topSpeed } from '../app/store.ts';
import { awaitsWaves } from '../app/wave-solve.ts';
import { check, type Verdict } from './check.ts';
import { OWN_BUILD } from './document.ts';
import { active, followCopy, resumeLesson, type Session } from './session.ts';

/** Speeds, theory and stroke that a curve was solved with: two curves are compared only where these are the same. */
const benchKey = (): string => JSON.stringify([topSpeed.value, theory.value, position_m.value]);

interface StartSolved {
  readonly session: Session;
  readonly bench: string;
  readonly curve?: ForceCurve;
}
const startSolved = signal<StartSolved | undefined>(undefined);

async function solveStart(session: Session, bench: string): Promise<void> {
  const { start } = session;
  const request = { ...requestFor(start.builds.filter(({ id }) => id === OWN_BUILD)), project: start };
  try {
    const { curves } = await sideSolver().forceCurves(request, { channel: 'lesson-start' });
    const answer = curves[OWN_BUILD];
    startSolved.value = { session, bench, ...(answer.status === 'solved' && { curve: answer.curve }) };
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'superseded') startSolved.value = { session, bench };
  }
}

export type Result =
  | { readonly state: 'solving' }
  | { readonly state: 'start-failed' }
  | { readonly state: 'judged'; readonly verdict: Verdict };

/** Undefined without a lesson. */
const resultNow = computed<Result | undefined>(() => {
  const session = active.value;
  if (!session) return undefined;
  const begun = startSolved.value;
  if (begun?.session !== session || begun.bench !== benchKey()) return { state: 'solving' };
  if (!begun.curve) return { state: 'start-failed' };
  const own = project.value.builds.find(({ id }) => id === OWN_BUILD);
  const outcome = own && outcomes.value.get(own.id);
  if (own && (outcome?.key !== keyNow(own) || awaitsWaves(outcome))) return { state: 'solving' };
  const curve = outcome?.failure === undefined ? outcome?.curve : undefined;
  const evidence = { start: session.start, now: project.value, startCurve: begun.curve, ...(curve && { curve }) };
  return { state: 'judged', verdict: check(session.lesson, evidence) };
});

/** What the panel shows: while a new result is being solved, the last one of this lesson, so that nothing flickers. */
export const result = signal<Result | undefined>(undefined);
export const isSettled = computed(() => resultNow.value !== undefined && resultNow.value.state !== 'solving');
let shownFor: Session | undefined;

function show(next: Result | undefined, session: Session | undefined): void {
  if (next?.state === 'solving' && shownFor === session && result.peek()) return;
  shownFor = session;
  result.value = next;
  const isMet = next?.state === 'judged' && next.verdict.isMet;
  if (!session || !isMet || lessonsDone.peek().includes(session.lesson.id)) return;
  lessonsDone.value = [...lessonsDone.peek(), session.lesson.id];
}

/** Starts following the lesson that is open. */
export function startLessons(): void {
  resumeLesson();
  effect(() => {
    const now = active.value;
    untracked(() => followCopy(now));
  });
  effect(() => {
    const [session, bench] = [active.value, benchKey()];
    if (session) untracked(() => void solveStart(session, bench));
  });
  effect(() => {
    const [next, session] = [resultNow.value, active.value];
    untracked(() => show(next, session));
  });
}
