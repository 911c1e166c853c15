/** Begin, pause, go on, stop; how far it is; and what went wrong. */
import type { JSX } from 'preact';
import { searchWords as words } from '../text/search.ts';
import { begin, done, failed, type Phase, pause, phase, refusal, resume, share, stopSearch, study } from './run.ts';

function standing(now: Phase): string {
  const [ended, total] = [done.value.length, study.value?.starts ?? 0];
  if (now === 'refused') return words.refused(refusal.value ?? '');
  if (now === 'asking') return words.asking;
  if (now === 'idle' || total === 0) return words.idle;
  if (now === 'finished') return words.finished(total);
  return words[now](ended, total);
}

const Act = ({ name, onClick, main }: { name: string; onClick: () => void; main?: boolean }): JSX.Element => (
  <button type="button" class={main ? 'button primary' : 'button'} onClick={onClick}>
    {name}
  </button>
);

function Acts({ now }: { now: Phase }): JSX.Element {
  if (now === 'running')
    return (
      <>
        <Act name={words.pause} onClick={pause} />
        <Act name={words.stop} onClick={stopSearch} />
      </>
    );
  return (
    <>
      <button type="button" class="button primary" disabled={now === 'asking'} onClick={() => void begin()}>
        {words.start}
      </button>
      {now === 'paused' && (
        <>
          <Act name={words.resume} onClick={resume} />
          <Act name={words.stop} onClick={stopSearch} />
        </>
      )}
      {now === 'finished' && failed.value.length > 0 && <Act name={words.retry} onClick={resume} />}
    </>
  );
}

function Failures(): JSX.Element | null {
  const list = failed.value;
  if (list.length === 0) return null;
  return (
    <div class="warnings" role="alert" data-failed={list.length}>
      <p>{words.failedStarts(list.length)}</p>
      <ul>
        {list.slice(0, 4).map(({ start, message }) => (
          <li key={start}>{words.failedStart(start, message)}</li>
        ))}
      </ul>
    </div>
  );
}

export function RunBar(): JSX.Element {
  const now = phase.value;
  const counts = done.value.reduce(
    (sum, { counts: { proposed, judged } }) => ({ proposed: sum.proposed + proposed, judged: sum.judged + judged }),
    { proposed: 0, judged: 0 },
  );
  return (
    <div class="run-bar" data-phase={now} data-done={done.value.length}>
      <div class="stack-acts">
        <Acts now={now} />
      </div>
      <p class={now === 'refused' ? 'fault' : ''} role="status">
        {standing(now)}
      </p>
      {study.value && now !== 'refused' && (
        <progress max={1} value={share.value} aria-label={words.progress}>
          {share.value}
        </progress>
      )}
      {done.value.length > 0 && <p class="hint">{words.counts(counts.proposed, counts.judged)}</p>}
      <Failures />
    </div>
  );
}
