/**
 * The last edits of a page that is being closed. IndexedDB may drop a write that a closing page has begun; localStorage
 * takes a text at once. What is left there is put among the states by the next page, and then removed.
 */
const PREFIX = 'shimwright.leaving.';
const ownKey = (id: string): string => `${PREFIX}${pageId}.${id}`;
const pageId = crypto.randomUUID();

export interface Leaving {
  readonly id: string;
  readonly name: string;
  readonly note: string;
  /** The revision that the edits went on from. */
  readonly basis: number;
  readonly projectText: string;
}

/** Without storage there is nothing to keep and nothing kept; the person has already been told. */
function withStorage<T>(use: (storage: Storage) => T, otherwise: T): T {
  try {
    return use(localStorage);
  } catch {
    return otherwise;
  }
}

export const leave = (leaving: Leaving): void =>
  withStorage((storage) => storage.setItem(ownKey(leaving.id), JSON.stringify({ leaving })), undefined);

/** Once the same work, or newer, is among the states. */
export const forgetLeft = (id: string): void => withStorage((storage) => storage.removeItem(ownKey(id)), undefined);

/** What version 1 left was the text of the only project, and nothing else. */
export interface Left {
  readonly work: Leaving | { readonly projectText: string };
  readonly forget: () => void;
}

function readLeft(written: string): Left['work'] {
  try {
    const { leaving } = JSON.parse(written) as { leaving?: Leaving };
    return typeof leaving?.projectText === 'string' ? leaving : { projectText: written };
  } catch {
    return { projectText: written };
  }
}

/** What earlier pages left. */
export const findLeft = (): Left[] =>
  withStorage(
    (storage) =>
      Object.keys(storage)
        .filter((key) => key.startsWith(PREFIX))
        .map((key) => ({
          work: readLeft(storage.getItem(key) ?? ''),
          forget: () => withStorage((s) => s.removeItem(key), undefined),
        })),
    [],
  );
