/** What the chart on show gives: pictures, its data, and the whole curve of the build on show. */
import { motion } from '../app/cycle-motion.ts';
import { cycleOf } from '../app/cycle-solve.ts';
import { shownEffects } from '../app/effects-solve.ts';
import { tell } from '../app/notices.ts';
import { bands, units } from '../app/preferences.ts';
import { outcomes } from '../app/solve.ts';
import { baseline, selectedBuild, visibleBuilds } from '../app/store.ts';
import { chartBuilds, shown, shownLines } from '../charts/chart-model.ts';
import { comparing, comparison } from '../charts/comparison.ts';
import { shimRows } from '../charts/shim-rows.ts';
import { scatterBand, showsTolerance } from '../charts/shown-areas.ts';
import { chart, tab } from '../charts/tabs.ts';
import { type LoopAxis, loopAxes, loopViews } from '../cycle/cycle-lines.ts';
import { peakView } from '../cycle/peak-lines.ts';
import { effectRows } from '../effects/effect-rows.ts';
import { clickSweep } from '../sweeps/click-sweep.ts';
import { positionSweep } from '../sweeps/position-sweep.ts';
import type { Sweep } from '../sweeps/sweep.ts';
import { sweepLines } from '../sweeps/sweep-lines.ts';
import { temperatureSweep } from '../sweeps/temperature-sweep.ts';
import { text } from '../text/en.ts';
import { saveEffectBars, saveShimBars } from './bars-export.ts';
import { fileOfChart, type PictureFormat, saveChart, saveLoop } from './chart-pictures.ts';
import { chartRows } from './chart-table.ts';
import { curveRows } from './curve-table.ts';
import { cycleRows } from './cycle-table.ts';
import { effectsTable } from './effects-table.ts';
import type { ExportChoice } from './export-menu.tsx';
import { peaksData, savePeaks } from './peaks-export.ts';
import { saveCsv } from './readings-export.ts';
import { shimTable } from './shim-table.ts';
import { saveSweep, sweepData } from './sweep-export.ts';
import type { Row } from './table-text.ts';
import { pictureRows, saveShares, toleranceData } from './tolerance-export.ts';

const words = text.export;

const tellNothing = (): void => tell(words.nothingSolved, { tone: 'problem' });

function saveRows(what: string, rows: readonly Row[]): void {
  if (rows.length === 0) tellNothing();
  else saveCsv(what, rows);
}

const nameNow = (name: string, stale: boolean): string => (stale ? words.lastSolved(name) : name);

function saveChartData(): void {
  const builds = chartBuilds.value.flatMap(({ id, name }) => {
    const outcome = outcomes.value.get(id);
    return outcome?.curve ? [{ id, name: nameNow(name, outcome.stale), curve: outcome.curve }] : [];
  });
  const told = comparing.value && !comparison.value ? [] : builds;
  const beside = {
    ...shown.value,
    withBands: bands.value === 'shown',
    baselineName: baseline.value.name,
    ...(showsTolerance.value && {
      scatter: {
        buildId: selectedBuild.value.id,
        areas: { compression: scatterBand(1), rebound: scatterBand(-1) },
      },
    }),
  };
  saveRows(fileOfChart(), chartRows(chart.value, told, beside, units.value));
}

function saveCycleData(): void {
  const loops = visibleBuilds.value.flatMap((build) => {
    const { reading, stale } = cycleOf(build);
    return reading ? [{ name: nameNow(build.name, stale), loop: reading.loop }] : [];
  });
  saveRows(words.files.cycle, cycleRows(loops, units.value));
}

function saveCurve(): void {
  const { id, name } = selectedBuild.value;
  const outcome = outcomes.value.get(id);
  const rows = outcome?.curve ? curveRows(outcome.curve, units.value) : [];
  saveRows(`${words.files.curve} ${nameNow(name, outcome?.stale ?? false)}`, rows);
}

const saveShims = (): void => saveRows(words.files.shimsAtCursor, shimTable(shimRows.value, units.value));

const saveEffects = (): void => saveRows(text.effects.file, effectsTable(shownEffects.value.effects, units.value));

/** A picture of nothing would be a frame that looks like an answer. */
const ifDrawn = (lines: readonly unknown[], run: () => Promise<void>) => (): void => {
  if (lines.length === 0) tellNothing();
  else void run();
};

const shimBarChoices = (): ExportChoice[] => [
  { id: 'shims-svg', label: text.shims.pictureSvg, run: ifDrawn(shimRows.value, () => saveShimBars('svg')) },
  { id: 'shims-png', label: text.shims.picturePng, run: ifDrawn(shimRows.value, () => saveShimBars('png')) },
  { id: 'shims-csv', label: text.shims.csv, run: saveShims },
];

function loopChoices(axis: LoopAxis): ExportChoice[] {
  const { lines } = loopViews[axis].value;
  return [
    { id: `${axis}-svg`, label: words.loopSvg[axis], run: ifDrawn(lines, () => saveLoop(axis, 'svg')) },
    { id: `${axis}-png`, label: words.loopPng[axis], run: ifDrawn(lines, () => saveLoop(axis, 'png')) },
  ];
}

/** The pictures and the data of one view. */
interface ViewExport {
  readonly pictures: readonly ExportChoice[];
  readonly saveData: () => void;
}

const pictures = (lines: readonly unknown[], save: (format: PictureFormat) => Promise<void>): ExportChoice[] => [
  { id: 'chart-svg', label: words.pictureSvg, run: ifDrawn(lines, () => save('svg')) },
  { id: 'chart-png', label: words.picturePng, run: ifDrawn(lines, () => save('png')) },
];

const sweepExport = (sweep: Sweep): ViewExport => ({
  pictures: pictures(sweepLines(sweep), (format) => saveSweep(sweep, format)),
  saveData: () => saveRows(words.files[sweep.name], sweepData(sweep)),
});

const peaksExport = (): ViewExport => ({
  pictures: [
    {
      id: 'peaks-svg',
      label: text.cycle.peaks.svg,
      run: ifDrawn(peakView.value.lines, () => savePeaks('svg')),
    },
    {
      id: 'peaks-png',
      label: text.cycle.peaks.png,
      run: ifDrawn(peakView.value.lines, () => savePeaks('png')),
    },
  ],
  saveData: () => saveRows(text.cycle.peaks.file, peaksData()),
});

function viewExport(): ViewExport {
  switch (tab.value) {
    case 'cycle':
      return motion.value === 'peaks'
        ? peaksExport()
        : { pictures: loopAxes.value.flatMap(loopChoices), saveData: saveCycleData };
    case 'effects':
      return {
        pictures: [
          {
            id: 'effects-svg',
            label: text.effects.pictureSvg,
            run: ifDrawn(effectRows.value, () => saveEffectBars('svg')),
          },
          {
            id: 'effects-png',
            label: text.effects.picturePng,
            run: ifDrawn(effectRows.value, () => saveEffectBars('png')),
          },
        ],
        saveData: saveEffects,
      };
    case 'tolerance':
      return {
        pictures: [
          {
            id: 'tolerance-svg',
            label: text.tolerance.pictureSvg,
            run: ifDrawn(pictureRows(), () => saveShares('svg')),
          },
          {
            id: 'tolerance-png',
            label: text.tolerance.picturePng,
            run: ifDrawn(pictureRows(), () => saveShares('png')),
          },
        ],
        saveData: () => saveRows(text.tolerance.file, toleranceData()),
      };
    case 'temperature':
      return sweepExport(temperatureSweep);
    case 'position':
      return sweepExport(positionSweep);
    case 'clicks':
      return sweepExport(clickSweep);
    default:
      return { pictures: pictures(shownLines.value, saveChart), saveData: saveChartData };
  }
}

function csvLabel(): string {
  if (tab.value === 'effects') return text.effects.csv;
  return tab.value === 'tolerance' ? text.tolerance.csv : words.chartCsv;
}

export function chartChoices(): ExportChoice[] {
  const { pictures: drawings, saveData } = viewExport();
  return [
    ...drawings,
    { id: 'chart-csv', label: csvLabel(), run: saveData },
    ...(tab.value === 'shims' ? shimBarChoices() : []),
    { id: 'curve-csv', label: words.curveCsv(selectedBuild.value.name), run: saveCurve },
  ];
}
