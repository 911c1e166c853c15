/**
 * Cubic Hermite shape functions and Gauss points of every element of a radial mesh, tabulated once.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | x | - | local coordinate 0…1 of an element of length h |
 * | H | -, m | shapes of (value, slope) at the inner and outer node: 1-3x²+2x³, h(x-2x²+x³), 3x²-2x³, h(x³-x²) |
 * | d0, d1, d2 | -, 1/m, 1/m² | H and its first and second derivative by r, 4 per Gauss point |
 * | rw | m² | 2π r times the Gauss weight and h: the area that a Gauss point stands for |
 * | rinv | 1/m | 1/r at the Gauss point |
 *
 * Source: any finite-element text, for example Hughes, The Finite Element Method, 2000, section 1.16.
 */

/** Four points integrate r w'⁴ but for its two highest terms; docs/theory.md gives the error measured. */
export const GAUSS_POINTS = 4;
const GAUSS_X = [-0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526];
const GAUSS_W = [0.34785484513745385, 0.6521451548625461, 0.6521451548625461, 0.34785484513745385];

export interface HermiteTables {
  readonly radius_m: Float64Array;
  readonly elements: number;
  readonly d0: Float64Array;
  readonly d1: Float64Array;
  readonly d2: Float64Array;
  readonly rw: Float64Array;
  readonly rinv: Float64Array;
}

/** The four shapes or their derivatives by r at local x. @param order 0, 1 or 2 @param out 4 numbers from `at` on */
export function hermiteShapes(x: number, h: number, order: 0 | 1 | 2, out: Float64Array, at = 0): void {
  if (order === 0) {
    out[at] = 1 + x * x * (2 * x - 3);
    out[at + 1] = h * x * (1 + x * (x - 2));
    out[at + 2] = x * x * (3 - 2 * x);
    out[at + 3] = h * x * x * (x - 1);
  } else if (order === 1) {
    out[at] = (6 * x * (x - 1)) / h;
    out[at + 1] = 1 + x * (3 * x - 4);
    out[at + 2] = (6 * x * (1 - x)) / h;
    out[at + 3] = x * (3 * x - 2);
  } else {
    out[at] = (12 * x - 6) / (h * h);
    out[at + 1] = (6 * x - 4) / h;
    out[at + 2] = (6 - 12 * x) / (h * h);
    out[at + 3] = (6 * x - 2) / h;
  }
}

/** @param radius_m strictly rising node radii, length n >= 2 [m] @returns tables with (n - 1) GAUSS_POINTS points */
export function buildHermiteTables(radius_m: Float64Array): HermiteTables {
  const elements = radius_m.length - 1;
  const points = elements * GAUSS_POINTS;
  const [d0, d1, d2] = [0, 1, 2].map(() => new Float64Array(points * 4));
  const rw = new Float64Array(points);
  const rinv = new Float64Array(points);
  for (let e = 0; e < elements; e++) {
    const h = radius_m[e + 1] - radius_m[e];
    for (let g = 0; g < GAUSS_POINTS; g++) {
      const x = (1 + GAUSS_X[g]) / 2;
      const q = e * GAUSS_POINTS + g;
      const r = radius_m[e] + h * x;
      hermiteShapes(x, h, 0, d0, q * 4);
      hermiteShapes(x, h, 1, d1, q * 4);
      hermiteShapes(x, h, 2, d2, q * 4);
      rw[q] = Math.PI * r * GAUSS_W[g] * h;
      rinv[q] = 1 / r;
    }
  }
  return { radius_m, elements, d0, d1, d2, rw, rinv };
}
