/** Sizes of a damper as a person writes them down for the calculation by hand: mm, mm², N, N/mm, mL. */
import type { Cone, GapSizes, HoleSizes, PoppetSizes } from './hand-formulas.ts';

export interface StackSizes {
  readonly clamp: number;
  readonly face: string;
  /** The others, by their names in the tables. */
  readonly rest: readonly string[];
  /** Radii: from the inner edge of the zone to the middle of the land. */
  readonly pressed: readonly [number, number];
  readonly land: readonly [number, number];
  readonly seat: number;
  /** Travel, rate, force at rest. */
  readonly float?: readonly [number, number, number];
  /** Radius, rate, force at rest less its clicks. */
  readonly coil?: readonly [number, number, number];
}

export interface ValveSizes {
  readonly stack: StackSizes;
  readonly bleed: HoleSizes;
  readonly needle?: Cone;
  readonly ports: HoleSizes;
  readonly share?: number;
  readonly gap?: GapSizes;
  readonly poppet?: PoppetSizes;
}

export interface CheckSizes {
  readonly ports: HoleSizes;
  readonly land: readonly [number, number];
  readonly rate: number;
  readonly force: number;
  readonly travel: number;
}

export interface DamperSizes {
  readonly page: string;
  readonly name: string;
  readonly speeds: readonly [number, number, number];
  readonly bore: number;
  readonly rod: number;
  /** Viscosity at 40 and, where its sheet has it, at 100 °C; density at 15 °C; temperature. */
  readonly oil: readonly [number, number | undefined, number, number];
  /** Absolute pressure [MPa] and volume at full extension, exponent, what sinks into it, half the travel. */
  readonly gas: readonly [number, number, number, number, number];
  /** At slow speed, and per m/s. */
  readonly friction: readonly [number, number];
  readonly piston: readonly [ValveSizes, ValveSizes];
  readonly base?: ValveSizes;
  readonly check?: CheckSizes;
}

/** The stacks of a damper by the names of their blocks. */
export const stacksOf = ({ piston, base }: DamperSizes): readonly (readonly [string, StackSizes])[] => [
  ['pistonCompression', piston[0].stack],
  ...(base ? ([['baseCompression', base.stack]] as const) : []),
  ['pistonRebound', piston[1].stack],
];
