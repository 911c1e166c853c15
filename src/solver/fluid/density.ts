/**
 * Density of a lubricating oil against temperature:
 *   rho = rho15 exp[-alpha dT (1 + 0.8 alpha dT)],   alpha = 0.34878 * 1.8 / rho15 per °C,   dT = T - 15 °C
 * Source: API MPMS 11.1 / ASTM D1250, lubricating oils (constant 0.34878 per °F, excerpt). Compression is left out:
 * about +0.06 % per MPa.
 *
 * symbol  unit    meaning
 * rho15   kg/m3   density at 15 °C, as data sheets print it
 * alpha   1/K     thermal expansion at 15 °C
 */
import { InputError } from '../../units/fault.ts';
import { kelvinFromCelsius } from '../../units/si.ts';

const BASE_TEMPERATURE_K = kelvinFromCelsius(15);
/** Fahrenheit degrees in one kelvin. */
const FAHRENHEIT_PER_KELVIN = 1.8;
/** [kg/m3 per °F] */
const EXPANSION_CONSTANT = 0.34878;

/**
 * Density [kg/m3] at a temperature [K] of an oil with `densityAt15_kg_m3`.
 * @throws InputError `fluid.density.not-positive`.
 */
export function oilDensity(densityAt15_kg_m3: number, temperature_K: number): number {
  if (!(densityAt15_kg_m3 > 0 && Number.isFinite(densityAt15_kg_m3))) {
    throw new InputError({
      code: 'fluid.density.not-positive',
      path: 'fluid.densityAt15_kg_m3',
      got: `${densityAt15_kg_m3}`,
      wanted: 'more than 0',
      unit: 'kg/m3',
    });
  }
  const alpha = (EXPANSION_CONSTANT * FAHRENHEIT_PER_KELVIN) / densityAt15_kg_m3;
  const x = alpha * (temperature_K - BASE_TEMPERATURE_K);
  return densityAt15_kg_m3 * Math.exp(-x * (1 + 0.8 * x));
}
