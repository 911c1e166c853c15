/**
 * The shape of a waved stack, read at an angle: w(r, θ) = lift + Σ h_k cos(k · waves · θ), a port or crest at θ = 0. Angles are
 * phases φ = waves · θ, so that half a period, 0 to π, holds everything. No mechanics here.
 */
import type { ConvergedLift, StackShape } from '../app/solved.ts';

/** A shape with the number of its waves; 0 where it is round. */
export interface WaveShape extends StackShape {
  readonly waves: number;
}

const between = (a: number, b: number, share: number): number => a + (b - a) * share;

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/** The k-th harmonic (from 1) of `waves` waves among those of a shape; nothing where it has none there. */
function harmonicOf(point: ConvergedLift, shim: number, k: number, waves: number): Float64Array | undefined {
  const own = point.wave?.waves ?? 0;
  const at = own === 0 ? 0 : (k * waves) / own;
  return Number.isInteger(at) && at > 0 ? point.shape.harmonics_m?.[shim]?.[at - 1] : undefined;
}

/** How many harmonics of `waves` waves a point needs. */
const orderOf = ({ shape, wave }: ConvergedLift, waves: number): number =>
  wave && wave.waves > 0 ? ((shape.harmonics_m?.[0]?.length ?? 0) * wave.waves) / waves : 0;

/** Straight between two solved points, harmonic by harmonic; where their waves differ, in the waves that hold both. */
export function shapeBetween(a: ConvergedLift, b: ConvergedLift, share: number): WaveShape {
  const lift_m = a.shape.lift_m.map((row, s) => row.map((value, i) => between(value, b.shape.lift_m[s][i], share)));
  const { radius_m, firstNode } = a.shape;
  const waves = commonDivisor(a.wave?.waves ?? 0, b.wave?.waves ?? 0);
  if (waves === 0) return { radius_m, firstNode, lift_m, waves };
  const orders = Array.from({ length: Math.max(orderOf(a, waves), orderOf(b, waves)) }, (_, i) => i + 1);
  const harmonics_m = lift_m.map((row, s) =>
    orders.map((k) => {
      const [from, to] = [harmonicOf(a, s, k, waves), harmonicOf(b, s, k, waves)];
      return row.map((_, i) => between(from?.[i] ?? 0, to?.[i] ?? 0, share));
    }),
  );
  return { radius_m, firstNode, lift_m, waves, harmonics_m };
}

/** Lift of one shim at its nodes at the phase φ [m]. */
export const liftAt = ({ lift_m, harmonics_m }: StackShape, shim: number, phi: number): Float64Array =>
  lift_m[shim].map((mean, i) =>
    (harmonics_m?.[shim] ?? []).reduce((w, h, k) => w + h[i] * Math.cos((k + 1) * phi), mean),
  );

/** Parts of half a wave at which crest and trough are looked for: those at which the solver looks, or finer. */
const PARTS = 12;

export interface Extremes {
  /** Phases at which the rim of the face shim stands highest and lowest. */
  readonly crest: number;
  readonly trough: number;
}

/** Undefined where the stack is round. */
export function extremesOf(shape: WaveShape): Extremes | undefined {
  const order = shape.waves > 0 ? (shape.harmonics_m?.[0]?.length ?? 0) : 0;
  if (order === 0) return undefined;
  const parts = PARTS * order;
  const phases = Array.from({ length: parts + 1 }, (_, i) => (i * Math.PI) / parts);
  const rims = phases.map((phi) => liftAt(shape, 0, phi).at(-1) ?? 0);
  return {
    crest: phases[rims.indexOf(Math.max(...rims))],
    trough: phases[rims.lastIndexOf(Math.min(...rims))],
  };
}
