/**
 * One stack kept ready for load after load: every solved state is remembered, and a new pressure starts from its
 * neighbours.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 * | ramp | - | share of every interference that is enforced |
 *
 * The preload is raised first. Every other pressure starts from a guess that its solved neighbours point to
 * (guess-state.ts); a load that does not converge from there is reached from the state below it, in halved steps.
 */
import type { LiftOptions, LiftPoint, StackInput } from '../types.ts';
import type { Equilibrium } from './equilibrate.ts';
import { failedLift } from './failed-lift.ts';
import { followPath, restoreState, type SavedState, saveState } from './follow-path.ts';
import { guessState } from './guess-state.ts';
import { readLift } from './read-lift.ts';
import { stressReader } from './read-stress.ts';
import { settleHub } from './settle-hub.ts';
import { createStackSystem } from './stack-system.ts';
import { validateStack } from './validate-stack.ts';
import {
  createWavinessTest,
  type RufflingOutcome,
  testRuffling,
  testWaviness,
  type WavinessOutcome,
  type WavinessTest,
  withWaviness,
} from './waviness/stack-waviness.ts';

export interface SolveLiftOptions extends LiftOptions {
  /** Least number of elements from clamp to rim; for convergence studies. */
  readonly elements?: number;
}

export interface LoadedStack {
  /** Solves one pressure >= 0 [Pa]; a failure leaves what was solved before as it was. */
  readonly at: (p: number) => LiftPoint;
  /** Margin against waves at a pressure already solved; large deflection only [-]. */
  readonly wavinessAt: (p: number) => WavinessOutcome;
  /** Whether that margin is below 0, which costs less than the margin. */
  readonly rufflingAt: (p: number) => RufflingOutcome;
}

/** @throws InputError `stack.*` for a stack outside the model */
export function createLoadedStack(stack: StackInput, options: SolveLiftOptions): LoadedStack {
  validateStack(stack);
  const system = createStackSystem(stack, options);
  const solved: SavedState[] = [];
  let preload: Equilibrium | undefined;
  let test: WavinessTest | undefined;
  const solve = (p: number): Equilibrium => {
    preload ??= followPath(system, { p: 0, ramp: 0, rise: 0 }, { p: 0, ramp: 1, rise: 0 });
    if (preload.status !== 'converged') return preload;
    if (solved.length === 0) solved.push(saveState(system, 0));
    const i = solved.findLastIndex((state) => state.p <= p);
    const below = solved[i];
    restoreState(system, below);
    const rise = below.hubRise_m;
    // Under small deflection the first step is exact wherever it starts.
    const guess = options.theory === 'large-deflection' ? () => guessState(system, solved, i, p) : undefined;
    const path = followPath(system, { p: below.p, ramp: 1, rise }, { p, ramp: 1, rise }, below, guess);
    const end = stack.float && path.status === 'converged' ? settleHub(system, p, stack.float) : path;
    if (end.status === 'converged') remember(solved, saveState(system, p));
    return end;
  };
  const wavinessTest = (): WavinessTest => {
    test ??= createWavinessTest(system);
    return test;
  };
  /** A state that was solved is put back as it was. */
  const returnTo = (p: number): boolean => {
    const known = solved.find((state) => state.p === p);
    if (known) restoreState(system, known);
    return known !== undefined || solve(p).status === 'converged';
  };
  const readStress = options.profiles ? stressReader(system) : undefined;
  const asked = options.waviness && options.theory === 'large-deflection';
  return {
    at: (p) => {
      const end = solve(p);
      if (end.status !== 'converged') return failedLift(p, end);
      const lift = readLift(system, p, end);
      const read = readStress ? { ...lift, stress: readStress(p) } : lift;
      return withWaviness(read, asked ? wavinessTest() : undefined);
    },
    wavinessAt: (p) => (returnTo(p) ? testWaviness(wavinessTest()) : { status: 'singular' }),
    rufflingAt: (p) => (returnTo(p) ? testRuffling(wavinessTest()) : { status: 'singular' }),
  };
}

function remember(solved: SavedState[], state: SavedState): void {
  const at = solved.findIndex(({ p }) => p >= state.p);
  if (at < 0) solved.push(state);
  else solved.splice(at, solved[at].p === state.p ? 1 : 0, state);
}
