/** Photos of a project: kept beside it on this machine, and no part of its document, its files or its links. */
import type { RecordStep } from '../../model/record.ts';
import type { KeepingDb, PhotoRecord } from './stores.ts';

/** A deleted photo can be taken back for so long [ms]: as long as its message may stay open. */
const DELETED_KEPT_MS = 24 * 60 * 60 * 1000;

/** Those not deleted, in the order in which they were taken. */
export async function listPhotos(db: KeepingDb, project: string): Promise<PhotoRecord[]> {
  const all = await db.getAllFromIndex('photos', 'project', project);
  return all.filter(({ deletedAt }) => deletedAt === undefined).sort((a, b) => a.takenAt - b.takenAt);
}

export async function countPhotos(db: KeepingDb, project: string): Promise<number> {
  return (await listPhotos(db, project)).length;
}

/** Record and picture, or neither. */
export async function addPhoto(db: KeepingDb, photo: PhotoRecord, picture: Blob): Promise<void> {
  const write = db.transaction(['photos', 'pictures'], 'readwrite', { durability: 'strict' });
  try {
    await write.objectStore('photos').put(photo);
    await write.objectStore('pictures').put(picture, photo.id);
    await write.done;
  } catch (error) {
    undo(write);
    throw write.error ?? error;
  }
}

/** What was put before the one that failed must not stay alone. */
function undo(write: { abort(): void; readonly done: Promise<void> }): void {
  // It ends as not done either way, which is told by the error that led here.
  write.done.catch(() => {});
  try {
    write.abort();
  } catch {
    // The browser has undone it by itself.
  }
}

export const pictureOf = (db: KeepingDb, id: string): Promise<Blob | undefined> => db.get('pictures', id);

type Changeable = Partial<Pick<PhotoRecord, 'caption' | 'deletedAt'>> & { readonly step?: RecordStep };

export async function changePhoto(db: KeepingDb, id: string, change: Changeable): Promise<void> {
  const write = db.transaction('photos', 'readwrite', { durability: 'strict' });
  const photo = await write.store.get(id);
  if (photo) await write.store.put({ ...photo, ...change });
  await write.done;
}

export async function removeDeletedPhotos(db: KeepingDb, now: number): Promise<void> {
  for (const { id, deletedAt } of await db.getAll('photos')) {
    if (deletedAt === undefined || now - deletedAt <= DELETED_KEPT_MS) continue;
    await removePhotos(db, [id]);
  }
}

export async function removePhotos(db: KeepingDb, ids: readonly string[]): Promise<void> {
  const write = db.transaction(['photos', 'pictures'], 'readwrite', { durability: 'strict' });
  await Promise.all([
    ...ids.flatMap((id) => [write.objectStore('photos').delete(id), write.objectStore('pictures').delete(id)]),
    write.done,
  ]);
}

/** All photos of a project, those deleted too. */
export const photoIdsOf = (db: KeepingDb, project: string): Promise<string[]> =>
  db.getAllKeysFromIndex('photos', 'project', project);

/** A project that goes on under another id takes its photos along. */
export async function copyPhotos(db: KeepingDb, from: string, to: string): Promise<void> {
  for (const photo of await listPhotos(db, from)) {
    const picture = await pictureOf(db, photo.id);
    if (picture) await addPhoto(db, { ...photo, id: crypto.randomUUID(), project: to }, picture);
  }
}
