/** What the oil of a damper must keep. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { child, entries, numberAt, type Place } from './place.ts';
import { lessThan, moreThan, relationFault } from './relation.ts';

/** Two points that fix a falling viscosity: different temperatures, thinner when hotter. */
export function viscosityFaults(viscosity: Place): InputFault[] {
  const points = entries(child(viscosity, 'points'));
  if (points.length !== 2) return [];
  const [first, second] = points;
  const temperature = child(second, 'temperature_degC');
  const thickness = child(second, 'kinematicViscosity_cSt');
  const [t1, t2] = [numberAt(child(first, 'temperature_degC')), numberAt(temperature)];
  if (t1 === undefined || t2 === undefined) return [];
  if (t1 === t2) {
    const wanted = 'a temperature other than that of the first point';
    return [{ code: 'fluid.viscosity.same-temperature', path: temperature.path, got: `${t2} °C`, wanted }];
  }
  return relationFault(thickness, {
    code: 'fluid.viscosity.not-falling',
    wanted: t2 > t1 ? 'less than at the colder point,' : 'more than at the hotter point,',
    limit: numberAt(child(first, 'kinematicViscosity_cSt')),
    unit: 'cSt',
    holds: t2 > t1 ? lessThan : moreThan,
  });
}
