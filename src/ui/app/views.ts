/** What the views show at the speed cursor: looked up in what was solved, for the build and direction on show. */

import { computed } from '@preact/signals';
import { singleShims } from '../../model/lay-shims.ts';
import type { Build, Valving } from '../../model/project.ts';
import { millimetresFromMetres } from '../../units/si.ts';
import { isSolved, pointAt, pointsOf, type StackState, stackAt } from '../section/shape-at.ts';
import { stackAtWork } from '../section/stack-at-work.ts';
import { extremesOf, liftAt } from '../section/wave-shape.ts';
import { type Direction, stackOf, valvingAt } from './places.ts';
import { type Outcome, outcomes } from './solve.ts';
import type { FailedForce, ForcePoint, StackPlace, StackTable, Theory } from './solved.ts';
import { baseline, cursorSpeed, direction, place, selectedBuild, selectedValving } from './store.ts';
import { awaitsWaves } from './wave-solve.ts';

export const tableOf = (outcome: Outcome, stack: StackPlace): StackTable | undefined => outcome.curve?.stacks[stack];

export const pointOf = (outcome: Outcome | undefined, way: Direction): ForcePoint | FailedForce | undefined =>
  outcome?.curve && pointAt(outcome.curve, way, cursorSpeed.value);

export function stateOf(outcome: Outcome | undefined, stack: StackPlace): StackState | undefined {
  const point = pointOf(outcome, stack === 'rebound' ? -1 : 1);
  const table = outcome && tableOf(outcome, stack);
  const pressure_Pa = point && isSolved(point) ? stackAtWork(point, stack)?.shimPressure_Pa : undefined;
  return table && pressure_Pa !== undefined ? stackAt(table, pressure_Pa) : undefined;
}

export interface DrawnStack {
  readonly build: Build;
  readonly valving: Valving;
  readonly state?: StackState;
  readonly point?: ForcePoint;
  /** Of the state drawn; none for a stack drawn at rest. */
  readonly theory?: Theory;
  /** A better state, which follows its waves, is being solved. */
  readonly awaitsWaves?: boolean;
  /** Why the round theory stands in. */
  readonly fallback?: StackTable['fallback'];
  /** The rim ruffles from this pressure on, if anywhere: outside the proven range. */
  readonly waves?: StackTable['waves'];
  /** Somewhere in its table it waves round the circle. */
  readonly mayWave?: boolean;
}

function drawnOf(build: Build, valving: Valving): DrawnStack {
  const outcome = outcomes.value.get(build.id);
  const point = pointOf(outcome, direction.value);
  const state = stateOf(outcome, stackOf(place.value));
  // While a layout without this place is still being solved anew, its stack is drawn at rest.
  const solved = outcome?.build.valves[place.value];
  if (!outcome || !solved || !state || !point || !isSolved(point)) return { build, valving };
  const table = tableOf(outcome, stackOf(place.value));
  return {
    build,
    valving: solved,
    state,
    point,
    theory: table?.theory,
    awaitsWaves: table?.leavesRound !== undefined && awaitsWaves(outcome),
    fallback: table?.fallback,
    waves: table?.waves,
    mayWave: table?.points.some(({ wave }) => wave !== undefined && wave.waves > 0),
  };
}

/** The stack in the drawing: as solved last, until the new shape is there. */
export const drawnStack = computed(() => drawnOf(selectedBuild.value, selectedValving.value));

/** The baseline behind it, when another build is on show. */
export const ghostStack = computed(() =>
  baseline.value.id === selectedBuild.value.id
    ? undefined
    : drawnOf(baseline.value, valvingAt(baseline.value, place.value)),
);

/** The state for the shim table: only while it counts the same shims. */
export const shownState = computed(() => {
  const { state } = drawnStack.value;
  const shims = singleShims(selectedValving.value.shims).length;
  return state && state.shimStress_Pa.length === shims ? state : undefined;
});

/** Lift of every rim, at the crest where the stack waves [m]. */
export function rimsAtCrest({ shape }: StackState): number[] {
  const crest = extremesOf(shape)?.crest ?? 0;
  return shape.lift_m.map((_, shim) => liftAt(shape, shim, crest).at(-1) ?? 0);
}

/** A stack as far as it opens within the speeds on show, so that a drawing keeps its scale while the cursor moves. */
export function reachedState(buildId: string): StackState | undefined {
  const outcome = outcomes.value.get(buildId);
  const stack = stackOf(place.value);
  const table = outcome && tableOf(outcome, stack);
  if (!outcome?.curve || !table) return undefined;
  const pressures = pointsOf(outcome.curve, direction.value).map((p) =>
    isSolved(p) ? (stackAtWork(p, stack)?.shimPressure_Pa ?? 0) : 0,
  );
  return stackAt(table, Math.max(0, ...pressures));
}

/** The largest rim lift within the speeds on show [mm]. */
export function tallestLift(buildId: string): number {
  const reached = reachedState(buildId);
  return reached ? millimetresFromMetres(Math.max(...rimsAtCrest(reached))) : 0;
}
