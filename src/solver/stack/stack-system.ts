/** A stack of axisymmetric plates turned into what the equations need: its layout, the plates and their storage. */
import { createContactProblem } from '../contact/complementarity.ts';
import { createCompliance } from '../contact/compliance.ts';
import type { HermiteTables } from '../plate/hermite-tables.ts';
import { clampedInnerEdge, createPlate, type Plate } from '../plate/plate.ts';
import { addElementPressure } from '../plate/pressure-load.ts';
import type { AxisymmetricTheory, StackInput } from '../types.ts';
import { axisymmetricBody } from './axisymmetric-body.ts';
import type { BalancedSystem } from './balanced-system.ts';
import { type LaidStack, type LayOptions, layStack, loadedPlate } from './laid-stack.ts';

export interface StackSystem extends BalancedSystem, LaidStack {
  readonly theory: AxisymmetricTheory;
  readonly plates: readonly Plate[];
}

/** Correction that counts as rounding, as a share of the lift. */
export const CORRECTION_TOLERANCE = 1e-9;

export interface SystemOptions extends LayOptions {
  readonly theory: AxisymmetricTheory;
}

/**
 * @param stack already validated (see validate-stack.ts)
 * @throws InputError `stack.no-room` when seat and backing plate leave less than the thickness of the shims
 */
export function createStackSystem(stack: StackInput, options: SystemOptions): StackSystem {
  const { theory } = options;
  const layout = layStack(stack, options);
  const { tables, laid, pairs } = layout;
  const plates = laid.map((plate) =>
    createPlate(tables, theory, { ...plate, fixed: plate.clamped ? clampedInnerEdge(theory) : [] }),
  );
  loadFirstPlates(plates, tables, layout);
  const bodies = plates.map((plate, k) => axisymmetricBody(plate, laid[k].clamped));
  const compliances = plates.map(createCompliance);
  return {
    ...layout,
    theory,
    plates,
    bodies,
    noise: { correction: CORRECTION_TOLERANCE, residual: Number.POSITIVE_INFINITY },
    isLinear: theory === 'small-deflection',
    compliances,
    contact: createContactProblem(pairs, compliances),
    steps: plates.map((p) => new Float64Array(p.size)),
    hubRise_m: 0,
    factored: false,
  };
}

/** The pressure acts on the first plate, from the piston on, that covers an element. */
function loadFirstPlates(plates: readonly Plate[], tables: HermiteTables, { ring }: LaidStack): void {
  for (let e = 0; e < tables.elements; e++) {
    const plate = loadedPlate(plates, e);
    if (plate) addElementPressure(tables, ring, e, plate.d, plate.unitLoad, plate.first);
  }
}
