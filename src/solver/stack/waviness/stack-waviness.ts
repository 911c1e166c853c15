/**
 * How far a balanced axisymmetric stack is from ruffling: the least margin over 2 to 8 waves.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | waves round the circle |
 * | μ | - | least stiffness against n waves over that at rest: 1 at rest, 0 at the onset, below 0 beyond |
 *
 * The number of waves that was worst in the state before is solved first; of every other n one count tells whether it
 * has a mode below, and only then is it solved too.
 * Source: design section 5.3; docs/theory-waviness.md.
 */
import { createWavePlate, orderOf, takeState, WAVE_UNKNOWNS, type WavePlate } from '../../plate/waviness/wave-plate.ts';
import type { Waviness } from '../../types.ts';
import type { StackSystem } from '../stack-system.ts';
import { leastMode, marginTolerance } from './least-mode.ts';
import { createWaveProblem, factorShifted, type WaveProblem } from './wave-problem.ts';
import { listTies } from './wave-ties.ts';

export const LEAST_WAVES = 2;
export const MOST_WAVES = 8;
/** A free rim under a ring of pressure ruffles in about three waves, so that is where the first search begins. */
const FIRST_GUESS = 3;

export interface WavinessTest {
  readonly system: StackSystem;
  readonly waves: readonly WavePlate[];
  /** Last mode of each number of waves, one array a plate: where the next search starts. */
  readonly modes: ReadonlyMap<number, readonly Float64Array[]>;
  /** Number of waves that was worst in the last state. */
  worst: number;
}

export type WavinessOutcome = ({ readonly status: 'found' } & Waviness) | { readonly status: 'singular' };

/** @param system of the large-deflection theory; small deflection has no membrane force and never ruffles */
export function createWavinessTest(system: StackSystem): WavinessTest {
  const orders = Array.from({ length: MOST_WAVES - LEAST_WAVES + 1 }, (_, i) => LEAST_WAVES + i);
  const waves = system.plates.map((plate) => createWavePlate(plate, orders));
  return { system, waves, modes: new Map(orders.map((n) => [n, startModes(waves, n)])), worst: FIRST_GUESS };
}

/** @returns the least margin and its number of waves, or 'singular' when the search could not be carried through */
export function testWaviness(test: WavinessTest): WavinessOutcome {
  const { system, waves, modes } = test;
  for (const wave of waves) takeState(wave);
  const ties = listTies(system);
  let margin = Number.POSITIVE_INFINITY;
  let worst = test.worst;
  const others = [...modes.keys()].filter((n) => n !== test.worst).sort((p, q) => nearness(p, q, test.worst));
  for (const n of [test.worst, ...others]) {
    const problem = createWaveProblem(waves, ties, n);
    if (n !== test.worst) {
      const below = hasModeBelow(problem, margin - marginTolerance(margin));
      if (below === undefined) return { status: 'singular' };
      if (!below) continue;
    }
    const mode = leastMode(problem, modes.get(n) as readonly Float64Array[]);
    if (mode.status !== 'converged') return { status: 'singular' };
    if (mode.margin < margin) {
      margin = mode.margin;
      worst = n;
    }
  }
  test.worst = worst;
  return { status: 'found', margin, waves: worst };
}

const nearness = (p: number, q: number, n: number): number => Math.abs(p - n) - Math.abs(q - n);

function hasModeBelow(problem: WaveProblem, sigma: number): boolean | undefined {
  const factor = factorShifted(problem, sigma);
  return factor.status === 'singular' ? undefined : factor.negativeModes > 0;
}

/** Lifts that grow with the square of the distance from the inner edge, the same for every plate. */
function startModes(waves: readonly WavePlate[], n: number): Float64Array[] {
  return waves.map((wave) => {
    const { radius_m } = wave.plate.tables;
    const { scale } = orderOf(wave, n);
    const mode = new Float64Array(wave.size);
    for (let node = 0; node < wave.plate.nodes; node++) {
      const at = node * WAVE_UNKNOWNS;
      if (scale[at] > 0) mode[at] = (radius_m[node] / radius_m[0] - 1) ** 2 / scale[at];
    }
    return mode;
  });
}
