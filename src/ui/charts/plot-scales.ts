/** From the numbers of a chart to the places on its board, for what is drawn over it. */
import { MARGIN, type PlotView } from './plot-layout.ts';

/** Of the board [px]. */
export interface Frame {
  readonly width: number;
  readonly height: number;
}

export interface Scales {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  /** Back from a place to the number on the axis. */
  readonly valueAt: (px: number) => number;
}

export function scalesOf({ xRange, yRange }: Pick<PlotView, 'xRange' | 'yRange'>, { width, height }: Frame): Scales {
  const [w, h] = [width - MARGIN.l - MARGIN.r, height - MARGIN.t - MARGIN.b];
  const [across, up] = [xRange[1] - xRange[0], yRange[1] - yRange[0]];
  return {
    x: (value) => MARGIN.l + ((value - xRange[0]) / across) * w,
    y: (value) => MARGIN.t + ((yRange[1] - value) / up) * h,
    valueAt: (px) => xRange[0] + ((px - MARGIN.l) / Math.max(1, w)) * across,
  };
}
