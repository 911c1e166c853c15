/** The one store of the bench: the document with its history, and what the person is looking at. */
import { computed, signal } from '@preact/signals';
import type { Build, Project, ValvePlace, Valving } from '../../model/project.ts';
import { baselineOf, buildOf, changeBuild, changeValving } from './edits.ts';
import { type History, mapDocuments, record, redo, startHistory, undo } from './history.ts';
import { type Direction, directionOf, placesOf, valvingAt } from './places.ts';
import type { TheoryChoice } from './solved.ts';

/** A document and the project of this machine that it belongs to: opening another project is a step of undo too. */
export interface Opened {
  readonly id: string;
  readonly project: Project;
}

const history = signal<History<Opened> | undefined>(undefined);

/** False until a saved project or the demo is open. */
export const isOpen = computed(() => history.value !== undefined);

const openedHistory = (): History<Opened> => {
  if (!history.value) throw new Error('no project is open yet');
  return history.value;
};

export const opened = computed(() => openedHistory().present);
export const openId = computed(() => opened.value.id);
export const project = computed(() => opened.value.project);

/** True while another tab writes this project: it can be looked at, and another can be opened in its place. */
export const readOnly = signal(false);

/** Nothing is undone in a project that another tab writes, but leaving it can be. */
const stepLabel = (step: { document: Opened; label: string } | undefined): string | undefined =>
  step && !(readOnly.value && step.document.id === openId.value) ? step.label : undefined;
/** The edit that undo takes back. */
export const lastStep = computed(() => history.value?.past.at(-1));
export const undoLabel = computed(() => stepLabel(lastStep.value));
export const redoLabel = computed(() => stepLabel(history.value?.future[0]));

/** Goes up with every change that did not come from typing in a field: fields then show the document again. */
export const revision = signal(0);

const wantedBuild = signal('');
const wantedPlace = signal<ValvePlace>('pistonCompression');
export const hiddenBuilds = signal<ReadonlySet<string>>(new Set());
/** Row of the shim table under the pointer or in focus, in table or drawing. */
export const activeRow = signal<number | undefined>(undefined);

/** Shared by every view [m/s]; the direction is that of the view. */
export const cursorSpeed = signal(0.5);
export const topSpeed = signal(2);
/** Which plate theory is asked for; every result says which one it came from. */
export const theory = signal<TheoryChoice>('auto');

export const selectedBuild = computed<Build>(() => buildOf(project.value, wantedBuild.value));
export const baseline = computed<Build>(() => baselineOf(project.value));
/** Places of stacks that the damper has, and the one on show. */
export const places = computed(() => placesOf(project.value.damper.layout));
export const place = computed(() => (places.value.includes(wantedPlace.value) ? wantedPlace.value : places.value[0]));
export const selectedValving = computed<Valving>(() => valvingAt(selectedBuild.value, place.value));
export const direction = computed<Direction>(() => directionOf(place.value));
export const visibleBuilds = computed(() => project.value.builds.filter((build) => !hiddenBuilds.value.has(build.id)));

export function selectBuild(id: string): void {
  wantedBuild.value = id;
  activeRow.value = undefined;
}

export function showPlace(wanted: ValvePlace): void {
  wantedPlace.value = wanted;
  activeRow.value = undefined;
}

export function toggleVisible(id: string): void {
  const next = new Set(hiddenBuilds.value);
  if (!next.delete(id)) next.add(id);
  hiddenBuilds.value = next;
}

export const setCursor = (speed_m_s: number): void => {
  cursorSpeed.value = Math.min(Math.max(speed_m_s, 0), topSpeed.value);
};

export const setTopSpeed = (speed_m_s: number): void => {
  topSpeed.value = speed_m_s;
  setCursor(cursorSpeed.value);
};

/** The first project shown; there is nothing to undo before it. */
export function startWith(first: Project, id: string): void {
  history.value = startHistory({ id, project: first });
  wantedBuild.value = first.builds.find((build) => build.id !== first.baselineBuild)?.id ?? first.baselineBuild;
}

/** Parts of groups that are not complete, by build, place and group: typed, but no part of the document yet. */
export const heldParts = signal<Readonly<Record<string, object>>>({});

export interface EditNote {
  readonly label: string;
  /** Edits with one key in a row are one step of undo, and come from the field that has the focus. */
  readonly mergeKey?: string;
}

export function commit(next: Project, note: EditNote): void {
  const { id, project: now } = opened.value;
  if (next === now || readOnly.value) return;
  history.value = record(openedHistory(), { id, project: next }, note.label, note.mergeKey);
  if (note.mergeKey === undefined) revision.value++;
}

/** Another document takes the place of this one; undo brings this one back. */
export function replaceProject(next: Project, label: string, id: string): void {
  if (readOnly.value && id === openId.value) return;
  history.value = record(openedHistory(), { id, project: next }, label);
  revision.value++;
  wantedBuild.value = next.builds.find((build) => build.id !== next.baselineBuild)?.id ?? next.baselineBuild;
  hiddenBuilds.value = new Set();
  heldParts.value = {};
}

const ELSEWHERE = 'elsewhere';

/** Shows what another tab has saved; all of it is one step of undo. */
export function followElsewhere(next: Project, label: string): void {
  history.value = record(openedHistory(), { id: openId.value, project: next }, label, ELSEWHERE);
  revision.value++;
}

/** What is open goes on as another project of this machine; its steps of undo come along. */
export function moveTo(id: string, name: string): void {
  const from = openId.value;
  const moved = mapDocuments(openedHistory(), (step) => (step.id === from ? { ...step, id } : step));
  history.value = { ...moved, present: { id, project: { ...moved.present.project, name } } };
  revision.value++;
}

function travel(step: (h: History<Opened>) => History<Opened>): void {
  history.value = step(openedHistory());
  revision.value++;
}
export const undoEdit = (): void => {
  if (undoLabel.value !== undefined) travel(undo);
};
export const redoEdit = (): void => {
  if (redoLabel.value !== undefined) travel(redo);
};

export const withBuild = (id: string, change: (build: Build) => Build): Project =>
  changeBuild(project.value, id, change);

/** The project with the stack on show changed. */
export const withValving = (change: (valving: Valving) => Valving): Project =>
  changeValving(project.value, selectedBuild.value.id, place.value, change);
