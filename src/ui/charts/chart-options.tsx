/** What the chart on show can leave in or out. */
import type { JSX } from 'preact';
import type { ValvePlace } from '../../model/project.ts';
import { hasBase } from '../app/places.ts';
import { BAND_CHOICES, bands, GAS_FORCES, gasForce, MEASURED_CHOICES, measuredPoints } from '../app/preferences.ts';
import { direction, place, places, project, showPlace } from '../app/store.ts';
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

const WAYS = ['compression', 'rebound'] as const;

/** Shows a stack of that direction, as choosing it in the drawing does; one that already works in it stays. */
function WayOption(): JSX.Element {
  const shown = direction.value === 1 ? 'compression' : 'rebound';
  return (
    <Choice
      label={text.chart.way}
      options={WAYS}
      chosen={shown}
      name={(each) => text.way[each]}
      onChoose={(each) => {
        if (each !== shown) showPlace(each === 'compression' ? 'pistonCompression' : 'pistonRebound');
      }}
    />
  );
}

/** The stack in the drawing, and in the charts that are about one stack. */
function StackOption(): JSX.Element {
  const words = (each: ValvePlace) => text.placeOf(project.value.damper.layout, each);
  return (
    <Choice
      label={text.chart.stack}
      options={places.value}
      chosen={place.value}
      name={(each) => words(each).tab}
      title={(each) => text.chart.stackLong(words(each).name)}
      onChoose={showPlace}
    />
  );
}

function ShimsOptions(): JSX.Element {
  return (
    <>
      <StackOption />
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
    </>
  );
}

function PathsOptions(): JSX.Element {
  return (
    <>
      <WayOption />
      {hasBase(project.value.damper.layout) && (
        <Choice
          label={text.chart.pathsOf}
          options={VALVES}
          chosen={pathsValve.value}
          name={(each) => text.chart.valve[each]}
          onChoose={showPathsOf}
        />
      )}
    </>
  );
}

function SpeedChartOptions(): JSX.Element {
  switch (chart.value) {
    case 'force':
      return <ForceOptions />;
    case 'paths':
      return <PathsOptions />;
    case 'pressures':
      return <WayOption />;
    case 'opening':
      return <StackOption />;
    case 'shims':
      return <ShimsOptions />;
  }
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
  if (tab.value === 'temperature' || tab.value === 'position') return <GasForceOption />;
  if (tab.value === 'clicks') {
    return (
      <>
        <ClickOptions />
        <GasForceOption />
      </>
    );
  }
  return <SpeedChartOptions />;
}
