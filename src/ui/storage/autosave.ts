/** Keeps the open project on this machine as it is edited, within a second; says so when it cannot. */
import { effect, signal, untracked } from '@preact/signals';
import { decodeProject, encodeProject } from '../../model/codec.ts';
import type { Project } from '../../model/project.ts';
import { tell } from '../app/notices.ts';
import { followElsewhere, moveTo, type Opened, opened, openId, undoLabel } from '../app/store.ts';
import { keeping } from '../text/keeping.ts';
import { connect, trouble, troubleOf } from './connection.ts';
import { forgetLeft, leave } from './leaving.ts';
import { copyPhotos } from './photos.ts';
import { remember } from './remembered.ts';
import { readNewest, saveState } from './states.ts';
import type { KeepingDb, ProjectRecord } from './stores.ts';
import { tellTabs } from './tabs.ts';

export const savingState = signal<'saved' | 'saving' | 'failed'>('saved');

/** Quiet time after an edit before it is written, and the longest wait while edits go on [ms]. */
const QUIET_MS = 250;
const LONGEST_MS = 700;

/** What is kept of a project, as far as this page knows. */
interface Basis {
  readonly revision: number;
  readonly head: number;
  readonly document?: Project;
}
/** The revision of no state: work that goes on from it fits nowhere. */
const NEVER = -1;
interface Unsaved {
  readonly document: Project;
  readonly note: string;
  readonly since: number;
}

const bases = new Map<string, Basis>();
/** Stays until it is known to be among the states. */
const unsaved = new Map<string, Unsaved>();
/** Projects of which it is not yet known whether this tab may write them. */
const waiting = new Set<string>();
let timer: ReturnType<typeof setTimeout> | undefined;
let writing: Promise<void> = Promise.resolve();

export const readText = (projectText: string): Project | undefined => {
  const decoded = decodeProject(projectText);
  return decoded.ok ? decoded.document : undefined;
};

export const setBasis = (id: string, basis: Basis): void => void bases.set(id, basis);
export const isUnsaved = (id: string): boolean => unsaved.has(id);

export function setWaiting(id: string, waits: boolean): void {
  if (waits) waiting.add(id);
  else waiting.delete(id);
}

/** Saves one after the other, so that each goes on from the one before it. */
export function flush(id: string): Promise<void> {
  writing = writing.then(() => write(id));
  return writing;
}

const flushAll = (): void => [...unsaved.keys()].forEach((id) => void flush(id));

/** @returns once everything is kept, or could not be */
export function flushEverything(): Promise<void> {
  flushAll();
  return writing;
}

async function write(id: string): Promise<void> {
  const next = unsaved.get(id);
  if (!next || waiting.has(id)) return;
  const db = await connect();
  if (!db) return fail();
  try {
    const projectText = encodeProject(next.document);
    const { name } = next.document;
    const basis = bases.get(id)?.revision ?? 0;
    const saved = await saveState(db, { id, name, projectText, note: next.note, basis, savedAt: Date.now() });
    if (saved.kind === 'conflict') await fork(db, id, next);
    else accept(saved.record, next);
  } catch (error) {
    trouble.value = troubleOf(error);
    fail();
  }
}

function fail(): void {
  savingState.value = 'failed';
}

function accept({ id, revision, head }: ProjectRecord, saved: Unsaved): void {
  bases.set(id, { revision, head, document: saved.document });
  if (unsaved.get(id) === saved) unsaved.delete(id);
  forgetLeft(id);
  trouble.value = undefined;
  if (openId.peek() === id) remember(id);
  tellTabs({ kind: 'saved', project: id });
  follow(opened.peek());
  savingState.value = unsaved.size === 0 ? 'saved' : 'saving';
}

/** Somebody else has saved meanwhile: both are kept, this work as a project of its own. */
async function fork(db: KeepingDb, id: string, next: Unsaved): Promise<void> {
  const [copyId, name] = [crypto.randomUUID(), keeping.forkName(next.document.name)];
  const copy = { ...next.document, name };
  const projectText = encodeProject(copy);
  const saved = await saveState(db, { id: copyId, name, projectText, note: next.note, basis: 0, savedAt: Date.now() });
  if (saved.kind === 'conflict') throw new Error('a new project cannot be there already');
  await copyPhotos(db, id, copyId);
  unsaved.delete(id);
  bases.delete(id);
  tell(keeping.access.forked(next.document.name, name), { tone: 'problem' });
  if (openId.peek() === id) moveTo(copyId, name);
  accept(saved.record, { ...next, document: copy });
  forgetLeft(id);
}

/** Edits that must not go into the project they were made in, because another tab has it. */
export function keepApart(id: string): void {
  bases.set(id, { revision: NEVER, head: NEVER });
  waiting.delete(id);
  void flush(id);
}

/** Notes what is to be written; what was opened is not written again until it changes. */
function follow({ id, project }: Opened): void {
  if (bases.get(id)?.document === project) {
    unsaved.delete(id);
    if (unsaved.size === 0) savingState.value = 'saved';
    return;
  }
  const before = unsaved.get(id);
  if (before?.document === project) return;
  const now = Date.now();
  const since = before?.since ?? now;
  unsaved.set(id, { document: project, note: undoLabel.peek() ?? '', since });
  if (savingState.value !== 'failed') savingState.value = 'saving';
  clearTimeout(timer);
  timer = setTimeout(flushAll, Math.max(0, Math.min(QUIET_MS, since + LONGEST_MS - now)));
}

/** Shows what is kept when it is newer than what is shown; edits not saved yet are never replaced by it. */
export async function catchUp(db: KeepingDb, record: ProjectRecord): Promise<void> {
  const { id } = record;
  const basis = bases.get(id);
  if (basis && basis.head === record.head) {
    bases.set(id, { ...basis, revision: record.revision });
    return;
  }
  if (unsaved.has(id)) return;
  const { document, record: read } = await readNewest(db, id, readText);
  if (!document || !read || unsaved.has(id) || openId.peek() !== id) return;
  bases.set(id, { revision: read.revision, head: read.head, document });
  followElsewhere(document, keeping.access.followed);
}

/** Everything not kept yet goes where a closing page can still put it. */
function onLeaving(): void {
  for (const [id, { document: left, note }] of unsaved) {
    const basis = bases.get(id)?.revision ?? 0;
    leave({ id, name: left.name, note, basis, projectText: encodeProject(left) });
  }
  flushAll();
}

export async function retrySaving(): Promise<void> {
  const db = await connect();
  follow(opened.peek());
  if (unsaved.size > 0) return flushEverything();
  if (!db) return;
  trouble.value = undefined;
  savingState.value = 'saved';
}

export function startAutosave(): void {
  effect(() => {
    const now = opened.value;
    untracked(() => follow(now));
  });
  document.addEventListener('visibilitychange', () => document.hidden && onLeaving());
  window.addEventListener('pagehide', onLeaving);
}
