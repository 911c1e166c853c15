/**
 * One valve by hand. The whole flow Q is known; how much of it the bleed takes, Q_b, is tried until the opening that follows
 * passes the rest:
 *   Q_b -> dp over the bleed -> P = dp - ports(Q - Q_b) -> h = kappa P - h_s (+ float) -> curtain drop at h and Q - Q_b = P
 * Port jets are left out.
 *
 * symbol    unit  meaning
 * P         Pa    pressure across the shims
 * h, h_s    m     opening; height of the seat over the hub plane
 * kappa     m/Pa  lift at the seat per pressure (stack.ts)
 */
import {
  curtainDrop,
  fallingRoot,
  type Hole,
  holeDrop,
  type Land,
  type NeedleSizes,
  needleDrop,
  type Oil,
} from './flow.ts';
import { newSheet, type Sheet } from './sheet.ts';

export interface HandValve {
  readonly bleed: Hole;
  readonly needle?: NeedleSizes;
  readonly ports: Hole;
  readonly land: Land;
  readonly kappa: number;
  /** Of the seat over the hub plane, less the lift of a float at its stop [m]. */
  readonly seat: number;
}

/** The steps at a flow [m3/s], in `sheet`; the drop over the valve [Pa]. */
export function valveByHand(valve: HandValve, Q: number, oil: Oil, sheet: Sheet): number {
  const { put } = sheet;
  const state = (Q_b: number, on: Sheet) => {
    const dp = bleedDrop(valve, Q_b, oil, on);
    return { dp, P: dp - holeDrop('ports', valve.ports, Q - Q_b, oil, on) };
  };
  const opening = (P: number) => valve.kappa * P - valve.seat;
  put('Q', 'flow through this valve', Q, 'mL/s');
  const alone = bleedDrop(valve, Q, oil, newSheet());
  if (opening(alone) <= 0) return closedSteps(valve, Q, oil, sheet);
  const mismatch = (Q_b: number) => {
    const { P } = state(Q_b, newSheet());
    const h = opening(P);
    return h <= 0 ? 1 : curtainDrop(valve.land, h, Q - Q_b, oil).drop - P;
  };
  const Q_b = put(
    'Q_b',
    'through the bleed; tried until the last two lines agree',
    fallingRoot(mismatch, 0, Q),
    'mL/s',
  );
  const { dp, P } = state(Q_b, sheet);
  put('P', 'Δp − Δp ports', P, 'MPa');
  const h = put('h', 'κP less the seat, plus the float', opening(P), 'mm');
  const { a, b, drop } = curtainDrop(valve.land, h, Q - Q_b, oil);
  put('a', '6 μ ln(r₂/r₁)/(πh³) + 32 μ/(πwh²), w = 2πr₁', a, 'Pa·s/m³');
  put('b', 'ρ/2 / (0.7 w h)²', b, 'Pa·s²/m⁶');
  put('aQ_s', 'creeping part, Q_s = Q − Q_b', a * (Q - Q_b), 'MPa');
  put('aQ_s + bQ_s²', 'must be P', drop, 'MPa');
  return dp;
}

function closedSteps(valve: HandValve, Q: number, oil: Oil, sheet: Sheet): number {
  sheet.put('Q_b', 'all of it, since the stack stays closed', Q, 'mL/s');
  const dp = bleedDrop(valve, Q, oil, sheet);
  sheet.put('P', 'Δp; less than h_s/κ, where the stack opens', dp, 'MPa');
  sheet.put('h', 'closed', 0, 'mm');
  return dp;
}

function bleedDrop({ bleed, needle }: HandValve, Q: number, oil: Oil, sheet: Sheet): number {
  const hole = holeDrop('bleed', bleed, Q, oil, sheet);
  if (!needle) return sheet.put('Δp', 'over the valve', hole, 'MPa');
  const gap = needleDrop('needle', needle, Q, oil, sheet);
  return sheet.put('Δp', 'over the valve: hole and needle', hole + gap, 'MPa');
}
