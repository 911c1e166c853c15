/** Word of a viscosity that is computed beyond what the document knows of the oil. */
import type { Project } from '../model/project.ts';
import { isOutside, knownTemperatures } from '../model/viscosity-reach.ts';
import type { Values } from './command.ts';
import { numberList } from './number-list.ts';
import { TEMPERATURES } from './occasions.ts';

/** One line that names the temperatures beyond; none where all are within. */
export function extrapolatedAt({ viscosity }: Project['fluid'], temperatures_degC: readonly number[]): string[] {
  const known = knownTemperatures(viscosity);
  const outside = temperatures_degC.filter((t) => isOutside(t, known));
  if (outside.length === 0) return [];
  return [
    `at ${outside.join(', ')} °C the viscosity is extrapolated: it is known from ${known.from} to ${known.upTo} °C`,
  ];
}

/** For a command about a damper: of the temperatures that are asked for; `shimwright fluid` and the bench tell of the document's own. */
export function oilRemarks({ fluid }: Project, values: Values): string[] {
  const list = values.get(TEMPERATURES);
  return list === undefined ? [] : extrapolatedAt(fluid, numberList(list, TEMPERATURES));
}
