/** Opens the database of kept work, and lifts one of an older version. */
import { openDB } from 'idb';
import { liftSingleProject } from './lift-single-project.ts';
import type { KeepingDb, Schema } from './stores.ts';

const VERSION = 4;

export interface OpeningEvents {
  /** Another tab holds the database at an older version. */
  readonly onBlocked: () => void;
  /** Another tab wants a newer version: the connection is to be closed. */
  readonly onOutdated: () => void;
  /** The browser has closed the connection. */
  readonly onLost: () => void;
}

export async function openKeeping(events: OpeningEvents, name = 'shimwright'): Promise<KeepingDb> {
  const db = await openDB<Schema>(name, VERSION, {
    async upgrade(db, from, _to, change) {
      const single = from === 1 ? await liftSingleProject(db, change) : undefined;
      if (from < 2) {
        db.createObjectStore('projects', { keyPath: 'id' });
        db.createObjectStore('states', { keyPath: ['project', 'revision'] });
        db.createObjectStore('texts');
        db.createObjectStore('aside', { autoIncrement: true });
      }
      if (from < 3) {
        db.createObjectStore('searches', { keyPath: 'project' });
        db.createObjectStore('searchStarts', { keyPath: ['project', 'start'] });
      }
      db.createObjectStore('photos', { keyPath: 'id' }).createIndex('project', 'project');
      db.createObjectStore('pictures');
      await single?.(change);
    },
    blocked: events.onBlocked,
    blocking: events.onOutdated,
    terminated: events.onLost,
  });
  return db;
}
