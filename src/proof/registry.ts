/** Every evaluator by the name that a case gives, and the one call that runs a case. */
import { InputError } from '../units/fault.ts';
import type { Evaluation, Evaluator } from './evaluator.ts';
import { annulusClosedForm } from './evaluators/annulus.ts';
import { chamberStiffness, cycleEnergy, maxwellLag, peakSpeedRows } from './evaluators/cycle.ts';
import { bulkModulusRows, densityRows, viscosityIndexRows, viscosityTemperature } from './evaluators/fluid.ts';
import { airGapForce, gasCompression } from './evaluators/gas.ts';
import {
  annularGapRows,
  creepingHole,
  discGap,
  longOrifice,
  passageFriction,
  sharpHole,
} from './evaluators/hydraulics.ts';
import { cavitatingOrifice, checkPlateCase, jetForce, poppetCase } from './evaluators/self-opening.ts';
import { largeDeflectionPlate, smallDeflectionPlate } from './evaluators/single-plate.ts';
import { stackLift } from './evaluators/stack.ts';
import { stackCoefficients } from './evaluators/stack-coefficients.ts';
import { wavinessOnset } from './evaluators/waviness.ts';
import type { ProofCase } from './proof-case.ts';

export const EVALUATORS: Readonly<Record<string, Evaluator>> = {
  'annulus-closed-form': annulusClosedForm,
  'small-deflection-plate': smallDeflectionPlate,
  'large-deflection-plate': largeDeflectionPlate,
  'stack-coefficients': stackCoefficients,
  'stack-lift': stackLift,
  'waviness-onset': wavinessOnset,
  'viscosity-temperature': viscosityTemperature,
  'viscosity-index': viscosityIndexRows,
  'oil-density': densityRows,
  'bulk-modulus': bulkModulusRows,
  'gas-compression': gasCompression,
  'air-gap-force': airGapForce,
  'sharp-hole': sharpHole,
  'long-orifice': longOrifice,
  'creeping-hole': creepingHole,
  'passage-friction': passageFriction,
  'disc-gap': discGap,
  'annular-gap': annularGapRows,
  'check-plate': checkPlateCase,
  poppet: poppetCase,
  'jet-force': jetForce,
  'cavitating-orifice': cavitatingOrifice,
  'cycle-energy': cycleEnergy,
  'maxwell-lag': maxwellLag,
  'chamber-stiffness': chamberStiffness,
  'peak-speed': peakSpeedRows,
};

/**
 * Computes the quantities of a case.
 * @throws InputError `proof.case.evaluator` for an unknown evaluator, `proof.case.input` for an input it cannot read
 */
export function evaluateCase({ evaluator, input }: Pick<ProofCase, 'evaluator' | 'input'>): Evaluation {
  if (Object.hasOwn(EVALUATORS, evaluator)) return EVALUATORS[evaluator](input);
  const wanted = `one of ${Object.keys(EVALUATORS).join(', ')}`;
  throw new InputError({ code: 'proof.case.evaluator', path: 'evaluator', got: evaluator, wanted });
}
