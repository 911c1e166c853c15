/** Refuses a model of a damper over time that cannot be. */
import { InputError } from '../../units/fault.ts';
import type { CycleModel, CycleOptions } from './types.ts';

/**
 * @throws InputError `cycle.model.parent` for a chamber whose parent does not stand before it, `cycle.model.name` for a name used twice,
 *   `cycle.model.volume` for a chamber that the travel empties, `cycle.model.gas` for a gas that is no gas or takes more room than the
 *   root has, `cycle.model.air-release` unless above 0, `cycle.model.lag` below 0
 */
export function checkModel({ root, chambers, airReleasePressure_Pa, travel_m, checkLag_s }: CycleModel): void {
  const seen = new Set([root.name]);
  for (const [i, { name, parent }] of chambers.entries()) {
    if (!seen.has(parent)) throw fault('parent', `chambers[${i}].parent`, parent, 'a chamber that stands before');
    if (seen.has(name)) throw fault('name', `chambers[${i}].name`, name, 'a name of its own');
    seen.add(name);
  }
  for (const { name, sweptArea_m2, extendedVolume_m3 } of [root, ...chambers]) {
    const least = extendedVolume_m3 - Math.max(0, sweptArea_m2 * travel_m);
    if (!(least > 0))
      throw fault('volume', `${name}.extendedVolume_m3`, extendedVolume_m3, 'more than the travel takes', 'm3');
  }
  const { absolutePressure_Pa: p, volume_m3: V, polytropicExponent: n, separatorFriction_Pa: held } = root.gas;
  const isGas = p > 0 && n >= 1 && held >= 0 && V > 0 && V < root.extendedVolume_m3;
  if (!isGas) throw fault('gas', 'root.gas', `${p} Pa, ${V} m3, n ${n}`, 'a gas that leaves room for oil in the root');
  if (!(airReleasePressure_Pa > 0)) {
    throw fault('air-release', 'airReleasePressure_Pa', airReleasePressure_Pa, 'an absolute pressure above 0', 'Pa');
  }
  if (!(checkLag_s >= 0)) throw fault('lag', 'checkLag_s', checkLag_s, '0 or more', 's');
}

/** @throws InputError `cycle.options.samples` unless a multiple of 4, `cycle.options.tolerance` unless above 0 */
export function checkOptions({ samples, pressureTolerance_Pa: tolerance }: CycleOptions): void {
  const counts = samples === undefined || (samples > 0 && samples % 4 === 0);
  if (!counts) throw optionFault('samples', 'samples', samples, 'a multiple of 4');
  if (tolerance === undefined || (tolerance > 0 && Number.isFinite(tolerance))) return;
  throw optionFault('tolerance', 'pressureTolerance_Pa', tolerance, 'a number above 0', 'Pa');
}

const fault = (code: string, path: string, got: number | string, wanted: string, unit?: string) =>
  new InputError({ code: `cycle.model.${code}`, path, got: String(got), wanted, ...(unit && { unit }) });

const optionFault = (code: string, path: string, got: number, wanted: string, unit?: string) =>
  new InputError({ code: `cycle.options.${code}`, path, got: String(got), wanted, ...(unit && { unit }) });
