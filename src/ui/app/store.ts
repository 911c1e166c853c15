/** The one store of the bench: the document with its history, and what the person is looking at. */
import { computed, signal } from '@preact/signals';
import type { Build, Project, ValvePlace, Valving } from '../../model/project.ts';
import { baselineOf, buildOf, changeBuild, changeValving } from './edits.ts';
import { type History, record, redo, startHistory, undo } from './history.ts';
import type { Theory } from './solved.ts';

export type Direction = 1 | -1;

const history = signal<History<Project> | undefined>(undefined);

/** False until a saved project or the demo is open. */
export const isOpen = computed(() => history.value !== undefined);

const opened = (): History<Project> => {
  if (!history.value) throw new Error('no project is open yet');
  return history.value;
};

export const project = computed(() => opened().present);
export const undoLabel = computed(() => history.value?.past.at(-1)?.label);
export const redoLabel = computed(() => history.value?.future[0]?.label);

/** Goes up with every change that did not come from typing in a field: fields then show the document again. */
export const revision = signal(0);

const wantedBuild = signal('');
export const place = signal<ValvePlace>('pistonCompression');
export const hiddenBuilds = signal<ReadonlySet<string>>(new Set());
/** Row of the shim table under the pointer or in focus, in table or drawing. */
export const activeRow = signal<number | undefined>(undefined);

/** Shared by every view [m/s]; the direction is that of the view. */
export const cursorSpeed = signal(0.5);
export const topSpeed = signal(2);
/** Which plate theory the curves are asked for; each curve says which one it came from. */
export const theory = signal<Theory>('large-deflection');

export const selectedBuild = computed<Build>(() => buildOf(project.value, wantedBuild.value));
export const baseline = computed<Build>(() => baselineOf(project.value));
export const selectedValving = computed<Valving>(() => selectedBuild.value.valves[place.value]);
export const direction = computed<Direction>(() => (place.value === 'pistonCompression' ? 1 : -1));
export const visibleBuilds = computed(() => project.value.builds.filter((build) => !hiddenBuilds.value.has(build.id)));

export function selectBuild(id: string): void {
  wantedBuild.value = id;
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
export function startWith(first: Project): void {
  history.value = startHistory(first);
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
  const now = opened();
  if (next === now.present) return;
  history.value = record(now, next, note.label, note.mergeKey);
  if (note.mergeKey === undefined) revision.value++;
}

/** Another project takes the place of this one; undo brings this one back. */
export function replaceProject(next: Project, label: string): void {
  commit(next, { label });
  wantedBuild.value = next.builds.find((build) => build.id !== next.baselineBuild)?.id ?? next.baselineBuild;
  hiddenBuilds.value = new Set();
  heldParts.value = {};
}

function travel(step: (h: History<Project>) => History<Project>): void {
  history.value = step(opened());
  revision.value++;
}
export const undoEdit = (): void => travel(undo);
export const redoEdit = (): void => travel(redo);

export const withBuild = (id: string, change: (build: Build) => Build): Project =>
  changeBuild(project.value, id, change);

/** The project with the stack on show changed. */
export const withValving = (change: (valving: Valving) => Valving): Project =>
  changeValving(project.value, selectedBuild.value.id, place.value, change);
