import { describe, expect, it } from 'vitest';
import { coresOf, type RunPiece, runPieces } from '../../../../src/ui/app/pool.ts';

const found = (start: number) => ({ start, answers: [], counts: { proposed: 1, screened: 1, judged: 1 }, refused: 0 });
type Found = ReturnType<typeof found>;
const STARTS = [0, 1, 2, 3, 4];

async function run(workers: readonly RunPiece<Found>[], stop = new AbortController()) {
  const seen = { found: [] as number[], failed: [] as string[], progress: [] as [number, number][] };
  await runPieces(workers, STARTS, stop.signal, {
    onDone: ({ start }) => seen.found.push(start),
    onFailed: (start, error) => seen.failed.push(`${start}: ${(error as Error).message}`),
    onProgress: (start, fraction) => seen.progress.push([start, fraction]),
  });
  return seen;
}

describe('a pool of workers', () => {
  it.each([1, 2, 9])('runs every start once with %s workers', async (count) => {
    const workers = Array.from({ length: count }, (): RunPiece<Found> => async (start) => found(start));
    const seen = await run(workers);
    expect([...seen.found].sort()).toEqual(STARTS);
  });

  it('gives the next start to the worker that is free', async () => {
    const done: Record<string, number[]> = { slow: [], quick: [] };
    let release = (): void => {};
    const gate = new Promise<void>((resolve) => {
      release = resolve;
    });
    const slow: RunPiece<Found> = async (start) => {
      await gate;
      done.slow.push(start);
      return found(start);
    };
    const quick: RunPiece<Found> = async (start) => {
      done.quick.push(start);
      if (start === 4) release();
      return found(start);
    };
    await run([slow, quick]);
    expect(done).toEqual({ slow: [0], quick: [1, 2, 3, 4] });
  });

  it('goes on behind a start that fails, and says which', async () => {
    const breaks: RunPiece<Found> = async (start, { onProgress }) => {
      onProgress(0.5);
      if (start === 2) throw new Error('it broke');
      return found(start);
    };
    const seen = await run([breaks]);
    expect(seen.found).toEqual([0, 1, 3, 4]);
    expect(seen.failed).toEqual(['2: it broke']);
    expect(seen.progress).toEqual(STARTS.map((start) => [start, 0.5]));
  });

  it('begins none after a stop, and reports none that was under way', async () => {
    const stop = new AbortController();
    const begun: number[] = [];
    const stops: RunPiece<Found> = async (start) => {
      begun.push(start);
      if (start === 1) stop.abort();
      if (start === 1) throw new Error('cancelled');
      return found(start);
    };
    const seen = await run([stops], stop);
    expect(begun).toEqual([0, 1]);
    expect(seen).toMatchObject({ found: [0], failed: [] });
  });

  it.each([
    [undefined, 1],
    [0, 1],
    [2, 2],
    [500, 32],
  ])('takes %s cores as %s workers', (told, workers) => expect(coresOf(told)).toBe(workers));
});
