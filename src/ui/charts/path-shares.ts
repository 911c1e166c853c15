/** How the oil of a valve is shared out over its paths. */
import type { ForcePoint, PathFlows } from '../app/solved.ts';

export type ValveName = 'piston' | 'base';
export type PathName = 'ports' | 'bleed' | 'leakage' | 'poppet' | 'check';

export const PATHS: readonly PathName[] = ['ports', 'bleed', 'leakage', 'poppet', 'check'];

/** Nothing for the base valve of a damper without one. */
export const valveFlows = (point: ForcePoint, valve: ValveName): PathFlows | undefined =>
  valve === 'base' ? point.base?.flows : point.flows;

/** Of all oil that passes the valve, whichever way it goes; a valve that nothing passes has no shares. */
export function sharesOf(flows: PathFlows | undefined): Partial<Record<PathName, number>> {
  if (!flows) return {};
  const sizes = PATHS.map((path) => Math.abs(flows[`${path}_m3_s`] ?? 0));
  const whole = sizes.reduce((sum, size) => sum + size, 0);
  return whole === 0 ? {} : Object.fromEntries(PATHS.map((path, i) => [path, sizes[i] / whole]));
}
