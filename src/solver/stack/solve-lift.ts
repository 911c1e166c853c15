/**
 * Lift and stress of a stack at a list of pressures: the door of the stack solver.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 *
 * The preload is raised first, then the pressures are visited from the least to the greatest, each from the last
 * solved state. A load that does not converge at once is reached in halved steps.
 */
import { InputError } from '../../units/fault.ts';
import type { FailedLift, FailureStatus, LiftOptions, LiftPoint, LiftResult, StackInput } from '../types.ts';
import { type Equilibrium, equilibrate, RESIDUAL_TOLERANCE } from './equilibrate.ts';
import { readLift } from './read-lift.ts';
import { settleHub } from './settle-hub.ts';
import { createStackSystem, type StackSystem } from './stack-system.ts';
import { validateStack } from './validate-stack.ts';
import { createWavinessTest, withWaviness } from './waviness/stack-waviness.ts';

/** Halvings of a load step before it is given up. */
const HALVING_LIMIT = 6;

export interface SolveLiftOptions extends LiftOptions {
  /** Least number of elements from clamp to rim; for convergence studies. */
  readonly elements?: number;
}

/**
 * @param pressures_Pa pressures on the zone, >= 0, in any order [Pa]
 * @returns one point per pressure, in the order asked for; a point that failed says why and carries no lift
 * @throws InputError `stack.*` for a stack outside the model, `pressure.*` for a pressure that is not a number >= 0
 */
export function solveLift(stack: StackInput, pressures_Pa: readonly number[], options: SolveLiftOptions): LiftResult {
  validateStack(stack);
  pressures_Pa.forEach((p, i) => {
    if (!(p >= 0 && Number.isFinite(p))) {
      const fault = {
        code: 'pressure.range',
        path: `pressures_Pa[${i}]`,
        got: `${p}`,
        wanted: '0 or more',
        unit: 'Pa',
      };
      throw new InputError(fault);
    }
  });
  const system = createStackSystem(stack, options);
  const waviness = options.waviness && options.theory === 'large-deflection' ? createWavinessTest(system) : undefined;
  const order = pressures_Pa.map((_, i) => i).sort((i, j) => pressures_Pa[i] - pressures_Pa[j]);
  const points: LiftPoint[] = new Array(pressures_Pa.length);
  let state = { p: 0, ramp: 0 };
  for (const i of order) {
    const p = pressures_Pa[i];
    const reached = state.ramp < 1 ? followPath(system, state, { p: 0, ramp: 1 }) : undefined;
    if (reached && reached.status !== 'converged') {
      points[i] = failedLift(p, reached);
      continue;
    }
    state = { ...state, ramp: 1 };
    const path = followPath(system, state, { p, ramp: 1 });
    const end = stack.float && path.status === 'converged' ? settleHub(system, p, stack.float) : path;
    if (end.status === 'converged') {
      state = { p, ramp: 1 };
      points[i] = withWaviness(readLift(system, p, end), waviness);
    } else {
      points[i] = failedLift(p, end);
    }
  }
  return { theory: options.theory, points };
}

interface LoadState {
  readonly p: number;
  readonly ramp: number;
}

/** Goes from one load to another, in halved steps where a whole one does not converge; on failure the state goes back. */
function followPath(system: StackSystem, from: LoadState, to: LoadState): Equilibrium {
  const start = saveState(system);
  let at = from;
  let share = 1;
  let iterations = 0;
  for (;;) {
    const saved = saveState(system);
    const next = { p: at.p + (to.p - at.p) * share, ramp: at.ramp + (to.ramp - at.ramp) * share };
    const end = equilibrate(system, next.p, next.ramp);
    iterations += end.iterations;
    if (end.status === 'converged') {
      if (share === 1) return { ...end, iterations };
      at = next;
      share = Math.min(1, share * 2);
      continue;
    }
    restoreState(system, saved);
    share /= 2;
    if (share < 2 ** -HALVING_LIMIT) {
      restoreState(system, start);
      return { ...end, iterations };
    }
  }
}

interface SavedState {
  readonly x: Float64Array[];
  readonly closed: Uint8Array;
}

function saveState(system: StackSystem): SavedState {
  return { x: system.plates.map((plate) => plate.x.slice()), closed: system.contact.closed.slice() };
}

function restoreState(system: StackSystem, saved: SavedState): void {
  for (const [k, plate] of system.plates.entries()) plate.x.set(saved.x[k]);
  system.contact.closed.set(saved.closed);
}

function failedLift(p: number, { status, iterations, residual }: Equilibrium): FailedLift {
  const reasons: Record<FailureStatus, string> = {
    'not-converged': `balance left ${residual.toExponential(1)} of the load, wanted ${RESIDUAL_TOLERANCE}, after ${iterations} iterations`,
    'contact-not-resolved': 'no set of closed contacts satisfies all gaps and forces',
    singular: 'a stiffness matrix could not be factored',
  };
  return {
    status: status as FailureStatus,
    pressure_Pa: p,
    iterations,
    residual,
    reason: reasons[status as FailureStatus],
  };
}
