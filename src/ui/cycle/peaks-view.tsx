/** Force at the peak speed of strokes from slow to fast, as a test bench draws it. */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { peaksFailure, peaksOf, peaksRunning, startPeaks } from '../app/peak-solve.ts';
import type { Direction } from '../app/places.ts';
import { inShown, showBare, showField, showNumber, unitOfShown } from '../app/quantities.ts';
import { errorInWords } from '../app/reasons.ts';
import { visibleBuilds } from '../app/store.ts';
import { useSize } from '../app/use-size.ts';
import { BuildHeads } from '../charts/build-heads.tsx';
import { Plot } from '../charts/plot.tsx';
import { WarningList } from '../charts/warning-list.tsx';
import { text } from '../text/en.ts';
import { type PeakCurve, peakCurves, peakView, WAYS } from './peak-lines.ts';

const words = text.cycle.peaks;

/** Each reason once a build. */
export const peakTroubles = (): string[] =>
  visibleBuilds.value.flatMap((build) => {
    const reasons = peaksOf(build).flatMap(({ trouble }) => trouble ?? []);
    return [...new Set(reasons)].map((reason) => words.unfinished(build.name, reason));
  });

function Troubles(): JSX.Element {
  const lines = [
    ...peakTroubles(),
    ...(peaksFailure.value === undefined ? [] : [text.cycle.failed(errorInWords(peaksFailure.value))]),
  ];
  return <WarningList lines={lines} />;
}

/** Slow strokes differ in the millimetres a second. */
const SPEED_DIGITS = 3;
const speedOf = (speed_m_s: number): string =>
  `${showNumber(inShown('speed', speed_m_s), SPEED_DIGITS)} ${unitOfShown('speed')}`;

const forceAtStroke = ({ frequencies_Hz, force_N }: PeakCurve, frequency_Hz: number): string => {
  const force = force_N[frequencies_Hz.indexOf(frequency_Hz)];
  return force === undefined ? text.readout.none : showBare('force', force);
};

function WayTable({ way }: { way: Direction }): JSX.Element {
  const curves = peakCurves.value.filter((curve) => curve.way === way);
  const strokes = curves.reduce((a, b) => (b.at.length > a.at.length ? b : a), curves[0]);
  return (
    <table class="readings" data-way={way === 1 ? 'compression' : 'rebound'}>
      <thead>
        <tr>
          <th scope="col">{words.head(way === 1 ? text.way.compression : text.way.rebound, unitOfShown('force'))}</th>
          <BuildHeads builds={curves.map(({ build }) => build)} marked />
        </tr>
      </thead>
      <tbody>
        {strokes?.frequencies_Hz.map((frequency_Hz, i) => (
          <tr key={frequency_Hz} data-frequency={frequency_Hz}>
            <th scope="row">
              {words.stroke(speedOf(strokes.at[i]), showField('frequency', Number(frequency_Hz.toPrecision(3))))}
            </th>
            {curves.map((curve) => (
              <td key={curve.build.id} class={`number-col ${curve.stale ? 'stale' : ''}`}>
                {forceAtStroke(curve, frequency_Hz)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function PeaksView(): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  useEffect(startPeaks, []);
  return (
    <div class="cycle" data-cycle={peaksRunning.value ? 'running' : 'done'}>
      <div class="plot" ref={ref} data-chart="cycle-peaks">
        <Plot view={peakView.value} width={size.width} height={size.height} />
        <span class="way up">{text.chart.compression}</span>
        <span class="way down">{text.chart.rebound}</span>
        {peaksRunning.value && <span class="sweep-state">{text.cycle.running}</span>}
      </div>
      <Troubles />
      <div class={`reading-tables ${visibleBuilds.value.length > 2 ? 'stacked' : ''}`}>
        {WAYS.map((way) => (
          <WayTable key={way} way={way} />
        ))}
      </div>
      <p class="hint">{words.note}</p>
    </div>
  );
}
