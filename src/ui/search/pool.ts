/** Hands the starts of a search to workers, each to whichever is free. What is found does not depend on how many there are. */
import type { FoundByStart } from '../../../workers/protocol.ts';

/** The most workers that are started, however many cores a machine tells of. */
const MOST_WORKERS = 32;

export const coresOf = (told: number | undefined): number => Math.min(Math.max(Math.trunc(told ?? 1), 1), MOST_WORKERS);

/** One start on one worker. */
export type RunStart = (
  start: number,
  options: { readonly signal: AbortSignal; readonly onProgress: (fraction: number) => void },
) => Promise<FoundByStart>;

export interface PoolEvents {
  /** From 0 to 1. */
  readonly onProgress: (start: number, fraction: number) => void;
  readonly onFound: (found: FoundByStart) => void;
  readonly onFailed: (start: number, error: unknown) => void;
}

/**
 * Settles once no start is left or the signal is aborted; a start that fails leaves the others alone.
 * @param workers one for each start that runs at a time
 */
export async function runStarts(
  workers: readonly RunStart[],
  starts: readonly number[],
  signal: AbortSignal,
  events: PoolEvents,
): Promise<void> {
  const waiting = [...starts];
  const work = async (run: RunStart): Promise<void> => {
    for (let start = waiting.shift(); start !== undefined && !signal.aborted; start = waiting.shift()) {
      const of = start;
      try {
        const found = await run(of, { signal, onProgress: (fraction) => events.onProgress(of, fraction) });
        if (!signal.aborted) events.onFound(found);
      } catch (error) {
        if (!signal.aborted) events.onFailed(of, error);
      }
    }
  };
  await Promise.all(workers.map(work));
}
