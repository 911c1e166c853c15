/** Keeps the project on this machine as it is edited, within a second; says so when it cannot. */
import { effect, signal } from '@preact/signals';
import { decodeProject, encodeProject } from '../../model/codec.ts';
import type { Project } from '../../model/project.ts';
import { tell } from '../app/notices.ts';
import { project } from '../app/store.ts';
import { text } from '../text/en.ts';
import { download } from './download.ts';
import { findLeft, forgetLeft, leave } from './leaving.ts';
import { openSaves, readNewest, type SavesDb, writeSave } from './saves.ts';

export const savingState = signal<'saved' | 'saving' | 'failed'>('saved');

/** Quiet time after an edit before it is written [ms]. */
const QUIET_MS = 250;

let db: SavesDb | undefined;
/** Stays until it is known to be among the saves. */
let unsaved: Project | undefined;
let timer: ReturnType<typeof setTimeout> | undefined;

function storageFailed(): void {
  savingState.value = 'failed';
  tell(text.notices.noStorage, { tone: 'problem' });
}

/** The project kept on this machine, if there is one that can be read. */
export async function readKept(): Promise<Project | undefined> {
  try {
    db = await openSaves();
    await takeUpLeft(db);
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

async function takeUpLeft(saves: SavesDb): Promise<void> {
  for (const { projectText, forget } of findLeft()) {
    await writeSave(saves, projectText);
    forget();
  }
}

function tellUnreadable(saved: string, hasOlder: boolean): void {
  tell(hasOlder ? text.notices.keptAsideOlder : text.notices.keptAside, {
    tone: 'problem',
    action: { label: text.notices.downloadKept, run: () => download('kept-aside.shimwright.json', saved) },
  });
}

/** Writes the newest; writes that overlap are done by the browser in the order they began. */
function flush(isLeaving = false): void {
  clearTimeout(timer);
  const next = unsaved;
  if (!next || !db) return;
  const projectText = encodeProject(next);
  if (isLeaving) leave(projectText);
  writeSave(db, projectText).then(() => {
    if (unsaved !== next) return;
    unsaved = undefined;
    forgetLeft();
    savingState.value = 'saved';
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
    unsaved = now;
    savingState.value = 'saving';
    clearTimeout(timer);
    timer = setTimeout(flush, QUIET_MS);
  });
  document.addEventListener('visibilitychange', () => document.hidden && flush(true));
  window.addEventListener('pagehide', () => flush(true));
}
