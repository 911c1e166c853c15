/** What the readout reads at the speed cursor: one build in one direction. */
import type { Build } from '../../model/project.ts';
import type { Direction } from '../app/places.ts';
import { outcomes } from '../app/solve.ts';
import type { ForcePoint } from '../app/solved.ts';
import { baseline } from '../app/store.ts';
import { pointOf, stateOf } from '../app/views.ts';
import { isSolved, type StackState } from '../section/shape-at.ts';

export interface Reading {
  readonly build: Build;
  readonly point?: ForcePoint;
  /** Of the working stack of the piston, and of that of the base valve. */
  readonly state?: StackState;
  readonly baseState?: StackState;
  /** The baseline, where this is another build. */
  readonly against?: ForcePoint;
  readonly stale: boolean;
}

const solved = (point: ReturnType<typeof pointOf>): ForcePoint | undefined =>
  point && isSolved(point) ? point : undefined;

export function readingOf(build: Build, way: Direction): Reading {
  const outcome = outcomes.value.get(build.id);
  return {
    build,
    point: solved(pointOf(outcome, way)),
    state: stateOf(outcome, way === 1 ? 'compression' : 'rebound'),
    baseState: way === 1 ? stateOf(outcome, 'base') : undefined,
    against: build.id === baseline.value.id ? undefined : solved(pointOf(outcomes.value.get(baseline.value.id), way)),
    stale: outcome?.stale ?? false,
  };
}
