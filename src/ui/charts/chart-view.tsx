/** The chart with its tabs, what it is solved at, and what it warns of. */
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { anyStale } from '../app/solve.ts';
import { useSize } from '../app/use-size.ts';
import { CycleView } from '../cycle/cycle-view.tsx';
import { EffectsView } from '../effects/effects-view.tsx';
import { chartChoices } from '../export/chart-export.ts';
import { ExportMenu } from '../export/export-menu.tsx';
import { ClicksView } from '../sweeps/clicks-view.tsx';
import { positionSweep } from '../sweeps/position-sweep.ts';
import { SweepBoard } from '../sweeps/sweep-board.tsx';
import { temperatureSweep } from '../sweeps/temperature-sweep.ts';
import { text } from '../text/en.ts';
import { HatchNote } from '../tolerance/hatch-note.tsx';
import { startTolerance } from '../tolerance/tolerance-solve.ts';
import { ToleranceView } from '../tolerance/tolerance-view.tsx';
import { plotView, sidesShown } from './chart-model.ts';
import { ChartOptions } from './chart-options.tsx';
import { ChartTabs } from './chart-tabs.tsx';
import { ConditionsRow } from './conditions-row.tsx';
import { CursorLayer } from './cursor-layer.tsx';
import { Plot } from './plot.tsx';
import { ShimBars } from './shim-bars.tsx';
import { showsTolerance } from './shown-areas.ts';
import { chart, tab } from './tabs.ts';
import { TheoryFoot } from './theory-foot.tsx';
import { Warnings } from './warnings.tsx';

function Board(): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  const { up, down } = sidesShown();
  return (
    <div
      class={`plot ${anyStale.value ? 'stale' : ''}`}
      style={{ '--drawn': `${size.height}px` }}
      ref={ref}
      data-chart={chart.value}
    >
      <Plot view={plotView.value} width={size.width} height={size.height} />
      {size.width > 0 && <CursorLayer {...size} />}
      <span class="way up">{up}</span>
      {down !== undefined && <span class="way down">{down}</span>}
    </div>
  );
}

function View(): JSX.Element {
  switch (tab.value) {
    case 'cycle':
      return <CycleView />;
    case 'effects':
      return <EffectsView />;
    case 'temperature':
      return <SweepBoard key={temperatureSweep.name} sweep={temperatureSweep} />;
    case 'position':
      return <SweepBoard key={positionSweep.name} sweep={positionSweep} />;
    case 'clicks':
      return <ClicksView />;
    case 'tolerance':
      return <ToleranceView />;
    default:
      return (
        <>
          <Board />
          {showsTolerance.value && <HatchNote />}
          {chart.value === 'shims' && <ShimBars />}
          <Warnings />
        </>
      );
  }
}

const scatterIsLookedAt = (): boolean => tab.value === 'tolerance' || (tab.value === 'force' && showsTolerance.value);

export function ChartView(): JSX.Element {
  useEffect(() => startTolerance(scatterIsLookedAt), []);
  return (
    <section class="sheet charts" aria-label={text.chart.title}>
      <header>
        <ChartTabs />
        <span class="group">
          <ChartOptions />
          <ExportMenu of={text.export.sheets.chart} choices={chartChoices} />
        </span>
      </header>
      <ConditionsRow />
      <View />
      <TheoryFoot />
    </section>
  );
}
