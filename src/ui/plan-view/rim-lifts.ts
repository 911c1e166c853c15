/** How far the rim of the shim in the plan lifts. */
import { liftAt } from '../section/wave-shape.ts';
import type { LiftField } from './shown-plan.ts';

/** Lift of the rim at the crest, at the trough and in the mean round the circle; all the same where it is round [m]. */
export function rimLifts(
  { state: { shape }, extremes }: LiftField,
  shim: number,
): Record<'crest' | 'trough' | 'mean', number> {
  const rim = (phi: number): number => liftAt(shape, shim, phi).at(-1) ?? 0;
  const mean = shape.lift_m[shim].at(-1) ?? 0;
  return extremes
    ? { crest: rim(extremes.crest), trough: rim(extremes.trough), mean }
    : { crest: mean, trough: mean, mean };
}
