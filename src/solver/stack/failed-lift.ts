/** A point that did not solve, with the reason that a person reads. */
import type { FailedLift, FailureStatus } from '../types.ts';
import { type Equilibrium, RESIDUAL_TOLERANCE } from './equilibrate.ts';

/** @param end how the solve at pressure p [Pa] ended; not converged */
export function failedLift(p: number, end: Equilibrium): FailedLift {
  const { status, iterations, residual } = end;
  if (status === 'converged') throw new Error('a converged solve is no failure');
  return { status, pressure_Pa: p, iterations, residual, reason: reasonOf(status, end) };
}

function reasonOf(status: FailureStatus, { iterations, residual }: Equilibrium): string {
  if (status === 'singular') return 'a stiffness matrix could not be factored';
  if (status === 'contact-not-resolved') return 'no set of closed contacts satisfies all gaps and forces';
  if (residual <= RESIDUAL_TOLERANCE) {
    return `forces balance, but surfaces still pass through one another after ${iterations} iterations`;
  }
  return `balance left ${residual.toExponential(1)} of the load, wanted ${RESIDUAL_TOLERANCE}, after ${iterations} iterations`;
}
