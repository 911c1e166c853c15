/** Exact steps from the units of the documents to SI and back. Division by whole powers of ten keeps round trips exact. */

export const metresFromMillimetres = (length_mm: number): number => length_mm / 1000;
export const millimetresFromMetres = (length_m: number): number => length_m * 1000;

/** The international inch is 25.4 mm by definition; 12 digits hide the rounding of the product. */
export const millimetresFromInches = (length_in: number): number => Number((length_in * 25.4).toPrecision(12));
export const squareMetresFromSquareMillimetres = (area_mm2: number): number => area_mm2 / 1e6;
export const cubicMetresFromMillilitres = (volume_mL: number): number => volume_mL / 1e6;
export const pascalsFromGigapascals = (pressure_GPa: number): number => pressure_GPa * 1e9;
export const pascalsFromMegapascals = (pressure_MPa: number): number => pressure_MPa * 1e6;
export const megapascalsFromPascals = (pressure_Pa: number): number => pressure_Pa / 1e6;
export const litresPerSecondFromCubicMetresPerSecond = (flow_m3_s: number): number => flow_m3_s * 1000;
export const pascalsFromBars = (pressure_bar: number): number => pressure_bar * 1e5;
export const newtonsPerMetreFromNewtonsPerMillimetre = (rate_N_mm: number): number => rate_N_mm * 1000;
export const squareMetresPerSecondFromCentistokes = (viscosity_cSt: number): number => viscosity_cSt / 1e6;

export const radiansFromDegrees = (angle_deg: number): number => (angle_deg * Math.PI) / 180;

/** 0 °C on the kelvin scale, by definition of the degree Celsius [K]. */
export const CELSIUS_ZERO_K = 273.15;
export const celsiusFromKelvin = (temperature_K: number): number => temperature_K - CELSIUS_ZERO_K;
export const kelvinFromCelsius = (temperature_degC: number): number => temperature_degC + CELSIUS_ZERO_K;

/** Standard atmosphere [Pa]; gauge pressures in the documents count from here. */
export const STANDARD_ATMOSPHERE_PA = 101_325;
export const absoluteFromGauge = (gaugePressure_Pa: number): number => gaugePressure_Pa + STANDARD_ATMOSPHERE_PA;
