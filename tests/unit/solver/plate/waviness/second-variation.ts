/**
 * The second variation of the energy of a plate under a wave, worked out in Cartesian coordinates from displacements
 * alone: another road than the polar strains of the solver. Derivatives are central differences.
 */

/** a + b r + c r² + d r³. */
export type Cubic = readonly [number, number, number, number];

interface Question {
  readonly D: number;
  readonly C: number;
  readonly nu: number;
  readonly n: number;
  readonly w0: Cubic;
  readonly u0: Cubic;
  /** W and U times cos nθ, V times sin nθ. */
  readonly fields: readonly [Cubic, Cubic, Cubic];
  /** Radii of the integration, and the area that each stands for in a full circle. */
  readonly points: { readonly radius: Float64Array; readonly area: Float64Array };
}

const STEP = 2e-6;
const value = ([a, b, c, d]: Cubic, r: number): number => a + r * (b + r * (c + r * d));

type Field = (x: number, y: number) => number;
const dx = (f: Field, x: number, y: number): number => (f(x + STEP, y) - f(x - STEP, y)) / (2 * STEP);
const dy = (f: Field, x: number, y: number): number => (f(x, y + STEP) - f(x, y - STEP)) / (2 * STEP);

/** d²E/dε² at ε = 0 of the state plus ε times the wave. */
export function secondVariation(question: Question): number {
  const { n, points } = question;
  const angles = 4 * n;
  let sum = 0;
  points.radius.forEach((r, q) => {
    for (let k = 0; k < angles; k++) {
      // Equal angles integrate cos² nθ and its powers up to the fourth exactly.
      const theta = (2 * Math.PI * (k + 0.37)) / angles;
      sum += (points.area[q] / angles) * densityVariation(question, r * Math.cos(theta), r * Math.sin(theta));
    }
  });
  return sum;
}

/** Second derivative of the energy density, from the strains that are linear and quadratic in ε. */
function densityVariation({ D, C, nu, n, w0, u0, fields }: Question, x: number, y: number): number {
  const [W, U, V] = fields;
  const polar = (px: number, py: number) => ({ r: Math.hypot(px, py), t: Math.atan2(py, px) });
  const lift0: Field = (px, py) => value(w0, Math.hypot(px, py));
  const [x0, y0] = [0, 1].map(
    (axis): Field =>
      (px, py) =>
        (value(u0, Math.hypot(px, py)) * [px, py][axis]) / Math.hypot(px, py),
  );
  const lift: Field = (px, py) => {
    const { r, t } = polar(px, py);
    return value(W, r) * Math.cos(n * t);
  };
  const [x1, y1] = [0, 1].map(
    (axis): Field =>
      (px, py) => {
        const { r, t } = polar(px, py);
        const [u, v] = [value(U, r) * Math.cos(n * t), value(V, r) * Math.sin(n * t)];
        return axis === 0 ? u * Math.cos(t) - v * Math.sin(t) : u * Math.sin(t) + v * Math.cos(t);
      },
  );
  const [a, b] = [dx(lift0, x, y), dy(lift0, x, y)];
  const [p, q] = [dx(lift, x, y), dy(lift, x, y)];
  const state = [dx(x0, x, y) + a ** 2 / 2, dy(y0, x, y) + b ** 2 / 2, dy(x0, x, y) + dx(y0, x, y) + a * b];
  const first = [dx(x1, x, y) + a * p, dy(y1, x, y) + b * q, dy(x1, x, y) + dx(y1, x, y) + a * q + b * p];
  const second = [p * p, q * q, 2 * p * q];
  const stretch = (e: readonly number[], f: readonly number[]) =>
    C * (e[0] * f[0] + e[1] * f[1] + nu * (e[0] * f[1] + e[1] * f[0]) + ((1 - nu) / 2) * e[2] * f[2]);
  const centre = lift(x, y);
  // Second differences lose twice the digits: a longer step.
  const h = 8 * STEP;
  const xx = (lift(x + h, y) - 2 * centre + lift(x - h, y)) / h ** 2;
  const yy = (lift(x, y + h) - 2 * centre + lift(x, y - h)) / h ** 2;
  const xy = (lift(x + h, y + h) - lift(x + h, y - h) - lift(x - h, y + h) + lift(x - h, y - h)) / (4 * h ** 2);
  const bend = D * (xx ** 2 + yy ** 2 + 2 * nu * xx * yy + 2 * (1 - nu) * xy ** 2);
  return stretch(first, first) + stretch(state, second) + bend;
}
