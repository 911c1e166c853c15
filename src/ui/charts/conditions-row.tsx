/** What every curve is solved at: how far the speeds go, where in the stroke, how warm the oil is. And the speed cursor. */
import type { JSX } from 'preact';
import { position_mm, setPosition } from '../app/conditions.ts';
import { motion } from '../app/cycle-motion.ts';
import { showField } from '../app/quantities.ts';
import { cursorSpeed, project, setCursor, setTopSpeed, topSpeed } from '../app/store.ts';
import { CycleMotion } from '../cycle/cycle-motion.tsx';
import { TraceNote } from '../cycle/trace-note.tsx';
import { NumberField } from '../panels/number-field.tsx';
import { SpeedField } from '../panels/speed-field.tsx';
import { ViewField } from '../panels/view-field.tsx';
import { text } from '../text/en.ts';
import { tab } from './tabs.ts';

/** Faster than any damper's shaft [m/s]. */
const FASTEST = 10;

function Speeds(): JSX.Element {
  return (
    <>
      <SpeedField
        label={text.chart.cursor}
        value_m_s={cursorSpeed.value}
        upTo_m_s={topSpeed.value}
        onSpeed={setCursor}
      />
      <SpeedField label={text.chart.upTo} value_m_s={topSpeed.value} upTo_m_s={FASTEST} onSpeed={setTopSpeed} />
    </>
  );
}

function Position({ label }: { label: string }): JSX.Element {
  const { travel_mm } = project.value.damper;
  return (
    <ViewField
      label={label}
      title={text.chart.positionWhy}
      kind="length"
      value={position_mm.value}
      placeholder={text.chart.positionMiddle}
      holds={(position) => position >= 0 && position <= travel_mm}
      wanted={text.chart.positionWanted(showField('length', travel_mm))}
      onValue={setPosition}
      onEmpty={() => setPosition(undefined)}
    />
  );
}

function Motion(): JSX.Element {
  if (tab.value !== 'cycle') {
    return (
      <>
        <Speeds />
        <Position label={text.chart.position} />
      </>
    );
  }
  if (motion.value === 'trace') return <TraceNote />;
  return (
    <>
      <CycleMotion />
      <Position label={text.cycle.middle} />
    </>
  );
}

export function ConditionsRow(): JSX.Element {
  const { fluid } = project.value;
  return (
    <div class="conditions">
      <Motion />
      <NumberField
        label={text.damper.temperature}
        kind="temperature"
        value={fluid.temperature_degC}
        edit={(temperature_degC) => ({ ...project.value, fluid: { ...project.value.fluid, temperature_degC } })}
      />
    </div>
  );
}
