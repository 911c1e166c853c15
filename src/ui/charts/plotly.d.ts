/** The few calls of the charts library that the bench makes. */
declare module 'plotly.js-dist' {
  export type PlotlyData = Record<string, unknown>;
  export function react(
    element: HTMLElement,
    data: readonly PlotlyData[],
    layout: PlotlyData,
    config: PlotlyData,
  ): Promise<unknown>;
  export function toImage(
    figure: { data: readonly PlotlyData[]; layout: PlotlyData; config: PlotlyData },
    options: PlotlyData,
  ): Promise<string>;
  export function purge(element: HTMLElement): void;
}
