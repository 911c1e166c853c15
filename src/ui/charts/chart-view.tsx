/** The chart with its tabs, what it is solved at, and what it warns of. */
import type { JSX } from 'preact';
import { anyStale } from '../app/solve.ts';
import type { Theory } from '../app/solved.ts';
import { direction, place, project, theory } from '../app/store.ts';
import { useSize } from '../app/use-size.ts';
import { CycleView } from '../cycle/cycle-view.tsx';
import { Choice } from '../panels/choice.tsx';
import { text } from '../text/en.ts';
import { chart, plotView, showTab, TABS, tab } from './chart-model.ts';
import { ChartOptions } from './chart-options.tsx';
import { ConditionsRow } from './conditions-row.tsx';
import { CursorLayer } from './cursor-layer.tsx';
import { Plot } from './plot.tsx';
import { Warnings } from './warnings.tsx';

const THEORIES: readonly Theory[] = ['small-deflection', 'large-deflection'];

/** The chamber and path charts show one direction, the opening chart one stack. */
function wayShown(): string {
  if (chart.value === 'opening') return text.placeOf(project.value.damper.layout, place.value).name;
  return direction.value === 1 ? text.chart.compression : text.chart.rebound;
}

function Board(): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  return (
    <div class={`plot ${anyStale.value ? 'stale' : ''}`} ref={ref} data-chart={chart.value}>
      <Plot view={plotView.value} width={size.width} height={size.height} />
      {size.width > 0 && <CursorLayer {...size} />}
      {chart.value === 'force' && (
        <>
          <span class="way up">{text.chart.compression}</span>
          <span class="way down">{text.chart.rebound}</span>
        </>
      )}
      {chart.value !== 'force' && <span class="way up">{wayShown()}</span>}
    </div>
  );
}

export function ChartView(): JSX.Element {
  return (
    <section class="sheet charts" aria-label={text.chart.title}>
      <header>
        <Choice
          label={text.chart.title}
          options={TABS}
          chosen={tab.value}
          name={(each) => text.chart.tabs[each]}
          onChoose={showTab}
        />
        <span class="group">
          <ChartOptions />
        </span>
      </header>
      <ConditionsRow />
      {tab.value === 'cycle' ? (
        <CycleView />
      ) : (
        <>
          <Board />
          <Warnings />
        </>
      )}
      <div class="chart-foot">
        <Choice
          label={text.theoryChoice}
          options={THEORIES}
          chosen={theory.value}
          name={(each) => text.theoryShort[each]}
          onChoose={(each) => {
            theory.value = each;
          }}
        />
        <p class="hint">
          {text.theoryHint} {text.chart.estimate}
        </p>
      </div>
    </section>
  );
}
