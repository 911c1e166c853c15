/** The search of each project: its question, how it stands, and what each of its starts found. One search a project is kept. */
import type { FoundByStart } from '../../../workers/protocol.ts';
import { type KeepingDb, type SearchRecord, type SearchStartRecord, statesOf } from './stores.ts';

export interface KeptSearch {
  readonly record: SearchRecord;
  readonly starts: readonly FoundByStart[];
}

/** @returns nothing where none is kept; starts of an older search are left out */
export async function readSearch(db: KeepingDb, project: string): Promise<KeptSearch | undefined> {
  const read = db.transaction(['searches', 'searchStarts']);
  const [record, all] = await Promise.all([
    read.objectStore('searches').get(project),
    read.objectStore('searchStarts').getAll(statesOf(project)),
  ]);
  return record && { record, starts: all.filter(({ study }) => study === record.study).map(({ found }) => found) };
}

/** Takes the place of the search before; starts of another study go. */
export async function keepSearch(db: KeepingDb, record: SearchRecord): Promise<void> {
  const write = db.transaction(['searches', 'searchStarts'], 'readwrite');
  const before = await write.objectStore('searches').get(record.project);
  if (before && before.study !== record.study) await write.objectStore('searchStarts').delete(statesOf(record.project));
  await write.objectStore('searches').put(record);
  await write.done;
}

/** Kept only while its search is the one of the project. */
export async function keepStart(db: KeepingDb, start: SearchStartRecord): Promise<void> {
  const write = db.transaction(['searches', 'searchStarts'], 'readwrite');
  const record = await write.objectStore('searches').get(start.project);
  if (record?.study === start.study) await write.objectStore('searchStarts').put(start);
  await write.done;
}
