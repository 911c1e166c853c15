/** One tab holds a name at a time (Web Locks). The browser lets go for a tab that is closed or has crashed. */
export interface Hold {
  readonly release: () => void;
  /** Settles when another tab has taken the name away. */
  readonly lost: Promise<void>;
}

export const hasLocks = (): boolean => typeof navigator.locks?.request === 'function';

/** Waits for the name, or takes it away from whoever has it. @returns nothing when `signal` gives up the wait */
export function hold(name: string, options: { signal?: AbortSignal; steal?: boolean }): Promise<Hold | undefined> {
  return new Promise((resolve, reject) => {
    let release = (): void => undefined;
    let lose = (): void => undefined;
    let isHeld = false;
    const until = new Promise<void>((done) => {
      release = done;
    });
    const lost = new Promise<void>((done) => {
      lose = done;
    });
    const onRefused = (error: unknown): void => {
      if (isHeld) lose();
      else if (options.signal?.aborted) resolve(undefined);
      else reject(error);
    };
    navigator.locks
      .request(name, options, () => {
        isHeld = true;
        resolve({ release, lost });
        return until;
      })
      .catch(onRefused);
  });
}

/** Names held or waited for by any tab. */
export async function heldNames(): Promise<ReadonlySet<string>> {
  if (!hasLocks()) return new Set();
  const { held = [] } = await navigator.locks.query();
  return new Set(held.flatMap(({ name }) => name ?? []));
}
