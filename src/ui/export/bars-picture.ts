/** A table with bars as a picture: shims from the top in the order of the stack, one panel of bars for each of their numbers. */
import type { PlotlyData } from 'plotly.js-dist';
import { onLight } from '../app/palette.ts';
import { asWords, type Figure, type FigureInks } from './chart-figure.ts';
import { wrapWords } from './wrap.ts';

export interface BarPanel {
  readonly title: string;
  /** One a name, in the shown unit; null where there is none. */
  readonly values: readonly (number | null)[];
  /** As they are written at the bars. */
  readonly written: readonly string[];
  /** A limit that the bars are measured against. */
  readonly limit?: number;
  /** What the longest bar of panels on one scale stands for. */
  readonly full?: number;
}

export interface BarsPicture {
  readonly title: string;
  readonly names: readonly string[];
  readonly panels: readonly BarPanel[];
  readonly colour: string;
  readonly notes: readonly string[];
  readonly inks: FigureInks;
  readonly font: string;
  readonly separators: string;
}

const WIDTH = 1000;
const ROW = 30;
const TOP = 66;
const AXIS = 58;
const NOTE = { line: 17, letters: 140 };
const SIDE = { l: 170, r: 30 };
/** Of the whole width, between two panels. */
const APART = 0.05;
/** Over the longest bar, for the number behind it. */
const ROOM = 1.45;

const axisName = (i: number): string => (i === 0 ? '' : String(i + 1));

/** From nothing, or to both sides of it where some lie below. */
export function rangeOfBars({ values, limit = 0, full = 0 }: BarPanel): [number, number] {
  const most = Math.max(limit, full, ...values.map((value) => Math.abs(value ?? 0))) * ROOM || 1;
  return values.some((value) => value !== null && value < 0) ? [-most, most] : [0, most];
}

const traceOf = ({ names, colour }: BarsPicture, { values, written }: BarPanel, i: number): PlotlyData => ({
  type: 'bar',
  orientation: 'h',
  y: names.map(asWords),
  // A place without a number has a bar of no length, so that its words stand there.
  x: values.map((value) => value ?? 0),
  text: written.map(asWords),
  textposition: 'outside',
  cliponaxis: false,
  xaxis: `x${axisName(i)}`,
  yaxis: 'y',
  marker: { color: onLight(colour) },
});

function panelAxes({ panels, inks }: BarsPicture): Record<string, PlotlyData> {
  const width = (1 - APART * (panels.length - 1)) / panels.length;
  const entries = panels.map((panel, i) => [
    `xaxis${axisName(i)}`,
    {
      domain: [i * (width + APART), i * (width + APART) + width],
      range: rangeOfBars(panel),
      title: { text: asWords(panel.title), font: { size: 12, color: inks.ink }, standoff: 4 },
      gridcolor: inks.grid,
      tickfont: { size: 11, color: inks.soft },
      zerolinecolor: inks.ink,
      nticks: 4,
    },
  ]);
  return Object.fromEntries(entries);
}

const limitsOf = ({ panels, inks }: BarsPicture): PlotlyData[] =>
  panels.flatMap(({ limit }, i) =>
    limit === undefined
      ? []
      : [
          {
            type: 'line',
            xref: `x${axisName(i)}`,
            yref: 'paper',
            ...{ x0: limit, x1: limit, y0: 0, y1: 1 },
            line: { color: inks.ink, width: 2 },
          },
        ],
  );

export function barsFigure(picture: BarsPicture): Figure {
  const { names, panels, inks, font, separators } = picture;
  const notes = picture.notes.flatMap((each) => wrapWords(each, NOTE.letters));
  const bottom = AXIS + notes.length * NOTE.line + 30;
  const height = TOP + names.length * ROW + bottom;
  const beside = { showarrow: false, align: 'left', xref: 'paper', yref: 'paper', x: 0, xanchor: 'left' };
  const words = { ...beside, xshift: 16 - SIDE.l, yanchor: 'top' };
  const layout = {
    ...{ separators, width: WIDTH, height, bargap: 0.4, showlegend: false },
    ...{ margin: { ...SIDE, t: TOP, b: bottom, pad: 6 }, paper_bgcolor: inks.sheet, plot_bgcolor: inks.sheet },
    font: { family: font, color: inks.ink },
    ...panelAxes(picture),
    yaxis: { autorange: 'reversed', tickfont: { size: 12, color: inks.ink } },
    shapes: limitsOf(picture),
    annotations: [
      { ...words, text: asWords(picture.title), y: 1, yshift: TOP - 16, font: { size: 18, color: inks.ink } },
      {
        ...words,
        text: notes.map(asWords).join('<br>'),
        ...{ y: 0, yshift: -AXIS, font: { size: 12, color: inks.soft } },
      },
    ],
  };
  return { data: panels.map((panel, i) => traceOf(picture, panel, i)), layout, width: WIDTH, height };
}
