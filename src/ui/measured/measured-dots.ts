/** The measured points of the builds on show, as marks on the force chart. */
import { computed } from '@preact/signals';
import { lineOf } from '../app/lines.ts';
import { gasForce, measuredPoints } from '../app/preferences.ts';
import { inShown } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { visibleBuilds } from '../app/store.ts';
import type { PlotDots } from '../charts/plot-layout.ts';
import { type DrawnPoint, drawnPoints } from './measured-curve.ts';

const dotsOf = (points: readonly DrawnPoint[], name: string, colour: string, kind: PlotDots['kind']): PlotDots => ({
  kind,
  name,
  colour,
  x: points.map(({ speed_m_s }) => inShown('speed', speed_m_s)),
  y: points.map(({ force_N }) => inShown('force', force_N)),
});

/** Open circles in the ink of the build, crosses for outliers; none while the build has no curve to stand beside. */
export const measuredDots = computed<PlotDots[]>(() => {
  if (measuredPoints.value === 'hidden') return [];
  return visibleBuilds.value.flatMap((build) => {
    const curve = outcomes.value.get(build.id)?.curve;
    if (!curve) return [];
    const { colour } = lineOf(build.id);
    return (build.measurements ?? []).flatMap((measurement) => {
      const points = drawnPoints(measurement, curve, gasForce.value === 'subtracted');
      const wrong = points.filter(({ isOutlier }) => isOutlier);
      const sound = points.filter(({ isOutlier }) => !isOutlier);
      return [
        dotsOf(sound, measurement.name, colour, 'point'),
        ...(wrong.length > 0 ? [dotsOf(wrong, measurement.name, colour, 'outlier')] : []),
      ];
    });
  });
});

export const anyMeasured = computed(() => visibleBuilds.value.some((build) => (build.measurements ?? []).length > 0));
