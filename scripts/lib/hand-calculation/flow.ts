/**
 * Drops of oil by hand. Every one is a creeping and a quadratic term; see docs/theory-hydraulics.md for their sources.
 *
 * symbol    unit    meaning
 * Q, u      m3/s, m/s  flow, mean velocity
 * V         m/s     ideal velocity: dp = rho V^2/2
 * d, s      m, -    diameter of a hole, its length over that
 * nu, mu    m2/s, Pa s  viscosities
 * h, w      m       opening, length round it
 */
import type { Sheet } from './sheet.ts';

export interface Oil {
  readonly density: number;
  /** Kinematic [m2/s]. */
  readonly nu: number;
}

export interface Hole {
  readonly count: number;
  readonly area: number;
  readonly diameter: number;
  readonly length: number;
}

const JET = 0.7;
export const SHARP = Math.PI / (Math.PI + 2);

/** The formula of a hole goes over to creeping flow there. */
const LOWEST_REYNOLDS = 10;

export const dynamic = ({ density, nu }: Oil): number => density * nu;

/**
 * Hole of s from 1.5 to 10: V^2 = V u (1/Cdu - x) + K nu u/d, a quadratic in V, first with x = 0, then with
 * x = 0.005 s / [1 + 7.5 (log10 0.00015 Re)^2] at the Re = V d/nu of the first.
 */
export function holeDrop(name: string, hole: Hole, Q: number, oil: Oil, { put }: Sheet): number {
  const { diameter: d, length } = hole;
  const s = length / d;
  if (s < 1.5 || s > 10) throw new Error(`${name}: the formula holds for 1.5 to 10 diameters, not for ${s}`);
  const highest = s <= 2 ? 0.81 : 0.827 - 0.0085 * s;
  const K = 20 * (1 + 2.25 * s);
  const u = put(`u ${name}`, 'its flow / its area', Q / (hole.count * hole.area), 'm/s');
  const velocity = (slope: number) => (u * slope) / 2 + Math.sqrt(((u * slope) / 2) ** 2 + (K * oil.nu * u) / d);
  const first = velocity(1 / highest);
  const Re = put(`Re ${name}`, 'V d/ν, with V from the quadratic without x', (first * d) / oil.nu, '');
  const x = put(`x ${name}`, '0.005 s/[1 + 7.5 (log₁₀ 0.00015 Re)²]', bump(s, Re), '');
  const slope = 1 / highest - x;
  const V = put(`V ${name}`, 'V² = V u (1/Cdu − x) + K ν u/d', velocity(slope), 'm/s');
  const dp = put(`Δp ${name}`, 'ρV²/2', (oil.density * V * V) / 2, 'MPa');
  const quadratic = (oil.density * (u * slope) ** 2) / 2;
  put(`creeping ${name}`, 'of which more than ρ/2 [u (1/Cdu − x)]²', dp - quadratic, 'MPa');
  return dp;
}

/** @throws Error where a hole on the sheet is in creeping flow, for which its formula is not meant */
export function checkHoles({ steps }: Sheet): void {
  const slow = steps.find(({ symbol, value }) => symbol.startsWith('Re ') && value > 0 && value < LOWEST_REYNOLDS);
  if (slow) throw new Error(`${slow.symbol} is ${slow.value}; the formula holds from ${LOWEST_REYNOLDS} on`);
}

const bump = (s: number, Re: number): number => (0.005 * s) / (1 + 7.5 * Math.log10(0.00015 * Re) ** 2);

export interface NeedleSizes {
  readonly holeDiameter: number;
  /** Half the cone angle [rad], travel from closed [m]. */
  readonly halfAngle: number;
  readonly travel: number;
}

/** dp = 32 mu Q/(pi A s) + rho/2 (Q/(Cd A))^2 with s the slit and A = pi s (d - s cos a). */
export function needleDrop(name: string, needle: NeedleSizes, Q: number, oil: Oil, { put }: Sheet): number {
  const { holeDiameter: d, halfAngle, travel } = needle;
  const slit = put(`s ${name}`, 'slit: travel · sin α', travel * Math.sin(halfAngle), 'mm');
  const area = Math.PI * slit * (d - slit * Math.cos(halfAngle));
  put(`A ${name}`, 'π s (d − s cos α)', area, 'mm²');
  const creeping = (32 * dynamic(oil) * Q) / (Math.PI * area * slit);
  const jet = (oil.density / 2) * (Q / (SHARP * area)) ** 2;
  put(`creeping ${name}`, '32 μQ/(πAs)', creeping, 'MPa');
  return put(`Δp ${name}`, 'that + ρ/2 (Q/0.611 A)²', creeping + jet, 'MPa');
}

export interface Land {
  readonly r1: number;
  readonly r2: number;
}

/**
 * dp = [6 mu ln(r2/r1)/(pi h^3) + 32 mu/(pi w h^2)] Q + rho/2 (Q/(Cd w h))^2 with w = 2 pi r1; over a share phi of the circumference
 * that share of Q at the same dp.
 */
export function curtainDrop(
  { r1, r2 }: Land,
  h: number,
  Q: number,
  oil: Oil,
  phi = 1,
): Record<'a' | 'b' | 'drop', number> {
  const w = 2 * Math.PI * r1;
  const mu = dynamic(oil);
  const a = ((6 * mu * Math.log(r2 / r1)) / (Math.PI * h ** 3) + (32 * mu) / (Math.PI * w * h * h)) / phi;
  const b = oil.density / 2 / (phi * JET * w * h) ** 2;
  return { a, b, drop: a * Q + b * Q * Q };
}

/** The root of a falling function, halved down to the last digit. */
export function fallingRoot(f: (x: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  for (let i = 0; i < 80; i++) {
    const middle = (from + to) / 2;
    if (f(middle) > 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}

/** Flow at a drop of a Q + b Q^2. */
export const flowAt = (dp: number, a: number, b: number): number => (2 * dp) / (a + Math.sqrt(a * a + 4 * b * dp));
