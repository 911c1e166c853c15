/** What the page is set to, asked but not searched: before the first search it shows how far what is there lies from what is wanted. */
import { batch, computed, effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import { openId, project, theory, topSpeed } from '../app/store.ts';
import { askedStudy, NoQuestion } from './ask.ts';
import { form } from './form.ts';
import { phase, study } from './run.ts';
import type { Study } from './study.ts';

/** How long a box rests before what is in it is asked [ms]. */
const PATIENCE_MS = 200;

const draft = signal<Study | undefined>(undefined);
/** Why there is nothing to ask, where there is not. */
export const draftRefusal = signal<string | undefined>(undefined);

/** The search, or while there is none the draft of it. */
export const shownStudy = computed<Study | undefined>(() => study.value ?? draft.value);

const show = (asked: Study | undefined, why?: string): void =>
  batch(() => {
    draft.value = asked;
    draftRefusal.value = why;
  });

/** Of every draft its own, so that no answer is taken for that of another. */
let asked = 0;

async function ask(): Promise<void> {
  const mine = ++asked;
  try {
    const of = await askedStudy(project.peek(), form.peek(), theory.peek(), topSpeed.peek());
    if (mine === asked) show({ ...of, id: `draft ${mine}` });
  } catch (error) {
    if (!(error instanceof NoQuestion || error instanceof SolverError)) throw error;
    const isOvertaken = error instanceof SolverError && (error.code === 'superseded' || error.code === 'cancelled');
    if (mine === asked && !isOvertaken) show(undefined, error.message);
  }
}

/** Follows the settings of the page while no search is there to show; ends with the page. */
export function followDraft(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let at = openId.peek();
  const end = effect(() => {
    void [form.value, project.value, theory.value, topSpeed.value];
    clearTimeout(timer);
    asked++;
    if (openId.value !== at) untracked(() => show(undefined));
    at = openId.value;
    const isIdle = study.value === undefined && (phase.value === 'idle' || phase.value === 'refused');
    if (isIdle) timer = setTimeout(() => void untracked(ask), PATIENCE_MS);
  });
  return () => {
    clearTimeout(timer);
    asked++;
    end();
  };
}
