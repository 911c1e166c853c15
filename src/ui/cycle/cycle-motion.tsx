/** The sine stroke by which the damper is driven. */
import type { JSX } from 'preact';
import { frequency_Hz, setFrequency, setStroke, stroke_mm } from '../app/cycle-motion.ts';
import { showField } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { ViewField } from '../panels/view-field.tsx';
import { text } from '../text/en.ts';

/** Faster than any damper is shaken [Hz]. */
const FASTEST_HZ = 50;

export function CycleMotion(): JSX.Element {
  const { travel_mm } = project.value.damper;
  return (
    <>
      <ViewField
        label={text.cycle.stroke}
        title={text.cycle.strokeWhy}
        kind="length"
        value={stroke_mm.value}
        holds={(stroke) => stroke > 0 && stroke <= travel_mm}
        wanted={text.cycle.strokeWanted(showField('length', travel_mm))}
        onValue={setStroke}
      />
      <ViewField
        label={text.cycle.frequency}
        kind="frequency"
        value={frequency_Hz.value}
        holds={(frequency) => frequency > 0 && frequency <= FASTEST_HZ}
        wanted={text.chart.speedWanted(showField('frequency', FASTEST_HZ))}
        onValue={setFrequency}
      />
    </>
  );
}
