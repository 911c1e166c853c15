/** The chart with its tabs, the cursor's number, and how far the speeds go. */
import type { JSX } from 'preact';
import { anyStale } from '../app/solve.ts';
import type { Theory } from '../app/solved.ts';
import { cursorSpeed, place, setCursor, setTopSpeed, theory, topSpeed } from '../app/store.ts';
import { useSize } from '../app/use-size.ts';
import { Choice } from '../panels/choice.tsx';
import { SpeedField } from '../panels/speed-field.tsx';
import { text } from '../text/en.ts';
import { CHARTS, chart, plotView } from './chart-model.ts';
import { CursorLayer } from './cursor-layer.tsx';
import { Plot } from './plot.tsx';
import { Warnings } from './warnings.tsx';

const THEORIES: readonly Theory[] = ['small-deflection', 'large-deflection'];

/** Faster than any damper's shaft [m/s]. */
const FASTEST = 10;

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
      {chart.value !== 'force' && <span class="way up">{text.place[place.value].toLowerCase()}</span>}
    </div>
  );
}

export function ChartView(): JSX.Element {
  return (
    <section class="sheet charts" aria-label={text.chart.title}>
      <header>
        <Choice
          label={text.chart.title}
          options={CHARTS}
          chosen={chart.value}
          name={(each) => text.chart.tabs[each]}
          onChoose={(each) => {
            chart.value = each;
          }}
        />
        <span class="group speeds">
          <SpeedField
            label={text.chart.cursor}
            value_m_s={cursorSpeed.value}
            upTo_m_s={topSpeed.value}
            onSpeed={setCursor}
          />
          <SpeedField label={text.chart.upTo} value_m_s={topSpeed.value} upTo_m_s={FASTEST} onSpeed={setTopSpeed} />
        </span>
      </header>
      <Board />
      <Warnings />
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
