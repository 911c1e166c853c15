/** Stacks of spring steel for tests, in diameters and mm as a person writes them. */
import type { ShimInput, StackInput } from '../../../../src/solver/types.ts';

export const steel = (outerDiameter_mm: number, thickness_mm: number, rest: Partial<ShimInput> = {}): ShimInput => ({
  outerRadius_m: outerDiameter_mm / 2e3,
  thickness_m: thickness_mm / 1e3,
  youngsModulus_Pa: 206e9,
  poissonsRatio: 0.3,
  ...rest,
});

/** On a clamp of 12 mm, pressed from 16.5 to 27.6 mm. */
export const stackOf = (shims: readonly ShimInput[], rest: Partial<StackInput> = {}): StackInput => ({
  clampRadius_m: 6e-3,
  shims,
  pressureZone: { innerRadius_m: 8.25e-3, outerRadius_m: 13.8e-3 },
  ...rest,
});

export const SEAT = { innerRadius_m: 13.8e-3, outerRadius_m: 14.2e-3 };
