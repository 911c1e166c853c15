/** What each single shim of the stack on show does at the speed cursor, looked up in what was solved. */
import { computed } from '@preact/signals';
import { singleShims } from '../../model/lay-shims.ts';
import { type ShownEffects, type StackSensitivity, shownEffects } from '../app/effects-solve.ts';
import { fromShown, unitOfShown } from '../app/quantities.ts';
import { cursorSpeed, direction, selectedValving } from '../app/store.ts';

/** Changes of the force towards firmer [N]; null where there is none, absent where the change cannot be made. */
export interface EffectRow {
  /** Counted from the piston, the first is 1. */
  readonly n: number;
  /** Row of the shim table. */
  readonly row: number;
  readonly outerDiameter_mm: number;
  readonly thickness_mm: number;
  readonly thicker_N: number | null;
  readonly wider_N: number | null;
  readonly out_N?: number | null;
  /** Of the two slopes, over their steps [N]. */
  readonly error_N: number;
}

/** Round steps in the unit of the person [m]. */
export const steps = computed(() => {
  const inches = unitOfShown('lift') === 'in';
  return inches
    ? { thickness_m: fromShown('lift', 0.001), diameter_m: fromShown('lift', 0.01) }
    : { thickness_m: 1e-5, diameter_m: 1e-4 };
});

/** Straight between the solved speeds, of which the nearest two are taken. */
function between(speeds: readonly number[], values: readonly (number | null)[], speed: number): number | null {
  const order = speeds.map((v, i) => ({ v: Math.abs(v), value: values[i] })).sort((p, q) => p.v - q.v);
  const high = order.findIndex(({ v }) => v >= speed);
  const above = order[high < 0 ? order.length - 1 : high];
  const below = order[high < 1 ? 0 : high - 1];
  if (above.v === below.v) return above.value;
  if (high < 0) return above.value;
  if (above.value === null || below.value === null) return null;
  return below.value + ((above.value - below.value) * (speed - below.v)) / (above.v - below.v);
}

type Shim = StackSensitivity['shims'][number];

function valuesAt({ byThickness, byDiameter, absence }: Shim, speeds: readonly number[], speed: number) {
  const way = direction.value;
  const { thickness_m, diameter_m } = steps.value;
  const at = (values: readonly (number | null)[], factor: number): number | null => {
    const value = between(speeds, values, speed);
    return value === null ? null : value * factor * way;
  };
  const errors = [
    at(
      byThickness.map((slope) => slope?.error ?? null),
      thickness_m,
    ) ?? 0,
    at(
      byDiameter.map((slope) => slope?.error ?? null),
      diameter_m,
    ) ?? 0,
  ];
  return {
    thicker_N: at(
      byThickness.map((slope) => slope?.value ?? null),
      thickness_m,
    ),
    wider_N: at(
      byDiameter.map((slope) => slope?.value ?? null),
      diameter_m,
    ),
    ...(absence.status === 'solved' && { out_N: at(absence.change_N, 1) }),
    error_N: Math.max(...errors.map(Math.abs)),
  };
}

function rowsAt({ effects }: ShownEffects, speed: number): EffectRow[] {
  const shims = singleShims(selectedValving.value.shims);
  if (!effects || effects.shims.length !== shims.length) return [];
  return shims.map(({ row, shim: { outerDiameter_mm, thickness_mm } }, s) => ({
    n: s + 1,
    row,
    outerDiameter_mm,
    thickness_mm,
    ...valuesAt(effects.shims[s], effects.speeds_m_s, speed),
  }));
}

/** Empty while nothing is known of the stack, or of as many shims as it has now. */
export const effectRows = computed(() => rowsAt(shownEffects.value, cursorSpeed.value));

/** Bars keep their scale while the cursor moves: a full one is the most of any shim at any solved speed [N]. */
export const fullEffects = computed(() => {
  const speeds = shownEffects.value.effects?.speeds_m_s ?? [];
  const rows = speeds.flatMap((speed) => rowsAt(shownEffects.value, Math.abs(speed)));
  const most = (read: (row: EffectRow) => number | null | undefined) =>
    Math.max(Number.MIN_VALUE, ...rows.map((row) => Math.abs(read(row) ?? 0)));
  return { thicker_N: most((r) => r.thicker_N), wider_N: most((r) => r.wider_N), out_N: most((r) => r.out_N) };
});
