/**
 * The last edit of a page that is being closed. IndexedDB may drop a write that a closing page has begun; localStorage
 * takes a text at once. What is left there is put among the saves by the next page, and then removed.
 */
const PREFIX = 'shimwright.leaving.';
const ownKey = PREFIX + crypto.randomUUID();

/** Without storage there is nothing to keep and nothing kept; autosave has already told the person. */
function withStorage<T>(use: (storage: Storage) => T, otherwise: T): T {
  try {
    return use(localStorage);
  } catch {
    return otherwise;
  }
}

export const leave = (projectText: string): void =>
  withStorage((storage) => storage.setItem(ownKey, projectText), undefined);

/** Once the same work, or newer, is among the saves. */
export const forgetLeft = (): void => withStorage((storage) => storage.removeItem(ownKey), undefined);

export interface Left {
  readonly projectText: string;
  readonly forget: () => void;
}

/** What earlier pages left. */
export const findLeft = (): Left[] =>
  withStorage(
    (storage) =>
      Object.keys(storage)
        .filter((key) => key.startsWith(PREFIX))
        .map((key) => ({ projectText: storage.getItem(key) ?? '', forget: () => storage.removeItem(key) })),
    [],
  );
