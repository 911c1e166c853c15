/**
 * The refill check by hand, a plate under a spring beside the bleed of the base valve. The flow of the bleed is tried:
 *   Q_b -> dp over the bleed -> p = dp - ports(Q - Q_b) -> x = (p A - F_0)/k, to its stop at most -> curtain drop at x and Q - Q_b = p
 * with A = pi (r2^2 - r1^2)/(2 ln(r2/r1)).
 *
 * symbol  unit  meaning
 * p       Pa    pressure across the plate
 * x       m     its lift
 */
import { checkHoles, curtainDrop, fallingRoot, type Hole, holeDrop, type Land, type Oil } from './flow.ts';
import { newSheet } from './sheet.ts';
import { bleedDrop, type HandBleed, type Passed } from './valve.ts';

export interface HandCheck {
  readonly bleed: HandBleed;
  readonly ports: Hole;
  readonly land: Land;
  readonly rate: number;
  readonly preload: number;
  readonly travel: number;
}

/** @throws Error where the bleed alone passes the flow before the plate lifts */
export function checkByHand({ bleed, ports, land, rate, preload, travel }: HandCheck, Q: number, oil: Oil): Passed {
  const sheet = newSheet();
  const { put } = sheet;
  const { r1, r2 } = land;
  const area = (Math.PI * (r2 ** 2 - r1 ** 2)) / (2 * Math.log(r2 / r1));
  if (bleedDrop(bleed, Q, oil, newSheet()) * area <= preload) throw new Error('the refill check stays closed');
  const liftAt = (p: number) => Math.min((p * area - preload) / rate, travel);
  const mismatch = (Q_b: number) => {
    const p = bleedDrop(bleed, Q_b, oil, newSheet()) - holeDrop('ports', ports, Q - Q_b, oil, newSheet());
    return liftAt(p) <= 0 ? 1 : curtainDrop(land, liftAt(p), Q - Q_b, oil).drop - p;
  };
  put('Q', 'flow through check and bleed', Q, 'mL/s');
  const Q_b = put(
    'Q_b',
    'through the bleed; tried until the last two lines agree',
    fallingRoot(mismatch, 0, Q),
    'mL/s',
  );
  const dp = bleedDrop(bleed, Q_b, oil, sheet);
  const Q_c = put('Q_c', 'the rest, through the check', Q - Q_b, 'mL/s');
  const p = put('p', 'Δp − Δp ports', dp - holeDrop('ports', ports, Q_c, oil, sheet), 'MPa');
  const x = put('x', '(pA − preload)/rate, to its stop at most', liftAt(p), 'mm');
  const { a, b, drop } = curtainDrop(land, x, Q_c, oil);
  put('a', '6 μ ln(r₂/r₁)/(πx³) + 32 μ/(πwx²), w = 2πr₁', a, 'Pa·s/m³');
  put('b', 'ρ/2 / (0.7 w x)²', b, 'Pa·s²/m⁶');
  put('aQ_c + bQ_c²', 'must be p', drop, 'MPa');
  checkHoles(sheet);
  return { dp, sheet };
}
