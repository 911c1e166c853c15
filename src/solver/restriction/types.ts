/** What every restriction offers: flow from pressure drop and pressure drop from flow, both without sign (>= 0). */
import type { FluidState } from '../damper/types.ts';
import type { Solved } from '../numeric/solved.ts';

export interface Restriction {
  /** Volume flow [m3/s] at a pressure drop >= 0 [Pa]: 0 at 0 and rising. */
  readonly flow: (drop_Pa: number) => Solved;
  /** Pressure drop [Pa] at a volume flow >= 0 [m3/s]: 0 at 0 and rising. */
  readonly drop: (flow_m3_s: number) => Solved;
  /** Area of the narrowest jet at a flow > 0 [m2]; absent where oil passes without one. */
  readonly throat_m2?: (flow_m3_s: number) => number;
}

/** A bank of equal holes side by side. */
export interface Holes {
  readonly count: number;
  /** Area of one hole [m2]. */
  readonly area_m2: number;
  /** Four times area over perimeter of one hole [m]. */
  readonly hydraulicDiameter_m: number;
  readonly length_m: number;
}

export type { FluidState };
