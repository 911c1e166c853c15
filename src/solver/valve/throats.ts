/**
 * Where a valve cavitates. The neck of a jet falls to the vapour pressure (0 here) when more would flow than
 *   Q_max = 0.62 A sqrt(2 p1 / rho)
 * through a throat of area A with the absolute pressure p1 before it: Cd = 0.62 sqrt(K) with K = p1/(p1 - p2) (cavitation.ts), so
 * whatever lies behind. Ports and shims stand in series: p1 of the shims is what the ports leave.
 *
 * symbol  unit   meaning
 * A       m2     narrowest area of a path
 * p1      Pa     absolute pressure before it
 * Q_max   m3/s   flow that it passes at most
 */
import { chokedFlow } from '../restriction/cavitation.ts';

export type ThroatName = 'ports' | 'shims' | 'notches' | 'bleed' | 'poppet' | 'check';

/** The narrowest place of a path, with the flow that the valve has there when nothing cavitates. */
export interface Throat {
  readonly path: ThroatName;
  readonly area_m2: number;
  readonly flow_m3_s: number;
  /** Lost before it, from the upstream chamber on [Pa]. */
  readonly dropBefore_Pa: number;
}

/** What a restriction says of its narrowest jet. */
interface Narrowing {
  readonly throat_m2?: (flow_m3_s: number) => number;
}

/** That of a path with the chamber right before it; none where nothing flows or no jet forms. */
export function throatOf(path: ThroatName, restriction: Narrowing | undefined, flow_m3_s = 0): readonly Throat[] {
  if (!restriction?.throat_m2 || flow_m3_s === 0) return [];
  return [{ path, area_m2: restriction.throat_m2(flow_m3_s), flow_m3_s, dropBefore_Pa: 0 }];
}

export interface CavitatingPath {
  readonly path: ThroatName;
  /** As the valve counts it, without cavitation. */
  readonly flow_m3_s: number;
  /** What passes at most. */
  readonly chokedFlow_m3_s: number;
}

/** The oil in the narrowest place of a path. */
export interface Jet {
  readonly path: ThroatName;
  readonly flow_m3_s: number;
  /** Mean over the area of the passage; the neck of a jet is narrower and faster [m/s]. */
  readonly speed_m_s: number;
}

/** Of every throat of a point that oil passes, as the valve counts it, without cavitation. */
export const jetsOf = ({ throats = [] }: { readonly throats?: readonly Throat[] }): Jet[] =>
  throats
    .filter(({ area_m2 }) => area_m2 > 0)
    .map(({ path, area_m2, flow_m3_s }) => ({ path, flow_m3_s, speed_m_s: flow_m3_s / area_m2 }));

/**
 * The paths that would have to pass more than they can: the drop of the point is too small there.
 * @param point  of a valve; without throats nothing can be told
 * @param upstream_Pa  absolute pressure of the chamber that the oil comes from
 */
export function cavitatingPaths(
  { throats = [] }: { readonly throats?: readonly Throat[] },
  upstream_Pa: number,
  density_kg_m3: number,
): CavitatingPath[] {
  return throats.flatMap(({ path, area_m2, flow_m3_s, dropBefore_Pa }) => {
    const chokedFlow_m3_s = chokedFlow(area_m2, upstream_Pa - dropBefore_Pa, density_kg_m3);
    return flow_m3_s > chokedFlow_m3_s ? [{ path, flow_m3_s, chokedFlow_m3_s }] : [];
  });
}
