/** The areas under the lines of the force chart: what the coefficients leave open, or how the chosen build scatters. */
import { computed } from '@preact/signals';
import { lineOf } from '../app/lines.ts';
import type { Direction } from '../app/places.ts';
import { bands, gasForce } from '../app/preferences.ts';
import { inShown } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { selectedBuild, visibleBuilds } from '../app/store.ts';
import { isSolved } from '../section/shape-at.ts';
import { toleranceAreas } from '../tolerance/tolerance-areas.ts';
import { shownStudy } from '../tolerance/tolerance-solve.ts';
import { comparing } from './comparison.ts';
import { type BandArea, bandAreas } from './force-bands.ts';
import type { PlotArea } from './plot-layout.ts';
import { chart } from './tabs.ts';

const WAYS: readonly Direction[] = [1, -1];

/** Whether the force chart shows the scatter of the chosen build. */
export const showsTolerance = computed(
  () => chart.value === 'force' && !comparing.value && bands.value === 'tolerance',
);

const inUnits = ({ speeds_m_s, low_N, high_N }: BandArea, buildId: string): Omit<PlotArea, 'kind' | 'faded'> => ({
  x: speeds_m_s.map((speed) => inShown('speed', speed)),
  low: low_N.map((force) => inShown('force', force)),
  high: high_N.map((force) => inShown('force', force)),
  colour: lineOf(buildId).colour,
});

function coefficientAreas(withoutGas: boolean): PlotArea[] {
  return visibleBuilds.value.flatMap(({ id }) => {
    const curve = outcomes.value.get(id)?.curve;
    const areas = curve ? WAYS.flatMap((way) => bandAreas(curve, way, withoutGas)) : [];
    return areas.map((area): PlotArea => ({ ...inUnits(area, id), kind: 'tint', faded: false }));
  });
}

/** The gas pushes alike at every speed. */
function gasOf(buildId: string): number {
  const solved = outcomes.value.get(buildId)?.curve?.points.find(isSolved);
  return solved?.gasForce_N ?? 0;
}

/** Of the chosen build, as the force chart has it: less gas where that is asked for. */
export function scatterBand(way: Direction): BandArea[] {
  const { study } = shownStudy.value;
  if (!study) return [];
  return toleranceAreas(study, way, gasForce.value === 'subtracted' ? gasOf(selectedBuild.value.id) : 0);
}

function scatterAreas(): PlotArea[] {
  if (!visibleBuilds.value.includes(selectedBuild.value)) return [];
  const { id } = selectedBuild.value;
  const { stale } = shownStudy.value;
  return WAYS.flatMap(scatterBand).map((area): PlotArea => ({ ...inUnits(area, id), kind: 'hatch', faded: stale }));
}

export const shownAreas = computed<PlotArea[]>(() => {
  if (chart.value !== 'force' || comparing.value || bands.value === 'hidden') return [];
  return bands.value === 'shown' ? coefficientAreas(gasForce.value === 'subtracted') : scatterAreas();
});
