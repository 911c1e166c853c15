/** What the record page shows, and its edits of the document. */
import { computed, signal } from '@preact/signals';
import type { Project } from '../../model/project.ts';
import type { RecordStep, StepState, TeardownRecord } from '../../model/record.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { keyPut } from '../app/optional-parts.ts';
import { project } from '../app/store.ts';
import { recordWords as words } from '../text/record.ts';
import { stepsOf } from './steps.ts';

export type RecordView = RecordStep | 'missing' | 'sheet';

const wanted = signal<RecordView>('machine');

export const steps = computed(() => stepsOf(project.value.damper));

/** A step that the layout no longer has gives way to the first. */
export const view = computed<RecordView>(() => {
  const now = wanted.value;
  return now === 'missing' || now === 'sheet' || steps.value.includes(now) ? now : steps.value[0];
});

/** Goes up when another view is asked for: its heading then takes the keyboard. */
export const turns = signal(0);

export function showView(next: RecordView): void {
  wanted.value = next;
  turns.value++;
}

export const recordOf = ({ record }: Pick<Project, 'record'>): TeardownRecord => record ?? {};

/** The project with one part of its record changed, or without it; an empty record is none. */
export function withRecord<Key extends keyof TeardownRecord>(
  key: Key,
  value: TeardownRecord[Key] | undefined,
  from: Project = project.value,
): Project {
  const record = keyPut(recordOf(from), key, value);
  return keyPut(from, 'record', Object.keys(record).length > 0 ? record : undefined);
}

export const stateOf = (step: RecordStep): StepState | 'open' => recordOf(project.value).steps?.[step]?.state ?? 'open';

export function withStep(step: RecordStep, change: { state?: StepState; notes?: string }): Project {
  const all = recordOf(project.value).steps ?? {};
  const { state, notes } = { ...all[step], ...change };
  const next = { ...all[step], ...(state && { state }), ...(notes && { notes }) };
  if (state === undefined) delete next.state;
  if (!notes) delete next.notes;
  const kept = keyPut(all, step, Object.keys(next).length > 0 ? next : undefined);
  return withRecord('steps', Object.keys(kept).length > 0 ? kept : undefined);
}

const LABELS = { done: words.stepDone, skipped: words.stepSkipped, open: words.stepReopened };

/** Marks a step, and goes on to the next unless it is opened again. */
export function markStep(step: RecordStep, state: StepState | undefined): void {
  const { name } = words.steps[step];
  if (!editOrTell(() => withStep(step, { state }), LABELS[state ?? 'open'](name))) return;
  if (state) showView(steps.value[steps.value.indexOf(step) + 1] ?? 'missing');
}
