/** The one connection of this page to what is kept on this machine, and why it does not work when it does not. */
import { signal } from '@preact/signals';
import { openKeeping } from './database.ts';
import type { KeepingDb } from './stores.ts';

/**
 * - `missing`: the browser keeps nothing; `full`: no room left; `blocked`: an older tab is in the way;
 * - `outdated`: a newer tab is; `failed`: anything else.
 */
export type Trouble = 'missing' | 'full' | 'blocked' | 'outdated' | 'failed';

export const trouble = signal<Trouble | undefined>(undefined);

let open: Promise<KeepingDb> | undefined;
let isOutdated = false;

class Blocked extends Error {}

export function troubleOf(error: unknown): Trouble {
  if (error instanceof Blocked) return 'blocked';
  const { name } = error as { name?: string };
  if (name === 'QuotaExceededError') return 'full';
  return name === 'SecurityError' || name === 'NotFoundError' ? 'missing' : 'failed';
}

function openOnce(): Promise<KeepingDb> {
  if (typeof indexedDB === 'undefined') return Promise.reject(new DOMException('no IndexedDB', 'SecurityError'));
  return new Promise((resolve, reject) => {
    let isGivenUp = false;
    openKeeping({
      onBlocked: () => {
        isGivenUp = true;
        reject(new Blocked());
      },
      onOutdated: () => {
        isOutdated = true;
        void open?.then((db) => db.close());
        open = undefined;
        trouble.value = 'outdated';
      },
      onLost: () => {
        open = undefined;
      },
    }).then((db) => (isGivenUp ? db.close() : resolve(db)), reject);
  });
}

/** @returns nothing when storage does not work; `trouble` then says why, and another call tries again */
export async function connect(): Promise<KeepingDb | undefined> {
  // A page of the older version must not open the newer database again.
  if (isOutdated) return undefined;
  open ??= openOnce();
  try {
    return await open;
  } catch (error) {
    open = undefined;
    trouble.value = troubleOf(error);
    return undefined;
  }
}

/** Runs `use` with the database. @returns nothing when storage does not work, which the person then sees */
export async function withDb<T>(use: (db: KeepingDb) => Promise<T>): Promise<T | undefined> {
  const db = await connect();
  if (!db) return undefined;
  try {
    return await use(db);
  } catch (error) {
    trouble.value = troubleOf(error);
    return undefined;
  }
}
