/** The drawing board of the charts library: fetched when the first chart is shown, then fed with plain lines. */
import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { hasForcedColours, isDark, isPrinting } from '../app/preferences.ts';
import { chartSeparators } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { turns } from './draw-turns.ts';
import { areaTrace, CONFIG, dotsTrace, type Inks, layoutOf, type PlotView, traceOf } from './plot-layout.ts';

type Plotly = typeof import('plotly.js-dist');

const library = signal<Plotly | 'waiting' | 'loading' | 'failed'>('waiting');

async function fetchLibrary(): Promise<void> {
  if (library.value !== 'waiting') return;
  library.value = 'loading';
  try {
    const loaded = (await import('plotly.js-dist')) as Plotly & { default?: Plotly };
    library.value = loaded.default ?? loaded;
  } catch {
    library.value = 'failed';
  }
}

/** The library is large: the page is on the screen before it is asked for. @returns takes it back */
function afterPaint(run: () => void): () => void {
  const observer = new PerformanceObserver((paints) => {
    if (paints.getEntriesByName('first-contentful-paint').length === 0) return;
    observer.disconnect();
    run();
  });
  observer.observe({ type: 'paint', buffered: true });
  return () => observer.disconnect();
}

/** A colour of the style sheet as it is now. */
function inkOf(element: Element, name: string): string {
  const probe = document.createElement('i');
  probe.style.color = `var(${name})`;
  // The charts library draws with what it is given: forced colours would make every ink the same.
  probe.style.forcedColorAdjust = 'none';
  element.append(probe);
  const colour = getComputedStyle(probe).color;
  probe.remove();
  return colour;
}

const inksOf = (element: Element): Inks => ({
  ink: inkOf(element, '--ink'),
  soft: inkOf(element, '--ink-2'),
  grid: inkOf(element, '--rule'),
});

interface PlotProps {
  readonly view: PlotView;
  readonly width: number;
  readonly height: number;
}

export function Plot({ view, width, height }: PlotProps): JSX.Element {
  const board = useRef<HTMLDivElement>(null);
  const plotly = library.value;
  const dark = isDark();
  const forced = hasForcedColours();
  const separators = chartSeparators();
  useEffect(() => afterPaint(() => void fetchLibrary()), []);
  const draw = (): void => {
    const element = board.current;
    if (!element || typeof plotly === 'string' || width === 0) return;
    const layout = layoutOf(view, inksOf(element), getComputedStyle(element).fontFamily, separators);
    const dots = (view.dots ?? []).map(dotsTrace);
    const traces = [...view.areas.map(areaTrace), ...view.lines.map(traceOf), ...dots];
    void plotly.react(element, traces, { ...layout, width, height }, CONFIG);
  };
  // Before the next paint: a frame of the readings alone would come first, and paper would not wait at all.
  useLayoutEffect(() => {
    if (!isPrinting()) return turns.take(draw);
    draw();
    return undefined;
  }, [view, width, height, plotly, dark, forced, separators]);
  return (
    <>
      <div class="plot-board" ref={board} aria-hidden="true" />
      {(plotly === 'waiting' || plotly === 'loading') && <p class="plot-note">{text.chart.loading}</p>}
      {plotly === 'failed' && (
        <p class="plot-note" role="alert">
          {text.chart.chartFailed}
        </p>
      )}
    </>
  );
}
