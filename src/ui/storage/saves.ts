/**
 * Saves of the open project in IndexedDB. A save goes in whole under a new number together with the `head` that points at
 * it, all or nothing; only then do old ones go. A save that cannot be read is never overwritten or removed.
 *
 * | store | key | value |
 * |---|---|---|
 * | saves | number, rising | text of a project file |
 * | head | 'project' | number of the newest whole save |
 * | aside | number of the save | text that could not be read |
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

interface Schema extends DBSchema {
  saves: { key: number; value: string };
  head: { key: string; value: number };
  aside: { key: number; value: string };
}

export type SavesDb = IDBPDatabase<Schema>;

const HEAD = 'project';
/** The newest and those before it. */
const KEPT_SAVES = 6;

export const openSaves = (name = 'shimwright'): Promise<SavesDb> =>
  openDB<Schema>(name, 1, {
    upgrade(db) {
      db.createObjectStore('saves');
      db.createObjectStore('head');
      db.createObjectStore('aside');
    },
  });

let lastNumber = 0;

/** Rises within this page and, by the clock, from page to page. */
function nextNumber(): number {
  lastNumber = Math.max(lastNumber + 1, Date.now());
  return lastNumber;
}

/**
 * Writes new and switches to it. The whole write is handed to the browser before this returns, so that a page that is
 * being closed still gets it through.
 */
export async function writeSave(db: SavesDb, projectText: string): Promise<void> {
  const number = nextNumber();
  const write = db.transaction(['saves', 'head'], 'readwrite');
  const requests = [write.objectStore('saves').put(projectText, number), write.objectStore('head').put(number, HEAD)];
  write.commit();
  await Promise.all([...requests, write.done]);
  await removeOld(db);
}

async function removeOld(db: SavesDb): Promise<void> {
  const numbers = await db.getAllKeys('saves');
  await Promise.all(numbers.slice(0, -KEPT_SAVES).map((number) => db.delete('saves', number)));
}

export interface Found<Document> {
  readonly document: Document;
  /** Texts that could not be read, kept aside, newest first. */
  readonly unreadable: readonly string[];
}

/** The newest save that can be read. Those that cannot are moved aside, whole. */
export async function readNewest<Document>(
  db: SavesDb,
  read: (projectText: string) => Document | undefined,
): Promise<Partial<Found<Document>> & Pick<Found<Document>, 'unreadable'>> {
  const head = await db.get('head', HEAD);
  const numbers = (await db.getAllKeys('saves')).filter((key) => head === undefined || key <= head).reverse();
  const unreadable: string[] = [];
  for (const number of numbers) {
    const saved = (await db.get('saves', number)) as string;
    const document = read(saved);
    if (document !== undefined) return { document, unreadable };
    unreadable.push(saved);
    await moveAside(db, number, saved);
  }
  return { unreadable };
}

async function moveAside(db: SavesDb, number: number, saved: string): Promise<void> {
  const move = db.transaction(['saves', 'aside'], 'readwrite');
  await Promise.all([
    move.objectStore('aside').put(saved, number),
    move.objectStore('saves').delete(number),
    move.done,
  ]);
}
