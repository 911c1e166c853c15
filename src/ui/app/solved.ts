/** Names for the parts of a force curve, as they come from the worker. */
import type { ForceCurve, StackPlace, Theory } from '../../../workers/protocol.ts';

type AnyPoint = ForceCurve['points'][number];

export type ForcePoint = Extract<AnyPoint, { status: 'converged' }>;
export type FailedForce = Exclude<AnyPoint, ForcePoint>;
export type BasePoint = NonNullable<ForcePoint['base']>;
export type PathFlows = ForcePoint['flows'];
export type ForceBand = NonNullable<ForcePoint['band']>;
export type StackTable = ForceCurve['stacks']['compression'];
export type ConvergedLift = StackTable['points'][number];
export type StackShape = ConvergedLift['shape'];
export type { ForceCurve, StackPlace, Theory };
