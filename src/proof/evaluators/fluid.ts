/** Worked values of oil: viscosity against temperature, viscosity index, density. */
import { z } from '../../model/zod.ts';
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
