/** The lesson that is open: its own copy of a demo on the bench, and what was there before it. */
import { computed, signal } from '@preact/signals';
import type { Project, ValvePlace } from '../../model/project.ts';
import { demoProject } from '../app/demo.ts';
import {
  cursorSpeed,
  type Opened,
  opened,
  openId,
  place,
  replaceProject,
  selectBuild,
  selectedBuild,
  setCursor,
  setTopSpeed,
  showPlace,
  topSpeed,
} from '../app/store.ts';
import { setBasis } from '../storage/autosave.ts';
import { putAway } from '../storage/opening.ts';
import { lessonsWords as words } from '../text/lessons.ts';
import { LESSONS } from './catalogue.ts';
import { startDocument } from './document.ts';
import type { Lesson, LessonId } from './lesson.ts';

/** What a person left to take a lesson. */
interface Before {
  readonly opened: Opened;
  readonly build: string;
  readonly place: ValvePlace;
  readonly cursor_m_s: number;
  readonly top_m_s: number;
}

export interface Session {
  readonly lesson: Lesson;
  readonly copyId: string;
  readonly start: Project;
  readonly before: Before;
}

export const isPanelOpen = signal(false);

const session = signal<Session | undefined>(undefined);

/** Undone, or left for another project, the lesson rests; redone it goes on. */
export const active = computed(() => (session.value?.copyId === openId.value ? session.value : undefined));

/** The chart has to reach the speeds that a lesson asks about [m/s]. */
const LEAST_TOP_M_S = 2;

const whatIsOpen = (): Before => ({
  opened: opened.peek(),
  build: selectedBuild.peek().id,
  place: place.peek(),
  cursor_m_s: cursorSpeed.peek(),
  top_m_s: topSpeed.peek(),
});

/** Puts a fresh copy on the bench; a lesson that was open is put away, and the way back stays that to the person's project. */
export function openLesson(lesson: Lesson): void {
  const left = active.peek();
  const { title } = words.lessons[lesson.id];
  const names = {
    project: words.project(title),
    notes: words.projectNotes,
    own: words.ownBuild,
    start: words.startBuild,
  };
  const start = startDocument(lesson, demoProject(), names);
  const copyId = crypto.randomUUID();
  const before = left?.before ?? whatIsOpen();
  setBasis(copyId, { revision: 0, head: 0, document: start });
  session.value = { lesson, copyId, start, before };
  replaceProject(start, words.open(title), copyId);
  showPlace(lesson.place);
  setTopSpeed(Math.max(topSpeed.peek(), LEAST_TOP_M_S));
  setCursor(lesson.cursor_m_s);
  if (left) void putAway(left.copyId);
}

/** Brings back what was on the bench before the first lesson, as it was left. */
export function leaveLesson(): void {
  const left = active.peek();
  if (!left) return;
  const { before } = left;
  replaceProject(before.opened.project, words.leaving, before.opened.id);
  selectBuild(before.build);
  showPlace(before.place);
  setTopSpeed(before.top_m_s);
  setCursor(before.cursor_m_s);
  void putAway(left.copyId);
}

export const placeOf = (id: LessonId): number => LESSONS.findIndex((lesson) => lesson.id === id);

/** The lesson before or after this one, if any. */
export const neighbour = (id: LessonId, step: 1 | -1): Lesson | undefined => LESSONS[placeOf(id) + step];
