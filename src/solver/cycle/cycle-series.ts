/** Samples of a run: what a person plots, read from the states of the integration. */
import type { CycleNetwork } from './cycle-network.ts';
import type { CycleSeries, Drive } from './types.ts';

const SAMPLES_A_PERIOD = 240;
/** As many as a trace has points, within these. */
const SAMPLES_A_TRACE = { least: 1200, most: 20_000 };

/** Sample times over the whole run, both ends among them. */
export function sampleTimes({ start_s, end_s, period_s, breaks_s }: Drive, samples?: number): Float64Array {
  const periods = period_s === undefined ? 1 : Math.round((end_s - start_s) / period_s);
  const { least, most } = SAMPLES_A_TRACE;
  const alone = period_s === undefined ? Math.min(Math.max(breaks_s.length - 1, least), most) : SAMPLES_A_PERIOD;
  const count = periods * (samples ?? alone);
  const times = Float64Array.from({ length: count + 1 }, (_, i) => start_s + ((end_s - start_s) * i) / count);
  times[count] = end_s;
  return times;
}

/** @param states  one a sample time */
export function seriesOf(network: CycleNetwork, times: Float64Array, states: readonly Float64Array[]): CycleSeries {
  const { friction, stop } = network.model;
  const array = () => new Float64Array(times.length);
  const named = () => network.names.map(() => array());
  const [position_m, speed_m_s, force_N, frictionForce_N, stopForce_N] = [array(), array(), array(), array(), array()];
  const gasPressure_Pa = array();
  const [pressures, voids, flows] = [named(), named(), named()];
  for (const [k, state] of states.entries()) {
    network.read(times[k], state);
    const { position_m: x, speed_m_s: v } = network;
    [position_m[k], speed_m_s[k], gasPressure_Pa[k]] = [x, v, network.gasPressure_Pa];
    [frictionForce_N[k], stopForce_N[k]] = [friction(v), stop?.(x, v) ?? 0];
    force_N[k] = network.pressureForce_N + frictionForce_N[k] + stopForce_N[k];
    for (let i = 0; i < network.names.length; i++) {
      pressures[i][k] = network.pressure_Pa[i];
      voids[i][k] = network.void_m3[i];
      flows[i][k] = network.flow_m3_s[i];
    }
  }
  const byName = (arrays: Float64Array[]) => Object.fromEntries(network.names.map((name, i) => [name, arrays[i]]));
  return {
    time_s: times,
    position_m,
    speed_m_s,
    force_N,
    frictionForce_N,
    stopForce_N,
    gasPressure_Pa,
    pressure_Pa: byName(pressures),
    void_m3: byName(voids),
    flow_m3_s: byName(flows),
  };
}
