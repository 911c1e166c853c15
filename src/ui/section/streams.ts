/** The oil through the valve of the drawing as streams: which there are, how much each carries, and how fast. */
import type { PathFlows } from '../app/solved.ts';
import { sharesOf } from '../charts/path-shares.ts';
import type { StackAtWork } from './stack-at-work.ts';

/** `shims` and `notches` are two ways on for what the ports carry. */
export type StreamName = 'ports' | 'shims' | 'notches' | 'bleed' | 'poppet' | 'leakage';

export interface Stream {
  readonly name: StreamName;
  readonly flow_m3_s: number;
  /** Of all oil through the valve. */
  readonly share: number;
  /** Mean in the narrowest place; absent where no jet forms [m/s]. */
  readonly speed_m_s?: number;
}

/** A stream that carries less is not drawn. */
export const LEAST_SHARE = 0.001;

const flowOf = (name: StreamName, flows: PathFlows): number =>
  name === 'shims' || name === 'notches' ? 0 : (flows[`${name}_m3_s`] ?? 0);

/** From the solved point; what carries nothing is left out. */
export function streamsOf({ flows, jets = [] }: Pick<StackAtWork, 'flows' | 'jets'>): Stream[] {
  const shares = sharesOf(flows);
  const whole = shares.ports ? flows.ports_m3_s / shares.ports : 0;
  const names: readonly StreamName[] = ['ports', 'shims', 'notches', 'bleed', 'poppet', 'leakage'];
  return names.flatMap((name): Stream[] => {
    const jet = jets.find(({ path }) => path === name);
    const flow_m3_s = jet?.flow_m3_s ?? flowOf(name, flows);
    const behindPorts = name === 'shims' || name === 'notches';
    const share = behindPorts ? (whole > 0 ? flow_m3_s / whole : 0) : (shares[name] ?? 0);
    return share < LEAST_SHARE ? [] : [{ name, flow_m3_s, share, ...(jet && { speed_m_s: jet.speed_m_s }) }];
  });
}
