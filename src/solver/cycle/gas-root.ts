/**
 * The chamber next to the gas: oil content m and gas share its volume at one pressure,
 *   m s(p) + V0 (p0/p)^(1/n) = V,
 * solved by Newton's method in ln p. The left side falls and is convex in ln p wherever the oil compresses by a little only, so the steps close in from
 * below. Where a floating piston with friction parts them they have pressures of their own (floating-piston.ts).
 * Energy of the gas over that at p0, V0 (its work is polytropic): E = -integral of p dV.
 * Source: own; polytropic law of fluid/gas.ts.
 *
 * symbol     unit   meaning
 * m, V       m3     content of oil, volume of the chamber
 * p0, V0, n  Pa,m3  gas at full extension, polytropic exponent [-]
 * p          Pa     absolute pressure of the gas
 * s          -      volume of the oil over its content
 */
import type { OilState } from './oil-state.ts';
import type { CycleGas } from './types.ts';

const MAX_ITERATIONS = 40;
/** Step in ln p after which the next one would be its square. */
const CLOSE = 1e-8;

/** Of the gas at pressure p [m3]. */
export const gasVolume = (
  { absolutePressure_Pa: p0, volume_m3: V0, polytropicExponent: n }: CycleGas,
  p: number,
): number => V0 * (p0 / p) ** (1 / n);

/** p of the gas in a volume [Pa]. */
export const gasPressureIn = (
  { absolutePressure_Pa: p0, volume_m3: V0, polytropicExponent: n }: CycleGas,
  V: number,
): number => p0 * (V0 / V) ** n;

/** p; NaN when no pressure fits. */
export function gasPressure(gas: CycleGas, oil: OilState, m: number, V: number): number {
  const { absolutePressure_Pa: p0, volume_m3: V0, polytropicExponent: n } = gas;
  const room = Math.max(V - m * oil.volume(p0), 1e-3 * V0);
  let p = gasPressureIn(gas, room);
  for (let iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
    const s = oil.volume(p);
    const gasPart = gasVolume(gas, p);
    const slope = p * oil.volumeSlope(p) * m - gasPart / n;
    const step = (V - m * s - gasPart) / slope;
    p *= Math.exp(Math.max(Math.min(step, 2), -2));
    if (!(Math.abs(step) > CLOSE)) return Number.isFinite(step) ? p : Number.NaN;
  }
  return Number.NaN;
}

/** E of the gas at pressure p [J]. */
export function gasEnergy(gas: CycleGas, p: number): number {
  const { absolutePressure_Pa: p0, volume_m3: V0, polytropicExponent: n } = gas;
  const x = Math.log(p / p0);
  // (p V - p0 V0)/(n - 1), without the loss of digits as n nears 1.
  return n === 1 ? p0 * V0 * x : (p0 * V0 * Math.expm1((1 - 1 / n) * x)) / (n - 1);
}
