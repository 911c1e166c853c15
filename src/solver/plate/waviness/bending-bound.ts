/**
 * A quick proof that a plate is stiffer than σ times its bending against n waves, from its lifts alone.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | σ | - | share of the bending stiffness |
 * | n | - | waves round the circle |
 * | Kb | - | bending stiffness of the flat plate, in W |
 * | G | - | work of the membrane forces, ∫ (Nr W′² + Nt n² W²/r²) π r dr |
 *
 * Whatever U and V do, stretching stores no less than nothing (|ν| < 1), so the energy of a wave is at least that of
 * Kb + G. Where (1 - σ) Kb + G is positive definite in every plate of a stack, no wave of the stack has a margin of σ or
 * less, since ties between plates only take motions away. A third of the unknowns settles what would else take a count.
 * Source: own derivation from the energy in docs/theory-waviness.md.
 */
import { factorBandedLdl } from '../../linalg/banded-ldl.ts';
import { NR, NT_NN, STATE_BLOCK } from './state-elements.ts';
import { bendingOf, type WavePlate } from './wave-plate.ts';

/** Unknowns W and W′ a node, and half bandwidth of two neighbouring nodes. */
const UNKNOWNS = 2;
const BANDWIDTH = 3;
const ROW = BANDWIDTH + 1;

/** @param wave whose state has been taken @returns false where nothing is proved */
export function isStifferThan(wave: WavePlate, n: number, sigma: number): boolean {
  const { plate, state } = wave;
  const k = bendingOf(wave, n);
  const size = plate.nodes * UNKNOWNS;
  const band = new Float64Array(size * ROW);
  for (let e = 0; e < plate.nodes - 1; e++) {
    for (let i = 0; i < 4; i++) {
      for (let j = 0; j <= i; j++) {
        const [at, from] = [i * 4 + j, e * STATE_BLOCK + i * 4 + j];
        band[(e * UNKNOWNS + i) * ROW + BANDWIDTH - (i - j)] +=
          (1 - sigma) * k[e * 16 + at] + state[from + NR] + n * n * state[from + NT_NN];
      }
    }
  }
  for (const f of plate.fixed) if (f % 4 < UNKNOWNS) hold(band, size, Math.floor(f / 4) * UNKNOWNS + (f % 4));
  const factor = factorBandedLdl(band, size, BANDWIDTH, UNKNOWNS);
  return factor.status === 'factored' && factor.negativePivots === 0;
}

/** Takes unknown f out: its row and column become those of the unit matrix. */
function hold(band: Float64Array, size: number, f: number): void {
  for (let k = 1; k <= BANDWIDTH; k++) {
    if (f - k >= 0) band[f * ROW + BANDWIDTH - k] = 0;
    if (f + k < size) band[(f + k) * ROW + BANDWIDTH - k] = 0;
  }
  band[f * ROW + BANDWIDTH] = 1;
}
