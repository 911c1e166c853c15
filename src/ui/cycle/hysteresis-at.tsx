/** The speed at which the hysteresis of the loops is read, and why it has none. */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { cycleOf } from '../app/cycle-solve.ts';
import { hysteresisFailure, hysteresisOf, startHysteresis } from '../app/hysteresis-solve.ts';
import { hysteresisSpeed_m_s } from '../app/preferences.ts';
import { showField } from '../app/quantities.ts';
import { errorInWords } from '../app/reasons.ts';
import { visibleBuilds } from '../app/store.ts';
import { ViewField } from '../panels/view-field.tsx';
import { text } from '../text/en.ts';
import { hysteresisGaps } from './hysteresis-gaps.ts';

/** Faster than any damper's shaft [m/s]. */
const FASTEST = 10;

const setSpeed = (speed_m_s: number | undefined): void => {
  hysteresisSpeed_m_s.value = speed_m_s;
};

/** One motion drives all builds: the first that is read tells for all. */
function gapsNow(): string[] {
  if (hysteresisFailure.value !== undefined)
    return [text.cycle.hysteresisFailed(errorInWords(hysteresisFailure.value))];
  const [reading] = visibleBuilds.value.flatMap((build) => cycleOf(build).reading ?? []);
  const read = reading && hysteresisOf(reading);
  return read ? hysteresisGaps(reading, read) : [];
}

export function HysteresisAt(): JSX.Element {
  useEffect(startHysteresis, []);
  return (
    <>
      <ViewField
        label={text.cycle.hysteresisAt}
        title={text.cycle.hysteresisAtWhy}
        kind="speed"
        value={hysteresisSpeed_m_s.value}
        placeholder={text.cycle.hysteresisHalf}
        holds={(speed) => speed > 0 && speed <= FASTEST}
        wanted={text.chart.speedWanted(showField('speed', FASTEST))}
        onValue={setSpeed}
        onEmpty={() => setSpeed(undefined)}
      />
      <div class="hint gaps" role="status">
        {gapsNow().map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </>
  );
}
