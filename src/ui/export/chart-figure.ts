/** A chart as a figure that stands alone: with a title, a legend, its signs and levels, and notes beneath, for a light page. */
import type { PlotlyData } from 'plotly.js-dist';
import { onLight } from '../app/palette.ts';
import {
  areaTrace,
  dotsTrace,
  type Inks,
  layoutOf,
  type PlotLine,
  type PlotView,
  traceOf,
} from '../charts/plot-layout.ts';
import { text } from '../text/en.ts';
import { wrapWords } from './wrap.ts';

export interface FigureInks extends Inks {
  readonly sheet: string;
}

/** A sign at a place of the chart, in its units. */
export interface Sign {
  readonly x: number;
  readonly y: number;
  readonly sign: string;
  readonly colour: string;
}

export interface FigureRequest {
  readonly title: string;
  readonly view: PlotView;
  readonly signs: readonly Sign[];
  readonly levels: readonly { readonly value: number; readonly label: string }[];
  /** What stands above and below the zero line. */
  readonly up?: string;
  readonly down?: string;
  readonly notes: readonly string[];
  readonly inks: FigureInks;
  readonly font: string;
  /** Decimal sign and what parts thousands. */
  readonly separators: string;
}

export interface Figure {
  readonly data: PlotlyData[];
  readonly layout: PlotlyData;
  readonly width: number;
  readonly height: number;
}

const WIDTH = 1000;
const PLOT_HEIGHT = 460;
const SIDE = { l: 72, r: 24 };
const TITLE = { size: 20, line: 27, letters: 84 };
const LEGEND_ROW = 21;
const NAME_LETTERS = 110;
const NOTE = { size: 12, line: 17, letters: 140 };
/** Axis with its numbers and its name, between plot and notes. */
const AXIS = 62;
const EDGE = 16;

/** The charts library reads tags in its texts; names come from files of other people and are words only. */
export const asWords = (words: string): string =>
  words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const inLines = (lines: readonly string[]): string => lines.map(asWords).join('<br>');

const shorten = (name: string): string => (name.length > NAME_LETTERS ? `${name.slice(0, NAME_LETTERS)}…` : name);

/** Both directions of a build have one name, and one line in the legend. */
function linesOf({ lines }: PlotView): { traces: PlotlyData[]; named: number } {
  const seen = new Set<string>();
  const traces = lines.map((line: PlotLine) => {
    const isFirst = !seen.has(line.name);
    seen.add(line.name);
    const told = shorten(line.faded ? text.export.lastSolved(line.name) : line.name);
    return { ...traceOf({ ...line, name: asWords(told), colour: onLight(line.colour) }), showlegend: isFirst };
  });
  return { traces, named: seen.size };
}

const note = (words: string, part: PlotlyData): PlotlyData => ({
  text: words,
  showarrow: false,
  align: 'left',
  ...part,
});

const corner = (words: string, y: 0 | 1, { soft }: Inks): PlotlyData =>
  note(words, {
    ...{ xref: 'paper', yref: 'paper', x: 0, y, xanchor: 'left', yanchor: y === 1 ? 'top' : 'bottom' },
    ...{ xshift: 8, font: { size: 12, color: soft } },
  });

function annotationsOf({ signs, levels, up, down, inks }: FigureRequest): PlotlyData[] {
  return [
    ...signs.map(({ x, y, sign, colour }) => note(sign, { x, y, font: { size: 20, color: onLight(colour) } })),
    ...levels.map(({ value, label }) =>
      note(asWords(label), {
        ...{ xref: 'paper', x: 0.5, y: value, yanchor: 'bottom', font: { size: 12, color: inks.soft } },
      }),
    ),
    ...(up === undefined ? [] : [corner(up, 1, inks)]),
    ...(down === undefined ? [] : [corner(down, 0, inks)]),
  ];
}

const levelLines = ({ levels, inks }: FigureRequest): PlotlyData[] =>
  levels.map(({ value }) => ({
    ...{ type: 'line', xref: 'paper', x0: 0, x1: 1, y0: value, y1: value },
    line: { color: inks.soft, width: 1.2, dash: 'dot' },
  }));

export function figureOf(request: FigureRequest): Figure {
  const { view, inks, font, separators } = request;
  const { traces, named } = linesOf(view);
  const title = wrapWords(request.title, TITLE.letters);
  const notes = request.notes.flatMap((each) => wrapWords(each, NOTE.letters));
  const [top, bottom] = [
    EDGE + title.length * TITLE.line + named * LEGEND_ROW + EDGE,
    AXIS + notes.length * NOTE.line + EDGE,
  ];
  const height = top + PLOT_HEIGHT + bottom;
  const paper = { xref: 'paper', yref: 'paper', xanchor: 'left', x: 0, xshift: 16 - SIDE.l };
  const words = [
    note(inLines(title), {
      ...paper,
      ...{ y: 1, yanchor: 'top', yshift: top - EDGE, font: { size: TITLE.size, color: inks.ink } },
    }),
    note(inLines(notes), {
      ...paper,
      ...{ y: 0, yanchor: 'top', yshift: -AXIS, font: { size: NOTE.size, color: inks.soft } },
    }),
  ];
  const areas = view.areas.map((area) => ({
    ...areaTrace({ ...area, colour: onLight(area.colour) }),
    showlegend: false,
  }));
  const dots = (view.dots ?? []).map((each) => ({
    ...dotsTrace({ ...each, colour: onLight(each.colour) }),
    showlegend: false,
  }));
  const layout = {
    ...layoutOf(view, inks, font, separators),
    ...{ width: WIDTH, height, autosize: false, margin: { ...SIDE, t: top, b: bottom, pad: 0, autoexpand: false } },
    ...{ paper_bgcolor: inks.sheet, plot_bgcolor: inks.sheet, showlegend: true, shapes: levelLines(request) },
    legend: { x: 0, xanchor: 'left', y: 1, yanchor: 'bottom', font: { size: 13 }, bgcolor: 'rgba(0,0,0,0)' },
    annotations: [...annotationsOf(request), ...words],
  };
  return { data: [...areas, ...traces, ...dots], layout, width: WIDTH, height };
}
