/** How far the run is and how it ended. Read aloud at quarters and at the end, not at every case. */
import type { JSX } from 'preact';
import { proofWords } from '../text/proof.ts';
import { totalsOf } from './proof-model.ts';
import { casesInAll, phase, reports } from './proof-run.ts';

const words = proofWords.run;

function statusWords(done: number): string {
  const state = phase.value;
  const total = casesInAll.value;
  if (state.name === 'broken') return words.broken(done, total, state.reason);
  if (state.name === 'stopped') return words.stopped(done, total);
  if (state.name !== 'done') return total === 0 ? words.starting : words.running(done, total);
  const { cases, casesOutside, quantities } = totalsOf(reports.value);
  if (cases === 0) return words.nothing;
  return casesOutside === 0
    ? words.allWithin(cases, quantities, state.seconds)
    : words.someOutside(casesOutside, cases, state.seconds);
}

/** The last quarter reached, so that the words read aloud change four times a run. */
const atQuarters = (done: number, total: number): number =>
  total === 0 ? 0 : (Math.floor((4 * done) / total) * total) / 4;

const lookOf = (): string => {
  const { name } = phase.value;
  if (name === 'broken') return 'bad';
  if (name === 'done') return totalsOf(reports.value).casesOutside === 0 && reports.value.length > 0 ? 'good' : 'bad';
  return name === 'stopped' ? '' : 'busy';
};

export function RunStatus(): JSX.Element {
  const done = reports.value.length;
  const total = casesInAll.value;
  const isRunning = phase.value.name === 'running';
  return (
    <div class={`run-status ${lookOf()}`} data-phase={phase.value.name}>
      <p class="run-words" aria-hidden="true">
        {statusWords(done)}
      </p>
      <p class="unseen" role="status">
        {statusWords(isRunning ? Math.floor(atQuarters(done, total)) : done)}
      </p>
      {isRunning && <progress aria-label={words.progress} value={done} max={Math.max(1, total)} />}
      {'finished' in phase.value && <p class="hint">{words.finished(phase.value.finished.toLocaleString())}</p>}
    </div>
  );
}
