/** Hands the pieces of a long job to workers, each to whichever is free. What comes of it does not depend on how many there are. */

/** The most workers that are started, however many cores a machine tells of. */
const MOST_WORKERS = 32;

export const coresOf = (told: number | undefined): number => Math.min(Math.max(Math.trunc(told ?? 1), 1), MOST_WORKERS);

export const CORES = coresOf(globalThis.navigator?.hardwareConcurrency);

/** One piece on one worker. */
export type RunPiece<Done> = (
  piece: number,
  options: { readonly signal: AbortSignal; readonly onProgress: (fraction: number) => void },
) => Promise<Done>;

export interface PoolEvents<Done> {
  /** From 0 to 1. */
  readonly onProgress: (piece: number, fraction: number) => void;
  readonly onDone: (done: Done, piece: number) => void;
  readonly onFailed: (piece: number, error: unknown) => void;
}

/**
 * Settles once no piece is left or the signal is aborted; a piece that fails leaves the others alone.
 * @param workers one for each piece that runs at a time
 */
export async function runPieces<Done>(
  workers: readonly RunPiece<Done>[],
  pieces: readonly number[],
  signal: AbortSignal,
  events: PoolEvents<Done>,
): Promise<void> {
  const waiting = [...pieces];
  const work = async (run: RunPiece<Done>): Promise<void> => {
    for (let piece = waiting.shift(); piece !== undefined && !signal.aborted; piece = waiting.shift()) {
      const of = piece;
      try {
        const done = await run(of, { signal, onProgress: (fraction) => events.onProgress(of, fraction) });
        if (!signal.aborted) events.onDone(done, of);
      } catch (error) {
        if (!signal.aborted) events.onFailed(of, error);
      }
    }
  };
  await Promise.all(workers.map(work));
}
