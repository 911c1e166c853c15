/**
 * Oil at one temperature: density by D1250, dynamic viscosity mu = rho nu with nu by D341.
 * Left out: viscosity rises with pressure (Barus, mu e^(b p), b = 1.7e-3 per bar for mineral oil: Vacca & Franzoni 2021, eq. 2.21; 3.5 % at
 * 2 MPa, 8.9 % at 5 MPa). How oil and the air in it give to pressure is in bulk-modulus.ts.
 *
 * symbol  unit    meaning
 * rho     kg/m3   density
 * nu      mm2/s   kinematic viscosity
 * mu      Pa s    dynamic viscosity
 */
import { squareMetresPerSecondFromCentistokes } from '../../units/si.ts';
import type { FluidState } from '../damper/types.ts';
import { oilDensity } from './density.ts';
import { kinematicViscosity, type WaltherLaw } from './walther.ts';

export interface Oil {
  readonly viscosity: WaltherLaw;
  readonly densityAt15_kg_m3: number;
}

/** Density [kg/m3] and dynamic viscosity [Pa s] at a temperature [K]. @throws InputError as `kinematicViscosity` and `oilDensity` do. */
export function oilAt({ viscosity, densityAt15_kg_m3 }: Oil, temperature_K: number): FluidState {
  const rho = oilDensity(densityAt15_kg_m3, temperature_K);
  const nu = kinematicViscosity(viscosity, temperature_K);
  return { density_kg_m3: rho, dynamicViscosity_Pa_s: rho * squareMetresPerSecondFromCentistokes(nu) };
}
