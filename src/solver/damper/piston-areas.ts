/** Areas on which the chamber pressures act. */
import type { DamperInput } from './types.ts';

export type PistonSizes = Pick<DamperInput, 'boreDiameter_m' | 'rodDiameter_m'>;

export type GasSinkers = Pick<DamperInput, 'rodDiameter_m' | 'legDiameter_m'>;

export interface PistonAreas {
  readonly piston_m2: number;
  readonly rod_m2: number;
  /** Displaced by the piston on the rod side. */
  readonly annulus_m2: number;
}

/** What sinks into the gas per metre of compression [m2]: the rod, or the leg of a fork. */
export function gasArea({ rodDiameter_m, legDiameter_m = rodDiameter_m }: GasSinkers): number {
  return (Math.PI / 4) * legDiameter_m ** 2;
}

export function pistonAreas({ boreDiameter_m, rodDiameter_m }: PistonSizes): PistonAreas {
  const piston_m2 = (Math.PI / 4) * boreDiameter_m ** 2;
  const rod_m2 = (Math.PI / 4) * rodDiameter_m ** 2;
  return { piston_m2, rod_m2, annulus_m2: piston_m2 - rod_m2 };
}
