/** All projects on this machine: listed, deleted in two steps, and the texts that could not be read. */
import { photoIdsOf, removePhotos } from './photos.ts';
import type { AsideRecord, KeepingDb, ProjectRecord } from './stores.ts';
import { statesOf } from './stores.ts';

/** Deleted projects can be taken back for so long [ms]. */
export const DELETED_KEPT_MS = 30 * 24 * 60 * 60 * 1000;

export interface ShelfEntry extends ProjectRecord {
  /** Of all its states and photos. */
  readonly bytes: number;
  readonly states: number;
}

/** Last changed first. */
export async function listProjects(db: KeepingDb): Promise<ShelfEntry[]> {
  const read = db.transaction(['projects', 'states', 'photos']);
  const [records, states, photos] = await Promise.all([
    read.objectStore('projects').getAll(),
    read.objectStore('states').getAll(),
    read.objectStore('photos').getAll(),
  ]);
  const entries = records.map((record) => {
    const own = states.filter(({ project }) => project === record.id);
    const sized = [...own, ...photos.filter(({ project }) => project === record.id)];
    return { ...record, states: own.length, bytes: sized.reduce((sum, { bytes }) => sum + bytes, 0) };
  });
  return entries.sort((a, b) => b.changedAt - a.changedAt);
}

/** Marks it, or takes the mark away; its work stays whole. */
export async function setDeleted(db: KeepingDb, id: string, deletedAt: number | undefined): Promise<void> {
  const write = db.transaction('projects', 'readwrite', { durability: 'strict' });
  const record = await write.store.get(id);
  if (record) await write.store.put({ ...record, deletedAt });
  await write.done;
}

/** For good, with all its states and its search. Only what is marked as deleted goes. */
export async function removeForGood(db: KeepingDb, id: string): Promise<void> {
  const write = db.transaction(['projects', 'states', 'texts', 'searches', 'searchStarts'], 'readwrite', {
    durability: 'strict',
  });
  const record = await write.objectStore('projects').get(id);
  const isGone = record?.deletedAt !== undefined;
  if (isGone) {
    await Promise.all([
      write.objectStore('projects').delete(id),
      write.objectStore('states').delete(statesOf(id)),
      write.objectStore('texts').delete(statesOf(id)),
      write.objectStore('searches').delete(id),
      write.objectStore('searchStarts').delete(statesOf(id)),
    ]);
  }
  await write.done;
  if (isGone) await removePhotos(db, await photoIdsOf(db, id));
}

export async function removeLongDeleted(db: KeepingDb, now: number): Promise<void> {
  for (const { id, deletedAt } of await db.getAll('projects'))
    if (deletedAt !== undefined && now - deletedAt > DELETED_KEPT_MS) await removeForGood(db, id);
}

export interface Aside extends AsideRecord {
  readonly number: number;
}

export async function listAside(db: KeepingDb): Promise<Aside[]> {
  const read = db.transaction('aside');
  const [numbers, records] = await Promise.all([read.store.getAllKeys(), read.store.getAll()]);
  return records.map((record, i) => ({ ...record, number: numbers[i] }));
}

export const removeAside = (db: KeepingDb, number: number): Promise<void> => db.delete('aside', number);
