import type { StackInput } from '../../../../../src/solver/types.ts';

const STEEL = { youngsModulus_Pa: 206e9, poissonsRatio: 0.3 };

/** `[outer diameter, thickness]` in mm, piston side first. */
export function stackOf(
  clampDiameter_mm: number,
  zone_mm: readonly [number, number],
  shims_mm: readonly (readonly [number, number])[],
): StackInput {
  return {
    clampRadius_m: clampDiameter_mm / 2e3,
    shims: shims_mm.map(([d, t]) => ({ outerRadius_m: d / 2e3, thickness_m: t / 1e3, ...STEEL })),
    pressureZone: { innerRadius_m: zone_mm[0] / 2e3, outerRadius_m: zone_mm[1] / 2e3 },
  };
}

/** The single shim and the taper that were also run in three dimensions. */
export const SINGLE = stackOf(10, [13.2, 22.08], [[24, 0.15]]);
export const TAPER = stackOf(
  12,
  [16.5, 27.6],
  [
    [30, 0.2],
    [24, 0.2],
  ],
);
