/** Keeps the project on this machine as it is edited, within a second; says so when it cannot. */
import { effect, signal } from '@preact/signals';
import { decodeProject, encodeProject } from '../../model/codec.ts';
import type { Project } from '../../model/project.ts';
import { tell } from '../app/notices.ts';
import { project } from '../app/store.ts';
import { text } from '../text/en.ts';
import { download } from './download.ts';
import { openSaves, readNewest, type SavesDb, writeSave } from './saves.ts';

export const savingState = signal<'saved' | 'saving' | 'failed'>('saved');

/** Quiet time after an edit before it is written [ms]. */
const QUIET_MS = 250;

let db: SavesDb | undefined;
let waiting: Project | undefined;
let timer: ReturnType<typeof setTimeout> | undefined;

function storageFailed(): void {
  savingState.value = 'failed';
  tell(text.notices.noStorage, { tone: 'problem' });
}

/** The project kept on this machine, if there is one that can be read. */
export async function readKept(): Promise<Project | undefined> {
  try {
    db = await openSaves();
    const { document, unreadable } = await readNewest(db, (saved) => {
      const decoded = decodeProject(saved);
      return decoded.ok ? decoded.document : undefined;
    });
    if (unreadable.length > 0) tellUnreadable(unreadable[0], document !== undefined);
    return document;
  } catch {
    storageFailed();
    return undefined;
  }
}

function tellUnreadable(saved: string, hasOlder: boolean): void {
  tell(hasOlder ? text.notices.keptAsideOlder : text.notices.keptAside, {
    tone: 'problem',
    action: { label: text.notices.downloadKept, run: () => download('kept-aside.shimwright.json', saved) },
  });
}

/** Writes the newest; writes that overlap are done by the browser in the order they began. */
function flush(): void {
  clearTimeout(timer);
  const next = waiting;
  waiting = undefined;
  if (!next || !db) return;
  writeSave(db, encodeProject(next)).then(() => {
    if (!waiting) savingState.value = 'saved';
  }, storageFailed);
}

/** Follows the document; what was opened is not written again until it changes. */
export function startAutosave(alreadyKept: Project | undefined): void {
  if (!db) return;
  let kept = alreadyKept;
  effect(() => {
    const now = project.value;
    if (now === kept) return;
    kept = now;
    waiting = now;
    savingState.value = 'saving';
    clearTimeout(timer);
    timer = setTimeout(flush, QUIET_MS);
  });
  document.addEventListener('visibilitychange', () => document.hidden && flush());
  window.addEventListener('pagehide', flush);
}
