/** Stacks that the tests of the continuum model share; sizes invented. */

import type { FemShimRow } from '../../scripts/reference-fem/bodies.ts';
import type { StackFile } from '../../src/model/project.ts';

const zone = { innerDiameter_mm: 14, outerDiameter_mm: 22 };

export function femStack(shims: FemShimRow[], rest: Partial<StackFile> = {}): StackFile {
  const material = { youngsModulus_GPa: 206, poissonsRatio: 0.3 };
  const head = { format: 'shimwright/stack', version: 1, name: 'test', material, clampDiameter_mm: 12 } as const;
  return { ...head, shims, pressureZone: zone, ...rest };
}

const row = (outerDiameter_mm: number, thickness_mm: number, innerDiameter_mm?: number): FemShimRow => ({
  outerDiameter_mm,
  thickness_mm,
  ...(innerDiameter_mm !== undefined && { innerDiameter_mm }),
});

/** Two crossovers, so that shims of three stages face each other across them. */
export const threeStages = (rest: Partial<StackFile> = {}): StackFile =>
  femStack([row(30, 0.15), row(18, 0.1), row(28, 0.2), row(16, 0.15), row(24, 0.25)], rest);

/** A ring beside a crossover of 0.1: 0.2 thick, it preloads the shim above by 0.1. The face shim rests on a seat. */
export const ringed = (ringThickness_mm = 0.2): StackFile =>
  femStack([row(28, 0.15), row(16, 0.1), row(26, ringThickness_mm, 22), row(26, 0.2)], {
    seat: { innerDiameter_mm: 22, outerDiameter_mm: 24, height_mm: 0 },
  });

/** One shim, the sizes of reference-cases/stack/fem-single-24x015-small. */
export const single = (): StackFile =>
  femStack([row(24, 0.15)], {
    clampDiameter_mm: 10,
    pressureZone: { innerDiameter_mm: 13.2, outerDiameter_mm: 22.08 },
  });
