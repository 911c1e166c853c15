/** The lesson that is open: its own copy of a demo on the bench, and what was there before it. */
import { computed, signal } from '@preact/signals';
import type { Project } from '../../model/project.ts';
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
import { openKept, putAway } from '../storage/opening.ts';
import { lessonsWords as words } from '../text/lessons.ts';
import { LESSONS } from './catalogue.ts';
import { startDocument } from './document.ts';
import type { Lesson, LessonId } from './lesson.ts';
import { rememberedLesson, rememberLesson, type WayBack } from './remembered-lesson.ts';

/** What a person left to take a lesson; after a reload the project is read from where it is kept. */
interface Before {
  readonly opened?: Opened;
  readonly back: WayBack;
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
  back: {
    projectId: openId.peek(),
    build: selectedBuild.peek().id,
    place: place.peek(),
    cursor_m_s: cursorSpeed.peek(),
    top_m_s: topSpeed.peek(),
  },
});

function startOf(lesson: Lesson): Project {
  const names = {
    project: words.project(words.lessons[lesson.id].title),
    notes: words.projectNotes,
    own: words.ownBuild,
    start: words.startBuild,
  };
  return startDocument(lesson, demoProject(), names);
}

/** Puts a fresh copy on the bench; a lesson that was open is put away, and the way back stays that to the person's project. */
export function openLesson(lesson: Lesson): void {
  const left = active.peek();
  const start = startOf(lesson);
  const copyId = crypto.randomUUID();
  const before = left?.before ?? whatIsOpen();
  setBasis(copyId, { revision: 0, head: 0, document: start });
  session.value = { lesson, copyId, start, before };
  replaceProject(start, words.open(words.lessons[lesson.id].title), copyId);
  showPlace(lesson.place);
  setTopSpeed(Math.max(topSpeed.peek(), LEAST_TOP_M_S));
  setCursor(lesson.cursor_m_s);
  rememberLesson({ lesson: lesson.id, copyId, back: before.back });
}

/** After a reload: goes on with the lesson of this tab, if its copy is what is open. */
export function resumeLesson(): void {
  const known = rememberedLesson();
  const lesson = LESSONS.find(({ id }) => id === known?.lesson);
  if (!known || !lesson || known.copyId !== openId.peek()) return;
  session.value = { lesson, copyId: known.copyId, start: startOf(lesson), before: { back: known.back } };
  isPanelOpen.value = true;
}

/** A project that was never kept was the demo, untouched. */
async function bringBack({ opened: before, back }: Before): Promise<void> {
  if (before) return replaceProject(before.project, words.leaving, before.id);
  if (await openKept(back.projectId)) return;
  const [id, document] = [crypto.randomUUID(), demoProject()];
  setBasis(id, { revision: 0, head: 0, document });
  replaceProject(document, words.leaving, id);
}

/** Brings back what was on the bench before the first lesson, as it was left. */
export async function leaveLesson(): Promise<void> {
  const left = active.peek();
  if (!left) return;
  const { back } = left.before;
  await bringBack(left.before);
  selectBuild(back.build);
  showPlace(back.place);
  setTopSpeed(back.top_m_s);
  setCursor(back.cursor_m_s);
  rememberLesson(undefined);
}

let followed: string | undefined;

/**
 * A copy that is left, by whatever way, lies with the deleted projects: it can be taken back there and does not crowd the
 * person's own. Undo goes on with it, and the first save from there keeps it again.
 */
export function followCopy(now: Session | undefined): void {
  const left = followed;
  followed = now?.copyId;
  if (left !== undefined && left !== followed) void putAway(left);
}

export const placeOf = (id: LessonId): number => LESSONS.findIndex((lesson) => lesson.id === id);

/** The lesson before or after this one, if any. */
export const neighbour = (id: LessonId, step: 1 | -1): Lesson | undefined => LESSONS[placeOf(id) + step];
