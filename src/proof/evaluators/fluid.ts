/** Worked values of oil: viscosity against temperature, viscosity index, density, stiffness with air in it. */
import { z } from '../../model/zod.ts';
import { aeratedOil, airShare, effectiveBulkModulus, relativeVolume } from '../../solver/fluid/bulk-modulus.ts';
import { oilDensity } from '../../solver/fluid/density.ts';
import { viscosityIndex } from '../../solver/fluid/viscosity-index.ts';
import { kinematicViscosity, waltherLaw } from '../../solver/fluid/walther.ts';
import { kelvinFromCelsius } from '../../units/si.ts';
import { evaluated, evaluateRows, evaluator, type Quantities } from '../evaluator.ts';

const point = z.strictObject({ temperature_degC: z.number(), kinematicViscosity_mm2_s: z.number() });

const viscositySchema = z.strictObject({ points: z.tuple([point, point]), temperatures_degC: z.array(z.number()) });

/** `A` and `B` of the law through two points, and `<t> °C` for each temperature asked [mm²/s]. */
export const viscosityTemperature = evaluator(viscositySchema, ({ points, temperatures_degC }) => {
  const [first, second] = points.map(({ temperature_degC, kinematicViscosity_mm2_s }) => ({
    temperature_K: kelvinFromCelsius(temperature_degC),
    kinematicViscosity_mm2_s,
  }));
  const law = waltherLaw(first, second);
  const curve = temperatures_degC.map((t) => [`${t} °C`, kinematicViscosity(law, kelvinFromCelsius(t))]);
  return evaluated({ A: law.A, B: law.B, ...(Object.fromEntries(curve) as Quantities) });
});

const indexSchema = z.strictObject({
  rows: z.array(z.strictObject({ label: z.string(), at40_mm2_s: z.number(), at100_mm2_s: z.number() })),
});

/** `index` of each row, not rounded. */
export const viscosityIndexRows = evaluator(indexSchema, ({ rows }) =>
  evaluateRows(rows, ({ at40_mm2_s, at100_mm2_s }) => evaluated({ index: viscosityIndex(at40_mm2_s, at100_mm2_s) })),
);

const densitySchema = z.strictObject({
  rows: z.array(z.strictObject({ label: z.string(), densityAt15_kg_m3: z.number(), temperature_degC: z.number() })),
});

/** `density` [kg/m³] and `correction` = density over that at 15 °C [-] of each row. */
export const densityRows = evaluator(densitySchema, ({ rows }) =>
  evaluateRows(rows, ({ densityAt15_kg_m3, temperature_degC }) => {
    const density = oilDensity(densityAt15_kg_m3, kelvinFromCelsius(temperature_degC));
    return evaluated({ density, correction: density / densityAt15_kg_m3 });
  }),
);

const bulkModulusSchema = z.strictObject({
  bulkModulus_GPa: z.number(),
  airExponent: z.number(),
  rows: z.array(z.strictObject({ label: z.string(), airFraction: z.number(), absolutePressure_MPa: z.number() })),
});

/** `modulus` [MPa], `volume` over that at atmospheric pressure and `air share` by volume [-] of each row. */
export const bulkModulusRows = evaluator(bulkModulusSchema, ({ bulkModulus_GPa, airExponent, rows }) =>
  evaluateRows(rows, ({ airFraction, absolutePressure_MPa }) => {
    const oil = aeratedOil({ bulkModulus_Pa: bulkModulus_GPa * 1e9, airExponent, airFraction });
    const p = absolutePressure_MPa * 1e6;
    return evaluated({
      modulus: effectiveBulkModulus(oil, p) / 1e6,
      volume: relativeVolume(oil, p),
      'air share': airShare(oil, p),
    });
  }),
);
