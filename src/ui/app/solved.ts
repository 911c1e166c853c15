/** Names for the parts of a force curve, as they come from the worker. */
import type {
  ForceCurve as SolvedCurve,
  SpeedBand,
  StackPlace,
  StackTheories,
  Theory,
  TheoryChoice,
} from '../../../workers/protocol.ts';

type AnyPoint = SolvedCurve['points'][number];
type SolvedPoint = Extract<AnyPoint, { status: 'converged' }>;

/** The band comes after the rest of the point, and with what it comes from left out. */
export type ForcePoint = Omit<SolvedPoint, 'band'> & { readonly band?: SpeedBand };
export type FailedForce = Exclude<AnyPoint, SolvedPoint>;
export type ForceCurve = Omit<SolvedCurve, 'points'> & { readonly points: readonly (ForcePoint | FailedForce)[] };
export type BasePoint = NonNullable<ForcePoint['base']>;
export type PathFlows = ForcePoint['flows'];
export type ForceBand = NonNullable<ForcePoint['band']>;
export type StackTable = ForceCurve['stacks']['compression'];
export type ConvergedLift = StackTable['points'][number];
export type StackShape = ConvergedLift['shape'];
export type { StackPlace, StackTheories, Theory, TheoryChoice };
