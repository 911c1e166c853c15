/**
 * Gas behind the floating piston of a monotube: the rod drives its own volume into the tube and squeezes the gas,
 *   p V^n = p0 V0^n,   V = V0 - A_r x,   p absolute.
 * Source: elementary polytropic law. An ideal gas lies up to 3.2 % below nitrogen at a volume ratio of 3 from 1 MPa
 * (reference equation of state of Span et al. 2000). Left out: floating-piston friction; warming of the gas (+0.34 % per K).
 *
 * symbol  unit   meaning
 * p0, V0  Pa, m3 absolute pressure and volume at full extension
 * n       -      polytropic exponent: 1 slow (isothermal) to 1.4 fast (adiabatic nitrogen)
 * x       m      stroke from full extension, positive in compression
 * A_r     m2     rod cross-section
 */
import { InputError } from '../../units/fault.ts';

export interface GasCharge {
  readonly absolutePressure_Pa: number;
  readonly volume_m3: number;
  readonly polytropicExponent: number;
}

/**
 * State of the gas after the rod has entered by `stroke_m`.
 * @throws InputError `gas.pressure.not-absolute` for a pressure of 0 or less (a gauge reading),
 *   `gas.volume.too-small` when the rod needs the whole gas volume or more.
 */
export function gasAtStroke(charge: GasCharge, rodArea_m2: number, stroke_m: number): GasCharge {
  const { absolutePressure_Pa: p0, volume_m3: V0, polytropicExponent: n } = charge;
  if (!(p0 > 0)) throw fault('gas.pressure.not-absolute', `${p0}`, 'an absolute pressure above 0', 'Pa');
  const V = V0 - rodArea_m2 * stroke_m;
  if (!(V > 0)) throw fault('gas.volume.too-small', `${V0}`, `more than the rod's ${rodArea_m2 * stroke_m}`, 'm3');
  return { absolutePressure_Pa: p0 * (V0 / V) ** n, volume_m3: V, polytropicExponent: n };
}

const fault = (code: string, got: string, wanted: string, unit: string) =>
  new InputError({ code, path: 'gas', got, wanted, unit });
