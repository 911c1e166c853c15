/** The damper between two solved speeds: every number straight, every warning that holds at either end. */
import type { BasePoint, ForcePoint, PathFlows } from '../app/solved.ts';
import { bandBetween } from './band-between.ts';
import { lifeBetween } from './life-at.ts';

const between = (a: number, b: number, share: number): number => a + (b - a) * share;

type Cavitates = Pick<ForcePoint, 'cavitating'>;

/** What one end does not have is nothing there. */
function optionalBetween<Key extends string>(
  a: Readonly<Partial<Record<Key, number>>>,
  b: Readonly<Partial<Record<Key, number>>>,
  keys: readonly Key[],
  share: number,
): Partial<Record<Key, number>> {
  const known = keys.filter((key) => a[key] !== undefined || b[key] !== undefined);
  const entries = known.map((key) => [key, between(a[key] ?? 0, b[key] ?? 0, share)]);
  return Object.fromEntries(entries) as Partial<Record<Key, number>>;
}

function flowsBetween(a: PathFlows, b: PathFlows, share: number): PathFlows {
  return {
    ports_m3_s: between(a.ports_m3_s, b.ports_m3_s, share),
    bleed_m3_s: between(a.bleed_m3_s, b.bleed_m3_s, share),
    leakage_m3_s: between(a.leakage_m3_s, b.leakage_m3_s, share),
    ...optionalBetween(a, b, ['poppet_m3_s', 'check_m3_s'], share),
  };
}

function baseBetween(a: BasePoint, b: BasePoint, share: number): BasePoint {
  const life = lifeBetween(a.life, b.life, share);
  return {
    drop_Pa: between(a.drop_Pa, b.drop_Pa, share),
    shimPressure_Pa: between(a.shimPressure_Pa, b.shimPressure_Pa, share),
    seatOpening_m: between(a.seatOpening_m, b.seatOpening_m, share),
    flows: flowsBetween(a.flows, b.flows, share),
    ...cavitatingBetween(a, b),
    ...jetsBetween(a, b, share),
    ...(life && { life }),
  };
}

/** That of the end where more cavitates. */
function cavitatingBetween({ cavitating: a = [] }: Cavitates, { cavitating: b = [] }: Cavitates): Cavitates {
  const more = a.length > b.length ? a : b;
  return more.length === 0 ? {} : { cavitating: more };
}

type WithJets = Pick<ForcePoint, 'jets'>;

/** A path that has no jet at one end starts there from nothing. */
function jetsBetween({ jets: a = [] }: WithJets, { jets: b = [] }: WithJets, share: number): WithJets {
  const paths = [...new Set([...a, ...b].map(({ path }) => path))];
  if (paths.length === 0) return {};
  const jets = paths.map((path) => {
    const of = (list: typeof a) => list.find((jet) => jet.path === path) ?? { flow_m3_s: 0, speed_m_s: 0 };
    return {
      path,
      flow_m3_s: between(of(a).flow_m3_s, of(b).flow_m3_s, share),
      speed_m_s: between(of(a).speed_m_s, of(b).speed_m_s, share),
    };
  });
  return { jets };
}

function voidsBetween(a: ForcePoint, b: ForcePoint, share: number): Pick<ForcePoint, 'voids_m3_s'> {
  const voids = optionalBetween(a.voids_m3_s ?? {}, b.voids_m3_s ?? {}, ['compression', 'rebound', 'reservoir'], share);
  return Object.keys(voids).length === 0 ? {} : { voids_m3_s: voids };
}

type NumberKey = { [K in keyof ForcePoint]-?: ForcePoint[K] extends number ? K : never }[keyof ForcePoint];

export function pointBetween(a: ForcePoint, b: ForcePoint, share: number): ForcePoint {
  const at = (key: NumberKey): number => between(a[key], b[key], share);
  const life = lifeBetween(a.life, b.life, share);
  const band = bandBetween(a.band, b.band, share);
  return {
    status: 'converged',
    shaftSpeed_m_s: at('shaftSpeed_m_s'),
    force_N: at('force_N'),
    gasForce_N: at('gasForce_N'),
    frictionForce_N: at('frictionForce_N'),
    dampingForce_N: at('dampingForce_N'),
    stopForce_N: at('stopForce_N'),
    compressionPressure_Pa: at('compressionPressure_Pa'),
    reboundPressure_Pa: at('reboundPressure_Pa'),
    gasPressure_Pa: at('gasPressure_Pa'),
    pistonDrop_Pa: at('pistonDrop_Pa'),
    shimPressure_Pa: at('shimPressure_Pa'),
    seatOpening_m: at('seatOpening_m'),
    flows: flowsBetween(a.flows, b.flows, share),
    ...(a.base && b.base && { base: baseBetween(a.base, b.base, share) }),
    airRelease: a.airRelease || b.airRelease,
    ...voidsBetween(a, b, share),
    gasPressureNeeded_Pa: at('gasPressureNeeded_Pa'),
    ...((a.bleedCavitates || b.bleedCavitates) && { bleedCavitates: true }),
    ...cavitatingBetween(a, b),
    ...jetsBetween(a, b, share),
    ...(life && { life }),
    ...(band && { band }),
  };
}
