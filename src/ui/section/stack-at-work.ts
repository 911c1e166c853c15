/** What one stack of the damper does at a speed: that of the piston in either direction, or that of the base valve. */
import type { ForcePoint, PathFlows, StackPlace } from '../app/solved.ts';

export interface StackAtWork {
  readonly shimPressure_Pa: number;
  readonly seatOpening_m: number;
  /** Of the valve that the stack is part of. */
  readonly flows: PathFlows;
  readonly jets?: ForcePoint['jets'];
  readonly life?: ForcePoint['life'];
}

/** Nothing for the base valve of a damper without one. */
export const stackAtWork = (point: ForcePoint, stack: StackPlace): StackAtWork | undefined =>
  stack === 'base' ? point.base : point;
