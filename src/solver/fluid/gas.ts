/**
 * Gas of a damper: the stroke drives the rod into the tube, or a whole fork leg into its air, and squeezes the gas,
 *   p V^n = p0 V0^n,   V = V0 - A x,   F = (p - p_atm) A,   p absolute.
 * A floating piston between gas and oil holds what its seal friction R can bear, p_f = R / (pi/4 d^2): the oil moves the gas
 * only beyond that.
 * Source: elementary polytropic law. An ideal gas lies up to 3.2 % below nitrogen at a volume ratio of 3 from 1 MPa on a quick stroke, within
 * 0.6 % up to 10 MPa on a slow one (reference equation of state of Span et al. 2000), and within 0.3 % of air from 1 atm. Left out: warming of gas (+0.34 % per K) and oil, which expands into its room.
 *
 * symbol  unit   meaning
 * p0, V0  Pa, m3 absolute pressure and volume at full extension
 * n       -      polytropic exponent: 1 slow (isothermal) to 1.4 fast (adiabatic nitrogen)
 * x       m      stroke from full extension, positive in compression
 * A       m2     what leaves the gas per metre of stroke: cross-section of the rod, or of a fork leg at its seal
 * R, d    N, m   seal friction and diameter of a floating piston
 */
import { InputError } from '../../units/fault.ts';
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';

export interface GasCharge {
  readonly absolutePressure_Pa: number;
  readonly volume_m3: number;
  readonly polytropicExponent: number;
}

/**
 * State of the gas after a stroke from full extension.
 * @throws InputError `gas.pressure.not-absolute` for a pressure of 0 or less (a gauge reading),
 *   `gas.volume.too-small` when the stroke needs the whole gas volume or more.
 */
export function gasAtStroke(charge: GasCharge, area_m2: number, stroke_m: number): GasCharge {
  const { absolutePressure_Pa: p0, volume_m3: V0, polytropicExponent: n } = charge;
  if (!(p0 > 0)) throw fault('gas.pressure.not-absolute', `${p0}`, 'an absolute pressure above 0', 'Pa');
  const V = V0 - area_m2 * stroke_m;
  if (!(V > 0)) throw fault('gas.volume.too-small', `${V0}`, `more than the stroke's ${area_m2 * stroke_m}`, 'm3');
  return { absolutePressure_Pa: p0 * (V0 / V) ** n, volume_m3: V, polytropicExponent: n };
}

/** Force with which the gas pushes the damper out [N]: its pressure over the atmosphere, on the area it loses per metre of stroke. */
export const gasForce = ({ absolutePressure_Pa }: Pick<GasCharge, 'absolutePressure_Pa'>, area_m2: number): number =>
  (absolutePressure_Pa - STANDARD_ATMOSPHERE_PA) * area_m2;

/** Pressure that the seal friction of a floating piston holds [Pa]. */
export const floatingPistonPressure = (friction_N: number, diameter_m: number): number =>
  friction_N / ((Math.PI / 4) * diameter_m ** 2);

const fault = (code: string, got: string, wanted: string, unit: string) =>
  new InputError({ code, path: 'gas', got, wanted, unit });
