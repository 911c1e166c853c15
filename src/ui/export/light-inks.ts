/** Colours of the style sheet as they are on a light page, whatever the screen shows. */
import type { FigureInks } from './chart-figure.ts';

/** Reads styles as they would be on a light page. All within one task, so that nothing of it is painted. */
export function onLightPage<T>(read: () => T): T {
  const { dataset } = document.documentElement;
  const { theme } = dataset;
  dataset.theme = 'light';
  try {
    return read();
  } finally {
    if (theme === undefined) delete dataset.theme;
    else dataset.theme = theme;
  }
}

function inkOf(name: string): string {
  const probe = document.createElement('i');
  probe.style.color = `var(${name})`;
  probe.style.forcedColorAdjust = 'none';
  document.body.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}

export const lightInks = (): FigureInks =>
  onLightPage(() => ({
    ink: inkOf('--ink'),
    soft: inkOf('--ink-2'),
    grid: inkOf('--rule'),
    sheet: inkOf('--sheet'),
  }));
