/**
 * One valve by hand. The whole flow Q is known; how much of it the bleed takes, Q_b, is tried until the opening that follows
 * passes the rest:
 *   Q_b -> dp over the bleed -> what passes the clearance and the poppet at dp -> Q_s, what is left for the shims
 *   -> P = phi [dp - ports(Q_s)] -> h = kappa P - h_s - h_0 + z -> curtain drop at h and Q_s = P/phi
 * Port jets are left out.
 *
 * symbol    unit  meaning
 * P         Pa    mean pressure on the zone of the shims
 * phi       -     share of the circumference that the ports open
 * h, h_s    m     opening; height of the seat over the hub plane
 * z         m     rise of a float: P A_z = preload + rate z between its stops
 * kappa     m/Pa  lift at the seat per pressure (stack.ts), h_0 what a coil spring takes from it
 */
import {
  checkHoles,
  curtainDrop,
  fallingRoot,
  type Hole,
  holeDrop,
  type Land,
  type NeedleSizes,
  needleDrop,
  type Oil,
} from './flow.ts';
import { type Gap, leakFlow } from './leak.ts';
import { type PoppetSizes, poppetFlow } from './poppet.ts';
import { newSheet, type Sheet } from './sheet.ts';

export interface HandBleed {
  readonly hole: Hole;
  readonly needle?: NeedleSizes;
}

export interface Float {
  readonly travel: number;
  readonly rate: number;
  readonly preload: number;
  /** On which the oil presses [m2]. */
  readonly area: number;
}

export interface HandValve {
  readonly bleed: HandBleed;
  readonly gap?: Gap;
  readonly poppet?: PoppetSizes;
  readonly ports: Hole;
  readonly phi: number;
  readonly land: Land;
  readonly kappa: number;
  /** Of the seat over the hub plane, and what a coil spring presses the shims down there [m]. */
  readonly seat: number;
  readonly pressed: number;
  readonly float?: Float;
}

export interface Passed {
  /** Over the valve [Pa]. */
  readonly dp: number;
  readonly sheet: Sheet;
}

/** Mean pressure at which the stack opens [Pa]. */
export const opensAt = ({ kappa, seat, pressed }: HandValve): number => (seat + pressed) / kappa;

/** The steps at a flow [m3/s] and a shaft speed [m/s]. @throws Error out of the range of a formula */
export function valveByHand(valve: HandValve, Q: number, v: number, oil: Oil): Passed {
  const sheet = newSheet();
  sheet.put('Q', 'flow through this valve', Q, 'mL/s');
  const forShims = (Q_b: number, on: Sheet) => {
    const dp = bleedDrop(valve.bleed, Q_b, oil, on);
    return { dp, Q_s: Q - Q_b - beside(valve, dp, v, oil, on) };
  };
  const closed = fallingRoot((Q_b) => forShims(Q_b, newSheet()).Q_s, 0, Q);
  const isOpen = valve.phi * forShims(closed, newSheet()).dp > opensAt(valve);
  const tried = isOpen ? fallingRoot((Q_b) => mismatch(valve, forShims(Q_b, newSheet()), oil), 0, closed) : closed;
  const Q_b = sheet.put('Q_b', 'through the bleed; tried until the last two lines agree', tried, 'mL/s');
  const { dp, Q_s } = forShims(Q_b, sheet);
  if (isOpen) openSteps(valve, { dp, Q_s }, oil, sheet);
  else {
    sheet.put('P', 'φΔp; less than where the stack opens', valve.phi * dp, 'MPa');
    sheet.put('h', 'closed', 0, 'mm');
  }
  checkHoles(sheet);
  return { dp, sheet };
}

interface Tried {
  readonly dp: number;
  readonly Q_s: number;
}

/** Drop that the opening takes for Q_s, less the one that is there: falls with the flow of the bleed. */
function mismatch(valve: HandValve, { dp, Q_s }: Tried, oil: Oil): number {
  if (Q_s <= 0) return -1;
  const P = valve.phi * (dp - holeDrop('ports', valve.ports, Q_s, oil, newSheet()));
  const h = opening(valve, P, newSheet());
  return h <= 0 ? 1 : curtainDrop(valve.land, h, Q_s, oil, valve.phi).drop - P / valve.phi;
}

function openSteps(valve: HandValve, { dp, Q_s }: Tried, oil: Oil, sheet: Sheet): void {
  const { put } = sheet;
  const { phi, land } = valve;
  put('Q_s', 'the rest, through ports and shims', Q_s, 'mL/s');
  const p = dp - holeDrop('ports', valve.ports, Q_s, oil, sheet);
  if (phi !== 1) put('p', 'Δp − Δp ports', p, 'MPa');
  const P = put('P', phi === 1 ? 'Δp − Δp ports' : 'φp', phi * p, 'MPa');
  const h = opening(valve, P, sheet);
  const { a, b, drop } = curtainDrop(land, h, Q_s, oil, phi);
  const share = phi === 1 ? '' : ', over φ';
  put('a', `6 μ ln(r₂/r₁)/(πh³) + 32 μ/(πwh²), w = 2πr₁${share}`, a, 'Pa·s/m³');
  put('b', `ρ/2 / (0.7 w h)²${share && ', over φ²'}`, b, 'Pa·s²/m⁶');
  put('aQ_s', 'creeping part', a * Q_s, 'MPa');
  put('aQ_s + bQ_s²', phi === 1 ? 'must be P' : 'must be p', drop, 'MPa');
}

function opening({ kappa, seat, pressed, float }: HandValve, P: number, { put }: Sheet): number {
  if (!float) return put('h', pressed ? 'κP − h_s − h₀' : 'κP − h_s', kappa * P - seat - pressed, 'mm');
  const { travel, rate, preload, area } = float;
  const z = Math.min(Math.max((P * area - preload) / rate, 0), travel);
  put('z', '(PA_z − preload)/rate of the float, from 0 to its stop', z, 'mm');
  return put('h', 'κP + z', kappa * P - seat - pressed + z, 'mm');
}

function beside({ gap, poppet }: HandValve, dp: number, v: number, oil: Oil, sheet: Sheet): number {
  return (gap ? leakFlow(gap, dp, v, oil, sheet) : 0) + (poppet ? poppetFlow(poppet, dp, oil, sheet) : 0);
}

export function bleedDrop({ hole, needle }: HandBleed, Q: number, oil: Oil, sheet: Sheet): number {
  const through = holeDrop('bleed', hole, Q, oil, sheet);
  if (!needle) return sheet.put('Δp', 'over the valve', through, 'MPa');
  const gap = needleDrop('needle', needle, Q, oil, sheet);
  return sheet.put('Δp', 'over the valve: hole and needle', through + gap, 'MPa');
}
