/**
 * Version 1 kept one project: `saves` (number to text), `head` (number of the newest), `aside` (number to unreadable text).
 * Its saves become the states of one project among several; nothing is left out. It runs inside the change of version, so
 * that all of it happens or none.
 */
import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { Schema } from './stores.ts';

type Change = IDBPTransaction<Schema, StoreNames<Schema>[], 'versionchange'>;

/** Name of a project without reading the whole of it: a broken save has none. */
export function nameIn(projectText: string): string {
  try {
    const { name } = JSON.parse(projectText) as { name?: unknown };
    return typeof name === 'string' ? name : '';
  } catch {
    return '';
  }
}

/** Takes the old stores away and returns what writes their content into the new ones. */
export async function liftSingleProject(
  db: IDBPDatabase<Schema>,
  change: Change,
): Promise<(change: Change) => Promise<void>> {
  const old = change as unknown as IDBPTransaction<unknown, string[], 'versionchange'>;
  const numbers = (await old.objectStore('saves').getAllKeys()) as number[];
  const saved = (await old.objectStore('saves').getAll()) as string[];
  const head = (await old.objectStore('head').get('project')) as number | undefined;
  const asideNumbers = (await old.objectStore('aside').getAllKeys()) as number[];
  const asideTexts = (await old.objectStore('aside').getAll()) as string[];
  for (const store of ['saves', 'head', 'aside']) (db as unknown as IDBPDatabase).deleteObjectStore(store);
  const id = crypto.randomUUID();
  return async (stores) => {
    for (const [i, projectText] of saved.entries()) {
      const revision = i + 1;
      // The numbers of version 1 were the time of the save.
      const state = { project: id, revision, savedAt: numbers[i], bytes: new Blob([projectText]).size, note: '' };
      await stores.objectStore('states').put(state);
      await stores.objectStore('texts').put(projectText, [id, revision]);
    }
    for (const [i, projectText] of asideTexts.entries())
      await stores.objectStore('aside').put({ project: id, keptAt: asideNumbers[i], projectText });
    if (saved.length === 0) return;
    const at = head === undefined ? saved.length - 1 : numbers.indexOf(head);
    const newest = at < 0 ? saved.length - 1 : at;
    await stores.objectStore('projects').put({
      id,
      name: nameIn(saved[newest]),
      revision: saved.length,
      head: newest + 1,
      changedAt: numbers[newest],
    });
  };
}
