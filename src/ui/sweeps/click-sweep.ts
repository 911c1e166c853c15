/** Force at the speed cursor over the clicks of one adjuster, from closed. */
import { computed, signal } from '@preact/signals';
import { ADJUSTER_IDS, type Adjuster, type AdjusterId, adjustersOf, withClicks } from '../../model/adjusters.ts';
import type { Build } from '../../model/project.ts';
import type { Direction } from '../app/places.ts';
import { keyOf } from '../app/solve.ts';
import { openId, project, selectedBuild, visibleBuilds, withBuild } from '../app/store.ts';
import type { SweepPoint } from '../app/sweep-solve.ts';
import { text } from '../text/en.ts';
import { sweptClicks } from './click-equals.ts';
import type { Sweep } from './sweep.ts';
import { forceAsSet, type SweepCurve, sweepCurve, WAYS } from './sweep-curves.ts';

const wanted = signal<AdjusterId | undefined>(undefined);

const adjusterOf = (build: Build, id: AdjusterId): Adjuster | undefined =>
  adjustersOf(build).find((adjuster) => adjuster.id === id);

/** Of any build on show, in the order in which they are told. */
export const adjustersShown = computed<AdjusterId[]>(() =>
  ADJUSTER_IDS.filter((id) => visibleBuilds.value.some((build) => adjusterOf(build, id))),
);

/** The one chosen, else the first of the build on show; undefined where no build on show has one. */
export const sweptAdjuster = computed<AdjusterId | undefined>(() => {
  const shown = adjustersShown.value;
  const own = adjustersOf(selectedBuild.value).map(({ id }) => id);
  return [wanted.value, ...own, ...shown].find((id) => id !== undefined && shown.includes(id));
});
export const sweepAdjuster = (id: AdjusterId): void => {
  wanted.value = id;
};

export const adjusterName = (id: AdjusterId): string => text.adjusterOf(project.value.damper.layout, id);

/** The builds on show that have it, each with how it is set. */
export const turnedBuilds = computed(() => {
  const id = sweptAdjuster.value;
  if (id === undefined) return [];
  return visibleBuilds.value.flatMap((build) => {
    const adjuster = adjusterOf(build, id);
    return adjuster ? [{ build, adjuster }] : [];
  });
});

const mostClicks = computed(() => Math.max(1, ...turnedBuilds.value.map(({ adjuster }) => adjuster.clickCount)));

const points = computed<SweepPoint[]>(() =>
  turnedBuilds.value.flatMap(({ build, adjuster: { id, clickCount } }) =>
    sweptClicks(clickCount).map((at) => {
      const turned = withClicks(build, id, at);
      return {
        key: keyOf(project.value, turned),
        slot: `${openId.value}:${build.id}:${id}:${at}`,
        build,
        project: withBuild(build.id, () => turned),
        at,
      };
    }),
  ),
);

/** A build without the adjuster stays as it is, however the others are turned. */
function levelCurve(build: Build, way: Direction): SweepCurve {
  const asSet = forceAsSet(build, way);
  const ends = asSet ? [0, mostClicks.value] : [];
  return {
    build,
    way,
    at: ends,
    force_N: ends.map(() => asSet?.force_N ?? null),
    stale: asSet?.stale ?? false,
    isLevel: true,
  };
}

export const clickSweep: Sweep = {
  name: 'clicks',
  points,
  curves: computed(() =>
    visibleBuilds.value.flatMap((build) => {
      const turned = turnedBuilds.value.find((each) => each.build.id === build.id);
      const own = points.value.filter((point) => point.build.id === build.id);
      return WAYS.map((way) => (turned ? sweepCurve(build, own, way, turned.adjuster.clicks) : levelCurve(build, way)));
    }),
  ),
  toShown: (at) => at,
  range: computed(() => [0, mostClicks.value]),
  axis: () => text.sweep.clicksAxis(sweptAdjuster.value ? adjusterName(sweptAdjuster.value) : ''),
  note: () => text.sweep.clicksNote,
  inWords: text.sweep.clicks,
};
