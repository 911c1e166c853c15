/** Numbers of the solver in the units that the command line prints. */
import { absolutePressure, toGauge } from '../units/brands.ts';
import { fromSI } from '../units/convert.ts';

export const bar = (pressure_Pa: number): number => fromSI(pressure_Pa, 'pressure', 'bar');

/** Of an absolute pressure. To the millionth of a pascal: less is what the difference has lost, and would stand for nothing at 0. */
export function gauge_bar(pressure_Pa: number): number {
  const gauge_Pa = toGauge(absolutePressure(pressure_Pa));
  return bar(Math.round(gauge_Pa * 1e6) / 1e6);
}

export const litresPerMinute = (flow_m3_s: number): number => fromSI(flow_m3_s, 'flow', 'L/min');
export const mm = (length_m: number): number => fromSI(length_m, 'length', 'mm');
