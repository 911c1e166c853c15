/** How a chart of the bench looks to the charts library: traces, axes, margins. */
import type { PlotlyData } from 'plotly.js-dist';
import type { BuildMark } from '../app/palette.ts';

export const MARGIN = { l: 54, r: 12, t: 10, b: 38 } as const;

export interface PlotLine {
  readonly x: readonly number[];
  readonly y: readonly (number | null)[];
  readonly name: string;
  readonly colour: string;
  readonly dash: string;
  readonly width: number;
  readonly faded: boolean;
}

/** An area between two lines, under all lines. */
export interface PlotArea {
  readonly x: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly colour: string;
  /** Tinted, or hatched between two dotted edges: told apart without their colours. */
  readonly kind: 'tint' | 'hatch';
  readonly faded: boolean;
}

const HATCH = { shape: '/', size: 7, solidity: 0.22, bgcolor: 'rgba(0,0,0,0)' } as const;

/** Marks that no line joins: open forms, circles unless the build has one of its own, or thin crosses for what does not count. */
export interface PlotDots {
  readonly kind: 'point' | 'outlier';
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly name: string;
  readonly colour: string;
  readonly mark?: BuildMark;
}

export interface PlotView {
  readonly areas: readonly PlotArea[];
  /** Over all lines. */
  readonly dots?: readonly PlotDots[];
  readonly lines: readonly PlotLine[];
  readonly xRange: readonly [number, number];
  readonly yRange: readonly [number, number];
  readonly xTitle: string;
  readonly yTitle: string;
  /** Leaves out the line at 0 across, where 0 is a number like any other. */
  readonly plainZero?: boolean;
  /** From one number across to the next; the charts library chooses without it. */
  readonly xStep?: number;
}

export interface Inks {
  readonly ink: string;
  readonly soft: string;
  readonly grid: string;
}

export const traceOf = ({ x, y, name, colour, dash, width, faded }: PlotLine): PlotlyData => ({
  type: 'scatter',
  mode: 'lines',
  x,
  y,
  name,
  connectgaps: false,
  hoverinfo: 'skip',
  opacity: faded ? 0.4 : 1,
  line: { color: colour, width, dash },
});

/** Up along the low edge and back along the high one. */
export const areaTrace = ({ x, low, high, colour, kind, faded }: PlotArea): PlotlyData => ({
  type: 'scatter',
  mode: 'lines',
  x: [...x, ...[...x].reverse()],
  y: [...low, ...[...high].reverse()],
  hoverinfo: 'skip',
  fill: 'toself',
  ...(kind === 'tint'
    ? { fillcolor: colour, opacity: 0.16, line: { width: 0 } }
    : {
        fillpattern: { ...HATCH, fgcolor: colour },
        opacity: faded ? 0.35 : 0.75,
        line: { color: colour, width: 1, dash: faded ? 'dash' : 'dot' },
      }),
});

export const dotsTrace = ({ kind, x, y, name, colour, mark = 'circle-open' }: PlotDots): PlotlyData => ({
  type: 'scatter',
  mode: 'markers',
  x,
  y,
  name,
  hoverinfo: 'skip',
  marker: { color: colour, size: kind === 'point' ? 7 : 8, symbol: kind === 'point' ? mark : 'x-thin-open' },
});

function axisOf(title: string, range: readonly [number, number], inks: Inks): PlotlyData {
  return {
    title: { text: title, font: { size: 12, color: inks.soft }, standoff: 6 },
    range,
    fixedrange: true,
    gridcolor: inks.grid,
    linecolor: inks.soft,
    tickfont: { size: 11, color: inks.soft },
    ticks: 'outside',
    ticklen: 4,
    tickcolor: inks.soft,
    zerolinecolor: inks.ink,
    zerolinewidth: 1,
  };
}

/** @param separators the decimal sign of the reader, then what parts thousands, as the charts library takes them */
export const layoutOf = (
  { xRange, yRange, xTitle, yTitle, plainZero, xStep }: PlotView,
  inks: Inks,
  font: string,
  separators: string,
): PlotlyData => ({
  separators,
  margin: MARGIN,
  showlegend: false,
  dragmode: false,
  hovermode: false,
  autosize: true,
  paper_bgcolor: 'rgba(0,0,0,0)',
  plot_bgcolor: 'rgba(0,0,0,0)',
  font: { family: font, color: inks.ink },
  xaxis: { ...axisOf(xTitle, xRange, inks), showline: true, zeroline: !plainZero, ...(xStep && { dtick: xStep }) },
  yaxis: axisOf(yTitle, yRange, inks),
});

export const CONFIG: PlotlyData = { staticPlot: true, displayModeBar: false, responsive: false };
