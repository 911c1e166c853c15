/** The speed cursor as a slider, for views that have no axis of speeds. */
import type { JSX } from 'preact';
import { show } from '../app/quantities.ts';
import { cursorSpeed, setCursor, topSpeed } from '../app/store.ts';
import { text } from '../text/en.ts';

/** Steps over the whole range. */
const STEPS = 200;

export function SpeedSlider(): JSX.Element {
  return (
    <div class="speed-slider">
      <input
        type="range"
        min={0}
        max={topSpeed.value}
        step={topSpeed.value / STEPS}
        value={cursorSpeed.value}
        aria-label={text.chart.cursor}
        aria-valuetext={show('speed', cursorSpeed.value)}
        onInput={(event) => setCursor(event.currentTarget.valueAsNumber)}
      />
      <output>{text.readout.title(show('speed', cursorSpeed.value))}</output>
    </div>
  );
}
