/**
 * What a loaded axisymmetric state adds to the stiffness of a plate against waves, for every number of waves at once.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | s | - | whole slope of the axisymmetric state |
 * | Nr, Nt | N/m | its radial and hoop force a unit length, tension positive |
 * | a, b | - | shape functions of the first and the second field |
 * | n | - | waves round the circle |
 *
 * A wave changes the strains by er = U′ + s W′, et = (U + n V)/r, g = V′ - V/r - n U/r - n s W/r, and turns the
 * forces Nr and Nt by its slopes W′ and n W/r. Beyond the plate at rest that leaves
 *   WW: ∫ (C s² + Nr) a′b′ + n² ∫ (C s² (1 - ν)/2 + Nt) a b/r²
 *   WU: ∫ C s a′ (b′ + ν b/r) + n² ∫ C s (1 - ν)/2 a b/r²
 *   WV: n ∫ C s [ν a′ b/r - (1 - ν)/2 (a/r)(b′ - b/r)]        each over π r dr
 * Source: second variation of the energy in assemble.ts; docs/theory-waviness.md.
 */
import { membraneStrains } from '../assemble.ts';
import { GAUSS_POINTS } from '../hermite-tables.ts';
import type { Plate } from '../plate.ts';

/** The five integrals of an element, 16 numbers each, in the order of the header, then those of Nr and Nt alone in WW. */
export const STATE_BLOCK = 112;
export const [WW, WW_NN, WU, WU_NN, WV_N, NR, NT_NN] = [0, 16, 32, 48, 64, 80, 96];

/** The axisymmetric state at one Gauss point. */
export interface WaveBase {
  readonly s: number;
  readonly Nr: number;
  readonly Nt: number;
}

/** State of the plate at Gauss point q (of the mesh) in its element e, from `plate.x`. */
export function baseStateOf(plate: Plate): (e: number, q: number) => WaveBase {
  const { C, nu } = plate;
  return (e, q) => {
    const { s, er, et } = membraneStrains(plate, e, q);
    return { s, Nr: C * (er + nu * et), Nt: C * (et + nu * er) };
  };
}

/** @param out STATE_BLOCK numbers an element, overwritten */
export function fillStateElements(plate: Plate, base: (e: number, q: number) => WaveBase, out: Float64Array): void {
  out.fill(0);
  for (let e = 0; e < plate.nodes - 1; e++) {
    for (let g = 0; g < GAUSS_POINTS; g++) {
      const q = (plate.first + e) * GAUSS_POINTS + g;
      addGaussPoint(plate, base(e, q), q, e, out);
    }
  }
}

function addGaussPoint(plate: Plate, { s, Nr, Nt }: WaveBase, q: number, e: number, out: Float64Array): void {
  const { tables, C, nu } = plate;
  const { d0, d1, rw, rinv } = tables;
  const weight = rw[q] / 2;
  const ri = rinv[q];
  const shear = (1 - nu) / 2;
  const gr = weight * Nr;
  const gt = weight * Nt;
  const gs = weight * C * s;
  const gww = gs * s + gr;
  const gnn = gs * s * shear + gt;
  for (let i = 0; i < 4; i++) {
    const a = d0[q * 4 + i] * ri;
    const a1 = d1[q * 4 + i];
    const row = e * STATE_BLOCK + i * 4;
    for (let j = 0; j < 4; j++) {
      const b = d0[q * 4 + j] * ri;
      const b1 = d1[q * 4 + j];
      out[row + WW + j] += gww * a1 * b1;
      out[row + WW_NN + j] += gnn * a * b;
      out[row + WU + j] += gs * a1 * (b1 + nu * b);
      out[row + WU_NN + j] += gs * shear * a * b;
      out[row + WV_N + j] += gs * (nu * a1 * b - shear * a * (b1 - b));
      out[row + NR + j] += gr * a1 * b1;
      out[row + NT_NN + j] += gt * a * b;
    }
  }
}
