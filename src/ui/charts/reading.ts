/** What the readout reads at the speed cursor: one build in one direction. */
import type { Build } from '../../model/project.ts';
import type { Direction } from '../app/places.ts';
import { gasForce } from '../app/preferences.ts';
import { outcomes } from '../app/solve.ts';
import type { ForcePoint } from '../app/solved.ts';
import { baseline } from '../app/store.ts';
import { pointOf, stateOf } from '../app/views.ts';
import { isSolved, type StackState } from '../section/shape-at.ts';
import { largestResistance } from './difference.ts';

export interface Reading {
  readonly build: Build;
  readonly point?: ForcePoint;
  /** Of the working stack of the piston, and of that of the base valve. */
  readonly state?: StackState;
  readonly baseState?: StackState;
  readonly isBaseline: boolean;
  /** The baseline at the same speed, where it solved, and the largest that it resists with in this direction [N]. */
  readonly against?: { readonly point: ForcePoint; readonly largest_N: number };
  readonly stale: boolean;
}

const solved = (point: ReturnType<typeof pointOf>): ForcePoint | undefined =>
  point && isSolved(point) ? point : undefined;

function againstBaseline(way: Direction): Reading['against'] {
  const outcome = outcomes.value.get(baseline.value.id);
  const point = solved(pointOf(outcome, way));
  if (!outcome?.curve || !point) return undefined;
  return { point, largest_N: largestResistance(outcome.curve, way, gasForce.value === 'subtracted') };
}

export function readingOf(build: Build, way: Direction): Reading {
  const outcome = outcomes.value.get(build.id);
  const against = againstBaseline(way);
  return {
    build,
    point: solved(pointOf(outcome, way)),
    state: stateOf(outcome, way === 1 ? 'compression' : 'rebound'),
    baseState: way === 1 ? stateOf(outcome, 'base') : undefined,
    isBaseline: build.id === baseline.value.id,
    ...(against && { against }),
    stale: outcome?.stale ?? false,
  };
}
