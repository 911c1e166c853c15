/** The shares of the scatter as a picture: a bar a tolerance, most at the top, with what it makes by itself and its interval. */
import type { PlotlyData } from 'plotly.js-dist';
import { onLight } from '../app/palette.ts';
import type { Inks } from '../charts/plot-layout.ts';
import { text } from '../text/en.ts';
import type { Sort, ToleranceRow } from '../tolerance/scatter-rows.ts';
import { shareBy } from '../tolerance/verdict.ts';
import { asWords, type Figure, type FigureInks } from './chart-figure.ts';
import { wrapWords } from './wrap.ts';

export interface SharesPicture {
  readonly title: string;
  readonly rows: readonly ToleranceRow[];
  readonly sort: Sort;
  readonly colour: string;
  readonly notes: readonly string[];
  readonly inks: FigureInks;
  readonly font: string;
  readonly separators: string;
}

const WIDTH = 1000;
const ROW = 34;
const TOP = 96;
const AXIS = 62;
const NOTE = { line: 17, letters: 140 };
const SIDE = { l: 210, r: 40 };

const percent = (share: number): number => 100 * Math.max(0, share);

function bars({ rows, sort, colour, inks }: SharesPicture): PlotlyData[] {
  const own = rows.map((row) => ({ name: text.tolerance.names[row.name], ...shareBy(row, sort) }));
  const y = own.map(({ name }) => name);
  const bar = { type: 'bar', orientation: 'h', y };
  const ink = onLight(colour);
  return [
    {
      ...bar,
      name: text.tolerance.pictureTotal,
      x: own.map(({ total }) => percent(total.value)),
      marker: { color: 'rgba(0,0,0,0)', line: { color: ink, width: 1.5 } },
    },
    {
      ...bar,
      name: text.tolerance.pictureFirst,
      x: own.map(({ first, total }) => percent(Math.min(first.value, total.value))),
      marker: { color: ink },
    },
    // Over both bars, in the ink of the page.
    {
      type: 'scatter',
      mode: 'markers',
      y,
      x: own.map(({ total }) => percent(total.value)),
      marker: { opacity: 0 },
      showlegend: false,
      error_x: {
        type: 'data',
        symmetric: false,
        array: own.map(({ total }) => percent(total.high) - percent(total.value)),
        arrayminus: own.map(({ total }) => percent(total.value) - percent(total.low)),
        color: inks.ink,
        thickness: 1.2,
        width: 4,
      },
    },
  ];
}

const axis = ({ ink, soft, grid }: Inks): PlotlyData => ({
  gridcolor: grid,
  linecolor: soft,
  tickfont: { size: 12, color: ink },
  zerolinecolor: ink,
  fixedrange: true,
});

export function sharesFigure(request: SharesPicture): Figure {
  const { rows, inks, font, separators } = request;
  const notes = request.notes.flatMap((each) => wrapWords(each, NOTE.letters));
  const bottom = AXIS + notes.length * NOTE.line + 16;
  const height = TOP + rows.length * ROW + bottom;
  const words = {
    showarrow: false,
    align: 'left',
    xref: 'paper',
    yref: 'paper',
    x: 0,
    xanchor: 'left',
    xshift: 16 - SIDE.l,
  };
  const layout = {
    separators,
    barmode: 'overlay',
    bargap: 0.35,
    font: { family: font, color: inks.ink },
    ...{
      width: WIDTH,
      height,
      margin: { ...SIDE, t: TOP, b: bottom, pad: 6 },
      paper_bgcolor: inks.sheet,
      plot_bgcolor: inks.sheet,
    },
    xaxis: {
      ...axis(inks),
      title: { text: text.tolerance.pictureAxis, font: { size: 12, color: inks.soft } },
      rangemode: 'tozero',
    },
    yaxis: { ...axis(inks), autorange: 'reversed' },
    legend: { x: 0, xanchor: 'left', y: 1, yanchor: 'bottom', orientation: 'h', font: { size: 13 } },
    annotations: [
      {
        ...words,
        text: asWords(request.title),
        y: 1,
        yanchor: 'top',
        yshift: TOP - 16,
        font: { size: 20, color: inks.ink },
      },
      {
        ...words,
        text: notes.map(asWords).join('<br>'),
        ...{ y: 0, yanchor: 'top', yshift: -AXIS, font: { size: 12, color: inks.soft } },
      },
    ],
  };
  return { data: bars(request), layout, width: WIDTH, height };
}
