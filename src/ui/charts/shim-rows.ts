/** Every single shim of the stack on show at the speed cursor, with how far each number reaches at the fastest speed. */
import { computed } from '@preact/signals';
import { singleShims } from '../../model/lay-shims.ts';
import { stackOf } from '../app/places.ts';
import { outcomes } from '../app/solve.ts';
import { direction, place } from '../app/store.ts';
import { drawnStack, tableOf } from '../app/views.ts';
import { isSolved, pointsOf } from '../section/shape-at.ts';
import { type ShimValues, shimValuesAt } from '../section/shim-values.ts';
import { stackAtWork } from '../section/stack-at-work.ts';

export interface ShimRow {
  /** Counted from the piston, the first is 1. */
  readonly n: number;
  /** Row of the shim table. */
  readonly row: number;
  readonly outerDiameter_mm: number;
  readonly thickness_mm: number;
  readonly values: ShimValues;
}

/** Empty while the stack is drawn at rest. */
export const shimRows = computed<ShimRow[]>(() => {
  const { build, valving, state } = drawnStack.value;
  const outcome = outcomes.value.get(build.id);
  const table = outcome && tableOf(outcome, stackOf(place.value));
  const values = table && state ? shimValuesAt(table, state.pressure_Pa) : undefined;
  if (!values) return [];
  return singleShims(valving.shims).flatMap(({ row, shim }, s) => {
    const { outerDiameter_mm, thickness_mm } = shim;
    return values[s] ? [{ n: s + 1, row, outerDiameter_mm, thickness_mm, values: values[s] }] : [];
  });
});

/** Bars keep their scale while the cursor moves: a full one is the most of any shim at any speed on show. */
export const fullBars = computed(() => {
  const stack = stackOf(place.value);
  const outcome = outcomes.value.get(drawnStack.value.build.id);
  const table = outcome && tableOf(outcome, stack);
  const pressures = outcome?.curve
    ? pointsOf(outcome.curve, direction.value).map((p) =>
        isSolved(p) ? (stackAtWork(p, stack)?.shimPressure_Pa ?? 0) : 0,
      )
    : [];
  const most = (table && shimValuesAt(table, Math.max(0, ...pressures))) ?? [];
  return {
    lift_m: Math.max(Number.MIN_VALUE, ...most.map(({ lift_m }) => lift_m)),
    stress_Pa: Math.max(Number.MIN_VALUE, ...most.map(({ stress_Pa }) => stress_Pa)),
  };
});
