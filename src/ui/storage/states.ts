/**
 * Saving and reading the states of a project. A save goes in whole under a new revision together with the `head` that points
 * at it, all or nothing, and is on the disk before it counts; what is thinned out goes in the same step. A state that cannot
 * be read is never overwritten or thrown away.
 */
import type { KeepingDb, ProjectRecord, StateRecord } from './stores.ts';
import { bytesOf, statesOf } from './stores.ts';
import { thinOut } from './thin-out.ts';

export interface Save {
  readonly id: string;
  readonly name: string;
  readonly projectText: string;
  readonly note: string;
  /** The revision that this work goes on from; 0 when there is none yet. */
  readonly basis: number;
  readonly savedAt: number;
}

/** - `conflict`: somebody else has saved meanwhile; nothing was written. */
export type Saved = { readonly kind: 'saved'; readonly record: ProjectRecord } | { readonly kind: 'conflict' };

const change = (db: KeepingDb) =>
  db.transaction(['projects', 'states', 'texts', 'aside'], 'readwrite', { durability: 'strict' });
type Change = ReturnType<typeof change>;

/** All of `steps`, or nothing. */
async function whole<T>(db: KeepingDb, steps: (write: Change) => Promise<T>): Promise<T> {
  const write = change(db);
  try {
    const result = await steps(write);
    await write.done;
    return result;
  } catch (error) {
    // The reason stands in the error of the step; that the whole was given up only repeats it.
    await write.done.catch(() => undefined);
    throw write.error ?? error;
  }
}

export const saveState = (db: KeepingDb, save: Save): Promise<Saved> =>
  whole(db, async (write) => {
    const { id, name, projectText, note, savedAt } = save;
    const record = await write.objectStore('projects').get(id);
    if (record && record.revision !== save.basis) {
      const since = await write.objectStore('texts').getAll(IDBKeyRange.bound([id, save.basis], [id, []], true));
      return since.includes(projectText) ? { kind: 'saved', record } : { kind: 'conflict' };
    }
    const revision = (record?.revision ?? save.basis) + 1;
    const next = { id, name, revision, head: revision, changedAt: savedAt };
    const state = { project: id, revision, savedAt, bytes: bytesOf(projectText), note };
    await Promise.all([
      write.objectStore('texts').put(projectText, [id, revision]),
      write.objectStore('states').put(state),
      write.objectStore('projects').put(next),
    ]);
    await removeOld(write, id, savedAt);
    return { kind: 'saved', record: next };
  });

async function removeOld(write: Change, id: string, now: number): Promise<void> {
  const old = thinOut(await write.objectStore('states').getAll(statesOf(id)), now);
  await Promise.all(
    old.flatMap((revision) => [
      write.objectStore('texts').delete([id, revision]),
      write.objectStore('states').delete([id, revision]),
    ]),
  );
}

/** Makes this tab the one that goes on from here: a save that another tab began before no longer fits. */
export const claim = (db: KeepingDb, id: string): Promise<ProjectRecord | undefined> =>
  whole(db, async (write) => {
    const record = await write.objectStore('projects').get(id);
    if (!record) return undefined;
    const { deletedAt: _deletedAt, ...alive } = record;
    const claimed = { ...alive, revision: record.revision + 1 };
    await write.objectStore('projects').put(claimed);
    return claimed;
  });

export interface Found<Document> {
  readonly record?: ProjectRecord;
  readonly document?: Document;
  /** Texts that could not be read, newest first; they are kept aside. */
  readonly unreadable: readonly string[];
}

/** The newest state that can be read. Those that cannot are moved aside, whole. */
export async function readNewest<Document>(
  db: KeepingDb,
  id: string,
  read: (projectText: string) => Document | undefined,
): Promise<Found<Document>> {
  const record = await db.get('projects', id);
  if (!record) return { unreadable: [] };
  const keys = await db.getAllKeys('texts', IDBKeyRange.bound([id], [id, record.head]));
  const unreadable: string[] = [];
  for (const [, revision] of keys.reverse()) {
    const projectText = (await db.get('texts', [id, revision])) as string;
    const document = read(projectText);
    if (document !== undefined) return { record: await db.get('projects', id), document, unreadable };
    unreadable.push(projectText);
    await moveAside(db, id, revision);
  }
  return { record, unreadable };
}

/** The head then points at the state before it; a project without a state left is no project any more. */
const moveAside = (db: KeepingDb, id: string, revision: number): Promise<void> =>
  whole(db, async (write) => {
    const [record, projectText, state] = await Promise.all([
      write.objectStore('projects').get(id),
      write.objectStore('texts').get([id, revision]),
      write.objectStore('states').get([id, revision]),
    ]);
    if (projectText === undefined || !record) return;
    await write.objectStore('aside').put({ project: id, keptAt: state?.savedAt ?? record.changedAt, projectText });
    await write.objectStore('texts').delete([id, revision]);
    await write.objectStore('states').delete([id, revision]);
    const left = (await write.objectStore('texts').getAllKeys(statesOf(id))).map(([, number]) => number);
    const before = left.filter((number) => number < record.head).at(-1);
    if (record.head !== revision) return;
    if (before === undefined) await write.objectStore('projects').delete(id);
    else await write.objectStore('projects').put({ ...record, head: before });
  });

/** Newest first. */
export const listStates = async (db: KeepingDb, id: string): Promise<StateRecord[]> =>
  (await db.getAll('states', statesOf(id))).reverse();
