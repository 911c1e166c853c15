/** What the chart on show can leave in or out. */
import type { JSX } from 'preact';
import type { ValvePlace } from '../../model/project.ts';
import { hasBase } from '../app/places.ts';
import { BAND_CHOICES, bands, GAS_FORCES, gasForce, MEASURED_CHOICES, measuredPoints } from '../app/preferences.ts';
import { direction, project, showPlace } from '../app/store.ts';
import { MotionOption } from '../cycle/motion-option.tsx';
import { anyMeasured } from '../measured/measured-dots.ts';
import { Choice } from '../panels/choice.tsx';
import { ClickOptions } from '../sweeps/clicks-view.tsx';
import { text } from '../text/en.ts';
import { measuredWords } from '../text/measured.ts';
import { pathsValve, shimQuantity, showPathsOf } from './chart-model.ts';
import { comparing, MEASURES, measure, measureName, measureTitle } from './comparison.ts';
import type { ValveName } from './path-shares.ts';
import { SHIM_QUANTITIES } from './shim-series.ts';
import { chart, tab } from './tabs.ts';

const VALVES: readonly ValveName[] = ['piston', 'base'];

function GasForceOption(): JSX.Element {
  return (
    <Choice
      label={text.chart.gasForce}
      options={GAS_FORCES}
      chosen={gasForce.value}
      name={(each) => text.chart.gasForceChoice[each]}
      title={(each) => text.chart.gasForceLong[each]}
      onChoose={(each) => {
        gasForce.value = each;
      }}
    />
  );
}

const WAYS: readonly ValvePlace[] = ['pistonCompression', 'pistonRebound'];

/** Shows a stack of that direction, as choosing it in the drawing does. */
function WayOption(): JSX.Element {
  return (
    <Choice
      label={text.chart.way}
      options={WAYS}
      chosen={direction.value === 1 ? 'pistonCompression' : 'pistonRebound'}
      name={(each) => (each === 'pistonCompression' ? text.way.compression : text.way.rebound)}
      onChoose={showPlace}
    />
  );
}

function BandOption(): JSX.Element {
  return (
    <Choice
      label={text.chart.bands}
      options={BAND_CHOICES}
      chosen={bands.value}
      name={(each) => text.chart.bandChoice[each]}
      title={(each) => text.chart.bandLong[each]}
      onChoose={(each) => {
        bands.value = each;
      }}
    />
  );
}

function MeasuredOption(): JSX.Element {
  return (
    <Choice
      label={measuredWords.show}
      options={MEASURED_CHOICES}
      chosen={measuredPoints.value}
      name={(each) => measuredWords.shownChoice[each]}
      title={(each) => measuredWords.shownLong[each]}
      onChoose={(each) => {
        measuredPoints.value = each;
      }}
    />
  );
}

function ForceOptions(): JSX.Element {
  return (
    <>
      <Choice
        label={text.chart.measure}
        options={MEASURES}
        chosen={measure.value}
        name={measureName}
        title={measureTitle}
        onChoose={(each) => {
          measure.value = each;
        }}
      />
      <GasForceOption />
      {!comparing.value && <BandOption />}
      {!comparing.value && anyMeasured.value && <MeasuredOption />}
    </>
  );
}

export function ChartOptions(): JSX.Element | null {
  if (tab.value === 'cycle') return <MotionOption />;
  if (tab.value === 'effects') return null;
  if (tab.value === 'tolerance') return <WayOption />;
  if (tab.value === 'temperature') return <GasForceOption />;
  if (tab.value === 'clicks') {
    return (
      <>
        <ClickOptions />
        <GasForceOption />
      </>
    );
  }
  if (chart.value === 'force') return <ForceOptions />;
  if (chart.value === 'shims') {
    return (
      <Choice
        label={text.shims.quantity}
        options={SHIM_QUANTITIES}
        chosen={shimQuantity.value}
        name={(each) => text.shims.quantityChoice[each]}
        title={(each) => text.shims.quantityLong[each]}
        onChoose={(each) => {
          shimQuantity.value = each;
        }}
      />
    );
  }
  if (chart.value !== 'paths' || !hasBase(project.value.damper.layout)) return null;
  return (
    <Choice
      label={text.chart.pathsOf}
      options={VALVES}
      chosen={pathsValve.value}
      name={(each) => text.chart.valve[each]}
      onChoose={showPathsOf}
    />
  );
}
