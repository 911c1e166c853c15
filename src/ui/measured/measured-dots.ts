/** The measured points of the builds on show, as marks on the force chart. */
import { computed } from '@preact/signals';
import { marksOf } from '../app/lines.ts';
import { gasForce, measuredPoints } from '../app/preferences.ts';
import { inShown } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { visibleBuilds } from '../app/store.ts';
import type { PlotDots } from '../charts/plot-layout.ts';
import { type DrawnPoint, drawnPoints } from './measured-curve.ts';

const dotsOf = (
  points: readonly DrawnPoint[],
  marks: Pick<PlotDots, 'name' | 'colour' | 'mark' | 'kind'>,
): PlotDots => ({
  ...marks,
  x: points.map(({ speed_m_s }) => inShown('speed', speed_m_s)),
  y: points.map(({ force_N }) => inShown('force', force_N)),
});

/** Open marks in the form and ink of the build, crosses for outliers; none while the build has no curve to stand beside. */
export const measuredDots = computed<PlotDots[]>(() => {
  if (measuredPoints.value === 'hidden') return [];
  return visibleBuilds.value.flatMap((build) => {
    const curve = outcomes.value.get(build.id)?.curve;
    if (!curve) return [];
    const ofBuild = marksOf(build.id);
    return (build.measurements ?? []).flatMap((measurement) => {
      const points = drawnPoints(measurement, curve, gasForce.value === 'subtracted');
      const wrong = points.filter(({ isOutlier }) => isOutlier);
      const sound = points.filter(({ isOutlier }) => !isOutlier);
      return [
        dotsOf(sound, { ...ofBuild, name: measurement.name, kind: 'point' }),
        ...(wrong.length > 0 ? [dotsOf(wrong, { ...ofBuild, name: measurement.name, kind: 'outlier' })] : []),
      ];
    });
  });
});

export const anyMeasured = computed(() => visibleBuilds.value.some((build) => (build.measurements ?? []).length > 0));
