/** Everything that the drawing, its readout and its table say of one stack at one speed, worked out once. */
import { computed } from '@preact/signals';
import type { Damper, ValveBody } from '../../model/project.ts';
import { bodyAt, stackOf } from '../app/places.ts';
import { place, project } from '../app/store.ts';
import { type DrawnStack, drawnStack } from '../app/views.ts';
import { type ShimOutline, shimOutlines } from './geometry.ts';
import { type StackAtWork, stackAtWork } from './stack-at-work.ts';
import { type Stream, streamsOf } from './streams.ts';
import { type StressScale, stressScale } from './stress-shade.ts';
import { type Touching, touching } from './touching.ts';

export interface DrawnSection {
  readonly stack: DrawnStack;
  readonly body: ValveBody;
  readonly damper: Damper;
  readonly outlines: readonly ShimOutline[];
  /** These have a solved state. */
  readonly touching?: Touching;
  readonly stress?: StressScale;
  readonly work?: StackAtWork;
  readonly streams: readonly Stream[];
}

function sectionOf(stack: DrawnStack, damper: Damper): DrawnSection {
  const { valving, state, point } = stack;
  const body = bodyAt(damper, place.value);
  const outlines = shimOutlines(valving, state);
  const work = point && stackAtWork(point, stackOf(place.value));
  return {
    ...{ stack, body, damper, outlines },
    ...(state && { touching: touching(outlines, valving, body) }),
    ...(state?.stresses && { stress: stressScale(state.stresses) }),
    ...(work && { work }),
    streams: work ? streamsOf(work) : [],
  };
}

export const drawnSection = computed(() => sectionOf(drawnStack.value, project.value.damper));
