/** Which trace the shaft follows, and that it is not kept. */
import type { JSX } from 'preact';
import { trace } from '../app/cycle-motion.ts';
import { show, showNumber } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { askForTrace, formShown } from './trace-draft.ts';

const words = text.cycle.trace;

export function TraceNote(): JSX.Element {
  const kept = trace.value;
  if (!kept) return <p class="hint trace-note">{words.none}</p>;
  const { time_s, position_m } = kept.drive;
  const places = Array.from(position_m);
  const [low, high] = [places.reduce((a, b) => Math.min(a, b)), places.reduce((a, b) => Math.max(a, b))];
  const lasts = showNumber(time_s[time_s.length - 1] - time_s[0], 2);
  return (
    <div class="trace-note">
      <p>
        <strong>{kept.name}</strong>
        {words.summary(time_s.length, lasts, show('position', low), show('position', high))}
      </p>
      <p class="hint">{words.visit}</p>
      {!formShown.value && (
        <button type="button" class="button" onClick={askForTrace}>
          {words.another}
        </button>
      )}
    </div>
  );
}
