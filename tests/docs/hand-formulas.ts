/** The formulas of the calculation by hand once more, for its printed values: mm, mL/s, MPa, N, m/s. */

export interface Fluid {
  /** [mm²/s] */
  readonly nu: number;
  /** [kg/m³] */
  readonly rho: number;
}

/** Count, diameter, length. */
export type HoleSizes = readonly [number, number, number];
/** Hole, half angle in degrees, travel. */
export type Cone = readonly [number, number, number];

const SHARP = Math.PI / (Math.PI + 2);
const dynamic = ({ nu, rho }: Fluid): number => nu * 1e-6 * rho;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

export function holeDrop(Q: number, [count, d, L]: HoleSizes, fluid: Fluid): number {
  const s = L / d;
  const u = (Q * 1e-6) / (count * (Math.PI / 4) * (d * 1e-3) ** 2);
  const Cdu = s <= 2 ? 0.81 : 0.827 - 0.0085 * s;
  const viscous = (20 * (1 + 2.25 * s) * fluid.nu * 1e-6 * u) / (d * 1e-3);
  const V = (slope: number) => (u * slope + Math.sqrt((u * slope) ** 2 + 4 * viscous)) / 2;
  const Re = (V(1 / Cdu) * d * 1e-3) / (fluid.nu * 1e-6);
  const x = (0.005 * s) / (1 + 7.5 * Math.log10(0.00015 * Re) ** 2);
  return 0.5e-6 * fluid.rho * V(1 / Cdu - x) ** 2;
}

/** Slit and area that a cone leaves open. */
export function frustum([d, half, travel]: Cone): { s: number; A: number } {
  const s = travel * Math.sin(radians(half));
  return { s, A: Math.PI * s * (d - s * Math.cos(radians(half))) };
}

/** Of a needle or a poppet. */
export function coneDrop(Q: number, cone: Cone, fluid: Fluid): number {
  const { s, A } = frustum(cone);
  const creeping = (32 * dynamic(fluid) * Q * 1e-6) / (Math.PI * A * s * 1e-9);
  return (creeping + (fluid.rho / 2) * ((Q * 1e-6) / (SHARP * A * 1e-6)) ** 2) / 1e6;
}

/** Of an opening h over the land r1 to r2, over a share of the circumference. */
export function curtainDrop(h: number, Q: number, [r1, r2]: readonly [number, number], fluid: Fluid, share = 1) {
  const [gap, w] = [h * 1e-3, 2e-3 * Math.PI * r1];
  const creeping =
    (6 * dynamic(fluid) * Math.log(r2 / r1)) / (Math.PI * gap ** 3) + (32 * dynamic(fluid)) / (Math.PI * w * gap * gap);
  const q = (Q * 1e-6) / share;
  return (creeping * q + (fluid.rho / 2) * (q / (0.7 * w * gap)) ** 2) / 1e6;
}

/** Bore, clearance, length, eccentricity. */
export type GapSizes = readonly [number, number, number, number];

export function gapDrop(Q: number, [bore, c, L, e]: GapSizes, fluid: Fluid): number {
  const [D, q] = [bore - c, Q * 1e-6];
  const friction = (12 * dynamic(fluid) * L * 1e-3 * q) / (Math.PI * D * c ** 3 * 1e-12 * (1 + 1.5 * e * e));
  return (friction + ((54 / 35) * fluid.rho * (q / (Math.PI * D * c * 1e-6)) ** 2) / 2) / 1e6;
}

export const dragged = ([bore, c]: GapSizes, speed: number): number => (Math.PI * (bore - c) * c * speed) / 2;

/** Seat, half angle, rate, force at rest. */
export type PoppetSizes = readonly [number, number, number, number];

/** What holds a poppet at a lift. */
export function poppetPressure(x: number, [d, half, rate, force]: PoppetSizes): number {
  const closing = 2 * SHARP * 0.98 * frustum([d, half, x]).A * Math.cos(radians(half));
  return (force + rate * x) / ((Math.PI / 4) * d * d - closing);
}

export const circle = (d: number): number => (Math.PI / 4) * d * d;
/** A port of any shape, known by its area, counts as round. */
export const roundPort = (area: number): number => Math.sqrt((4 * area) / Math.PI);
