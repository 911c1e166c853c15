/** Oil of a document. */
import type { Fluid } from '../../model/project.ts';
import { kelvinFromCelsius } from '../../units/si.ts';
import type { FluidState } from '../damper/types.ts';
import { isoGradeMidpoint } from '../fluid/iso-grades.ts';
import { oilAt } from '../fluid/oil.ts';
import { viscosityAt100 } from '../fluid/viscosity-index.ts';
import { type WaltherLaw, waltherLaw } from '../fluid/walther.ts';

/** Oil of a document at its temperature. @throws InputError of the oil laws when it cannot be */
export function oilFromDocument({ viscosity, densityAt15_kg_m3, temperature_degC }: Fluid): FluidState {
  return oilAt({ viscosity: lawFrom(viscosity), densityAt15_kg_m3 }, kelvinFromCelsius(temperature_degC));
}

function lawFrom(viscosity: Fluid['viscosity']): WaltherLaw {
  const at = (temperature_degC: number, kinematicViscosity_mm2_s: number) => ({
    temperature_K: kelvinFromCelsius(temperature_degC),
    kinematicViscosity_mm2_s,
  });
  if (viscosity.kind === 'two-point') {
    const [first, second] = viscosity.points.map((p) => at(p.temperature_degC, p.kinematicViscosity_cSt));
    return waltherLaw(first, second);
  }
  const U = viscosity.kind === 'iso-grade' ? isoGradeMidpoint(viscosity.isoGrade) : viscosity.kinematicViscosity40_cSt;
  return waltherLaw(at(40, U), at(100, viscosityAt100(U, viscosity.viscosityIndex)));
}
