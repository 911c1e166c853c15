/**
 * Internal force and energy of a periodic plate.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | wr, wt | - | slope along r (a cone's own s0 included) and round the circle, w_r and w_θ/r |
 * | er, et, g | - | u_r + (wr² - s0²)/2, (u + v_θ)/r + wt²/2, (u_θ - v)/r + v_r + wr wt |
 * | Nr, Nt, Ns | N | membrane forces C (er + ν et), C (et + ν er), C (1 - ν)/2 g, times the area of the point |
 * | F | N | work of a field's value over r, and of its slope, at a Gauss point; two numbers a field |
 *
 * E = ½ ∫ (Nr er + Nt et + Ns g) + bending + springs. At a Gauss point in r the forces are summed over the circle
 * first, then spread over the shapes in r.
 * Source: von Kármán plate in polar coordinates, docs/theory-port-periodic.md.
 */
import { GAUSS_POINTS } from '../hermite-tables.ts';
import { type PeriodicPlate, STATE } from './periodic-plate.ts';

/** Fills `internal` and `state` from `x`. */
export function assemblePeriodicForce(plate: PeriodicPlate): void {
  plate.internal.fill(0);
  const { fields } = plate.layout;
  const values = new Float64Array(2 * fields);
  const forces = new Float64Array(2 * fields);
  for (let e = 0; e < plate.nodes - 1; e++) {
    addElementForce(plate, e, values, forces, plate.internal, e * plate.layout.perNode);
  }
  addSprings(plate);
}

/** What element e alone exerts on its two nodes, placed as in `layout.at`; fills its part of `state`. */
export function elementForce(plate: PeriodicPlate, e: number): Float64Array {
  const { fields, perNode } = plate.layout;
  const out = new Float64Array(2 * perNode);
  addElementForce(plate, e, new Float64Array(2 * fields), new Float64Array(2 * fields), out, 0);
  return out;
}

function addElementForce(
  plate: PeriodicPlate,
  e: number,
  values: Float64Array,
  forces: Float64Array,
  target: Float64Array,
  base: number,
): void {
  addBending(plate, e, target, base);
  for (let g = e * GAUSS_POINTS; g < (e + 1) * GAUSS_POINTS; g++) {
    readFields(plate, e, g, values);
    forces.fill(0);
    for (let s = 0; s < plate.basis.points; s++) {
      readPoint(plate, g, s, values);
      addPoint(plate, g, s, forces);
    }
    spread(plate, g, forces, target, base);
  }
}

/** Value over r, and slope, of every field at Gauss point g of the plate. */
export function readFields(plate: PeriodicPlate, e: number, g: number, values: Float64Array): void {
  const { tables, x, layout, first } = plate;
  const { at, fields, perNode } = layout;
  const q = first * GAUSS_POINTS + g;
  const [h, base, ri] = [q * 4, e * perNode, tables.rinv[q]];
  const { d0, d1 } = tables;
  for (let f = 0; f < fields; f++) {
    const x0 = x[base + at[4 * f]];
    const x1 = x[base + at[4 * f + 1]];
    const x2 = x[base + at[4 * f + 2]];
    const x3 = x[base + at[4 * f + 3]];
    values[2 * f] = (d0[h] * x0 + d0[h + 1] * x1 + d0[h + 2] * x2 + d0[h + 3] * x3) * ri;
    values[2 * f + 1] = d1[h] * x0 + d1[h + 1] * x1 + d1[h + 2] * x2 + d1[h + 3] * x3;
  }
}

/** Fills the state of point s round the circle at Gauss point g. @returns er Nr + et Nt + g Ns, twice its energy [J] */
export function readPoint(plate: PeriodicPlate, g: number, s: number, values: Float64Array): number {
  const { basis, state, C, nu, tables, first, initialSlope: s0 } = plate;
  const { lifts, outs, turns, points } = basis;
  let wr = s0;
  let wt = 0;
  for (let j = 0; j < lifts; j++) {
    wr += values[2 * j + 1] * basis.lift[s * lifts + j];
    wt += values[2 * j] * basis.liftTurn[s * lifts + j];
  }
  let er = (wr * wr - s0 * s0) / 2;
  let et = (wt * wt) / 2;
  let shear = wr * wt;
  for (let m = 0, f = 2 * lifts; m < outs; m++, f += 2) {
    er += values[f + 1] * basis.out[s * outs + m];
    et += values[f] * basis.out[s * outs + m];
    shear += values[f] * basis.outTurn[s * outs + m];
  }
  for (let m = 0, f = 2 * (lifts + outs); m < turns; m++, f += 2) {
    et += values[f] * basis.turnTurn[s * turns + m];
    shear += (values[f + 1] - values[f]) * basis.turn[s * turns + m];
  }
  const c = (C * tables.rw[first * GAUSS_POINTS + g]) / points;
  const at = (g * points + s) * STATE;
  const Nr = c * (er + nu * et);
  const Nt = c * (et + nu * er);
  const Ns = ((c * (1 - nu)) / 2) * shear;
  state[at] = wr;
  state[at + 1] = wt;
  state[at + 2] = Nr;
  state[at + 3] = Nt;
  state[at + 4] = Ns;
  return er * Nr + et * Nt + shear * Ns;
}

function addPoint({ basis, state }: PeriodicPlate, g: number, s: number, forces: Float64Array): void {
  const { lifts, outs, turns, points } = basis;
  const at = (g * points + s) * STATE;
  const wr = state[at];
  const wt = state[at + 1];
  const Nr = state[at + 2];
  const Nt = state[at + 3];
  const Ns = state[at + 4];
  for (let j = 0; j < lifts; j++) {
    forces[2 * j] += (Nt * wt + Ns * wr) * basis.liftTurn[s * lifts + j];
    forces[2 * j + 1] += (Nr * wr + Ns * wt) * basis.lift[s * lifts + j];
  }
  for (let m = 0, f = 2 * lifts; m < outs; m++, f += 2) {
    forces[f] += Nt * basis.out[s * outs + m] + Ns * basis.outTurn[s * outs + m];
    forces[f + 1] += Nr * basis.out[s * outs + m];
  }
  for (let m = 0, f = 2 * (lifts + outs); m < turns; m++, f += 2) {
    const t = Ns * basis.turn[s * turns + m];
    forces[f] += Nt * basis.turnTurn[s * turns + m] - t;
    forces[f + 1] += t;
  }
}

function spread(
  { tables, layout, first }: PeriodicPlate,
  g: number,
  forces: Float64Array,
  target: Float64Array,
  base: number,
): void {
  const { at, fields } = layout;
  const q = first * GAUSS_POINTS + g;
  const [h, ri] = [q * 4, tables.rinv[q]];
  for (let f = 0; f < fields; f++) {
    const value = forces[2 * f] * ri;
    const slope = forces[2 * f + 1];
    for (let i = 0; i < 4; i++) target[base + at[4 * f + i]] += value * tables.d0[h + i] + slope * tables.d1[h + i];
  }
}

function addBending({ bending, x, layout, basis }: PeriodicPlate, e: number, target: Float64Array, base: number): void {
  const size = 4 * basis.lifts;
  const { at, perNode } = layout;
  const from = e * perNode;
  for (let i = 0, k = e * size * size; i < size; i++) {
    let f = 0;
    for (let j = 0; j < size; j++, k++) f += bending[k] * x[from + at[j]];
    target[base + at[i]] += f;
  }
}

function addSprings(plate: PeriodicPlate): void {
  const { springs, internal, layout, basis } = plate;
  for (const { node, rate_N_m, preload_N } of springs) {
    const force = preload_N + rate_N_m * meanLift(plate, node);
    for (let j = 0; j < basis.lifts; j++) internal[node * layout.perNode + j * layout.d] += force * basis.mean[j];
  }
}

/** Mean lift round the circle of a node [m]. */
export function meanLift({ x, layout, basis }: PeriodicPlate, node: number): number {
  let w = 0;
  for (let j = 0; j < basis.lifts; j++) w += basis.mean[j] * x[node * layout.perNode + j * layout.d];
  return w;
}

/** Energy of plate and springs at `x` [J]; fills `state`. */
export function periodicEnergy(plate: PeriodicPlate): number {
  const { bending, x, layout, basis, springs } = plate;
  const size = 4 * basis.lifts;
  const values = new Float64Array(2 * layout.fields);
  let twice = 0;
  for (let e = 0; e < plate.nodes - 1; e++) {
    const base = e * layout.perNode;
    for (let i = 0, k = e * size * size; i < size; i++) {
      for (let j = 0; j < size; j++, k++) twice += x[base + layout.at[i]] * bending[k] * x[base + layout.at[j]];
    }
    for (let g = e * GAUSS_POINTS; g < (e + 1) * GAUSS_POINTS; g++) {
      readFields(plate, e, g, values);
      for (let s = 0; s < basis.points; s++) twice += readPoint(plate, g, s, values);
    }
  }
  for (const { node, rate_N_m, preload_N } of springs) {
    const w = meanLift(plate, node);
    twice += (rate_N_m * w + 2 * preload_N) * w;
  }
  return twice / 2;
}
