/** What the solver is doing, and whether the work is kept. */
import type { JSX } from 'preact';
import { barRoom } from '../app/bar-room.ts';
import { solverState } from '../app/solve.ts';
import { savingState } from '../storage/autosave.ts';
import { text } from '../text/en.ts';

export function Status(): JSX.Element {
  const { phase, message } = solverState.value;
  const look = phase === 'failed' ? 'bad' : phase === 'solving' || phase === 'loading' ? 'busy' : '';
  const kept = savingState.value;
  const short = barRoom.value === 'wide' ? text.saving : text.savingShort;
  return (
    <div class={`status ${look}`} role="status" data-phase={phase} title={`${message}. ${text.saving[kept]}`}>
      <span class="dot" aria-hidden="true" />
      <span>
        <span class="solver-message">{message}</span>
        <span class={`saving ${kept}`}>{short[kept]}</span>
      </span>
    </div>
  );
}
