/** Which lesson this tab had open, so that a reload goes on with it and still knows the way back. */
import type { ValvePlace } from '../../model/project.ts';

const KEY = 'shimwright.lesson';

/** What the bench showed before the lesson, and the project by its id. */
export interface WayBack {
  readonly projectId: string;
  readonly build: string;
  readonly place: ValvePlace;
  readonly cursor_m_s: number;
  readonly top_m_s: number;
}

export interface RememberedLesson {
  readonly lesson: string;
  readonly copyId: string;
  readonly back: WayBack;
}

/** A comfort: without storage a reload shows the copy as a project like any other. */
export function rememberLesson(open: RememberedLesson | undefined): void {
  try {
    if (open) sessionStorage.setItem(KEY, JSON.stringify(open));
    else sessionStorage.removeItem(KEY);
  } catch {
    // The browser keeps nothing for this page.
  }
}

/** Written by this page alone; what cannot be read is no lesson. */
export function rememberedLesson(): RememberedLesson | undefined {
  try {
    return (JSON.parse(sessionStorage.getItem(KEY) ?? 'null') as RememberedLesson | null) ?? undefined;
  } catch {
    return undefined;
  }
}
