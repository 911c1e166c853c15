/**
 * How a plate that repeats itself n times round the circle varies along one period: shapes of lift and in-plane motion
 * in φ = nθ, tabulated at the points where the circle is integrated.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | waves round the circle |
 * | M | - | harmonics of the lift, 1 or 2: w = Σ w_k cos kφ, k = 0…M |
 * | φ | rad | nθ; all fields are even (w, u) or odd (v) in it, so that half a period says all |
 * | ℓ_j | - | shape of the lift that is 1 at φ_j = jπ/M and 0 at the other such places (j = 0…M) |
 *
 * Values at φ_j say the same as the harmonics, and contact is wanted there: with M = 1 at crest and trough, between
 * which w runs as cos φ and so never exceeds both. The strains hold products of two lifts, so the in-plane fields go
 * to 2M (stopping at M is 34 % wrong), and the energy to 4M: 2M + 1 midpoints of half a period integrate that exactly.
 */

export interface CircleBasis {
  readonly waves: number;
  readonly M: number;
  /** Points of half a period, 2 M + 1; each stands for the same share of the circle. */
  readonly points: number;
  /** Shapes of w, u and v: M + 1, 2 M + 1 and 2 M. */
  readonly lifts: number;
  readonly outs: number;
  readonly turns: number;
  /** ℓ_j at every point, then its first and second derivative by θ: row by point. */
  readonly lift: Float64Array;
  readonly liftTurn: Float64Array;
  readonly liftTurn2: Float64Array;
  /** cos mφ, m = 0…2M, and its derivative by θ. */
  readonly out: Float64Array;
  readonly outTurn: Float64Array;
  /** sin mφ, m = 1…2M, and its derivative by θ. */
  readonly turn: Float64Array;
  readonly turnTurn: Float64Array;
  /** Mean of ℓ_j round the circle. */
  readonly mean: Float64Array;
  /** Share of each harmonic k in ℓ_j: row by j. */
  readonly harmonics: Float64Array;
}

export function createCircleBasis(waves: number, M: 1 | 2): CircleBasis {
  const points = 2 * M + 1;
  const phi = Array.from({ length: points }, (_, q) => ((q + 0.5) * Math.PI) / points);
  const harmonics = harmonicsOf(M);
  const row = (j: number) => harmonics.subarray(j * (M + 1), (j + 1) * (M + 1));
  const table = (size: number, f: (phi: number, i: number) => number) =>
    Float64Array.from({ length: points * size }, (_, at) => f(phi[Math.floor(at / size)], at % size));
  const sum = (j: number, f: (k: number) => number) => row(j).reduce((s, c, k) => s + c * f(k), 0);
  return {
    waves,
    M,
    points,
    lifts: M + 1,
    outs: 2 * M + 1,
    turns: 2 * M,
    lift: table(M + 1, (f, j) => sum(j, (k) => Math.cos(k * f))),
    liftTurn: table(M + 1, (f, j) => sum(j, (k) => -k * waves * Math.sin(k * f))),
    liftTurn2: table(M + 1, (f, j) => sum(j, (k) => -((k * waves) ** 2) * Math.cos(k * f))),
    out: table(2 * M + 1, (f, m) => Math.cos(m * f)),
    outTurn: table(2 * M + 1, (f, m) => -m * waves * Math.sin(m * f)),
    turn: table(2 * M, (f, m) => Math.sin((m + 1) * f)),
    turnTurn: table(2 * M, (f, m) => (m + 1) * waves * Math.cos((m + 1) * f)),
    mean: Float64Array.from({ length: M + 1 }, (_, j) => harmonics[j * (M + 1)]),
    harmonics,
  };
}

/** The cosine interpolation through the places φ_j (discrete cosine transform of the first kind), row by j. */
function harmonicsOf(M: number): Float64Array {
  const half = (i: number) => (i === 0 || i === M ? 0.5 : 1);
  return Float64Array.from({ length: (M + 1) ** 2 }, (_, at) => {
    const [j, k] = [Math.floor(at / (M + 1)), at % (M + 1)];
    return ((2 * half(j) * half(k)) / M) * Math.cos((j * k * Math.PI) / M);
  });
}

/** Lift at angle φ from the lifts at the places φ_j. */
export function liftAround({ harmonics, M }: CircleBasis, lifts: ArrayLike<number>, phi: number): number {
  let w = 0;
  for (let j = 0; j <= M; j++)
    for (let k = 0; k <= M; k++) w += lifts[j] * harmonics[j * (M + 1) + k] * Math.cos(k * phi);
  return w;
}
