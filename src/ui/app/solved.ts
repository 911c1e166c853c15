/** Names for the parts of a force curve, as they come from the worker. */
import type { ForceCurve, Theory } from '../../../workers/protocol.ts';

type AnyPoint = ForceCurve['points'][number];

export type ForcePoint = Extract<AnyPoint, { status: 'converged' }>;
export type FailedForce = Exclude<AnyPoint, ForcePoint>;
export type StackTable = ForceCurve['stacks']['compression'];
export type ConvergedLift = StackTable['points'][number];
export type StackShape = ConvergedLift['shape'];
export type { ForceCurve, Theory };
