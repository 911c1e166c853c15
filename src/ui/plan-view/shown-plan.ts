/** What the plan shows of one shim at the speed cursor, worked out once. */
import { computed, signal } from '@preact/signals';
import { singleShims } from '../../model/lay-shims.ts';
import type { ShimRow, ValveBody } from '../../model/project.ts';
import { bodyAt } from '../app/places.ts';
import { fromShown, inShown } from '../app/quantities.ts';
import { place, project } from '../app/store.ts';
import { type DrawnStack, drawnStack, reachedState, rimsAtCrest } from '../app/views.ts';
import type { StackState } from '../section/shape-at.ts';
import { type Extremes, extremesOf } from '../section/wave-shape.ts';
import { levelsBetween } from './lift-levels.ts';
import { liftGrid, type RingGrid, rangeOnGrid } from './ring-grid.ts';

const wantedShim = signal(0);
export const showShim = (shim: number): void => {
  wantedShim.value = shim;
};

export interface LiftField {
  readonly state: StackState;
  readonly grid: RingGrid;
  /** Of the lines, rising [m], and how many digits tell them apart in the shown unit. */
  readonly levels_m: readonly number[];
  readonly digits: number;
  /** The least lift anywhere, and the greatest that the speeds on show reach: what the deepest shade stands for [m]. */
  readonly least_m: number;
  readonly top_m: number;
  readonly waves: number;
  /** Where it waves. */
  readonly extremes?: Extremes;
}

export interface ShownPlan {
  readonly stack: DrawnStack;
  readonly body: ValveBody;
  readonly boreRadius_mm: number;
  readonly shims: readonly ShimRow[];
  /** Which of them is shaded, counted from the piston. */
  readonly shim: number;
  /** None while the stack is drawn at rest. */
  readonly field?: LiftField;
}

function fieldOf(state: StackState, shim: number, reached: StackState | undefined): LiftField {
  const { shape } = state;
  const grid = liftGrid(shape, shim);
  const { least, most } = rangeOnGrid(grid);
  const { step, levels } = levelsBetween(inShown('lift', least), inShown('lift', most));
  const extremes = extremesOf(shape);
  return {
    ...{ state, grid, least_m: least },
    waves: extremes ? shape.waves : 0,
    levels_m: levels.map((level) => fromShown('lift', level)),
    digits: step > 0 ? Math.max(0, -Math.floor(Math.log10(step) + 1e-9)) : 0,
    top_m: Math.max(most, reached ? (rimsAtCrest(reached)[shim] ?? 0) : 0),
    ...(extremes && { extremes }),
  };
}

export const shownPlan = computed<ShownPlan>(() => {
  const stack = drawnStack.value;
  const shims = singleShims(stack.valving.shims).map(({ shim }) => shim);
  const shim = Math.min(wantedShim.value, shims.length - 1);
  const { damper } = project.value;
  return {
    ...{ stack, shims, shim },
    body: bodyAt(damper, place.value),
    boreRadius_mm: damper.boreDiameter_mm / 2,
    ...(stack.state && { field: fieldOf(stack.state, shim, reachedState(stack.build.id)) }),
  };
});
