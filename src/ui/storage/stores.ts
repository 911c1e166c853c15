/**
 * What is kept on this machine, in IndexedDB.
 *
 * | store | key | value |
 * |---|---|---|
 * | projects | id | name, revision, and `head`: the revision of the newest whole state |
 * | states | project id, revision | when it was saved, how large it is, what the last edit was |
 * | texts | project id, revision | the text of a project file |
 * | aside | number | a text that could not be read, whole |
 * | searches | project id | the search of that project: its whole question, and how it stands |
 * | searchStarts | project id, start | what one of its starts found |
 * | photos | id | which project and step a photo belongs to, its caption and size |
 * | pictures | id of the photo | the picture itself |
 */
import type { DBSchema, IDBPDatabase } from 'idb';
import type { FoundByStart } from '../../../workers/protocol.ts';
import type { RecordStep } from '../../model/record.ts';

export interface ProjectRecord {
  readonly id: string;
  readonly name: string;
  /** Rises with every save and with every change of the tab that writes. */
  readonly revision: number;
  readonly head: number;
  readonly changedAt: number;
  /** Set while it waits to be deleted for good. */
  readonly deletedAt?: number;
}

export interface StateRecord {
  readonly project: string;
  readonly revision: number;
  readonly savedAt: number;
  readonly bytes: number;
  /** What was done last before it, in the words of undo. */
  readonly note: string;
}

export interface AsideRecord {
  readonly project: string;
  readonly keptAt: number;
  readonly projectText: string;
}

export interface SearchRecord {
  readonly project: string;
  /** Tells this search from the others of the project. */
  readonly study: string;
  readonly phase: 'running' | 'paused' | 'stopped' | 'finished' | 'refused';
  /** The question, as the page of the search wrote it. */
  readonly content: unknown;
}

export interface SearchStartRecord {
  readonly project: string;
  readonly start: number;
  readonly study: string;
  readonly found: FoundByStart;
}

export interface PhotoRecord {
  readonly id: string;
  readonly project: string;
  readonly step: RecordStep;
  readonly caption: string;
  readonly takenAt: number;
  /** As it is kept [pixels]. */
  readonly width: number;
  readonly height: number;
  readonly bytes: number;
  /** Set while its deleting can be undone. */
  readonly deletedAt?: number;
}

export type StateKey = [project: string, revision: number];

export interface Schema extends DBSchema {
  projects: { key: string; value: ProjectRecord };
  states: { key: StateKey; value: StateRecord };
  texts: { key: StateKey; value: string };
  aside: { key: number; value: AsideRecord };
  searches: { key: string; value: SearchRecord };
  searchStarts: { key: [project: string, start: number]; value: SearchStartRecord };
  photos: { key: string; value: PhotoRecord; indexes: { project: string } };
  pictures: { key: string; value: Blob };
}

export type KeepingDb = IDBPDatabase<Schema>;

/** Every state, or start of a search, of one project. */
export const statesOf = (id: string): IDBKeyRange => IDBKeyRange.bound([id], [id, []]);

export const bytesOf = (projectText: string): number => new Blob([projectText]).size;
