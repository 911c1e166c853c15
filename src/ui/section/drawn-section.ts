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
import { cutState } from './wave-cut.ts';
import { extremesOf } from './wave-shape.ts';

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
  /** The two halves of a stack that waves; the section itself then holds the means round the circle. */
  readonly waved?: WavedSection;
}

export interface WavedSection {
  readonly waves: number;
  /** Angles round the circle from a port [rad]. */
  readonly crestAngle: number;
  readonly troughAngle: number;
  readonly crest: DrawnSection;
  readonly trough: DrawnSection;
}

/** A stack in one plane: round, or cut along one radius. */
function planeOf(stack: DrawnStack, damper: Damper): DrawnSection {
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

/** A stack at its crest and at its trough; nothing where it is round. */
export function cutStacks(stack: DrawnStack, body: ValveBody): { crest: DrawnStack; trough: DrawnStack } | undefined {
  const { state, valving } = stack;
  const extremes = state && extremesOf(state.shape);
  if (!extremes) return undefined;
  const along = (phi: number, stressed: boolean): DrawnStack => ({
    ...stack,
    state: cutState(state, valving, body, { phi, stressed }),
  });
  return { crest: along(extremes.crest, true), trough: along(extremes.trough, false) };
}

function wavedOf({ stack, body, damper }: DrawnSection): WavedSection | undefined {
  const shape = stack.state?.shape;
  const extremes = shape && extremesOf(shape);
  const cuts = cutStacks(stack, body);
  if (!extremes || !cuts) return undefined;
  return {
    waves: shape.waves,
    crestAngle: extremes.crest / shape.waves,
    troughAngle: extremes.trough / shape.waves,
    crest: planeOf(cuts.crest, damper),
    trough: planeOf(cuts.trough, damper),
  };
}

function sectionOf(stack: DrawnStack, damper: Damper): DrawnSection {
  const mean = planeOf(stack, damper);
  const waved = wavedOf(mean);
  return waved ? { ...mean, waved } : mean;
}

export const drawnSection = computed(() => sectionOf(drawnStack.value, project.value.damper));
