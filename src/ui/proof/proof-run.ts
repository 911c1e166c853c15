/** The run of the reference cases that the page shows. It lasts as long as the tab, so that looking at the bench loses nothing. */
import { signal } from '@preact/signals';
import { type CaseReport, type ProofRun, runProof } from '../../../workers/proof-client.ts';

export type RunPhase =
  | { readonly name: 'idle' }
  | { readonly name: 'running' }
  | { readonly name: 'done' | 'stopped'; readonly finished: Date; readonly seconds: number }
  | { readonly name: 'broken'; readonly finished: Date; readonly reason: string };

export const reports = signal<readonly CaseReport[]>([]);
/** How many cases there are; 0 until the worker has said so. */
export const casesInAll = signal(0);
export const phase = signal<RunPhase>({ name: 'idle' });

let current: ProofRun | undefined;

/** Runs every case anew; a run that goes on is ended first. */
export async function startRun(): Promise<void> {
  current?.stop();
  reports.value = [];
  casesInAll.value = 0;
  phase.value = { name: 'running' };
  const started = performance.now();
  const run = runProof((report, total) => {
    reports.value = [...reports.value, report];
    casesInAll.value = total;
  });
  current = run;
  const seconds = () => (performance.now() - started) / 1000;
  try {
    await run.finished;
    if (run === current) phase.value = { name: 'done', finished: new Date(), seconds: seconds() };
  } catch (error) {
    if (run !== current) return;
    const stopped = error instanceof Error && 'code' in error && error.code === 'closed';
    phase.value = stopped
      ? { name: 'stopped', finished: new Date(), seconds: seconds() }
      : { name: 'broken', finished: new Date(), reason: error instanceof Error ? error.message : String(error) };
  }
}

export const stopRun = (): void => current?.stop();

/** On the first visit of the page. */
export function startOnce(): void {
  if (phase.value.name === 'idle') void startRun();
}
