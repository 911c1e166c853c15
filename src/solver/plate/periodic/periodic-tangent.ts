/**
 * Tangent of a periodic plate: what the state adds to the stiffness of the flat one.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | wr, wt | - | slopes along r and round the circle |
 * | C, G | N | stretching and shear rigidity C, C (1 - ν)/2, times the area of the point |
 * | Hrr, Hrt, Htt | N | Nr + C wr² + G wt², Ns + (ν C + G) wr wt, Nt + C wt² + G wr² |
 *
 * K between lifts is ∫ of H on the slopes; between lift and in-plane field ∫ of the force that a strain of the second
 * makes, times the slopes. A share `push` of what N presses is kept: 1 is the true tangent, 0 is always positive definite.
 * Source: docs/theory-port-periodic.md.
 */
import { GAUSS_POINTS } from '../hermite-tables.ts';
import { type PeriodicPlate, STATE } from './periodic-plate.ts';

/** Coefficients of a pair of fields at a Gauss point: value-value, value-slope, slope-value, slope-slope. */
const PAIR = 4;

/** Fills `band` at the state of the last `assemblePeriodicForce`, held unknowns uncoupled. */
export function assemblePeriodicTangent(plate: PeriodicPlate, push: number): void {
  const { band, rest, nodes, basis, layout, fixed } = plate;
  band.set(rest);
  const pairs = new Float64Array(basis.lifts * layout.fields * PAIR);
  for (let e = 0; e < nodes - 1; e++) {
    for (let g = e * GAUSS_POINTS; g < (e + 1) * GAUSS_POINTS; g++) {
      pairs.fill(0);
      for (let s = 0; s < basis.points; s++) {
        addLiftPairs(plate, g, s, push, pairs);
        addPlanePairs(plate, g, s, pairs);
      }
      spreadPairs(plate, e, g, pairs);
    }
  }
  for (const f of fixed) uncouple(plate, f);
}

function addLiftPairs(plate: PeriodicPlate, g: number, s: number, push: number, pairs: Float64Array): void {
  const { basis, state, C, nu, tables, first, layout } = plate;
  const { lifts, points, lift, liftTurn } = basis;
  const at = (g * points + s) * STATE;
  const wr = state[at];
  const wt = state[at + 1];
  const c = (C * tables.rw[first * GAUSS_POINTS + g]) / points;
  const shear = (c * (1 - nu)) / 2;
  let Nr = state[at + 2];
  let Nt = state[at + 3];
  let Ns = state[at + 4];
  if (push < 1) {
    // N = Σ σ eeᵀ over its principal directions e; those with σ < 0 count for a share alone.
    const middle = (Nr + Nt) / 2;
    const half = (Nr - Nt) / 2;
    const radius = Math.hypot(half, Ns);
    const high = pushed(middle + radius, push);
    const low = pushed(middle - radius, push);
    const turn = radius === 0 ? 0 : (high - low) / (2 * radius);
    Nr = (high + low) / 2 + turn * half;
    Nt = (high + low) / 2 - turn * half;
    Ns *= turn;
  }
  const Hrr = Nr + c * wr * wr + shear * wt * wt;
  const Htt = Nt + c * wt * wt + shear * wr * wr;
  const Hrt = Ns + (nu * c + shear) * wr * wt;
  for (let j = 0; j < lifts; j++) {
    const a = lift[s * lifts + j];
    const t = liftTurn[s * lifts + j];
    for (let k = 0; k <= j; k++) {
      const b = lift[s * lifts + k];
      const u = liftTurn[s * lifts + k];
      const p = (j * layout.fields + k) * PAIR;
      pairs[p] += Htt * t * u;
      pairs[p + 1] += Hrt * t * b;
      pairs[p + 2] += Hrt * a * u;
      pairs[p + 3] += Hrr * a * b;
    }
  }
}

const pushed = (principal: number, push: number): number => (principal < 0 ? push * principal : principal);

function addPlanePairs(plate: PeriodicPlate, g: number, s: number, pairs: Float64Array): void {
  const { basis, state, C, nu, tables, first, layout } = plate;
  const { lifts, outs, turns, points } = basis;
  const at = (g * points + s) * STATE;
  const c = (C * tables.rw[first * GAUSS_POINTS + g]) / points;
  const cr = c * state[at];
  const ct = c * state[at + 1];
  const shear = (1 - nu) / 2;
  for (let j = 0; j < lifts; j++) {
    const a = basis.lift[s * lifts + j];
    const t = basis.liftTurn[s * lifts + j];
    // Forces on value (v) and slope (d) of the lift for a unit of er, et and shear.
    const [vr, vt, vs] = [nu * ct * t, ct * t, shear * cr * t];
    const [dr, dt, ds] = [cr * a, nu * cr * a, shear * ct * a];
    let p = (j * layout.fields + lifts) * PAIR;
    for (let m = 0; m < outs; m++, p += PAIR) {
      const cos = basis.out[s * outs + m];
      const sin = basis.outTurn[s * outs + m];
      pairs[p] += vt * cos + vs * sin;
      pairs[p + 1] += vr * cos;
      pairs[p + 2] += dt * cos + ds * sin;
      pairs[p + 3] += dr * cos;
    }
    for (let m = 0; m < turns; m++, p += PAIR) {
      const sin = basis.turn[s * turns + m];
      const cos = basis.turnTurn[s * turns + m];
      pairs[p] += vt * cos - vs * sin;
      pairs[p + 1] += vs * sin;
      pairs[p + 2] += dt * cos - ds * sin;
      pairs[p + 3] += ds * sin;
    }
  }
}

function spreadPairs(plate: PeriodicPlate, e: number, g: number, pairs: Float64Array): void {
  const { tables, band, layout, first, basis } = plate;
  const { at, b, perNode, fields } = layout;
  const { d0, d1 } = tables;
  const q = first * GAUSS_POINTS + g;
  const h = q * 4;
  const ri = tables.rinv[q];
  // Entry (i, j) of the element with i >= j lies at i b + j after this.
  const base = e * perNode * (b + 1) + b;
  for (let j = 0; j < basis.lifts; j++) {
    for (let f = 0; f < fields; f++) {
      if (f > j && f < basis.lifts) continue;
      const p = (j * fields + f) * PAIR;
      const vv = pairs[p] * ri * ri;
      const vd = pairs[p + 1] * ri;
      const dv = pairs[p + 2] * ri;
      const dd = pairs[p + 3];
      for (let k = 0; k < 4; k++) {
        const onValue = vv * d0[h + k] + vd * d1[h + k];
        const onSlope = dv * d0[h + k] + dd * d1[h + k];
        const col = at[4 * f + k];
        for (let i = f === j ? k : 0; i < 4; i++) {
          const row = at[4 * j + i];
          const value = onValue * d0[h + i] + onSlope * d1[h + i];
          band[base + (row >= col ? row * b + col : col * b + row)] += value;
        }
      }
    }
  }
}

/** Removes the coupling of unknown f, which the clamp holds; the diagonal stays so that the scale of the matrix does. */
function uncouple({ band, layout, size }: PeriodicPlate, f: number): void {
  const { b } = layout;
  for (let k = 1; k <= b; k++) {
    if (f - k >= 0) band[f * (b + 1) + b - k] = 0;
    if (f + k < size) band[(f + k) * (b + 1) + b - k] = 0;
  }
}
