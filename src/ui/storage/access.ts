/**
 * One tab writes a project at a time; every other one reads it and follows. A tab that wants to write asks the one that
 * does, which saves its last edits before it lets go. Without Web Locks every tab writes, and a save that does not go on
 * from the newest becomes a project of its own (storage/autosave.ts).
 */
import { effect, signal, untracked } from '@preact/signals';
import { tell } from '../app/notices.ts';
import { openId, readOnly } from '../app/store.ts';
import { keeping } from '../text/keeping.ts';
import { catchUp, flush, isUnsaved, keepApart, setWaiting } from './autosave.ts';
import { withDb } from './connection.ts';
import { type Hold, hasLocks, heldNames, hold } from './hold.ts';
import { remember } from './remembered.ts';
import { claim } from './states.ts';
import { listenToTabs, type TabMessage, tabId, tellTabs } from './tabs.ts';

export type Access = 'opening' | 'writing' | 'reading';

export const access = signal<Access>('opening');
export const isTakingOver = signal(false);

/** A page that is being reloaded lets go of its project within this time; after it another tab has it [ms]. */
const PATIENCE_MS = 400;
/** A tab that has not answered within this time is taken as frozen [ms]. */
const ANSWER_MS = 3000;

interface Session {
  readonly id: string;
  held?: Hold;
  /** Gives up the wait for the project. */
  wait?: AbortController;
}
let session: Session | undefined;

export const lockName = (id: string): string => `shimwright.project.${id}`;

function setAccess(next: Access): void {
  access.value = next;
  readOnly.value = next === 'reading';
}

/** Runs once for every project that is opened in this tab. */
async function arrive(id: string): Promise<void> {
  const before = session;
  const here: Session = { id };
  session = here;
  setAccess('opening');
  setWaiting(id, true);
  if (before) void depart(before);
  if (!hasLocks()) return settle(here);
  setTimeout(() => void readIfHeldElsewhere(here), PATIENCE_MS);
  await waitFor(here);
}

/** A busy browser may be slow to grant what no other tab has: that is no reason to read only. */
async function readIfHeldElsewhere(here: Session): Promise<void> {
  const isWaiting = () => session === here && !here.held && access.value === 'opening';
  if (!isWaiting()) return;
  const held = await heldNames();
  if (!isWaiting()) return;
  if (!held.has(lockName(here.id))) {
    setTimeout(() => void readIfHeldElsewhere(here), PATIENCE_MS);
    return;
  }
  setAccess('reading');
  // Edits made before this was known go on as a project of their own.
  if (isUnsaved(here.id)) keepApart(here.id);
}

async function depart(before: Session): Promise<void> {
  before.wait?.abort();
  setWaiting(before.id, false);
  await flush(before.id);
  before.held?.release();
}

/** Stands in line for the project, however long another tab has it. */
async function waitFor(here: Session): Promise<void> {
  here.wait = new AbortController();
  const held = await hold(lockName(here.id), { signal: here.wait.signal }).catch(() => 'refused' as const);
  if (held === 'refused') return settle(here);
  if (!held) return;
  if (session !== here) return held.release();
  await settle(here, held);
}

/** From here on this tab writes; what another has saved meanwhile is shown first. */
async function settle(here: Session, held?: Hold): Promise<void> {
  here.held = held;
  const wasReading = access.value === 'reading';
  await withDb(async (db) => {
    const record = held ? await claim(db, here.id) : await db.get('projects', here.id);
    if (!record) return;
    if (session === here) remember(here.id);
    await catchUp(db, record);
  });
  if (session !== here) return;
  setAccess('writing');
  setWaiting(here.id, false);
  void flush(here.id);
  if (wasReading && !isTakingOver.value) tell(keeping.access.nowWriting);
  void held?.lost.then(() => onLost(here));
}

function onLost(here: Session): void {
  if (session !== here) return;
  here.held = undefined;
  setAccess('reading');
  // What could not be handed over in time does not fit any more and becomes a project of its own.
  void flush(here.id);
  void waitFor(here);
}

async function handOver(here: Session, asker: string): Promise<void> {
  setAccess('reading');
  await flush(here.id);
  if (session !== here) return;
  const isKept = !isUnsaved(here.id);
  tellTabs({ kind: isKept ? 'handed-over' : 'not-handed-over', project: here.id, asker });
  if (isKept) {
    tell(keeping.access.nowReading);
    // The tab that asked may be gone.
    setTimeout(() => session === here && here.held && setAccess('writing'), ANSWER_MS);
  } else setAccess('writing');
}

function onMessage(message: TabMessage): void {
  const here = session;
  if (here?.id !== message.project) return;
  if (message.kind === 'hand-over' && here.held && access.value === 'writing') void handOver(here, message.asker);
  if (message.kind === 'saved' && (access.value === 'reading' || !hasLocks())) {
    void withDb(async (db) => {
      const record = await db.get('projects', here.id);
      if (record && session === here) await catchUp(db, record);
    });
  }
}

type Answer = 'handed-over' | 'not-handed-over' | 'none';

function ask(project: string): Promise<Answer> {
  return new Promise((resolve) => {
    const stop = listenToTabs((message) => {
      if (message.kind !== 'handed-over' && message.kind !== 'not-handed-over') return;
      if (message.project === project && message.asker === tabId) finish(message.kind);
    });
    const timer = setTimeout(() => finish('none'), ANSWER_MS);
    const finish = (answer: Answer): void => {
      clearTimeout(timer);
      stop();
      resolve(answer);
    };
    tellTabs({ kind: 'hand-over', project, asker: tabId });
  });
}

/** Makes this tab the one that writes. */
export async function takeOver(): Promise<void> {
  const here = session;
  if (!here || access.value !== 'reading' || isTakingOver.value) return;
  isTakingOver.value = true;
  try {
    const answer = await ask(here.id);
    if (session !== here || here.held) return;
    if (answer === 'not-handed-over') return tell(keeping.access.notHandedOver, { tone: 'problem' });
    here.wait?.abort();
    const held = await hold(lockName(here.id), { steal: true });
    if (session !== here) return held?.release();
    await settle(here, held);
  } finally {
    isTakingOver.value = false;
  }
}

export function startAccess(): void {
  listenToTabs(onMessage);
  effect(() => {
    const id = openId.value;
    untracked(() => void arrive(id));
  });
}
