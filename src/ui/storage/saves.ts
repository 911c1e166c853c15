/**
 * Saves of the open project in IndexedDB. Each save is written whole under a new number; only then does `head` point at it,
 * and only then do old ones go. A save that cannot be read is never overwritten or removed.
 *
 * | store | key | value |
 * |---|---|---|
 * | saves | 1, 2, 3 … | text of a project file |
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
/** Older saves that stay behind the newest. */
const KEPT_SAVES = 5;

export const openSaves = (name = 'shimwright'): Promise<SavesDb> =>
  openDB<Schema>(name, 1, {
    upgrade(db) {
      db.createObjectStore('saves');
      db.createObjectStore('head');
      db.createObjectStore('aside');
    },
  });

const lastNumber = async (db: SavesDb): Promise<number> => {
  const keys = [...(await db.getAllKeys('saves')), ...(await db.getAllKeys('aside'))];
  return Math.max(0, ...keys);
};

/** Writes new, then switches, then tidies: a crash between any two steps leaves a whole save to open. */
export async function writeSave(db: SavesDb, projectText: string): Promise<void> {
  const number = (await lastNumber(db)) + 1;
  await db.put('saves', projectText, number);
  await db.put('head', number, HEAD);
  const old = (await db.getAllKeys('saves')).filter((key) => key <= number - KEPT_SAVES);
  await Promise.all(old.map((key) => db.delete('saves', key)));
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
