/** The only door to the solver. */

export { InputError, type InputFault } from '../units/fault.ts';
export { type ForceCurveOptions, forceCurve } from './damper/force-curve.ts';
export type * from './damper/types.ts';
export {
  type BuildCurveOptions,
  damperFromProject,
  forceCurveForBuild,
  SPRING_STEEL,
  stackFromFile,
} from './from-model.ts';
export { shimUses } from './life/shim-use.ts';
export { usesAt } from './life/stack-life.ts';
export { STRENGTH_TABLE, type StrengthEntry, strengthOf } from './life/strength.ts';
export {
  COEFFICIENT_TABLE,
  type CoefficientEntry,
  type CoefficientName,
  type Coefficients,
  DEFAULT_COEFFICIENTS,
} from './restriction/coefficients.ts';
export { solveLift } from './stack/solve-lift.ts';
export { findWavinessOnset, type OnsetOptions, type WavinessOnset } from './stack/waviness/find-onset.ts';
export { SolveStopped } from './stopped.ts';
export { DEFAULT_THEORY } from './theory.ts';
export type * from './types.ts';
