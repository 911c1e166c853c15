/**
 * A shim under pressure on a smaller backing shim, contact along the backing rim only, from the constants of
 * integration of both plates; no table of plate formulas and no finite elements.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | b, c | - | clamp radius and backing rim over the face rim, a = 1 |
 * | w | - | deflection in q a⁴/D: c0 + c1 ln r + c2 r² + c3 r² ln r, + r⁴/64 where the pressure acts |
 * | S | - | w‴ + w″/r - w′/r², shear force over -D |
 * | P | - | force per length between the two along r = c, in q a |
 * | k | - | rigidity of the backing shim over that of the face shim |
 *
 * Thirteen unknowns (three sets of four constants, and P), thirteen conditions at b, c and the free rims.
 * Source: Timoshenko & Woinowsky-Krieger 1959, section 17 (general solution of a ring-shaped plate).
 */

interface Row {
  readonly label: string;
  readonly clampRadius: number;
  readonly shims: readonly [{ readonly thickness: number }, { readonly radius: number; readonly thickness: number }];
}

type Terms = readonly [number, number, number, number];

const deflection = (r: number): Terms => [1, Math.log(r), r * r, r * r * Math.log(r)];
const slope = (r: number): Terms => [0, 1 / r, 2 * r, r * (2 * Math.log(r) + 1)];
const second = (r: number): Terms => [0, -1 / (r * r), 2, 2 * Math.log(r) + 3];
const shear = (r: number): Terms => [0, 0, 0, 4 / r];
const moment = (r: number, nu: number): Terms =>
  second(r).map((v, i) => v + (nu * slope(r)[i]) / r) as unknown as Terms;

/** What the pressure alone adds to w, w′, w″ + νw′/r and S. */
const own = (r: number, nu: number) => ({
  w: r ** 4 / 64,
  slope: r ** 3 / 16,
  moment: ((3 + nu) * r * r) / 16,
  shear: r / 2,
});

/** The quantities of a `stack-coefficients` case of two shims. */
export function derive(input: unknown): Record<string, number> {
  const { poissonsRatio, rows } = input as { poissonsRatio: number; rows: readonly Row[] };
  const all: Record<string, number> = {};
  for (const row of rows) {
    const { clampRadius: b, shims } = row;
    const k = (shims[1].thickness / shims[0].thickness) ** 3;
    for (const [name, value] of Object.entries(solvePair(b, shims[1].radius, k, poissonsRatio))) {
      all[`${row.label} ${name}`] = value;
    }
  }
  return all;
}

function solvePair(b: number, c: number, k: number, nu: number) {
  const rows: number[][] = [];
  const zero: Terms = [0, 0, 0, 0];
  const minus = (t: Terms) => t.map((v) => -v);
  const condition = (
    inner: readonly number[],
    outer: readonly number[],
    back: readonly number[],
    P: number,
    rhs: number,
  ) => rows.push([...inner, ...outer, ...back, P, rhs]);
  const atClamp = own(b, nu);
  const atRim = own(1, nu);
  condition(deflection(b), zero, zero, 0, -atClamp.w);
  condition(slope(b), zero, zero, 0, -atClamp.slope);
  condition(deflection(c), minus(deflection(c)), zero, 0, 0);
  condition(slope(c), minus(slope(c)), zero, 0, 0);
  condition(second(c), minus(second(c)), zero, 0, 0);
  condition(shear(c), minus(shear(c)), zero, -1, 0);
  condition(zero, moment(1, nu), zero, 0, -atRim.moment);
  condition(zero, shear(1), zero, 0, -atRim.shear);
  condition(zero, zero, deflection(b), 0, 0);
  condition(zero, zero, slope(b), 0, 0);
  condition(zero, zero, moment(c, nu), 0, 0);
  condition(zero, zero, shear(c), 1 / k, 0);
  condition(deflection(c), zero, minus(deflection(c)), 0, -own(c, nu).w);
  const x = solveLinear(rows);
  const face = (r: number) => dot(deflection(r), x, r < c ? 0 : 4) + own(r, nu).w;
  const backing = (r: number) => dot(deflection(r), x, 8);
  return { rimLift: face(1), backingLift: backing(c), ringForce: x[12], largestGap: largestGap(b, c, face, backing) };
}

const dot = (terms: Terms, x: readonly number[], from: number): number =>
  terms.reduce((sum, t, i) => sum + t * x[from + i], 0);

function largestGap(b: number, c: number, face: (r: number) => number, backing: (r: number) => number): number {
  let largest = 0;
  for (let i = 1; i < 4000; i++) {
    const r = b + ((c - b) * i) / 4000;
    largest = Math.max(largest, backing(r) - face(r));
  }
  return largest;
}

/** Gaussian elimination with row pivoting; each row carries its right-hand side last. */
function solveLinear(rows: number[][]): number[] {
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    let pivot = i;
    for (let r = i + 1; r < n; r++) if (Math.abs(rows[r][i]) > Math.abs(rows[pivot][i])) pivot = r;
    [rows[i], rows[pivot]] = [rows[pivot], rows[i]];
    for (let r = 0; r < n; r++) {
      if (r === i) continue;
      const factor = rows[r][i] / rows[i][i];
      for (let j = i; j <= n; j++) rows[r][j] -= factor * rows[i][j];
    }
  }
  return rows.map((row, i) => row[n] / row[i]);
}
