/**
 * How far a balanced axisymmetric stack is from ruffling: the least margin over 2 to 8 waves.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | waves round the circle |
 * | μ | - | least stiffness against n waves, motion in the plane free, over that of the flat stack |
 *
 * The number of waves that was worst in the state before is solved first; of every other n one count tells whether it
 * has a mode below, and most do not even need that, since their bending alone proves it (bending-bound.ts). Of those
 * that have one, the one with the lowest estimate is solved next, until none is left.
 * Source: design section 5.3; docs/theory-waviness.md.
 */
import { isStifferThan } from '../../plate/waviness/bending-bound.ts';
import { createWavePlate, orderOf, takeState, WAVE_UNKNOWNS, type WavePlate } from '../../plate/waviness/wave-plate.ts';
import type { ConvergedLift, LiftPoint, Waviness } from '../../types.ts';
import type { StackSystem } from '../stack-system.ts';
import { inverseIteration, leastMode, marginTolerance } from './least-mode.ts';
import { createWaveProblem, factorShifted, setWaves, type WaveProblem } from './wave-problem.ts';
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
  const waves = system.plates.map(createWavePlate);
  return {
    system,
    waves,
    modes: new Map(),
    last: { margin: 1, waves: USUAL_WAVES[0] },
  };
}

export type RufflingOutcome =
  | { readonly status: 'round' | 'singular' }
  | { readonly status: 'ruffled'; readonly waves: number };

/** Whether the least margin is below 0: a few counts, where the margin itself takes many. @returns one number of waves that ruffles it */
export function testRuffling(test: WavinessTest): RufflingOutcome {
  for (const wave of test.waves) takeState(wave);
  const first = test.last.waves;
  let problem: WaveProblem | undefined;
  for (const n of [first, ...USUAL_WAVES.filter((other) => other !== first)]) {
    if (isBound(test, n, 0)) continue;
    problem ??= createWaveProblem(test.waves, listTies(test.system));
    setWaves(problem, n);
    const factor = factorShifted(problem, 0);
    if (factor.status === 'singular') return factor;
    if (factor.negativeModes === 0) continue;
    test.last = { ...test.last, waves: n };
    return { status: 'ruffled', waves: n };
  }
  return { status: 'round' };
}

/** Whether bending alone keeps the margin of n waves above sigma. */
function isBound({ waves }: WavinessTest, n: number, sigma: number): boolean {
  return waves.every((wave) => isStifferThan(wave, n, sigma));
}

/** @returns the least margin and its number of waves, or 'singular' when the search could not be carried through */
export function testWaviness(test: WavinessTest): WavinessOutcome {
  for (const wave of test.waves) takeState(wave);
  const problem = createWaveProblem(test.waves, listTies(test.system));
  let next: number | undefined = test.last.waves;
  let guess = test.last.margin;
  let left: readonly number[] = USUAL_WAVES;
  let least: Waviness | undefined;
  while (next !== undefined) {
    const waves: number = next;
    const margin = solveWaves(test, problem, waves, guess);
    if (margin === undefined) return { status: 'singular' };
    if (!least || margin < least.margin) least = { margin, waves };
    left = left.filter((n) => n !== waves);
    const rivals = rivalsOf(test, problem, left, least);
    if (!rivals) return { status: 'singular' };
    left = rivals.map(({ n }) => n);
    const rival = rivals.reduce<Rival | undefined>(
      (best, r) => (best && best.estimate <= r.estimate ? best : r),
      undefined,
    );
    next = rival?.n;
    guess = Math.min(rival?.estimate ?? 1, least.margin);
  }
  test.last = least as Waviness;
  return { status: 'found', waviness: test.last };
}

/** Least margin of n waves; a mode that failed is forgotten. */
function solveWaves(test: WavinessTest, problem: WaveProblem, n: number, guess: number): number | undefined {
  const isNew = !test.modes.has(n);
  setWaves(problem, n);
  // A first mode is turned to the one nearest the onset; from lifts that fit badly the search would creep there.
  if (isNew && factorShifted(problem, 0).status === 'factored') inverseIteration(problem, modeOf(test, n));
  const mode = leastMode(problem, guess, modeOf(test, n));
  if (mode.status === 'converged') return mode.margin;
  test.modes.delete(n);
  return undefined;
}

function modeOf({ modes, waves }: WavinessTest, n: number): readonly Float64Array[] {
  const mode = modes.get(n) ?? startModes(waves, n);
  modes.set(n, mode);
  return mode;
}

/** A number of waves that has a mode below the least margin so far, and about where. */
interface Rival {
  readonly n: number;
  readonly estimate: number;
}

function rivalsOf(test: WavinessTest, problem: WaveProblem, left: readonly number[], least: Waviness) {
  const rivals: Rival[] = [];
  const sigma = least.margin - marginTolerance(least.margin);
  for (const n of left) {
    if (isBound(test, n, sigma)) continue;
    setWaves(problem, n);
    const factor = factorShifted(problem, sigma);
    if (factor.status === 'singular') return undefined;
    if (factor.negativeModes === 0) continue;
    copyLifts(test, least.waves, n);
    rivals.push({ n, estimate: inverseIteration(problem, modeOf(test, n)) });
  }
  return rivals;
}

/** Starts the mode of n waves from the lifts of that of m waves: they are much alike. */
function copyLifts(test: WavinessTest, m: number, n: number): void {
  const [from, to] = [modeOf(test, m), modeOf(test, n)];
  for (const [k, wave] of test.waves.entries()) {
    const [scaleFrom, scaleTo] = [orderOf(wave, m).scale, orderOf(wave, n).scale];
    for (let i = 0; i < wave.size; i++) {
      to[k][i] = i % WAVE_UNKNOWNS < 2 && scaleTo[i] > 0 ? (from[k][i] * scaleFrom[i]) / scaleTo[i] : 0;
    }
  }
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
