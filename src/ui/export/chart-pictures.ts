/** The chart on show, or a loop of the cycle, as a picture file drawn by the charts library. */
import { position_mm } from '../app/conditions.ts';
import { frequency_Hz, motion, stroke_mm, trace } from '../app/cycle-motion.ts';
import { tell } from '../app/notices.ts';
import { chartSeparators, showField } from '../app/quantities.ts';

import { baseline, project } from '../app/store.ts';
import { plotView, shownLevels, shownLines, sidesShown } from '../charts/chart-model.ts';
import { comparing, measure } from '../charts/comparison.ts';

import { cut } from '../charts/cursor-cuts.ts';
import { showsTolerance } from '../charts/shown-areas.ts';
import { chart } from '../charts/tabs.ts';
import { theoryOfCycles, theoryOnShow } from '../charts/theory-on-show.ts';
import { warningLines } from '../charts/warnings.tsx';
import { type LoopAxis, loopViews } from '../cycle/cycle-lines.ts';
import { download } from '../storage/download.ts';
import { text } from '../text/en.ts';
import { hatchLines } from '../tolerance/hatch-lines.ts';
import { type Figure, type FigureRequest, figureOf, type Sign } from './chart-figure.ts';
import { exportName } from './file-name.ts';
import { lightInks } from './light-inks.ts';

type Plotly = typeof import('plotly.js-dist');

const words = text.export;

export type PictureFormat = 'svg' | 'png';
const TYPES: Readonly<Record<PictureFormat, string>> = { svg: 'image/svg+xml', png: 'image/png' };

/** Dots of a PNG for each of the drawing: sharp in print. */
export const PNG_SCALE = 2;

/** Hands a picture to the person, or tells why there is none. */
export async function savePicture(what: string, format: PictureFormat, draw: () => Promise<BlobPart>): Promise<void> {
  try {
    const name = exportName(project.value.name, what, format);
    download(name, await draw(), TYPES[format]);
    tell(words.saved(name));
  } catch (error) {
    tell(words.notDrawn(error instanceof Error ? error.message : String(error)), { tone: 'problem' });
  }
}

const bytesOf = (base64: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));

export async function drawn({ data, layout, width, height }: Figure, format: PictureFormat): Promise<BlobPart> {
  const loaded = (await import('plotly.js-dist')) as Plotly & { default?: Plotly };
  const { toImage } = loaded.default ?? loaded;
  const scale = format === 'png' ? PNG_SCALE : 1;
  const config = { staticPlot: true };
  const image = await toImage({ data, layout, config }, { format, width, height, scale, imageDataOnly: true });
  return format === 'png' ? bytesOf(image) : image;
}

/** What holds for every picture: solved how, and how far to trust it. */
export function commonNotes(theories = theoryOnShow()): string[] {
  const { fluid, invented } = project.value;
  const at = position_mm.value;
  const position = at === undefined ? words.midStroke : words.stroke(showField('length', at));
  return [
    words.conditions(theories || text.theories.none, showField('temperature', fluid.temperature_degC), position),
    `${text.chart.estimate} ${words.madeWith}`,
    ...(invented ? [words.invented] : []),
  ];
}

const signsNow = (): Sign[] =>
  shownLines.value.flatMap((line) =>
    line.marks.flatMap(({ sign, x }) => {
      const y = cut(line, x);
      return y === undefined ? [] : [{ x, y, sign, colour: line.colour }];
    }),
  );

export const page = (): Pick<FigureRequest, 'inks' | 'font' | 'separators'> => ({
  inks: lightInks(),
  font: getComputedStyle(document.body).fontFamily,
  separators: chartSeparators(),
});

function chartFigure(): Figure {
  const what = comparing.value ? words.difference(baseline.value.name) : text.chart.tabs[chart.value];
  return figureOf({
    title: words.title(project.value.name, what),
    view: plotView.value,
    signs: signsNow(),
    levels: shownLevels.value,
    ...sidesShown(),
    notes: [...(showsTolerance.value ? hatchLines() : []), ...warningLines(), ...commonNotes()],
    ...page(),
  });
}

const drivenBy = (): string =>
  motion.value === 'trace'
    ? words.alongTrace(trace.value?.name ?? '')
    : words.driven(showField('length', stroke_mm.value), showField('frequency', frequency_Hz.value));

function loopFigure(axis: LoopAxis): Figure {
  return figureOf({
    title: words.title(project.value.name, words.cyclePicture[axis]),
    view: loopViews[axis].value,
    signs: [],
    levels: [],
    notes: [drivenBy(), ...commonNotes(theoryOfCycles())],
    ...page(),
  });
}

export const fileOfChart = (): string => words.files[comparing.value ? measure.value : chart.value];

export const saveChart = (format: PictureFormat): Promise<void> =>
  savePicture(fileOfChart(), format, async () => drawn(chartFigure(), format));

export const saveLoop = (axis: LoopAxis, format: PictureFormat): Promise<void> =>
  savePicture(words.files[`cycle-${axis}`], format, async () => drawn(loopFigure(axis), format));
