/** Force at the speed cursor over the temperature of the oil. */
import { computed } from '@preact/signals';
import type { Project } from '../../model/project.ts';
import { kelvinFromCelsius } from '../../units/si.ts';
import { inShown, show, unitOfShown } from '../app/quantities.ts';
import { keyOf } from '../app/solve.ts';
import { openId, project, visibleBuilds } from '../app/store.ts';
import type { SweepPoint } from '../app/sweep-solve.ts';
import { text } from '../text/en.ts';
import type { Sweep } from './sweep.ts';
import { sweepCurve, WAYS } from './sweep-curves.ts';
import { COLDEST, HOTTEST, sweptTemperatures, viscosityKnown } from './swept-temperatures.ts';

const set_degC = computed(() => project.value.fluid.temperature_degC);

const warmedTo = (document: Project, temperature_degC: number): Project => ({
  ...document,
  fluid: { ...document.fluid, temperature_degC },
});

const points = computed<SweepPoint[]>(() => {
  const documents = sweptTemperatures(set_degC.value).map((at) => ({ at, warmed: warmedTo(project.value, at) }));
  return documents.flatMap(({ at, warmed }) =>
    visibleBuilds.value.map((build) => ({
      key: keyOf(warmed, build),
      slot: `${openId.value}:${build.id}:oil:${at}`,
      build,
      project: warmed,
      at,
    })),
  );
});

const temperaturesKnown = computed(() => viscosityKnown(project.value.fluid));

const shownTemperature = (at: number): number => inShown('temperature', kelvinFromCelsius(at));

const inWords = (at: number): string => show('temperature', kelvinFromCelsius(at));

export const temperatureSweep: Sweep = {
  name: 'temperature',
  points,
  curves: computed(() =>
    visibleBuilds.value.flatMap((build) => {
      const own = points.value.filter((point) => point.build.id === build.id);
      return WAYS.map((way) => sweepCurve(build, own, way, set_degC.value));
    }),
  ),
  toShown: shownTemperature,
  range: computed(() => [Math.min(COLDEST, set_degC.value), Math.max(HOTTEST, set_degC.value)]),
  known: temperaturesKnown,
  set: set_degC,
  axis: () => text.sweep.temperatureAxis(unitOfShown('temperature')),
  note: () => {
    const [low, high] = temperaturesKnown.value.map(inWords);
    return text.sweep.temperatureNote(low, high);
  },
  inWords,
};
