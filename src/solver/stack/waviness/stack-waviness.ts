/**
 * How far a balanced axisymmetric stack is from ruffling: the least margin over 2 to 8 waves.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | waves round the circle |
 * | μ | - | least stiffness against n waves, motion in the plane free, over that of the flat stack |
 *
 * The number of waves that was worst in the state before is solved first; of every other n one count tells whether it
 * has a mode below, and only then is it solved too.
 * Source: design section 5.3; docs/theory-waviness.md.
 */
import { createWavePlate, orderOf, takeState, WAVE_UNKNOWNS, type WavePlate } from '../../plate/waviness/wave-plate.ts';
import type { ConvergedLift, LiftPoint, Waviness } from '../../types.ts';
import type { StackSystem } from '../stack-system.ts';
import { leastMode, marginTolerance } from './least-mode.ts';
import { createWaveProblem, factorShifted, setWaves } from './wave-problem.ts';
import { listTies } from './wave-ties.ts';

/** The numbers of waves tested, those in which free rims usually ruffle first. */
const USUAL_WAVES = [3, 4, 2, 5, 6, 7, 8] as const;

export interface WavinessTest {
  readonly system: StackSystem;
  readonly waves: readonly WavePlate[];
  /** Last mode of each number of waves, one array a plate: where the next search starts. */
  readonly modes: Map<number, readonly Float64Array[]>;
  /** Margin and number of waves of the last state. */
  last: Waviness;
}

export type WavinessOutcome =
  | { readonly status: 'found'; readonly waviness: Waviness }
  | { readonly status: 'singular' };

/** @param system of the large-deflection theory; small deflection has no membrane force and never ruffles */
export function createWavinessTest(system: StackSystem): WavinessTest {
  const waves = system.plates.map((plate) => createWavePlate(plate, USUAL_WAVES));
  return {
    system,
    waves,
    modes: new Map(USUAL_WAVES.map((n) => [n, startModes(waves, n)])),
    last: { margin: 1, waves: USUAL_WAVES[0] },
  };
}

/** @returns the least margin and its number of waves, or 'singular' when the search could not be carried through */
export function testWaviness(test: WavinessTest): WavinessOutcome {
  const { system, waves, modes } = test;
  for (const wave of waves) takeState(wave);
  const problem = createWaveProblem(waves, listTies(system));
  const { waves: first, margin: guess } = test.last;
  const others = USUAL_WAVES.filter((n) => n !== first);
  let least: Waviness | undefined;
  for (const n of [first, ...others]) {
    setWaves(problem, n);
    if (least) {
      const below = factorShifted(problem, least.margin - marginTolerance(least.margin));
      if (below.status === 'singular') return below;
      if (below.negativeModes === 0) continue;
    }
    const mode = leastMode(problem, least?.margin ?? guess, modes.get(n) as readonly Float64Array[]);
    if (mode.status !== 'converged') {
      modes.set(n, startModes(waves, n));
      return { status: 'singular' };
    }
    if (!least || mode.margin < least.margin) least = { margin: mode.margin, waves: n };
  }
  test.last = least as Waviness;
  return { status: 'found', waviness: test.last };
}

/** @returns the point with its waviness, untouched without a test, failed where the test could not be carried through */
export function withWaviness(point: ConvergedLift, test: WavinessTest | undefined): LiftPoint {
  if (!test) return point;
  const outcome = testWaviness(test);
  if (outcome.status === 'found') return { ...point, waviness: outcome.waviness };
  const { pressure_Pa, iterations, residual } = point;
  const reason = 'the stability against waves could not be settled';
  return { status: outcome.status, pressure_Pa, iterations, residual, reason };
}

/** Lifts that grow with the square of the distance from the clamp, the same for every plate. */
function startModes(waves: readonly WavePlate[], n: number): Float64Array[] {
  return waves.map((wave) => {
    const { tables, first, nodes } = wave.plate;
    const { scale } = orderOf(wave, n);
    const mode = new Float64Array(wave.size);
    for (let node = 0; node < nodes; node++) {
      const at = node * WAVE_UNKNOWNS;
      if (scale[at] > 0) mode[at] = (tables.radius_m[first + node] / tables.radius_m[0] - 1) ** 2 / scale[at];
    }
    return mode;
  });
}
