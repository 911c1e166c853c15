/** The only door to the solver. */

export { InputError, type InputFault } from '../units/fault.ts';
export type * from './chassis/types.ts';
export { CHECK_LAG } from './cycle/check-lag.ts';
export { peakSpeed, type SineDrive, type TraceDrive } from './cycle/drive.ts';
export { type DampingCycleOptions, type DrivenDamper, dampingCycle, dampingCycles } from './cycle/from-damper.ts';
export {
  type ChamberExtremes,
  chamberExtremes,
  type ForceLoop,
  forceLoop,
  type HysteresisBothWays,
  heatingPower,
  hysteresisBothWays,
  type PeakForces,
  peakForces,
  type SpeedForce,
  type SpeedLoop,
  warmingPerMinute,
} from './cycle/read-cycle.ts';
export { parseTrace, type Trace } from './cycle/trace.ts';
export type * from './cycle/types.ts';
export type { CoefficientRange, CoefficientRanges } from './damper/force-band.ts';
export { type ForceCurveOptions, forceCurve, theoriesOf } from './damper/force-curve.ts';
export type * from './damper/types.ts';
export {
  FIT_NAMES,
  FIT_TABLE,
  type FitEntry,
  type FitName,
  fitNamesOf,
  usualFitNames,
} from './fit/fit-coefficients.ts';
export type {
  FitDone,
  FitFailed,
  FitOutcome,
  FittedCoefficient,
  Rms,
  UntoldDirection,
} from './fit/fit-damper.ts';
export { type AeratedOil, airShare, densityAtPressure, effectiveBulkModulus } from './fluid/bulk-modulus.ts';
export { type HeatedMasses, temperatureRise } from './fluid/heat.ts';
export { isoGradeEntry } from './fluid/iso-grades.ts';
export { WEIGHT_SPREADS, weightInWords } from './fluid/weight-numbers.ts';
export type { Needed } from './from-model/chassis.ts';
export {
  type BuildDamping,
  type ChassisQuestion,
  type ChassisReading,
  chassisReading,
  type DampingCurve,
  type RatioWish,
  type SwingReading,
  type WantedCurve,
  wantedCurve,
} from './from-model/chassis-reading.ts';
export { aeratedOilFromDocument } from './from-model/compressibility.ts';
export { dampingCyclesForBuild } from './from-model/cycle.ts';
export { type FitChoice, fitChoicesForBuild } from './from-model/fit-choices.ts';
export { heatedMassesOf } from './from-model/heated-masses.ts';
export { fitBuild, fitMeasured, type MeasuredFitOptions, measurementsOf } from './from-model/measured.ts';
export { type FoundByStart, type FoundStacks, searchStart } from './from-model/search.ts';
export { type PresentStacks, presentStacks } from './from-model/search-present.ts';
export { type SensitivityQuestion, sensitivityForBuild } from './from-model/sensitivity.ts';
export {
  type ForceSpread,
  readTolerance,
  type ToleranceQuestion,
  type ToleranceReading,
  type ToleranceSamples,
  type ToleranceSamplesQuestion,
  toleranceForBuild,
  toleranceSamples,
} from './from-model/tolerance.ts';
export { DEFAULT_TOLERANCES, tolerancesOfProject } from './from-model/tolerances.ts';
export {
  type BuildCurveOptions,
  damperFromProject,
  forceCurveForBuild,
  forcePointsForBuild,
  oilFromDocument,
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
export type { Judgement, SearchSettings } from './search/types.ts';
export type { Absence, ShimSensitivity, Slopes, StackSensitivity } from './sensitivity/shim-sensitivity.ts';
export { solveLift } from './stack/solve-lift.ts';
export { findWavinessOnset, type OnsetOptions, type WavinessOnset } from './stack/waviness/find-onset.ts';
export { SolveStopped } from './stopped.ts';
export { DEFAULT_THEORY } from './theory.ts';
export type { Samples } from './tolerance/sample-study.ts';
export {
  SCATTER_TABLE,
  type ScatterEntry,
  TOLERANCE_NAMES,
  type ToleranceName,
  type Tolerances,
} from './tolerance/scatter-table.ts';
export type { Estimate, ShareEstimate } from './tolerance/share-estimates.ts';
export type { VarianceShare } from './tolerance/sobol-indices.ts';
export type { Spread } from './tolerance/summarise.ts';
export type * from './types.ts';
export type { FollowStacks } from './valve/followed-stack.ts';
export { keepStacks } from './valve/kept-stacks.ts';
