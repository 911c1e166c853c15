/** The curves with fitted coefficients as thin dotted lines in the ink of their builds. */
import { computed } from '@preact/signals';
import { lineOf } from '../app/lines.ts';
import { fittedCurves, gasForce } from '../app/preferences.ts';
import { inShown } from '../app/quantities.ts';
import { visibleBuilds } from '../app/store.ts';
import { seriesOf } from '../charts/chart-data.ts';
import type { PlotLine } from '../charts/plot-layout.ts';
import { measuredWords } from '../text/measured.ts';
import { fittedCurve } from './fitted-solve.ts';

const WIDTH = 1.25;

export const fittedLines = computed<PlotLine[]>(() => {
  if (fittedCurves.value === 'hidden') return [];
  const shown = {
    direction: 1,
    stack: 'compression',
    valve: 'piston',
    shimQuantity: 'lift',
    withoutGas: gasForce.value === 'subtracted',
  } as const;
  return visibleBuilds.value.flatMap((build) => {
    const curve = fittedCurve(build);
    if (!curve) return [];
    return seriesOf('force', build.id, curve, shown).map(({ speeds_m_s, values }) => ({
      x: speeds_m_s.map((speed) => inShown('speed', speed)),
      y: values.map((value) => (value === null ? null : inShown('force', value))),
      name: measuredWords.fit.line(build.name),
      colour: lineOf(build.id).colour,
      dash: '2px,3px',
      width: WIDTH,
      faded: false,
    }));
  });
});
