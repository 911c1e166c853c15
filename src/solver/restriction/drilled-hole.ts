/**
 * Bank of holes of any length over diameter, s = L/d:
 *   s <= 0.5          sharp-edged hole
 *   0.5 < s < 1.5     flows of the sharp hole and of the long orifice at s = 1.5, mixed in proportion to s - 0.5
 *   1.5 <= s <= 10    long orifice
 *   s > 10            long orifice of s = 10 and, in series, friction over the rest of the length
 * The mixture is ours: between the two the jet may reattach or not, with hysteresis, and no published law was found, so the coefficient is
 * known to no better than that it lies from 0.61 to 0.81 there, which is more than the bands of both; the rule is continuous in s and
 * smooth in Re. Everything is written over the ideal velocity V of the orifice part,
 *   dp(V) = rho V^2/2 [+ f (s - 10) rho u^2/2],   Q(V) = A V Cd,   u = Q/A,
 * both rising in V, so each direction is explicit or one root.
 *
 * symbol  unit   meaning
 * A, d    m2, m  area of all holes, hydraulic diameter of one
 * V, u    m/s    ideal and mean velocity
 * s       -      length over hydraulic diameter
 * w       -      share of the long orifice in the mixture
 */
import { risingRoot } from '../numeric/bracketed-root.ts';
import { type RootGuess, secantRoot } from '../numeric/secant-root.ts';
import { exact, mapSolved, type Solved, valueOrNaN } from '../numeric/solved.ts';
import type { Coefficients } from './coefficients.ts';
import { LONGEST_SLENDERNESS, longOrificeCoefficient, longOrificeTerms, SHORTEST_SLENDERNESS } from './long-orifice.ts';
import { frictionFactor } from './passage-friction.ts';
import { sharpOrifice } from './sharp-orifice.ts';
import type { FluidState, Holes, Restriction } from './types.ts';

/** Up to here a hole counts as sharp-edged. */
const SHARP_BELOW = 0.5;

const FORWARD = { low: 0, high: Number.POSITIVE_INFINITY };

/** Left over of a flow that is sought, relative to it. */
const TOLERANCE = 1e-14;

/** Restriction of the whole bank; `not-converged` only for numbers that are no numbers. */
export function drilledHole(holes: Holes, fluid: FluidState, coefficients: Coefficients): Restriction {
  const s = holes.length_m / holes.hydraulicDiameter_m;
  const sharp = sharpOrifice(holes, fluid, coefficients.sharpEdgeDischarge);
  if (s <= SHARP_BELOW) return sharp;
  const A = holes.count * holes.area_m2;
  const rho = fluid.density_kg_m3;
  const long = longFlow(holes, s, fluid, coefficients.longOrificeFactor);
  const w = Math.min((s - SHARP_BELOW) / (SHORTEST_SLENDERNESS - SHARP_BELOW), 1);
  const sharpFlow = (V: number) => valueOrNaN(sharp.flow((rho * V * V) / 2));
  const Q = w === 1 ? long : (V: number) => (1 - w) * sharpFlow(V) + w * long(V);
  const friction = s > LONGEST_SLENDERNESS ? extraFriction(holes, s, fluid) : () => 0;
  const dp = (V: number) => (rho * V * V) / 2 + friction(Q(V));
  const idealVelocity = (drop: number): Solved =>
    s > LONGEST_SLENDERNESS && drop > 0
      ? risingRoot((V) => dp(V) - drop, Math.sqrt(drop / rho) * 1e-3)
      : exact(Math.sqrt((2 * drop) / rho));
  const guess = velocityGuess(holes, s, fluid);
  const velocityAt = (flow: number): Solved => {
    const excess = (V: number) => Q(V) - flow;
    return secantRoot(excess, guess(flow), FORWARD, TOLERANCE * flow, () => risingRoot(excess, flow / A));
  };
  return {
    flow: (drop) => mapSolved(idealVelocity(drop), Q),
    drop: (flow) => (flow === 0 ? exact(0) : mapSolved(velocityAt(flow), dp)),
    throat_m2: () => A,
  };
}

/**
 * Ideal velocity of a long orifice but for the small third term of its coefficient: V = u (1/Cdu + B/Re) is a quadratic in V. For
 * holes of another length it is only a place to begin at.
 */
function velocityGuess(holes: Holes, s: number, fluid: FluidState): (Q: number) => RootGuess {
  const sInRange = Math.min(Math.max(s, SHORTEST_SLENDERNESS), LONGEST_SLENDERNESS);
  const { highest: Cdu, viscous } = longOrificeTerms(sInRange);
  const creeping = (viscous * fluid.dynamicViscosity_Pa_s) / (fluid.density_kg_m3 * holes.hydraulicDiameter_m);
  const A = holes.count * holes.area_m2;
  return (Q) => {
    const u = Q / A;
    const half = u / (2 * Cdu);
    const V = half + Math.sqrt(half * half + u * creeping);
    return { x: V, slope: (V / Cdu + creeping) / (2 * (V - half) * A) };
  };
}

function longFlow(holes: Holes, s: number, fluid: FluidState, factor: number): (V: number) => number {
  const A = holes.count * holes.area_m2;
  const sInRange = Math.min(Math.max(s, SHORTEST_SLENDERNESS), LONGEST_SLENDERNESS);
  const reynoldsPerSpeed = (fluid.density_kg_m3 * holes.hydraulicDiameter_m) / fluid.dynamicViscosity_Pa_s;
  return (V) => A * V * factor * longOrificeCoefficient(sInRange, reynoldsPerSpeed * V);
}

function extraFriction(holes: Holes, s: number, fluid: FluidState): (Q: number) => number {
  const A = holes.count * holes.area_m2;
  const { density_kg_m3: rho, dynamicViscosity_Pa_s: mu } = fluid;
  return (Q) => {
    if (Q === 0) return 0;
    const u = Q / A;
    const Re = (rho * u * holes.hydraulicDiameter_m) / mu;
    return (frictionFactor(Re) * (s - LONGEST_SLENDERNESS) * rho * u * u) / 2;
  };
}
