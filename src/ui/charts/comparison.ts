/** What the force chart measures the builds from: zero, or the baseline. */
import { computed, signal } from '@preact/signals';
import { gasForce } from '../app/preferences.ts';
import { show, unitOfShown } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { baseline, visibleBuilds } from '../app/store.ts';
import { text } from '../text/en.ts';
import { type Comparison, speedsWithoutShare } from './difference.ts';
import { chart } from './tabs.ts';

export type Measure = 'force' | Comparison['as'];
export const MEASURES: readonly Measure[] = ['force', 'difference', 'share'];

/** Of this visit only: the bench always opens with the force itself. */
export const measure = signal<Measure>('force');

export const measureName = (each: Measure): string => text.chart.measureChoice[each](unitOfShown('force'));
export const measureTitle = (each: Measure): string => text.chart.measureLong[each](unitOfShown('force'));

/** The force chart shows how much firmer than the baseline the builds are. */
export const comparing = computed(() => chart.value === 'force' && measure.value !== 'force');

/** Nothing while the force itself is shown, and until the baseline is solved. */
export const comparison = computed<Comparison | undefined>(() => {
  const curve = outcomes.value.get(baseline.value.id)?.curve;
  return measure.value === 'force' || !curve ? undefined : { as: measure.value, baseline: curve };
});

const WAYS = [
  { direction: 1, name: text.chart.compression },
  { direction: -1, name: text.chart.rebound },
] as const;

/** Where there is no percentage, and why. */
function shareLines({ as, baseline: curve }: Comparison): string[] {
  if (as !== 'share') return [];
  const withGas = gasForce.value === 'shown';
  const spans = WAYS.flatMap(({ direction, name }) =>
    speedsWithoutShare(curve, direction, !withGas).map(({ from_m_s, to_m_s }) =>
      text.chart.span(show('speed', from_m_s), show('speed', to_m_s), name),
    ),
  );
  if (spans.length === 0) return [];
  return [text.chart.noShare(baseline.value.name, spans.join(', '), withGas)];
}

/** What the person must know of a comparison on show. */
export function comparisonLines(bandsWanted: boolean): string[] {
  if (!comparison.value) return [text.chart.baselineWaits(baseline.value.name)];
  const others = visibleBuilds.value.filter(({ id }) => id !== baseline.value.id);
  return [
    ...(others.length === 0 ? [text.chart.nothingToCompare] : []),
    ...shareLines(comparison.value),
    ...(bandsWanted ? [text.chart.noBandOfDifference] : []),
  ];
}
