/** The damper driven by a sine stroke or along a trace: force over position and over speed, and what a test bench reads off it. */

import type { ReadonlySignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { motion, trace } from '../app/cycle-motion.ts';
import { type CycleReading, cycleOf, cyclesFailure, cyclesRunning, startCycles } from '../app/cycle-solve.ts';
import { show } from '../app/quantities.ts';
import { errorInWords } from '../app/reasons.ts';
import { visibleBuilds } from '../app/store.ts';
import { useSize } from '../app/use-size.ts';
import { BuildHeads } from '../charts/build-heads.tsx';
import { Plot } from '../charts/plot.tsx';
import type { PlotView } from '../charts/plot-layout.ts';
import { WarningList } from '../charts/warning-list.tsx';
import { text } from '../text/en.ts';
import { loopAxes, loopViews } from './cycle-lines.ts';
import { type CycleGroup, type CycleRow, cycleGroups } from './cycle-rows.ts';
import { HysteresisAt } from './hysteresis-at.tsx';
import { PeaksView } from './peaks-view.tsx';
import { formShown } from './trace-draft.ts';
import { TraceForm } from './trace-form.tsx';

function Loop({ view, name }: { view: ReadonlySignal<PlotView>; name: string }): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  return (
    <div class="plot loop" ref={ref} data-chart={name}>
      <Plot view={view.value} width={size.width} height={size.height} />
    </div>
  );
}

interface DrivenBuild {
  readonly id: string;
  readonly name: string;
  readonly reading?: CycleReading;
  readonly stale: boolean;
}

/** Why a build has no loop, or that of a run before. */
function Troubles(): JSX.Element {
  const lines = visibleBuilds.value.flatMap((build) => {
    const { trouble, reading } = cycleOf(build);
    return trouble === undefined ? [] : [text.cycle.unfinished(build.name, trouble, reading !== undefined)];
  });
  const all = [
    ...lines,
    ...(cyclesFailure.value === undefined ? [] : [text.cycle.failed(errorInWords(cyclesFailure.value))]),
  ];
  return <WarningList lines={all} />;
}

function Row({ row, driven }: { row: CycleRow; driven: readonly DrivenBuild[] }): JSX.Element {
  return (
    <tr data-row={row.id}>
      <th scope="row" title={row.title}>
        {row.name}
      </th>
      {driven.map(({ id, reading, stale }) => (
        <td
          key={id}
          class={`number-col ${stale ? 'stale' : ''} ${(reading && row.tone?.(reading)) ?? ''}`}
          data-build={id}
        >
          {reading ? row.cell(reading) : text.readout.none}
        </td>
      ))}
    </tr>
  );
}

function Group({ group, driven }: { group: CycleGroup; driven: readonly DrivenBuild[] }): JSX.Element {
  const readings = driven.flatMap(({ reading }) => reading ?? []);
  return (
    <tbody data-group={group.id}>
      <tr class="group-title">
        <th scope="colgroup" colSpan={driven.length + 1}>
          {group.title}
        </th>
      </tr>
      {group.rows
        .filter(({ when }) => !when || readings.some(when))
        .map((row) => (
          <Row key={row.id} row={row} driven={driven} />
        ))}
    </tbody>
  );
}

const whatIsRead = (): string => (motion.value === 'sine' ? text.cycle.lastCycle : text.cycle.wholeTrace);

function Table(): JSX.Element {
  const driven: DrivenBuild[] = visibleBuilds.value.map((build) => {
    const { reading, stale } = cycleOf(build);
    return { id: build.id, name: build.name, stale, ...(reading && { reading }) };
  });
  const groups = cycleGroups(driven.flatMap(({ reading }) => reading ?? []));
  return (
    <table class="readings cycle-readings">
      <thead>
        <tr>
          <th scope="col">{cyclesRunning.value ? text.cycle.running : whatIsRead()}</th>
          <BuildHeads builds={driven} marked />
        </tr>
      </thead>
      {groups.map((group) => (
        <Group key={group.id} group={group} driven={driven} />
      ))}
    </table>
  );
}

/** Off the runs themselves: pi times stroke times frequency for a sine. */
function PeakSpeed(): JSX.Element | null {
  const reading = visibleBuilds.value.map(cycleOf).find((answer) => answer.reading && !answer.stale)?.reading;
  if (!reading) return null;
  const { compression, rebound } = reading.peaks;
  const speedOf = (speed_m_s: number): string => show('speed', Math.max(0, speed_m_s));
  const [fastest, back] = [speedOf(compression.speed_m_s), speedOf(0 - rebound.speed_m_s)];
  const words = motion.value === 'sine' ? text.cycle.peakSpeed(fastest) : text.cycle.peakSpeeds(fastest, back);
  return <p class="hint peak-speed">{words}</p>;
}

function Driven(): JSX.Element {
  return (
    <div class={`cycle ${cyclesRunning.value ? 'stale' : ''}`} data-cycle={cyclesRunning.value ? 'running' : 'done'}>
      <div class="loops">
        {loopAxes.value.map((axis) => (
          <Loop key={axis} view={loopViews[axis]} name={`cycle-${axis}`} />
        ))}
      </div>
      <div class="loop-readings">
        <PeakSpeed />
        <HysteresisAt />
      </div>
      <Troubles />
      <Table />
      <p class="hint">{motion.value === 'trace' ? text.cycle.note.trace : text.cycle.note.sine}</p>
    </div>
  );
}

export const CycleView = (): JSX.Element => (motion.value === 'peaks' ? <PeaksView /> : <LoopsView />);

function LoopsView(): JSX.Element {
  useEffect(startCycles, []);
  const isAwaited = motion.value === 'trace' && !trace.value;
  return (
    <>
      {formShown.value && <TraceForm />}
      {!isAwaited && <Driven />}
    </>
  );
}
