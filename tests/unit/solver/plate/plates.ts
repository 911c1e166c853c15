/** Plates for tests: a small annulus of unit size, in any state. */
import fc from 'fast-check';
import { buildHermiteTables } from '../../../../src/solver/plate/hermite-tables.ts';
import {
  clampedInnerEdge,
  createPlate,
  type Plate,
  type PlateDescription,
} from '../../../../src/solver/plate/plate.ts';
import { buildRadialMesh } from '../../../../src/solver/plate/radial-mesh.ts';
import type { AxisymmetricTheory } from '../../../../src/solver/types.ts';

interface MeshDescription {
  readonly breaks: readonly number[];
  readonly elements: number;
}

/** Clamp at 1, rim at 2.5, D = 2, C = 300 (a thickness of about 0.28). */
export function unitPlate(
  theory: AxisymmetricTheory,
  rest: Partial<PlateDescription> = {},
  { breaks, elements }: MeshDescription = { breaks: [1, 2.5], elements: 4 },
): Plate {
  const tables = buildHermiteTables(buildRadialMesh(breaks, elements));
  const nodes = tables.elements + 1 - (rest.first ?? 0);
  return createPlate(tables, theory, { nodes, D: 2, C: 300, nu: 0.3, fixed: clampedInnerEdge(theory), ...rest });
}

/** Lifts and slopes of the order of the thickness, in-plane ones of the order of their squares; drawn to three digits. */
export const states = fc.record({
  lifts: fc.array(fc.integer({ min: -500, max: 500 }), { minLength: 40, maxLength: 40 }),
  initialSlope: fc.constantFrom(0, 0.1, -0.2),
  theory: fc.constantFrom<AxisymmetricTheory>('small-deflection', 'large-deflection'),
  springs: fc.constantFrom([], [{ node: 2, rate_N_m: 7, preload_N: 3 }]),
});

export function setState(plate: Plate, lifts: readonly number[]): void {
  for (let i = 0; i < plate.size; i++) plate.x[i] = lifts[i] * (i % plate.d < 2 ? 1e-3 : 1e-4);
  for (const f of plate.fixed) plate.x[f] = 0;
}

/** Gives every node of the plate the unknowns that stand at its radius. */
export function setByRadius({ tables, x, d, nodes, first }: Plate, unknowns: (r: number) => readonly number[]): void {
  for (let i = 0; i < nodes; i++) x.set(unknowns(tables.radius_m[first + i]), i * d);
}
