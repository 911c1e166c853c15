/** The chart of a sweep, with the slider of the speed cursor above it and what went wrong beneath. */

import type { ComponentChildren, JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { errorInWords } from '../app/reasons.ts';
import { startSweep, sweepFailure, sweepRunning } from '../app/sweep-solve.ts';
import { useSize } from '../app/use-size.ts';
import { Plot } from '../charts/plot.tsx';
import { SpeedSlider } from '../charts/speed-slider.tsx';
import { WarningList } from '../charts/warning-list.tsx';
import { text } from '../text/en.ts';
import type { Sweep } from './sweep.ts';
import { SweepLayer } from './sweep-layer.tsx';
import { sweepLines, sweepView } from './sweep-lines.ts';
import { SweepTable } from './sweep-table.tsx';
import { sweepTroubles } from './sweep-troubles.ts';

function Troubles({ sweep }: { sweep: Sweep }): JSX.Element {
  const lines = [
    ...sweepTroubles(sweep),
    ...(sweepFailure.value === undefined ? [] : [text.sweep.failed(errorInWords(sweepFailure.value))]),
  ];
  return <WarningList lines={lines} />;
}

export function SweepBoard({ sweep, children }: { sweep: Sweep; children?: ComponentChildren }): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  useEffect(() => startSweep(sweep.points), [sweep]);
  const lines = sweepLines(sweep);
  const view = sweepView(sweep, lines);
  return (
    <div class="sweep" data-sweep={sweepRunning.value ? 'running' : 'done'}>
      <SpeedSlider />
      <div class="plot" ref={ref} data-chart={sweep.name}>
        <Plot view={view} width={size.width} height={size.height} />
        {size.width > 0 && <SweepLayer sweep={sweep} view={view} lines={lines} frame={size} />}
        <span class="way up">{text.chart.compression}</span>
        <span class="way down">{text.chart.rebound}</span>
        {sweepRunning.value && <span class="sweep-state">{text.sweep.running}</span>}
      </div>
      <Troubles sweep={sweep} />
      {children}
      <p class="hint">{sweep.note()}</p>
      <SweepTable sweep={sweep} />
    </div>
  );
}
