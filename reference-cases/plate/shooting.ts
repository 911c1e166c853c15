/**
 * Large deflection of a ring-shaped or solid plate by shooting: the von Kármán equations as six first-order ones,
 * integrated from the inner edge outwards, with the unknown inner values found by Newton's method. No finite elements
 * and no energy: a different road to the same answer as the solver's.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | r, s | - | radius over the rim radius, ln r |
 * | w, th | - | deflection over thickness, its slope |
 * | u | - | radial displacement |
 * | M, N | - | radial bending moment and membrane force, with E = h = a = 1 |
 * | F | - | lateral force carried through radius r, over 2π |
 *
 *   θ′ = M/D - νθ/r,  u′ = N/C - θ²/2 - νu/r,  M′ = (Mt - M)/r + Nθ - F/r,  N′ = (Nt - N)/r,
 *   Mt = νM + θ/12r,  Nt = νN + u/r
 * Source: Timoshenko & Woinowsky-Krieger 1959, section 100 (equilibrium and strains).
 */

export type Inner = 'clamped-held' | 'clamped' | 'centre';
export type Outer = 'free' | 'clamped-held' | 'clamped' | 'supported-held' | 'supported';

export interface ShootingPlate {
  readonly innerRadius: number;
  readonly poissonsRatio: number;
  readonly inner: Inner;
  readonly outer: Outer;
  readonly load: 'pressure' | 'outer-force';
}

/** Integration steps; ten times as many move the sixth digit by less than one. */
const STEPS = 400;
const LOAD_STEPS = 40;
const NEWTON_LIMIT = 60;

/** [w, θ, u, M, N] */
type State = [number, number, number, number, number];

interface LargeDeflectionInput extends Omit<ShootingPlate, 'innerRadius'> {
  readonly rows: readonly { readonly label: string; readonly innerRadius: number; readonly load: number }[];
}

/** The quantities of a `large-deflection-plate` case, by shooting instead of finite elements. */
export function deriveLargeDeflection(input: unknown): Record<string, number> {
  const { rows, ...plate } = input as LargeDeflectionInput;
  const entries = rows.map(({ label, innerRadius, load }) => [
    `${label} deflection`,
    shootDeflection({ ...plate, innerRadius }, load),
  ]);
  return Object.fromEntries(entries);
}

/** Largest |w| / h under the load q a⁴/(E h⁴) or P a²/(E h⁴). @throws Error when Newton's method does not settle */
export function shootDeflection(plate: ShootingPlate, load: number): number {
  let guess: [number, number] = [0, 0];
  for (let step = 1; step <= LOAD_STEPS; step++) guess = settle(plate, (load * step) / LOAD_STEPS, guess);
  const end = integrate(plate, load, guess);
  return Math.abs(end[0]);
}

function settle(plate: ShootingPlate, load: number, start: [number, number]): [number, number] {
  let [p, q] = start;
  for (let k = 0; k < NEWTON_LIMIT; k++) {
    const [f, g] = misfit(plate, load, [p, q]);
    const dp = 1e-6 * Math.max(Math.abs(p), 1e-3);
    const dq = 1e-6 * Math.max(Math.abs(q), 1e-3);
    const [fp, gp] = misfit(plate, load, [p + dp, q]).map((v, i) => (v - [f, g][i]) / dp);
    const [fq, gq] = misfit(plate, load, [p, q + dq]).map((v, i) => (v - [f, g][i]) / dq);
    const det = fp * gq - fq * gp;
    const [a, b] = [(f * gq - g * fq) / det, (g * fp - f * gp) / det];
    p -= a;
    q -= b;
    if (Math.abs(a) <= 1e-9 * Math.abs(p) + 1e-14 && Math.abs(b) <= 1e-9 * Math.abs(q) + 1e-14) return [p, q];
  }
  throw new Error(`shooting did not settle at load ${load}`);
}

function misfit({ outer, ...plate }: ShootingPlate, load: number, guess: [number, number]): [number, number] {
  const [, th, u, M, N] = integrate({ outer, ...plate }, load, guess);
  return [outer.startsWith('clamped') ? th : M, outer.endsWith('held') ? u : N];
}

function startOf({ inner, innerRadius: r, poissonsRatio: nu }: ShootingPlate, [p, q]: [number, number]): State {
  const D = 1 / (12 * (1 - nu * nu));
  const C = 1 / (1 - nu * nu);
  if (inner === 'centre') return [0, p * r, q * r, D * (1 + nu) * p, C * (1 + nu) * q];
  return inner === 'clamped-held' ? [0, 0, 0, p, q] : [0, 0, q, p, 0];
}

function integrate(plate: ShootingPlate, load: number, guess: [number, number]): State {
  const start = Math.log(plate.innerRadius);
  const h = -start / STEPS;
  let y = startOf(plate, guess);
  for (let k = 0; k < STEPS; k++) {
    const s = start + k * h;
    const k1 = slopes(plate, load, s, y);
    const k2 = slopes(plate, load, s + h / 2, advance(y, k1, h / 2));
    const k3 = slopes(plate, load, s + h / 2, advance(y, k2, h / 2));
    const k4 = slopes(plate, load, s + h, advance(y, k3, h));
    y = advance(advance(advance(advance(y, k1, h / 6), k2, h / 3), k3, h / 3), k4, h / 6);
  }
  return y;
}

const advance = (y: State, k: State, h: number): State => [
  y[0] + h * k[0],
  y[1] + h * k[1],
  y[2] + h * k[2],
  y[3] + h * k[3],
  y[4] + h * k[4],
];

/** r d/dr of the state. */
function slopes({ inner, load: kind, poissonsRatio: nu }: ShootingPlate, load: number, s: number, y: State): State {
  const [, th, u, M, N] = y;
  const r = Math.exp(s);
  const beyond = inner === 'centre' ? (-load * r * r) / 2 : (load * (1 - r * r)) / 2;
  const F = kind === 'pressure' ? beyond : load / (2 * Math.PI);
  const Mt = nu * M + th / (12 * r);
  const Nt = nu * N + u / r;
  return [
    r * th,
    r * 12 * (1 - nu * nu) * M - nu * th,
    r * ((1 - nu * nu) * N - (th * th) / 2) - nu * u,
    Mt - M + r * N * th - F,
    Nt - N,
  ];
}
