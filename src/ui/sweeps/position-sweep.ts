/** Force at the speed cursor over the place in the stroke. */
import { computed } from '@preact/signals';
import { metresFromMillimetres } from '../../units/si.ts';
import { position_mm } from '../app/conditions.ts';
import { inShown, show, showField, unitOfShown } from '../app/quantities.ts';
import { keyOf } from '../app/solve.ts';
import { openId, project, visibleBuilds } from '../app/store.ts';
import type { SweepPoint } from '../app/sweep-solve.ts';
import { text } from '../text/en.ts';
import type { Sweep } from './sweep.ts';
import { sweepCurve, WAYS } from './sweep-curves.ts';
import { sweptPositions } from './swept-positions.ts';

const set_mm = computed(() => position_mm.value ?? project.value.damper.travel_mm / 2);

const points = computed<SweepPoint[]>(() =>
  sweptPositions(project.value.damper).flatMap((at) => {
    const stroke_m = metresFromMillimetres(at);
    return visibleBuilds.value.map((build) => ({
      key: keyOf(project.value, build, stroke_m),
      slot: `${openId.value}:${build.id}:stroke:${at}`,
      ...{ build, project: project.value, stroke_m, at },
    }));
  }),
);

function note(): string {
  const stop = project.value.damper.hydraulicStop;
  if (!stop) return text.sweep.positionNote;
  return `${text.sweep.positionNote} ${text.sweep.positionStop[stop.end](showField('length', stop.length_mm))}`;
}

export const positionSweep: Sweep = {
  name: 'position',
  points,
  curves: computed(() =>
    visibleBuilds.value.flatMap((build) => {
      const own = points.value.filter((point) => point.build.id === build.id);
      return WAYS.map((way) => sweepCurve(build, own, way, set_mm.value));
    }),
  ),
  toShown: (at) => inShown('position', metresFromMillimetres(at)),
  range: computed(() => [0, project.value.damper.travel_mm]),
  set: set_mm,
  axis: () => text.sweep.positionAxis(unitOfShown('position')),
  note,
  inWords: (at) => show('position', metresFromMillimetres(at)),
};
